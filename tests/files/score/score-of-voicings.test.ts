import { describe, expect, it } from "vitest";
import { makePlayer } from "../../../src/band/index.ts";
import { checkScore } from "../../../src/files/score/check-score.ts";
import { midiChannels } from "../../../src/files/score/midi-channels.ts";
import { scoreOfVoicings } from "../../../src/files/score/score-of-voicings.ts";
import { holdingAt, placedBars } from "../../../src/files/score/score-times.ts";
import { midiOf, musicXmlOf } from "../../../src/files/score/voicing-files.ts";
import { quantity } from "../../../src/base/index.ts";
import { formatPitch } from "../../../src/theory/index.ts";
import { chordOf, closeB7, shortPhrase, voicingOf, wideF13 } from "../support/scores.ts";

describe("a score of voicings", () => {
  // Metropole Orkest library, score and parts specifications: saxes, trumpets, trombones.
  it("has one staff a player in score order", () => {
    expect(scoreOfVoicings([wideF13]).parts.map(({ id }) => id)).toEqual([
      ..."alto1 alto2 tenor1 tenor2 bari tpt1 tpt2 tpt3 tpt4 tbn1 tbn2 tbn3 btbn".split(" "),
    ]);
  });

  it("gives every voicing its bar, its chord, its letter, and says each dynamic once", () => {
    const score = scoreOfVoicings([wideF13, { ...wideF13, rehearsal: "B" }, closeB7]);
    expect(score.bars.map(({ rehearsal }) => rehearsal)).toEqual(["A", "B", "B"]);
    expect(score.harmonies.map(({ onset, symbol }) => `${onset} ${symbol}`)).toEqual([
      "0 F13",
      "4 F13",
      "8 B7(b9,#9)",
    ]);
    const alto = score.parts.find(({ id }) => id === "alto1")!;
    expect(alto.notes.map(({ onset, duration }) => [onset, duration])).toEqual([
      [0, 4],
      [4, 4],
      [8, 4],
    ]);
    expect(alto.directions).toEqual([
      { onset: 0, dynamic: "f" },
      { onset: 8, dynamic: "mp" },
    ]);
  });

  it("spells notes for the chord, and a tension that is a white key plainly", () => {
    const voicing = voicingOf("tpt1=G5 alto1=Eb5 bari=Ab2");
    const names = (symbol: string) =>
      scoreOfVoicings([{ voicing, chord: chordOf(symbol), dynamic: "f" }]).parts.map(({ notes }) =>
        formatPitch(notes[0]!.pitch),
      );
    expect(names("Abmaj7")).toEqual(["Eb5", "Ab2", "G5"]);
    expect(names("E7#9")).toEqual(["D#5", "G#2", "G5"]);
  });

  it("a hit is short and accented; a roll enters from the bottom and holds", () => {
    const [hit] = scoreOfVoicings([closeB7], { manner: "hit" }).parts;
    expect(hit!.notes[0]).toMatchObject({ duration: 1, marks: ["marcato"] });
    const rolled = scoreOfVoicings([closeB7], { manner: "rolled" });
    const onsets = rolled.parts.map(({ id, notes }) => [id, notes[0]!.onset]);
    expect(onsets).toEqual([
      ["alto1", 2],
      ["tenor1", 1],
      ["tpt1", 3],
      ["tbn1", 0],
    ]);
    for (const { notes } of rolled.parts) expect(notes[0]!.onset + notes[0]!.duration).toBe(16);
  });

  it("gives players who rest a staff when they are asked for", () => {
    const players = [makePlayer({ seat: "tpt1" }), makePlayer({ seat: "tuba1" })];
    const { parts } = scoreOfVoicings([closeB7], { players });
    expect(parts.map(({ id, notes }) => [id, notes.length])).toEqual([
      ["tpt1", 1],
      ["tuba1", 0],
    ]);
  });

  it("says a mute in words", () => {
    const voicing = voicingOf("tpt1=D5");
    const player = makePlayer({ seat: "tpt1", mute: "harmon" });
    const muted = { placements: [{ ...voicing.placements[0]!, player }] };
    const score = scoreOfVoicings([{ voicing: muted, chord: chordOf("F13"), dynamic: "p" }]);
    expect(score.parts[0]!.directions[0]).toEqual({ onset: 0, words: "harmon mute" });
  });

  it("needs a voicing and a player", () => {
    expect(() => scoreOfVoicings([])).toThrow(RangeError);
    const nobody = { voicing: { placements: [] }, chord: chordOf("C"), dynamic: "f" as const };
    expect(() => scoreOfVoicings([nobody])).toThrow(RangeError);
  });

  it("is one call away from its files", () => {
    expect(musicXmlOf([closeB7], { title: "Two & a half" })).toContain("Two &amp; a half");
    expect([...midiOf([closeB7]).subarray(0, 4)]).toEqual([...new TextEncoder().encode("MThd")]);
  });
});

describe("what no score may be", () => {
  const part = shortPhrase.parts[2]!;
  const note = part.notes[0]!;
  it.each([
    ["no bar", { bars: [] }],
    ["no part", { parts: [] }],
    ["a division that is not whole", { division: 0.5 }],
    ["two parts of one id", { parts: [part, part] }],
    ["an id that is no XML name", { parts: [{ ...part, id: "1 alto" }] }],
    [
      "notes that overlap",
      { parts: [{ ...part, notes: [note, { ...note, onset: quantity(20) }] }] },
    ],
    ["notes past the end", { parts: [{ ...part, notes: [{ ...note, onset: quantity(100) }] }] }],
    ["two chords at once", { harmonies: [shortPhrase.harmonies[0]!, shortPhrase.harmonies[0]!] }],
    ["a tempo of nothing", { tempo: quantity(0) }],
  ])("%s", (_, fault) => {
    expect(() => checkScore({ ...shortPhrase, ...fault } as typeof shortPhrase)).toThrow(
      RangeError,
    );
  });
});

describe("bars and channels", () => {
  it("bars are numbered from 1, a pickup is 0", () => {
    expect(placedBars(shortPhrase).map(({ number, start, end }) => [number, start, end])).toEqual([
      [0, 0, 12],
      [1, 12, 60],
      [2, 60, 108],
    ]);
  });

  it("what holds at a time is the last that began", () => {
    expect(holdingAt(shortPhrase.harmonies, quantity(59))?.symbol).toBe("C7(b9)");
    expect(holdingAt(shortPhrase.harmonies, quantity(11))).toBeUndefined();
  });

  // General MIDI Level 1: channel 10 is percussion.
  it("thirteen horns get channels of their own, never 10; twenty players share by programme", () => {
    const thirteen = midiChannels(Array.from({ length: 13 }, (_, index) => index + 1));
    expect(thirteen).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 11, 12, 13, 14]);
    const twenty = midiChannels(Array.from({ length: 20 }, (_, index) => 57 + (index % 3)));
    expect(twenty.slice(0, 4)).toEqual([1, 2, 3, 1]);
  });
});
