import type { Count } from "../../base/index.ts";
import type { Dynamic, Player } from "../../band/index.ts";
import { inScoreOrder, readably } from "../../notation/index.ts";
import {
  spellPitch,
  type Chord,
  type Divisions,
  type Metre,
  type QuartersPerMinute,
} from "../../theory/index.ts";
import { stackOf, type Voicing } from "../../voicing/index.ts";
import type { PartDirection, ScoreBar, ScoreModel, ScoreNote, ScorePart } from "./score-model.ts";
import { scorePart } from "./score-part.ts";

/** A voicing with what is to stand over it. */
export interface ScoredVoicing {
  readonly voicing: Voicing;
  readonly chord: Chord;
  readonly dynamic: Dynamic;
  /** Boxed over the bar: the letter of a kept voicing. */
  readonly rehearsal?: string;
  /** Over the bar, in words: the name of a kept voicing. */
  readonly words?: string;
}

/** How voicings are put into bars. */
export interface VoicingScoreOptions {
  /** "Voicings" unless given. */
  readonly title?: string;
  /** 120 quarter notes a minute unless given. */
  readonly tempo?: QuartersPerMinute;
  /**
   * A whole note, unless given; a short accented hit; or rolled from the bottom, one stack note
   * a sixteenth after the other, all held to the end of the bar.
   */
  readonly manner?: "sustained" | "hit" | "rolled";
  /** Players in line-up order who get a staff although they rest; those who sound unless given. */
  readonly players?: readonly Player[];
}

const FOUR_FOUR: Metre = Object.freeze({ beats: 4, beatType: 4 });
/** Parts of a quarter: a hit is an eighth note, a roll goes in sixteenths. */
const DIVISIONS: Readonly<Record<string, Count>> = { sustained: 1, hit: 2, rolled: 4 };

/**
 * A score of voicings, one bar each, one staff a player in score order. There is no key signature.
 * @param voicings - in the order of the bars
 * @param options - title, tempo, manner
 * @returns the score
 * @throws RangeError without a voicing, or when nobody sounds and no players are given
 */
export function scoreOfVoicings(
  voicings: readonly ScoredVoicing[],
  options: VoicingScoreOptions = {},
): ScoreModel {
  if (voicings.length === 0) throw new RangeError("a score needs at least one voicing, got none");
  const { title = "Voicings", tempo = 120 as QuartersPerMinute, manner = "sustained" } = options;
  const division = DIVISIONS[manner]!;
  const players = inScoreOrder(
    options.players ?? soundingPlayers(voicings),
    ({ section }) => section,
  );
  if (players.length === 0) throw new RangeError("a score needs at least one player, got none");
  const bar = 4 * division;
  const start = (index: Count): Divisions => (index * bar) as Divisions;
  return {
    title,
    division,
    tempo,
    bars: voicings.map((each) => barOver(each, bar)),
    harmonies: voicings.map(({ chord }, index) => ({
      onset: start(index),
      symbol: chord.symbol,
    })),
    repeats: [],
    parts: players.map((player) => partOf(player, voicings, division, manner)),
  };
}

function soundingPlayers(voicings: readonly ScoredVoicing[]): readonly Player[] {
  const byId = new Map<string, Player>();
  for (const { voicing } of voicings)
    for (const { player } of voicing.placements)
      if (!byId.has(player.id)) byId.set(player.id, player);
  return [...byId.values()];
}

function barOver({ rehearsal, words }: ScoredVoicing, length: Count): ScoreBar {
  return {
    length: length as Divisions,
    metre: FOUR_FOUR,
    key: null,
    ...(rehearsal === undefined ? {} : { rehearsal }),
    ...(words === undefined ? {} : { words }),
  };
}

function partOf(
  player: Player,
  voicings: readonly ScoredVoicing[],
  division: Count,
  manner: NonNullable<VoicingScoreOptions["manner"]>,
): ScorePart {
  const notes: ScoreNote[] = [];
  const dynamics: PartDirection[] = [];
  let shown: Dynamic | undefined;
  voicings.forEach((scored, index) => {
    const start = 4 * division * index;
    const note = noteOf(player, scored, start, division, manner);
    if (note === undefined) return;
    notes.push(note);
    const { dynamic } = scored;
    if (dynamic !== shown) dynamics.push({ onset: note.onset, dynamic });
    shown = dynamic;
  });
  return scorePart(player, notes, dynamics);
}

function noteOf(
  player: Player,
  { voicing, chord }: ScoredVoicing,
  start: Count,
  division: Count,
  manner: NonNullable<VoicingScoreOptions["manner"]>,
): ScoreNote | undefined {
  const sounding = voicing.placements.find((each) => each.player.id === player.id)?.sounding;
  if (sounding === undefined) return undefined;
  const pitch = readably(spellPitch(sounding, chord), sounding, chord);
  const bar = 4 * division;
  // A roll of more notes than the bar has sixteenths cannot be: a stack has at most 13 pitches
  // for 13 players, and later ones join the last place.
  const delay = manner === "rolled" ? Math.min(bar - 1, stackOf(voicing).indexOf(sounding)) : 0;
  const duration = manner === "hit" ? division / 2 : bar - delay;
  return {
    onset: (start + delay) as Divisions,
    duration: duration as Divisions,
    pitch,
    ...(manner === "hit" ? { marks: ["marcato"] as const } : {}),
  };
}
