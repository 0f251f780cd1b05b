import { describe, expect, it } from "vitest";
import { pitchClass, type SoundingMidi } from "../../src/base/index.ts";
import { scaleOf, spelledToMidi, tickedTones, type Chord } from "../../src/theory/index.ts";
import { closeVoicing, doubleLead, dropVoices } from "../../src/voicing/index.ts";
import { approachChord } from "../../src/phrase/approach-chord.ts";
import type { ApproachTechnique, NoteChoices } from "../../src/phrase/harmony-types.ts";
import { harmonise } from "../../src/phrase/harmonise.ts";
import { noteKind } from "../../src/phrase/note-kind.ts";
import { chordOf, melodyOf, read, spelled } from "../phrase/support/phrases.ts";

// Approach harmony of published sources, note for note.
// A1 to A5: chords from the tests of elm-music-theory (commit cbf09f1), adapted there from G. Lindsay,
// Jazz Arranging Techniques (2005); techniques named in T. Pease & K. Pullig, Modern Jazz Voicings.
// The four-way close notes follow from Lindsay's rule (ch. 10).

const midi = (text: string): readonly number[] =>
  text.split(" ").map((name) => spelledToMidi(spelled(name)));

const close = (chord: Chord, lead: SoundingMidi): readonly SoundingMidi[] => {
  const found = closeVoicing(chord, lead, { ticked: tickedTones(chord, "plain") });
  if (!found) throw new Error(`${chord.symbol} has no close voicing`);
  return found;
};

/** Melody over C6 in C major with a technique by hand on some notes; chords and close voicings. */
function voiced(melodyText: string, techniques: Readonly<Record<string, ApproachTechnique>>) {
  const melody = melodyOf(melodyText);
  const choices: NoteChoices = Object.fromEntries(
    Object.entries(techniques).map(([id, technique]) => [id, { role: "approach", technique }]),
  );
  const found = harmonise(melody, read(melody), choices);
  if (!found.ok) throw new Error(found.problems[0]?.message);
  return found.value.map(({ chord, note }) => ({
    chord: chord.symbol,
    notes: close(chord, note.sounding),
  }));
}

describe("approach chords of elm-music-theory after Lindsay", () => {
  const line = "E4:1/2@C6 D4:1/2 C4:3";
  const target = { chord: "C6", notes: midi("E3 G3 A3 C4") };

  it("gives A1: D into C by diatonic approach is Dm7", () =>
    expect(voiced(line, { n2: "diatonic" }).slice(1)).toEqual([
      { chord: "Dm7", notes: midi("F3 A3 C4 D4") },
      target,
    ]));

  it("gives A2: by diminished approach Ddim7", () =>
    expect(voiced(line, { n2: "diminished" }).slice(1)).toEqual([
      { chord: "Ddim7", notes: midi("F3 Ab3 B3 D4") },
      target,
    ]));

  it("gives A3: by dominant approach G7", () =>
    expect(voiced(line, { n2: "dominant" }).slice(1)).toEqual([
      { chord: "G7", notes: midi("F3 G3 B3 D4") },
      target,
    ]));

  it("gives A4 and A5: C D D# E by parallel approach solved backwards, Bb6 and B6 into C6", () =>
    expect(voiced("C4:1/2@C6 D4:1/2 D#4:1/2 E4:5/2", { n2: "parallel", n3: "parallel" })).toEqual([
      { chord: "C6", notes: midi("E3 G3 A3 C4") },
      { chord: "Bb6", notes: midi("F3 G3 Bb3 D4") },
      { chord: "B6", notes: midi("F#3 G#3 B3 D#4") },
      { chord: "C6", notes: midi("G3 A3 C4 E4") },
    ]));

  it("moves every voice of A5 up a semitone into the target", () => {
    const [, , before, after] = voiced("C4:1/2@C6 D4:1/2 D#4:1/2 E4:5/2", {
      n2: "parallel",
      n3: "chromatic",
    });
    expect(after?.notes.map((note, voice) => note - (before?.notes[voice] ?? 0))).toEqual([
      1, 1, 1, 1,
    ]);
  });

  it("sorts notes over C in C major as A7: E chord tone, D of the scale, Db of neither", () => {
    const kind = (name: string) =>
      noteKind(spelledToMidi(spelled(name)), chordOf("C"), {
        tonic: { letter: "C", alteration: 0 },
        mode: "major",
      });
    expect(kind("E4")).toBe("chord-tone");
    // A note of the scale and no chord tone; as a ninth it may be added, which this sorting tells too.
    expect(kind("D4")).toBe("tension");
    expect(scaleOf({ tonic: { letter: "C", alteration: 0 }, mode: "major" })).toContain(2);
    expect(kind("Db4")).toBe("outside");
  });
});

