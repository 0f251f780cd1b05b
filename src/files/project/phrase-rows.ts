import type * as z from "zod/mini";
import type { Count } from "../../base/index.ts";
import type { Player } from "../../band/index.ts";
import type { PhraseWork } from "../../explore/index.ts";
import type { ArticulationChoices, PhraseLocks, TextureCurves } from "../../phrase/index.ts";
import type { NoteChoices } from "../../phrase/index.ts";
import type { Melody, MelodyNote, Repeat } from "../../theory/index.ts";
import { allRules, type RuleId } from "../../voicing/index.ts";
import type * as schema from "./phrase-schema.ts";
import { Table } from "./table.ts";

type SavedMelody = z.infer<typeof schema.savedMelody>;
type SavedPhrase = z.infer<typeof schema.savedPhrase>;
type SavedNote = z.infer<typeof schema.savedNote>;

/** What the phrases of all steps share. Rows of notes are shared between melodies too. */
export class PhraseTables {
  readonly texts = new Table((typed: string) => typed);
  readonly notes = new Table(noteRow);
  readonly melodies = new Table((melody: Melody) => melodyRow(melody, this));
  readonly curves = new Table(curvesRow);
  readonly choices = new Table((choices: NoteChoices) => structuredClone(choices));
  readonly locks = new Table(locksRow);
  readonly marks = new Table(marksRow);
  readonly phrases: Table<PhraseWork, SavedPhrase>;

  /**
   * Empty tables.
   * @param lineUpRow - where a line-up is entered
   */
  constructor(lineUpRow: (players: readonly Player[]) => Count) {
    this.phrases = new Table((work: PhraseWork) => phraseRow(work, this, lineUpRow));
  }
}

function noteRow(note: MelodyNote): SavedNote {
  const { id, onset, duration, pitch, isTied, tuplet } = note;
  return {
    id,
    at: onset,
    for: duration,
    letter: pitch.letter,
    ...(pitch.alteration === 0 ? {} : { alteration: pitch.alteration }),
    octave: pitch.octave,
    ...(isTied ? { tied: true as const } : {}),
    ...(tuplet ? { tuplet: [tuplet.notes, tuplet.inTimeOf] as [number, number] } : {}),
  };
}

function melodyRow(melody: Melody, tables: PhraseTables): SavedMelody {
  const { title, division, metre, key, tempo, style, pickup, length } = melody;
  return {
    title,
    division,
    metre: [metre.beats, metre.beatType] as SavedMelody["metre"],
    tonic: key.tonic.letter,
    ...(key.tonic.alteration === 0 ? {} : { tonicAlteration: key.tonic.alteration }),
    mode: key.mode,
    tempo,
    style,
    pickup,
    length,
    notes: melody.notes.map((note) => tables.notes.indexOf(note)),
    changes: melody.changes.map(({ onset, text }) => [onset, text]),
    repeats: melody.repeats.map(repeatRow),
  };
}

function repeatRow({ fromBar, toBar, times, endings }: Repeat): SavedMelody["repeats"][number] {
  return {
    from: fromBar,
    to: toBar,
    times,
    ...(endings
      ? {
          endings: endings.map((one) => ({
            from: one.fromBar,
            to: one.toBar,
            passes: [...one.passes],
          })),
        }
      : {}),
  };
}

function curvesRow({ span, density, weight }: TextureCurves): z.infer<typeof schema.savedCurves> {
  const row = (curve: TextureCurves["span"]): [number, number][] =>
    curve.map(({ at, value }) => [at, value]);
  return { span: row(span), density: row(density), weight: row(weight) };
}

function locksRow({ notes, moments }: PhraseLocks): z.infer<typeof schema.savedLocks> {
  return {
    notes: notes.map(({ momentId, playerId, sounding }) => [momentId, playerId, sounding]),
    moments: moments.map(({ momentId, pitches }) => [momentId, { ...pitches }]),
  };
}

const marksRow = (marks: ArticulationChoices): z.infer<typeof schema.savedMarks> =>
  Object.fromEntries(Object.entries(marks).map(([id, each]) => [id, [...each]]));

function phraseRow(
  work: PhraseWork,
  tables: PhraseTables,
  lineUpRow: (players: readonly Player[]) => Count,
): SavedPhrase {
  const { typed, question, articulations, alternative } = work;
  const { choices, locks, rules, turns, leadPlayer } = question;
  const off = (Object.keys(allRules) as RuleId[]).filter((rule) => !rules[rule]);
  const switches = [
    ...(question.strictLowIntervals ? ["strictLowIntervals" as const] : []),
    ...(question.clusterSetting ? ["clusterSetting" as const] : []),
    ...(question.homes ? [] : ["homesOff" as const]),
    ...(question.breaths ? [] : ["noBreaths" as const]),
  ];
  const isLocked = locks.notes.length + locks.moments.length > 0;
  return {
    typed: tables.texts.indexOf(typed),
    melody: tables.melodies.indexOf(question.melody),
    lineUp: lineUpRow(question.players),
    curves: tables.curves.indexOf(question.curves),
    ...(isEmpty(choices) ? {} : { choices: tables.choices.indexOf(choices) }),
    ...(isLocked ? { locks: tables.locks.indexOf(locks) } : {}),
    ...(isEmpty(articulations) ? {} : { marks: tables.marks.indexOf(articulations) }),
    dynamics: question.dynamics.map(({ at, dynamic }) => [at, dynamic]),
    colour: question.colour,
    bassSounds: question.bassSounds,
    ...(off.length > 0 ? { rulesOff: off } : {}),
    ...(switches.length > 0 ? { switches } : {}),
    ...(turns.length > 0 ? { turns: turns.map((turn) => ({ ...turn })) } : {}),
    ...(leadPlayer === undefined ? {} : { lead: leadPlayer }),
    alternative,
  };
}

const isEmpty = (entries: object): boolean => Object.keys(entries).length === 0;
