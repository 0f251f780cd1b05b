import { describe, expect, it } from "vitest";
import type { NoteChoices } from "../../src/phrase/harmony-types.ts";
import { harmonise } from "../../src/phrase/harmonise.ts";
import { melodyOf, read, type Head } from "./support/phrases.ts";

function harmonised(text: string, choices: NoteChoices = {}, head: Head = {}) {
  const melody = melodyOf(text, head);
  return harmonise(melody, read(melody), choices);
}

function roles(text: string, choices: NoteChoices = {}, head: Head = {}): readonly string[] {
  const found = harmonised(text, choices, head);
  if (!found.ok) throw new Error(found.problems[0]?.message);
  return found.value.map(({ role, chord }) => `${role} ${chord.symbol}`);
}

describe("targets and approach notes (T. Pease & K. Pullig, Modern Jazz Voicings)", () => {
  it("give chord tones chord sound, short ones as well", () =>
    expect(roles("C5:1/2@C6 E5:1/2 G5:3")).toEqual(["target C6", "target C6", "target C6"]));

  it("take a short note outside the chord that steps on for an approach note", () =>
    expect(roles("E5:1/2@C6 F5:1/2 G5:3")).toEqual(["target C6", "approach Bdim7", "target C6"]));

  it("take a long note outside the chord for a target", () =>
    expect(roles("F5:2@C6 G5:2")).toEqual(["target C6", "target C6"]));

  it("take a note that leaps on, or before a rest, for a target", () => {
    expect(roles("E5:1/2@C6 F5:1/2 C5:3")[1]).toBe("target C6");
    expect(roles("E5:1/2@C6 F5:1/2 r:1 G5:2")[1]).toBe("target C6");
  });

  it("never give the last note an approach chord (value from memory)", () =>
    expect(roles("E5:7/2@C6 F5:1/2").at(-1)).toBe("target C6"));

  it("take a tension on the beat for a target and off the beat for an approach note", () => {
    expect(roles("D5:1/2@Cmaj7 C5:1/2 r:3")[0]).toBe("target Cmaj7");
    expect(roles("G5:1/2@Cmaj7 D5:1/2 C5:3")[1]).toMatch(/^approach/);
  });

  it("solve a double approach backwards from its target", () => {
    const found = harmonised("C5:1/2@C6 D5:1/2 D#5:1/2 E5:5/2", {
      n2: { technique: "parallel" },
      n3: { technique: "chromatic" },
    });
    if (!found.ok) throw new Error("must be fine");
    expect(found.value.map(({ chord }) => chord.symbol)).toEqual(["C6", "Bb6", "B6", "C6"]);
  });

  it("leave off at three in a row", () => {
    const found = roles("C#5:1/2@C D5:1/2 C#5:1/2 D5:1/2 C#5:1/2 D5:1/2 C#5:1/2 C5:1/2");
    const inRow = found.map((role) => (role.startsWith("approach") ? "a" : "t")).join("");
    expect(inRow).not.toContain("aaaa");
    expect(inRow).toContain("aaa");
  });
});

describe("choices by hand", () => {
  it("win over the automatic ones", () => {
    const text = "E5:1/2@C6 F5:1/2 G5:3";
    expect(roles(text, { n2: { role: "target" } })[1]).toBe("target C6");
    expect(roles(text, { n2: { technique: "dominant" } })[1]).toBe("approach G7");
    expect(roles(text, { n2: { chordText: "Db7" } })[1]).toBe("target Db7");
  });

  it("can hold an anticipation back or ask for one", () => {
    const text = "C5:7/2@C6 A4:1/2~ | A4:4@F6";
    expect(roles(text)[1]).toBe("target F6");
    expect(roles(text, { n2: { takesComing: false } })[1]).toBe("target C6");
    expect(roles("C5:4@C6 | A4:4@F6", { n1: { takesComing: true } })[0]).toBe("target F6");
  });

  it("that are not possible are told with their bar, all at once", () => {
    const found = harmonised("D5:2@C6 E5:2 | F5:4", {
      n1: { technique: "chromatic" },
      n2: { chordText: "Hx" },
      n3: { role: "approach" },
    });
    if (found.ok) throw new Error("must be refused");
    expect(found.problems.map(({ code }) => code).sort()).toEqual([
      "approach-last",
      "approach-not-semitone",
      "choice-chord",
    ]);
    expect(found.problems.find(({ code }) => code === "approach-last")?.message).toBe(
      "Bar 2, beat 1: the last note has nothing to approach; it takes the chord itself.",
    );
  });

  it("make lines where asked", () => {
    const found = harmonised("C5:2@C6 D5:2", { n1: { texture: "unison" } });
    if (!found.ok) throw new Error("must be fine");
    expect(found.value.map(({ texture }) => texture)).toEqual(["unison", "harmony"]);
  });
});

it("plays octaves where the song has no chord", () => {
  const found = harmonised("C5:4 | D5:4");
  if (!found.ok) throw new Error("must be fine");
  expect(found.value.map(({ texture }) => texture)).toEqual(["octaves", "octaves"]);
});

it("says of each note why it has its chord", () => {
  const found = harmonised("E5:1/2@C6 F5:1/2 G5:3");
  if (!found.ok) throw new Error("must be fine");
  expect(found.value.map(({ reason }) => reason)).toEqual([
    "E is the 3 of C6.",
    "F is short and steps into G: a note that comes to rest on the chord after it, so diminished.",
    "G is the 5 of C6.",
  ]);
});
