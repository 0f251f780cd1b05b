import { describe, expect, it } from "vitest";
import { sharpnessDin45692 } from "../../src/acoustics/sharpness-din45692.ts";
import { harmonics, sine } from "./support/sounds.ts";

describe("sharpness", () => {
  it("rises with the pitch of a tone", () => {
    const values = [250, 1000, 4000].map((hz) => sharpnessDin45692([sine(hz, 60)]));
    expect(values[1]!).toBeGreaterThan(values[0]!);
    expect(values[2]!).toBeGreaterThan(values[1]!);
  });

  it("rises when the same note is played brighter", () => {
    const note = (slope: number) => harmonics(262, 20, (harmonic) => 1000 * harmonic ** -slope);
    expect(sharpnessDin45692(note(0.5))).toBeGreaterThan(sharpnessDin45692(note(2)));
  });

  it("of silence is nothing", () => expect(sharpnessDin45692([])).toBe(0));
});
