import type { Count, Ratio } from "../../base/index.ts";
import { makePlayer, type Dynamic, type Player } from "../../band/index.ts";
import { inScoreOrder } from "../../notation/index.ts";
import {
  dynamicAt,
  type Phrase,
  type PhrasePerformance,
  type PlayerPart,
  type RhythmPart,
} from "../../phrase/index.ts";
import { spellPitch, type Divisions } from "../../theory/index.ts";
import { articulationTable } from "../musicxml/articulation-table.ts";
import { melodyFrame } from "./melody-frame.ts";
import type {
  ArticulationMark,
  PartDirection,
  ScoreModel,
  ScoreNote,
  ScorePart,
  SwingRatio,
} from "./score-model.ts";
import { scorePart } from "./score-part.ts";
import { holdingAt } from "./score-times.ts";

/** What of a phrase is written. */
export interface PhraseScoreOptions {
  /** Another title than the melody's. */
  readonly title?: string;
  /** Only these players; all unless given. */
  readonly playerIds?: readonly string[];
  /** Who of the rhythm section has a staff below the horns; nobody unless given. */
  readonly rhythm?: readonly Exclude<RhythmPart, "drums">[];
}

/** Top to bottom in a score. */
const rhythmOrder = ["piano", "bass"] as const;

/**
 * Who accompanies, as players with a staff of their own.
 * @param part - bass or piano
 * @param others - ids that are taken
 * @returns the player
 */
export function rhythmPlayer(
  part: Exclude<RhythmPart, "drums">,
  others: readonly string[],
): Player {
  return makePlayer({ seat: part, ...(others.includes(part) ? { id: `rhythm-${part}` } : {}) });
}

/**
 * A voiced phrase as a score: one staff a player in score order, chord symbols, dynamics,
 * articulation, tempo, style and swing. Repeats are written out, as they were voiced.
 * @param phrase - the phrase
 * @param performance - its parts, from performPhrase
 * @param options - title, which players, rhythm section
 * @returns the score
 * @throws RangeError when no player is left
 */
export function scoreOfPhrase(
  phrase: Phrase,
  performance: PhrasePerformance,
  options: PhraseScoreOptions = {},
): ScoreModel {
  const { melody, changes } = phrase;
  const { title = melody.title, playerIds, rhythm = [] } = options;
  const wanted = performance.parts.filter(({ player }) => playerIds?.includes(player.id) ?? true);
  const horns = inScoreOrder(wanted, ({ player }) => player.section);
  const below = rhythmOrder.filter((part) => rhythm.includes(part));
  if (horns.length + below.length === 0)
    throw new RangeError("a score needs at least one player, got none");
  const swing = swingOf(performance.feel.ride);
  return {
    ...melodyFrame(melody),
    title,
    ...(swing === undefined ? {} : { swing }),
    harmonies: changes.map(({ onset, chord }) => ({ onset, symbol: chord.symbol })),
    repeats: [],
    parts: [
      ...horns.map((part) => hornPart(part, phrase)),
      ...below.map((part) => rhythmPart(part, phrase, performance)),
    ],
  };
}

function hornPart({ player, notes }: PlayerPart, phrase: Phrase): ScorePart {
  return scorePart(
    player,
    notes.map(({ onset, duration, pitch, marks }): ScoreNote => {
      const own: readonly ArticulationMark[] = articulationTable
        .map(([mark]) => mark)
        .filter((mark) => (marks as readonly ArticulationMark[]).includes(mark));
      return { onset, duration, pitch, ...(own.length > 0 ? { marks: own } : {}) };
    }),
    dynamicsOf(notes, phrase),
  );
}

/** A dynamic stands at the first note that it holds for. */
function dynamicsOf(
  notes: readonly { readonly onset: Divisions }[],
  { dynamics }: Phrase,
): readonly PartDirection[] {
  let shown: Dynamic | undefined;
  return notes.flatMap(({ onset }): PartDirection[] => {
    const dynamic = dynamicAt(dynamics, onset);
    if (dynamic === shown) return [];
    shown = dynamic;
    return [{ onset, dynamic }];
  });
}

/** What bass or piano plays; silent where there is no chord. */
function rhythmPart(
  part: Exclude<RhythmPart, "drums">,
  phrase: Phrase,
  { rhythm }: PhrasePerformance,
): ScorePart {
  const own = rhythm.filter((note) => note.part === part);
  const notes = own.flatMap(({ sound, onset, duration }): ScoreNote[] => {
    const chord = holdingAt(phrase.changes, onset)?.chord;
    if (sound.kind !== "pitched" || chord === undefined) return [];
    const next = own.find((note) => note.onset > onset)?.onset ?? Infinity;
    return [
      {
        onset,
        duration: Math.min(duration, next - onset) as Divisions,
        pitch: spellPitch(sound.sounding, chord),
      },
    ];
  });
  const taken = phrase.players.map(({ id }) => id);
  return scorePart(rhythmPlayer(part, taken), notes);
}

/** The ride's ratio in whole numbers; undefined where eighths are as good as even. */
function swingOf(ratio: Ratio): SwingRatio | undefined {
  const tenths = Math.round(ratio * 10);
  if (tenths <= 10) return undefined;
  const common = greatestCommon(tenths, 10);
  return { first: tenths / common, second: 10 / common };
}

function greatestCommon(a: Count, b: Count): Count {
  return b === 0 ? a : greatestCommon(b, a % b);
}
