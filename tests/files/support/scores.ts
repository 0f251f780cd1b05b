import fc from "fast-check";
import { makePlayer, type Player, type SeatId } from "../../../src/band/index.ts";
import { quantity } from "../../../src/base/index.ts";
import {
  readChord,
  readPitch,
  spelledToMidi,
  type Chord,
  type Divisions,
  type Key,
  type Metre,
  type QuartersPerMinute,
  type SpelledPitch,
} from "../../../src/theory/index.ts";
import type { Voicing } from "../../../src/voicing/index.ts";
import type { ScoreModel, ScoreNote } from "../../../src/files/score/score-model.ts";
import { scorePart } from "../../../src/files/score/score-part.ts";
import { scoreOfVoicings, type ScoredVoicing } from "../../../src/files/score/score-of-voicings.ts";
import type { HeardNote } from "./readers.ts";

/** A pitch by its name. */
export function pitchOf(name: string): SpelledPitch {
  const read = readPitch(name);
  if (!read.ok) throw new Error(read.problem.message);
  return read.value.spelled;
}

/** A chord by its symbol. */
export function chordOf(symbol: string): Chord {
  const read = readChord(symbol);
  if (!read.ok) throw new Error(read.problem.message);
  return read.value;
}

/** A voicing of professional players: "tpt1=D5 bari=F2". */
export function voicingOf(text: string): Voicing {
  return {
    placements: text.split(" ").map((pair) => {
      const [seat = "", name = ""] = pair.split("=");
      const player = makePlayer({ seat: seat as SeatId });
      return { player, sounding: spelledToMidi(pitchOf(name)) };
    }),
  };
}

/** A wide F13, every section in it. */
export const wideF13: ScoredVoicing = {
  voicing: voicingOf(
    "tpt1=D5 tpt2=A4 tpt3=G4 tpt4=Eb4 tbn1=A4 tbn2=G4 tbn3=Eb4 btbn=F2 " +
      "alto1=D5 alto2=A4 tenor1=G4 tenor2=D4 bari=F2",
  ),
  chord: chordOf("F13"),
  dynamic: "f",
  rehearsal: "A",
  words: "wide",
};

/** An altered dominant for four horns, softer. */
export const closeB7: ScoredVoicing = {
  voicing: voicingOf("tpt1=D5 alto1=A4 tenor1=D#4 tbn1=C4"),
  chord: chordOf("B7(b9,#9)"),
  dynamic: "mp",
  rehearsal: "B",
};

const at = (value: number): Divisions => quantity<Divisions>(value);

const note = (onset: number, duration: number, name: string): ScoreNote => ({
  onset: at(onset),
  duration: at(duration),
  pitch: pitchOf(name),
});

/** An original phrase for three horns: pickup, syncopation, triplets, ties, marks, a slur. */
export const shortPhrase: ScoreModel = {
  title: "Short phrase",
  composer: "traditional manner",
  division: 12,
  tempo: 168 as QuartersPerMinute,
  style: "Swing",
  swing: { first: 2, second: 1 },
  bars: [
    { length: at(12), metre: { beats: 4, beatType: 4 }, key: keyOf("E", -1), isPickup: true },
    { length: at(48), metre: { beats: 4, beatType: 4 }, key: keyOf("E", -1), rehearsal: "A" },
    { length: at(48), metre: { beats: 4, beatType: 4 }, key: keyOf("E", -1) },
  ],
  harmonies: [
    { onset: at(12), symbol: "Ebmaj7" },
    { onset: at(36), symbol: "C7(b9)" },
    { onset: at(60), symbol: "Fm9/Bb" },
  ],
  repeats: [{ fromBar: 1, toBar: 2, times: 2 }],
  parts: [
    scorePart(
      makePlayer({ seat: "alto1" }),
      [
        note(0, 6, "Bb4"),
        { ...note(6, 6, "B4"), isSlurredOn: true },
        { ...note(12, 18, "C5"), marks: ["accent"] },
        { ...note(30, 18, "D5"), marks: ["marcato", "fall"] },
        note(48, 4, "Eb5"),
        note(52, 4, "D5"),
        note(56, 10, "Db5"),
        note(72, 36, "C5"),
      ],
      [
        { onset: at(0), dynamic: "mf" },
        { onset: at(60), dynamic: "f" },
      ],
    ),
    scorePart(makePlayer({ seat: "tpt1", mute: "cup" }), [
      note(12, 6, "G5"),
      note(18, 12, "F5"),
      note(30, 6, "G5"),
      note(60, 8, "Ab5"),
      note(68, 8, "G5"),
      note(76, 8, "F5"),
      note(84, 24, "Eb5"),
    ]),
    scorePart(makePlayer({ seat: "bass" }), [
      note(12, 24, "Eb2"),
      note(36, 24, "C2"),
      note(60, 48, "F2"),
    ]),
  ],
};

function keyOf(letter: Key["tonic"]["letter"], alteration: number): Key {
  return { tonic: { letter, alteration }, mode: "major" };
}

