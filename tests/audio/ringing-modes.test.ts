import { describe, expect, it } from "vitest";
import type { Hertz } from "../../src/base/index.ts";
import { RingingModes } from "../../src/audio/ringing-modes.ts";
import type { Mode } from "../../src/audio/ringing-modes.ts";

const rate = 48000 as Hertz;
const mode = (hz: number, peak: number, t60: number, phase = 0): Mode => ({
  hz: hz as Hertz,
  peak,
  t60,
  phase,
});

describe("ringing modes", () => {
  it("are sines that fall by 60 dB in their time", () => {
    const modes = [mode(440, 0.5, 1, 0.3), mode(1234, 0.2, 0.4, 1)];
    const samples = new Float32Array(24000);
    const bank = new RingingModes(modes, rate);
    bank.addTo(samples, 0, 10000);
    bank.addTo(samples, 10000, 24000);
    for (let i = 0; i < samples.length; i += 97) {
      const stated = modes.reduce((sum, { hz, peak, t60, phase }) => {
        const t = i / rate;
        return sum + peak * 10 ** ((-3 * t) / t60) * Math.sin(2 * Math.PI * hz * t + phase);
      }, 0);
      expect(samples[i]).toBeCloseTo(stated, 5);
    }
  });

  it("leave out what cannot be heard or carried, and what has died away", () => {
    const bank = new RingingModes(
      [mode(30000, 1, 1), mode(500, 1e-9, 1), mode(500, 0.1, 0.01)],
      rate,
    );
    expect(bank.count).toBe(1);
    bank.addTo(new Float32Array(9600), 0, 9600);
    expect(bank.count).toBe(0);
  });
});
