import fc from "fast-check";
import { quantity, type SoundingMidi } from "../../../src/base/index.ts";
import { dynamics } from "../../../src/band/index.ts";
import { createHistory, record, type PhraseWork } from "../../../src/explore/index.ts";
import type { Project } from "../../../src/files/index.ts";
import {
  articulationRules,
  demoPhrase,
  type PhraseQuestion,
  type TextureCurves,
} from "../../../src/phrase/index.ts";
import type { Divisions, Melody } from "../../../src/theory/index.ts";
import { allRules, type RuleId } from "../../../src/voicing/index.ts";
import { richInquiry, sampleProject, stateOf } from "./projects.ts";

const at = (value: number): Divisions => quantity<Divisions>(value);
const midi = (value: number): SoundingMidi => quantity<SoundingMidi>(value);

/** A short melody that uses every field. */
const richMelody: Melody = {
  title: "Étude, “two”",
  division: 12,
  metre: { beats: 6, beatType: 8 },
  key: { tonic: { letter: "B", alteration: -1 }, mode: "minor" },
  tempo: quantity(96.5),
  style: "latin",
  pickup: at(6),
  length: at(78),
  notes: [
    note("n1", 0, 6, { letter: "F", alteration: 0, octave: 4 }),
    {
      ...note("n2", 6, 4, { letter: "B", alteration: -1, octave: 4 }),
      tuplet: { notes: 3, inTimeOf: 2 },
    },
    { ...note("n3", 10, 20, { letter: "D", alteration: -1, octave: 5 }), isTied: true },
    note("n4", 30, 6, { letter: "D", alteration: -1, octave: 5 }),
  ],
  changes: [
    { onset: at(6), text: "B♭m9" },
    { onset: at(36), text: " F7(♯9) " },
  ],
  repeats: [
    {
      fromBar: 1,
      toBar: 2,
      times: 2,
      endings: [
        { fromBar: 2, toBar: 2, passes: [1] },
        { fromBar: 2, toBar: 2, passes: [2] },
      ],
    },
  ],
};

function note(
  id: string,
  onset: number,
  duration: number,
  pitch: Melody["notes"][number]["pitch"],
): Melody["notes"][number] {
  return { id, onset: at(onset), duration: at(duration), pitch, isTied: false };
}

const richQuestion: PhraseQuestion = {
  melody: richMelody,
  players: richInquiry.players,
  dynamics: [
    { at: at(0), dynamic: "p" },
    { at: at(30), dynamic: "ff" },
  ],
  colour: "altered",
  bassSounds: false,
  rules: { ...allRules, H4: false },
  strictLowIntervals: true,
  clusterSetting: true,
  homes: false,
  choices: {
    n1: { role: "approach", technique: "diminished", takesComing: true },
    n2: { texture: "octaves", chordText: "E♭7" },
  },
  curves: {
    span: [{ at: at(0), value: 11.25 }],
    density: [
      { at: at(0), value: 4.2 },
      { at: at(30), value: 2 },
    ],
    weight: [{ at: at(0), value: 4 }],
  },
  turns: [{ who: "saxes", from: at(0), to: at(30), plays: false }],
  breaths: false,
  locks: {
    notes: [
      { momentId: "n1", playerId: "tpt1", sounding: midi(65) },
      { momentId: "n3+1", playerId: "alto2", sounding: "rest" },
    ],
    moments: [{ momentId: "n2", pitches: { tpt1: midi(70), tpt2: midi(61) } }],
  },
  leadPlayer: "tpt1",
};

/** A phrase that uses every field. */
export const richPhrase: PhraseWork = {
  typed: "X:1\nK:Bbm\nF2 | …",
  question: richQuestion,
  articulations: { n1: ["accent", "fall"], n4: [] },
  alternative: 2,
};

/** The phrase to start from, as it stands when it is begun. */
export const demoWork: PhraseWork = {
  typed: "",
  question: demoPhrase("shout"),
  articulations: {},
  alternative: 0,
};

/** A project with phrases and moved chairs in its steps. */
export const phraseProject: Project = (() => {
  const first = stateOf(richInquiry, { phrase: demoWork, step: "begin a phrase" });
  const second = stateOf(richInquiry, {
    phrase: richPhrase,
    seats: [{ playerId: "tpt1", pan: -0.35, distanceM: 4.5 }],
    compared: ["A", "C", "B2"],
    step: "melody",
  });
  return { ...sampleProject, history: record(createHistory(first), second) };
})();

const curve = fc
  .array(fc.tuple(fc.nat(5_000), fc.double({ min: 0, max: 60, noNaN: true })), {
    minLength: 1,
    maxLength: 6,
  })
  .map((points) => points.map(([time, value]) => ({ at: at(time), value: value + 0 })));

const curves: fc.Arbitrary<TextureCurves> = fc.record({
  span: curve,
  density: curve,
  weight: curve,
});

const marks = [...new Set(articulationRules.flatMap((rule) => rule.marks))];

/** Phrases as a user may leave them: a phrase to start from with choices, locks, curves and turns. */
export const phraseWorks: fc.Arbitrary<PhraseWork> = fc
  .constantFrom("shout", "ballad" as const)
  .chain((id) => {
    const question = demoPhrase(id as "shout");
    const noteIds = question.melody.notes.map((each) => each.id);
    const playerIds = question.players.map((player) => player.id);
    const anyNote = fc.constantFrom(...noteIds);
    const anyPlayer = fc.constantFrom(...playerIds);
    return fc
      .record({
        typed: fc.string({ unit: "grapheme", maxLength: 60 }),
        curves,
        dynamics: fc.array(
          fc.tuple(fc.nat(999), fc.constantFrom(...dynamics)).map(([time, dynamic]) => ({
            at: at(time),
            dynamic,
          })),
          { maxLength: 3 },
        ),
        rulesOff: fc.subarray(Object.keys(allRules) as RuleId[]),
        breaths: fc.boolean(),
        homes: fc.boolean(),
        locked: fc.array(fc.tuple(anyNote, anyPlayer, fc.integer({ min: 40, max: 90 })), {
          maxLength: 5,
        }),
        held: fc.subarray(noteIds, { maxLength: 3 }),
        chosen: fc.dictionary(
          anyNote,
          fc.record(
            {
              texture: fc.constantFrom("harmony" as const, "unison" as const, "octaves" as const),
              role: fc.constantFrom("target" as const, "approach" as const),
              takesComing: fc.boolean(),
            },
            { requiredKeys: [] },
          ),
          { maxKeys: 4 },
        ),
        articulations: fc.dictionary(anyNote, fc.subarray(marks), { maxKeys: 3 }),
        alternative: fc.nat(4),
        notes: fc.integer({ min: 1, max: noteIds.length }),
      })
      .map(
        ({
          typed,
          articulations,
          alternative,
          locked,
          held,
          chosen,
          rulesOff,
          notes,
          ...rest
        }) => ({
          typed,
          articulations: { ...articulations },
          alternative,
          question: {
            ...question,
            ...rest,
            melody: { ...question.melody, notes: question.melody.notes.slice(0, notes) },
            rules: { ...allRules, ...Object.fromEntries(rulesOff.map((rule) => [rule, false])) },
            choices: { ...chosen },
            locks: {
              notes: locked.map(([momentId, playerId, sounding]) => ({
                momentId,
                playerId,
                sounding: sounding === 40 ? ("rest" as const) : midi(sounding),
              })),
              moments: held.map((momentId) => ({ momentId, pitches: { tpt1: midi(74) } })),
            },
          },
        }),
      );
  });