/** Scores of every kind, by name. */
export const examples: readonly (readonly [string, ScoreModel])[] = [
  ["kept voicings", scoreOfVoicings([wideF13, closeB7])],
  ["hits", scoreOfVoicings([wideF13, closeB7], { manner: "hit" })],
  ["rolled voicings", scoreOfVoicings([wideF13, closeB7], { manner: "rolled" })],
  ["a phrase", shortPhrase],
];

/** Sounding notes of a score, as the reference readers give them. */
export function notesOf(score: ScoreModel): readonly HeardNote[] {
  const found = score.parts.flatMap(({ id, notes }) =>
    notes.map(({ onset, duration, pitch }): HeardNote => [
      id,
      onset / score.division,
      duration / score.division,
      spelledToMidi(pitch),
    ]),
  );
  const rounded = (value: number): number => Math.round(value * 10_080) / 10_080;
  return found
    .map(([id, onset, duration, midi]): HeardNote => [id, rounded(onset), rounded(duration), midi])
    .sort((a, b) => (a[0] < b[0] ? -1 : a[0] > b[0] ? 1 : a[1] - b[1] || a[3] - b[3]));
}

const seats: readonly SeatId[] = [
  "tpt1",
  "flugel1",
  "tbn1",
  "btbn",
  "alto1",
  "tenor1",
  "bari",
  "sop1",
  "fl1",
  "cl1",
  "bcl1",
  "hn1",
  "tuba1",
  "bass",
];
const symbols = [
  "F13",
  "Bb7(b9)",
  "Ebmaj7",
  "Cm7",
  "Am7(b5)",
  "D7alt",
  "G7sus4",
  "Abmaj9(#11)",
  "C69",
  "F#7",
  "Bdim7",
  "Gb7/Db",
];
const metres: readonly Metre[] = [
  { beats: 4, beatType: 4 },
  { beats: 3, beatType: 4 },
  { beats: 6, beatType: 8 },
  { beats: 2, beatType: 2 },
  { beats: 5, beatType: 4 },
];
const keys: readonly (Key | null)[] = [
  null,
  keyOf("C", 0),
  keyOf("B", -1),
  keyOf("A", -1),
  keyOf("D", 0),
];

/** Steps of a random line: lengths in twelfths of a quarter, or rests. */
const lengths = [3, 4, 6, 8, 9, 12, 18, 24, 36, 48];

const plainSpellings = ["C", "Db", "D", "Eb", "E", "F", "F#", "G", "Ab", "A", "Bb", "B"];

function nameOf(player: Player, share: number): string {
  const { low, high } = player.range;
  const midi = low + Math.floor(share * (high - low));
  return `${plainSpellings[midi % 12]}${Math.floor(midi / 12) - 1}`;
}

/** A line that stays on the grid of eighths, sixteenths and eighth triplets, beat by beat. */
function lineOf(
  player: Player,
  steps: readonly (readonly [number, number, boolean])[],
  end: number,
): ScoreNote[] {
  const notes: ScoreNote[] = [];
  let now = 0;
  for (const [lengthIndex, share, isRest] of steps) {
    const wanted = lengths[lengthIndex]!;
    // A triplet length is taken only where it keeps the line on its grid.
    const fits =
      (now + wanted) % 12 === 0 ||
      (wanted % 4 === 0 && now % 4 === 0 && now % 12 !== 6) ||
      (now % 3 === 0 && wanted % 3 === 0);
    const length = fits ? wanted : 12 - (now % 12);
    if (now + length > end) break;
    if (!isRest) notes.push(note(now, length, nameOf(player, share)));
    now += length;
  }
  return notes;
}

/** Random scores of one to four players, three bars, with or without key, chords and dynamics. */
export const scores: fc.Arbitrary<ScoreModel> = fc
  .record({
    metre: fc.constantFrom(...metres),
    key: fc.constantFrom(...keys),
    players: fc.uniqueArray(fc.constantFrom(...seats), { minLength: 1, maxLength: 4 }),
    lines: fc.array(
      fc.array(
        fc.tuple(
          fc.nat(lengths.length - 1),
          fc.double({ min: 0, max: 1, noNaN: true }),
          fc.boolean(),
        ),
        {
          minLength: 1,
          maxLength: 16,
        },
      ),
      { minLength: 4, maxLength: 4 },
    ),
    chords: fc.array(fc.constantFrom(...symbols), { minLength: 3, maxLength: 3 }),
    tempo: fc.integer({ min: 40, max: 300 }),
  })
  .map(({ metre, key, players, lines, chords, tempo }) => {
    const length = (metre.beats * 48) / metre.beatType;
    return {
      title: "Random",
      division: 12,
      tempo: tempo as QuartersPerMinute,
      bars: chords.map(() => ({ length: at(length), metre, key })),
      harmonies: chords.map((symbol, index) => ({
        onset: at(length * index),
        symbol: chordOf(symbol).symbol,
      })),
      repeats: [],
      parts: players.map((seat, index) => {
        const player = makePlayer({ seat });
        const dynamic = { onset: at(0), dynamic: "mf" } as const;
        return scorePart(player, lineOf(player, lines[index]!, 3 * length), [dynamic]);
      }),
    };
  });