describe("the sixth-diminished ladder (thejazzpianosite.com; music.stackexchange 29301 after M. Levine, The Jazz Piano Book)", () => {
  // W30 W32 W34 W36 are the diminished chord on notes outside C6; the others are C6 itself (A6).
  const rows: readonly (readonly [id: string, lead: string, notes: string])[] = [
    ["W29", "C5", "E4 G4 A4 C5"],
    ["W30", "D5", "F4 Ab4 B4 D5"],
    ["W31", "E5", "G4 A4 C5 E5"],
    ["W32", "F5", "Ab4 B4 D5 F5"],
    ["W33", "G5", "A4 C5 E5 G5"],
    ["W34", "Ab5", "B4 D5 F5 Ab5"],
    ["W35", "A5", "C5 E5 G5 A5"],
    ["W36", "B5", "D5 F5 Ab5 B5"],
  ];
  const key = { tonic: { letter: "C", alteration: 0 }, mode: "major" } as const;
  const c6 = chordOf("C6");

  /** Any note of the ladder: chord tones have C6, the others a diminished chord into the next. */
  function rung(lead: string): readonly SoundingMidi[] {
    const pitch = spelled(lead);
    const sounding = spelledToMidi(pitch);
    if (noteKind(sounding, c6, key) === "chord-tone") return close(c6, sounding);
    const approach = { from: pitch, into: spelled("C6"), target: c6, key };
    const chord = approachChord("diminished", approach);
    if (!chord.ok) throw new Error(chord.problem.message);
    return close(chord.value, sounding);
  }

  it.each(rows)("gives %s under %s", (_id, lead, notes) => expect(rung(lead)).toEqual(midi(notes)));

  it("gives W37, the lead doubled an octave below", () =>
    expect(doubleLead(rung("C5"))).toEqual(midi("C4 E4 G4 A4 C5")));

  it("gives W38 and W39, drop 2 of W30 and W33", () => {
    expect(dropVoices(rung("D5"), [2])).toEqual(midi("B3 F4 Ab4 D5"));
    expect(dropVoices(rung("G5"), [2])).toEqual(midi("E4 A4 C5 G5"));
  });

  it("takes one diminished chord for all four outside notes (A6), named after one of them", () => {
    const sets = ["D5", "F5", "Ab5", "B5"].map((lead) =>
      rung(lead)
        .map((note) => pitchClass(note))
        .sort((a, b) => a - b),
    );
    for (const set of sets) expect(set).toEqual([2, 5, 8, 11]);
  });

  it("is chosen automatically for short outside notes that come to rest on C6", () => {
    const melody = melodyOf("C5:1/2@C6 D5:1/2 E5:1/2 F5:1/2 G5:1/2 Ab5:1/2 A5:1/2 B5:1/2 | C6:4");
    const found = harmonise(melody, read(melody), {});
    if (!found.ok) throw new Error("must be fine");
    const notes = found.value.map(({ chord, note }) => close(chord, note.sounding));
    // Ab steps into A by a semitone from outside the key: there the whole chord slides instead.
    const ladder = rows.map(([, , text]) => midi(text));
    expect(notes.slice(0, 5)).toEqual(ladder.slice(0, 5));
    expect(notes.slice(6, 8)).toEqual(ladder.slice(6, 8));
    expect(found.value[5]?.technique).toBe("chromatic");
  });

  it("holds that Ddim7 is G7(b9) without its root (A8; music.stackexchange 29301)", () => {
    const classes = (symbol: string) =>
      chordOf(symbol)
        .tones.filter(({ kind }) => kind === "stated" || kind === "implied")
        .map((tone) => tone.pitchClass)
        .sort((a, b) => a - b);
    expect(classes("Ddim7")).toEqual([2, 5, 8, 11]);
    expect(classes("G7(b9)").filter((tone) => tone !== 7)).toEqual([2, 5, 8, 11]);
  });
});
