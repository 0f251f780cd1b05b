import { describe, expect, it } from "vitest";
import {
  isTuttiGuideTones,
  isTuttiOctaveCopy,
  isTuttiWide,
} from "../../../src/voicing/techniques/recognise-tutti.ts";
import { chordOf, pitch, voicingOf } from "./questions.ts";

const chord = chordOf("F13");
const lead = pitch("D5");
const trumpets = "tpt1=D5 tpt2=A4 tpt3=G4 tpt4=Eb4";

describe("recognising a tutti", () => {
  it("A: the trombones' notes an octave under the trumpets'", () => {
    const copy = voicingOf(`${trumpets} tbn1=D4 tbn2=A3 tbn3=G3 btbn=Eb3`);
    expect(isTuttiOctaveCopy(copy, lead)).toBe(true);
    const other = voicingOf(`${trumpets} tbn1=D4 tbn2=A3 tbn3=F3 btbn=Eb3`);
    expect(isTuttiOctaveCopy(other, lead)).toBe(false);
    expect(isTuttiOctaveCopy(voicingOf(trumpets), lead)).toBe(false);
  });

  it("B: trombones on third and seventh under a triad with a tension", () => {
    const triad = "tpt1=D5 tpt2=A4 tpt3=F4 tpt4=D4";
    expect(isTuttiGuideTones(chord, voicingOf(`${triad} tbn1=Eb4 tbn2=A3`), lead)).toBe(true);
    expect(isTuttiGuideTones(chord, voicingOf(`${triad} tbn1=Eb4 tbn2=C4`), lead)).toBe(false);
    expect(isTuttiGuideTones(chord, voicingOf(`${triad} tbn1=Eb4 tbn2=Eb3`), lead)).toBe(false);
    expect(isTuttiGuideTones(chord, voicingOf(`${trumpets} tbn1=Eb4 tbn2=A3`), lead)).toBe(false);
  });

  it("C: a sax on the root, a trombone a fifth above, the others on guide tones", () => {
    const wide = `${trumpets} tbn1=A3 tbn2=Eb3 tbn3=C3 btbn=F2`;
    expect(isTuttiWide(chord, voicingOf(`${wide} bari=F2`))).toBe(true);
    expect(isTuttiWide(chord, voicingOf(wide))).toBe(false);
    expect(isTuttiWide(chord, voicingOf(`${trumpets} tbn1=A3 tbn2=Eb3 bari=F2`))).toBe(false);
    expect(isTuttiWide(chord, { placements: [] })).toBe(false);
  });
});
