import { describe, expect, it } from "vitest";
import {
  ideaValue,
  isSameStack,
  lessonParts,
  voicingOfTexture,
  type Idea,
  type LessonPart,
  type LessonStep,
  type LessonTexture,
} from "../../src/explore/index.ts";
import {
  brokenRules,
  interleavingOf,
  type CellKey,
  type Question,
} from "../../src/voicing/index.ts";
import { ask, playersOf } from "../voicing/support/questions.ts";
import { texturesOf } from "./support/textures.ts";

const near: CellKey = { span: 33, notes: 6, players: 13 } as CellKey;

/** Twenty questions across chord families, melody roles, loudness and line-ups. */
const asked: readonly (readonly [chord: string, melody: string, lineUp: string])[] = [
  ["F13", "D5", "big-band"],
  ["F13", "D5", "six-horn"],
  ["F13", "D5", "four-horn"],
  ["F13", "D5", "three-horn"],
  ["C7alt", "Bb4", "big-band"],
  ["C7alt", "Ab5", "six-horn"],
  ["Dm7", "F5", "big-band"],
  ["Dm9", "E5", "four-horn"],
  ["Cmaj7", "E5", "big-band"],
  ["Cmaj7", "B4", "school-band"],
  ["Bb6", "G4", "big-band"],
  ["Gm6", "E5", "six-horn"],
  ["Bm7b5", "A4", "big-band"],
  ["Co7", "A4", "big-band"],
  ["G7sus4", "F5", "big-band"],
  ["Eb7#11", "A4", "big-band"],
  ["A7b9", "C#5", "six-horn"],
  ["Ebmaj7", "D5", "school-band"],
  ["Am7", "G4", "four-horn"],
  ["Db7", "F4", "big-band"],
];

function stepOf(parts: readonly LessonPart[], idea: Idea): LessonStep | undefined {
  return parts.find((part): part is LessonStep => part.kind === "step" && part.idea === idea);
}

function pairOf(step: LessonStep): readonly [LessonTexture, LessonTexture] {
  const [less, more] = [step.track[step.left], step.track[step.right]];
  if (less === undefined || more === undefined) throw new Error("the pair is not on its track");
  return [less, more];
}

/** One number for the interlocking of a texture. */
const woven = (texture: LessonTexture) => ideaValue(texture, "interleaving");

describe.each(asked)("a lesson on %s under %s for the %s line-up", (chord, melody, lineUp) => {
  const question: Question = ask(chord, melody, "f", { players: playersOf(lineUp) });
  const parts = lessonParts(texturesOf(question), near);

  it("has a step for each of the four ideas, or says why not", () => {
    expect(parts.map((part) => part.idea)).toEqual(["span", "weight", "density", "interleaving"]);
    for (const part of parts)
      if (part.kind === "gap") expect(part.reason).toMatch(/^No .*\. .*\.$/);
      else expect(part.track.length).toBeGreaterThan(1);
  });

  it("runs each track from little to much, the two voicings on it", () => {
    for (const part of parts) {
      if (part.kind === "gap") continue;
      const values = part.track.map((texture) => ideaValue(texture, part.idea));
      expect(values).toEqual([...new Set(values)].sort((a, b) => a - b));
      expect(part.left).toBeLessThan(part.right);
      expect(part.track.length).toBeLessThanOrEqual(9);
    }
  });

  it("holds notes, players and weight while the span moves", () => {
    const step = stepOf(parts, "span");
    if (step === undefined) return expect(parts[0]?.kind).toBe("gap");
    const [less] = pairOf(step);
    for (const { notes, players, weight } of step.track)
      expect([notes, players, weight]).toEqual([less.notes, less.players, less.weight]);
  });

  it("holds span and notes while players join", () => {
    const step = stepOf(parts, "weight");
    if (step === undefined) return expect(parts[1]?.kind).toBe("gap");
    const [less, more] = pairOf(step);
    expect([more.span, more.notes]).toEqual([less.span, less.notes]);
    expect(more.weight).toBeGreaterThanOrEqual(1.25 * less.weight);
  });

  it("holds span, players and weight while notes are added", () => {
    const step = stepOf(parts, "density");
    if (step === undefined) return expect(parts[2]?.kind).toBe("gap");
    const [less, more] = pairOf(step);
    expect([more.span, more.players, more.weight]).toEqual([less.span, less.players, less.weight]);
    expect(more.notes).toBeGreaterThan(less.notes);
  });

  it("starts interleaving from a voicing by section with as many notes and players", () => {
    const step = stepOf(parts, "interleaving");
    if (step === undefined) return expect(parts[3]?.kind).toBe("gap");
    const [less, more] = pairOf(step);
    expect(interleavingOf(voicingOfTexture(question, less)).value).toBe(0);
    expect([more.span, more.notes, more.players]).toEqual([less.span, less.notes, less.players]);
  });

  it("keeps interlocking as it is where it is not the idea", () => {
    for (const part of parts) {
      if (part.kind === "gap" || part.idea === "interleaving") continue;
      const [less] = pairOf(part);
      for (const texture of part.track)
        expect(Math.abs(woven(texture) - woven(less))).toBeLessThanOrEqual(0.25);
    }
  });

  it("teaches with voicings that break no rule", () => {
    for (const part of parts)
      if (part.kind === "step")
        for (const texture of part.track)
          expect(brokenRules(voicingOfTexture(question, texture), question)).toEqual([]);
  });
});

describe("lessons on the big band", () => {
  // Common practice, no single source: thirteen horns can do each of the four on any usual chord.
  const bigBand = asked.filter(([, , lineUp]) => lineUp === "big-band");

  it.each(bigBand)("have a pair for every idea on %s under %s", (chord, melody) => {
    const parts = lessonParts(texturesOf(ask(chord, melody, "f")), near);
    expect(parts.map((part) => part.kind)).toEqual(["step", "step", "step", "step"]);
  });

  it("move one note, the root from F3 to F2, to show span on F13 under D5", () => {
    const step = stepOf(lessonParts(texturesOf(ask("F13", "D5", "f")), near), "span");
    if (step === undefined) throw new Error("there is no step for span");
    const [less, more] = pairOf(step);
    expect(less.stack.filter((pitch) => !more.stack.includes(pitch))).toEqual([53]);
    expect(more.stack.filter((pitch) => !less.stack.includes(pitch))).toEqual([41]);
  });

  it("show weight on the same notes exactly", () => {
    const step = stepOf(lessonParts(texturesOf(ask("F13", "D5", "f")), near), "weight");
    if (step === undefined) throw new Error("there is no step for weight");
    const [less] = pairOf(step);
    for (const texture of step.track) expect(isSameStack(texture, less)).toBe(true);
  });
});

describe("a lesson for one section", () => {
  it("says that a single section cannot interlock", () => {
    const parts = lessonParts(
      texturesOf(ask("F13", "D5", "f", { players: playersOf("three-horn") })),
      near,
    );
    const part = parts[3];
    expect(part?.kind === "gap" && part.reason).toContain("It takes two sections");
  });
});
