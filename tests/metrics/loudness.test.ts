import { describe, expect, it } from "vitest";
import { loudness } from "../../src/metrics/loudness.ts";
import { read } from "./situations.ts";

describe("loudness", () => {
  it("rises with the dynamic and with every player", () => {
    const soft = read(loudness, "tpt1=D5 alto1=A4", "p").value ?? 0;
    const loud = read(loudness, "tpt1=D5 alto1=A4", "f").value ?? 0;
    const more = read(loudness, "tpt1=D5 alto1=A4 tbn1=Eb4", "f").value ?? 0;
    expect(loud).toBeGreaterThan(1.3 * soft);
    expect(more).toBeGreaterThan(loud);
  });

  it("gives four trumpets on a note far less than four times one (doubling law, +6 dB)", () => {
    const one = read(loudness, "tpt1=G4").value ?? 0;
    const four = read(loudness, "tpt1=G4 tpt2=G4 tpt3=G4 tpt4=G4").value ?? 0;
    expect(four / one).toBeGreaterThan(1.25);
    expect(four / one).toBeLessThan(2);
  });

  it("says the level of an equally loud 1 kHz tone", () => {
    expect(read(loudness, "tpt1=G4").detail).toMatch(/^As loud as a 1 kHz tone at \d+ dB\.$/);
  });
});
