import { quantity, type Count } from "../../base/index.ts";
import type { Player } from "../../band/index.ts";
import type { PhraseWork } from "../../explore/index.ts";
import type { ArticulationChoices, NoteChoices } from "../../phrase/index.ts";
import type { PhraseLocks, PhraseQuestion, TextureCurves } from "../../phrase/index.ts";
import type { Divisions, Melody, MelodyNote } from "../../theory/index.ts";
import { allRules } from "../../voicing/index.ts";
import type { ProjectFile } from "./project-schema.ts";

/** What phrases share, made anew once each. */
export interface PhraseParts {
  readonly texts: readonly string[];
  readonly melodies: readonly (Melody | undefined)[];
  readonly curves: readonly TextureCurves[];
  readonly choices: readonly NoteChoices[];
  readonly locks: readonly PhraseLocks[];
  readonly marks: readonly ArticulationChoices[];
}

/**
 * Makes what the phrases of a file share.
 * @param file - its form checked
 * @returns melodies, curves and so on by their rows; undefined for a melody that names notes which
 *   are not there
 */
export function phraseParts(file: ProjectFile): PhraseParts {
  const notes = file.notes.map(noteOf);
  return {
    texts: file.texts,
    melodies: file.melodies.map((row) => melodyOf(row, notes)),
    curves: file.curves.map(({ span, density, weight }) => ({
      span: curveOf(span),
      density: curveOf(density),
      weight: curveOf(weight),
    })),
    // Checked for form, and a choice left out is left out in both.
    choices: file.choices as readonly NoteChoices[],
    locks: file.locks.map(locksOf),
    marks: file.marks,
  };
}

const divisions = (value: number): Divisions => quantity<Divisions>(value);

function noteOf(row: ProjectFile["notes"][number]): MelodyNote {
  const { letter, alteration = 0, octave } = row;
  return {
    id: row.id,
    onset: divisions(row.at),
    duration: divisions(row.for),
    pitch: { letter, alteration, octave },
    isTied: row.tied === true,
    ...(row.tuplet ? { tuplet: { notes: row.tuplet[0], inTimeOf: row.tuplet[1] } } : {}),
  };
}

function melodyOf(
  row: ProjectFile["melodies"][number],
  allNotes: readonly MelodyNote[],
): Melody | undefined {
  const notes = row.notes.flatMap((at) => allNotes[at] ?? []);
  if (notes.length < row.notes.length) return undefined;
  return {
    title: row.title,
    division: row.division,
    metre: { beats: row.metre[0], beatType: row.metre[1] },
    key: {
      tonic: { letter: row.tonic, alteration: row.tonicAlteration ?? 0 },
      mode: row.mode,
    },
    tempo: quantity(row.tempo),
    style: row.style,
    pickup: divisions(row.pickup),
    length: divisions(row.length),
    notes,
    changes: row.changes.map(([onset, text]) => ({ onset: divisions(onset), text })),
    repeats: row.repeats.map(({ from, to, times, endings }) => ({
      fromBar: from,
      toBar: to,
      times,
      ...(endings
        ? {
            endings: endings.map((one) => ({
              fromBar: one.from,
              toBar: one.to,
              passes: one.passes,
            })),
          }
        : {}),
    })),
  };
}

const curveOf = (row: ProjectFile["curves"][number]["span"]): TextureCurves["span"] =>
  row.map(([at, value]) => ({ at: divisions(at), value }));

function locksOf(row: ProjectFile["locks"][number]): PhraseLocks {
  return {
    notes: row.notes.map(([momentId, playerId, at]) => ({
      momentId,
      playerId,
      sounding: at === "rest" ? at : quantity(at),
    })),
    moments: row.moments.map(([momentId, pitches]) => ({
      momentId,
      pitches: pitches as PhraseLocks["moments"][number]["pitches"],
    })),
  };
}

const noChoices: NoteChoices = Object.freeze({});
const noMarks: ArticulationChoices = Object.freeze({});
const noLocks: PhraseLocks = Object.freeze({ notes: [], moments: [] });

/** A row, an empty one where none is named, or undefined where the named one is not there. */
const named = <T>(rows: readonly T[], at: Count | undefined, none: T): T | undefined =>
  at === undefined ? none : rows[at];

/**
 * Makes a phrase again.
 * @param row - its row, checked for form
 * @param parts - what phrases share
 * @param lineUps - players by row
 * @returns the phrase; undefined when it names a row that is not there
 */
export function phraseOf(
  row: ProjectFile["phrases"][number],
  parts: PhraseParts,
  lineUps: readonly (readonly Player[])[],
): PhraseWork | undefined {
  const typed = parts.texts[row.typed];
  const melody = parts.melodies[row.melody];
  const players = lineUps[row.lineUp];
  const curves = parts.curves[row.curves];
  const choices = named(parts.choices, row.choices, noChoices);
  const locks = named(parts.locks, row.locks, noLocks);
  const articulations = named(parts.marks, row.marks, noMarks);
  if (typed === undefined || !melody || !players || !curves) return undefined;
  if (!choices || !locks || !articulations) return undefined;
  const { rulesOff = [], switches = [], turns = [] } = row;
  const question: PhraseQuestion = {
    melody,
    players,
    dynamics: row.dynamics.map(([at, dynamic]) => ({ at: divisions(at), dynamic })),
    colour: row.colour,
    bassSounds: row.bassSounds,
    rules: { ...allRules, ...Object.fromEntries(rulesOff.map((rule) => [rule, false])) },
    strictLowIntervals: switches.includes("strictLowIntervals"),
    clusterSetting: switches.includes("clusterSetting"),
    homes: !switches.includes("homesOff"),
    choices,
    curves,
    turns: turns.map(({ who, from, to, plays }) => ({
      who,
      from: divisions(from),
      to: divisions(to),
      plays,
    })),
    breaths: !switches.includes("noBreaths"),
    locks,
    ...(row.lead === undefined ? {} : { leadPlayer: row.lead }),
  };
  return { typed, question, articulations, alternative: row.alternative };
}
