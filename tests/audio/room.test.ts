import { describe, expect, it } from "vitest";
import type { Hertz } from "../../src/base/index.ts";
import { ROOM_BLOCK_FRAMES, Room, roomShares } from "../../src/audio/room.ts";
import { noiseLoop } from "../../src/audio/noise-loop.ts";
import { bandPower, powerToDb, rms, spectrumOf, toDb } from "./support/fourier.ts";

const rate = 48000 as Hertz;

function answer(left: Float32Array, right: Float32Array): [Float32Array, Float32Array] {
  const room = new Room(rate);
  const out: [Float32Array, Float32Array] = [
    new Float32Array(left.length),
    new Float32Array(left.length),
  ];
  for (let from = 0; from < left.length; from += ROOM_BLOCK_FRAMES) {
    const frames = Math.min(ROOM_BLOCK_FRAMES, left.length - from);
    const sends = [
      left.subarray(from, from + frames),
      right.subarray(from, from + frames),
    ] as const;
    room.addTo(sends, out, from, frames);
  }
  return out;
}

const noise = noiseLoop({ low: 60 as Hertz, high: 8000 as Hertz }, rate, 5);
const other = noiseLoop({ low: 60 as Hertz, high: 8000 as Hertz }, rate, 6);

describe("the room", () => {
  it("gives a player one power at any distance, only roomier", () => {
    for (const metres of [0.5, 2, 3, 4.2, 10]) {
      const { direct, room } = roomShares(metres);
      expect(direct ** 2 + room ** 2).toBeCloseTo(1, 12);
    }
    expect(roomShares(4.2).room).toBeGreaterThan(roomShares(2).room);
  });

  it("returns about the power it is sent", () => {
    const [left, right] = answer(noise, other);
    const settled = 9600;
    const sent = Math.hypot(rms(noise, settled), rms(other, settled));
    const heard = Math.hypot(rms(left, settled), rms(right, settled));
    expect(Math.abs(toDb(heard / sent))).toBeLessThan(2);
  });

  it("never cancels in mono: every third-octave keeps a quarter of its power", () => {
    const [left, right] = answer(noise, noise);
    const mid = left.map((x, i) => (x + right[i]!) / Math.SQRT2);
    const [l, r, m] = [left, right, mid].map((x) => spectrumOf(x, rate)) as [
      ReturnType<typeof spectrumOf>,
      ReturnType<typeof spectrumOf>,
      ReturnType<typeof spectrumOf>,
    ];
    for (let hz = 80; hz < 9000; hz *= 2 ** (1 / 3)) {
      const [low, high] = [hz / 2 ** (1 / 6), hz * 2 ** (1 / 6)];
      const stereo = bandPower(l, low, high) + bandPower(r, low, high);
      expect(powerToDb(bandPower(m, low, high) / stereo), `${hz}`).toBeGreaterThan(-6);
    }
  });

  it("dies away by 60 dB within its stated length", () => {
    const click = new Float32Array(48000);
    click[0] = 1;
    const [left, right] = answer(click, click);
    const end = Math.ceil(Room.length * rate);
    const early = Math.hypot(rms(left, 0, 4800), rms(right, 0, 4800));
    const late = Math.hypot(rms(left, end, end + 2400), rms(right, end, end + 2400));
    expect(toDb(late / early)).toBeLessThan(-50);
  });
});
