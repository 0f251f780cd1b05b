/**
 * Click measure of this project: what lies above 16 kHz, as a peak in dBFS. No instrument here has
 * partials above 12 kHz, so whatever appears there at a start, a stop or a switch is a step in the
 * wave: a click. A step of height h leaves about 0.3·h.
 */
export function clickLevel(
  samples: Float32Array,
  sampleRate: number,
  from = 0,
  to = samples.length,
): number {
  const taps = highPass(16000 / sampleRate);
  let most = 0;
  for (let i = Math.max(0, from - HALF); i < Math.min(samples.length + HALF, to + HALF); i++) {
    let sum = 0;
    for (let t = -HALF; t <= HALF; t++) sum += taps[t + HALF]! * (samples[i + t] ?? 0);
    most = Math.max(most, Math.abs(sum));
  }
  return 20 * Math.log10(most);
}

const HALF = 64;

/** Linear-phase high-pass, Blackman-windowed sinc, cut 1.5 kHz under the band that counts. */
function highPass(edge: number): Float64Array {
  const cut = edge - 1500 / 48000;
  return Float64Array.from({ length: 2 * HALF + 1 }, (_, i) => {
    const t = i - HALF;
    const low = t === 0 ? 2 * cut : Math.sin(2 * Math.PI * cut * t) / (Math.PI * t);
    const turn = (Math.PI * i) / HALF;
    const window = 0.42 - 0.5 * Math.cos(turn) + 0.08 * Math.cos(2 * turn);
    return (t === 0 ? 1 : 0) - low * window;
  });
}
