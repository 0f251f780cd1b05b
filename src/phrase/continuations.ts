import { quantity, type Count, type Semitones, type SoundingMidi } from "../base/index.ts";
import type { Dynamic, Player } from "../band/index.ts";
import type { Colour, Divisions, Melody, MelodyNote, SpelledPitch } from "../theory/index.ts";
import type { RuleSettings } from "../voicing/index.ts";
import { continuationRows, stepSeconds, type ContinuationRow } from "./continuation-table.ts";
import { densityOf, type Texture } from "./curves.ts";
import { lineCheckLimits } from "./line-check-table.ts";
import { moveTerms, type PitchOrRest, type Speed } from "./move-cost.ts";
import type { AskedMoment, NoteLock, Phrase, PhraseQuestion } from "./phrase-types.ts";
import { linesCost, stepBetween } from "./search-phrase.ts";
import { stageOf, type StageSize } from "./stages.ts";

/** A chord as typed with its melody note. */
export interface StepChord {
  readonly chordText: string;
  readonly lead: SpelledPitch;
}

/** A voicing and the chord that it moves into or comes from. */
export interface StepRequest {
  readonly held: StepChord;
  /** The voicing that is held: player id → sounding pitch; who is not named rests. */
  readonly pitches: Readonly<Record<string, SoundingMidi>>;
  readonly other: StepChord;
  /** Whether the other chord comes after the held voicing or before it. */
  readonly isOtherAfter: boolean;
  readonly speed: Speed;
  readonly players: readonly Player[];
  readonly dynamic: Dynamic;
  readonly colour: Colour;
  readonly bassSounds: boolean;
  readonly rules: RuleSettings;
  readonly strictLowIntervals: boolean;
  readonly clusterSetting: boolean;
  readonly homes: boolean;
  /** Players who rest under the other chord as well. */
  readonly resting: readonly string[];
  readonly leadPlayer?: string;
}

/** A voicing that a held one moves into or comes from. */
export interface Continuation {
  readonly id: ContinuationRow["id"];
  readonly label: string;
  /** Sounding pitch of each player in the line-up's order, 0 for rest. */
  readonly pitches: readonly number[];
  readonly span: Semitones;
  readonly notes: Count;
  readonly players: Count;
  readonly cost: {
    /** Over the best voicing of its own texture. */
    readonly voicing: Count;
    /** A section's first chair overtaken by its own section. */
    readonly chairs: Count;
    /** All players' moves. */
    readonly lines: Count;
  };
  /** Players whose move is awkward, and why in words. */
  readonly awkward: readonly AwkwardMove[];
}

/** A move that a player would rather not make. */
export interface AwkwardMove {
  readonly playerId: string;
  /** "slide from position 1 to 6, leaps 9 semitones" */
  readonly text: string;
}

/** Length of the notes in quarters: half notes are no short ones; fast, a half would be no tempo. */
const quarters: Readonly<Record<Speed, Count>> = { slow: 2, medium: 2, fast: 1 };
const ids = { held: "held", other: "other" };

/**
 * A step as a phrase of two notes of which one is held, so that the rules of phrases hold.
 * @param request - the voicing, the other chord, the band and the rules
 * @returns the question, for `readPhrase`
 */
export function stepQuestion(request: StepRequest): PhraseQuestion {
  const { players, pitches, dynamic, resting, leadPlayer } = request;
  const start = quantity<Divisions>(0);
  const texture = textureOf(Object.values(pitches));
  const rests = resting.map((playerId): NoteLock => ({
    momentId: ids.other,
    playerId,
    sounding: "rest",
  }));
  return {
    melody: melodyOf(request),
    players,
    dynamics: [{ at: start, dynamic }],
    colour: request.colour,
    bassSounds: request.bassSounds,
    rules: request.rules,
    strictLowIntervals: request.strictLowIntervals,
    clusterSetting: request.clusterSetting,
    homes: request.homes,
    choices: {
      [ids.held]: { role: "target", takesComing: false, texture: "harmony" },
      [ids.other]: { role: "target", takesComing: false, texture: "harmony" },
    },
    curves: {
      span: [{ at: start, value: texture.span }],
      density: [{ at: start, value: texture.density }],
      weight: [{ at: start, value: texture.weight }],
    },
    turns: [],
    breaths: false,
    locks: { notes: rests, moments: [{ momentId: ids.held, pitches }] },
    ...(leadPlayer === undefined ? {} : { leadPlayer }),
  };
}

function textureOf(pitches: readonly number[]): Texture {
  const stack = [...new Set(pitches)].sort((a, b) => a - b);
  const span = (stack.at(-1) ?? 0) - (stack[0] ?? 0);
  return { span, density: densityOf(stack.length, span), weight: pitches.length };
}

function melodyOf({ held, other, isOtherAfter, speed }: StepRequest): Melody {
  const order = isOtherAfter
    ? ([
        [ids.held, held],
        [ids.other, other],
      ] as const)
    : ([
        [ids.other, other],
        [ids.held, held],
      ] as const);
  const length = quarters[speed];
  const onset = (index: Count): Divisions => quantity<Divisions>(length * index);
  return {
    title: "",
    division: 1,
    metre: { beats: 4, beatType: 4 },
    key: { tonic: { letter: "C", alteration: 0 }, mode: "major" },
    tempo: quantity((length * 60) / stepSeconds[speed]),
    style: "straight",
    pickup: quantity<Divisions>(0),
    length: quantity<Divisions>(2 * length),
    notes: order.map(([id, { lead }], index): MelodyNote => ({
      id,
      onset: onset(index),
      duration: quantity<Divisions>(length),
      pitch: lead,
      isTied: false,
    })),
    changes: order.map(([, { chordText }], index) => ({ onset: onset(index), text: chordText })),
    repeats: [],
  };
}

/** What each wish is chosen from. Judgement: as many as keep the answer within a blink. */
const size: StageSize = { rows: 240, cells: 6, stacksInCell: 4, assignmentsOfStack: 10 };

/** A voicing of the other chord with what it costs. */
interface Candidate extends Omit<Continuation, "id" | "label" | "awkward"> {
  readonly texture: Count;
}

/**
 * Finds what a held voicing moves into, or comes from: the smoothest lines there are, and the best of
 * several textures.
 * @param phrase - a question of `stepQuestion` that `readPhrase` has worked out
 * @returns at least one, each another voicing, the smoothest first
 * @throws RangeError when the phrase is not of two moments of which one is held
 */
export function continuations(phrase: Phrase): readonly Continuation[] {
  const held = phrase.moments.find((one) => one.held !== undefined);
  const free = phrase.moments.find((one) => one.held === undefined);
  if (phrase.moments.length !== 2 || held?.held === undefined || free === undefined)
    throw new RangeError("a step needs two moments of which one is held");
  const texture = textureOf(held.held.filter((pitch) => pitch > 0));
  const pools = continuationRows.flatMap(({ factors }) =>
    factors === null ? [] : [poolOf(phrase, held, free, bent(texture, factors, free))],
  );
  let next = 0;
  const best = continuationRows.map(({ id, label, factors }) => {
    const smoothest = factors === null;
    const pool = smoothest ? pools.flat() : (pools[next++] ?? []);
    const found = pool.reduce((least, one) =>
      isBefore(one, least, smoothest ? smoothCost : wishCost) ? one : least,
    );
    const { pitches, span, notes, players, cost } = found;
    const awkward = awkwardMoves(phrase, held, free, pitches);
    return { id, label, pitches, span, notes, players, cost, awkward };
  });
  return oneEach(best);
}

/** A wish that a voicing before it answers as well is left out, or said beside it when it is so. */
function oneEach(found: readonly Continuation[]): readonly Continuation[] {
  const byPitches = new Map<string, Continuation>();
  for (const one of found) {
    const key = one.pitches.join();
    const before = byPitches.get(key);
    if (before === undefined) byPitches.set(key, one);
    else if (one.id === "same")
      byPitches.set(key, { ...before, label: `${before.label}, ${one.label.toLowerCase()}` });
  }
  return [...byPitches.values()];
}

const smoothCost = ({ cost }: Candidate): Count => 2 * cost.lines + cost.chairs + cost.voicing;
const wishCost = ({ cost, texture }: Candidate): Count =>
  cost.lines + cost.chairs + cost.voicing + texture;

/** Whether one comes before another: by cost, then by pitches from the first chair on. */
function isBefore(one: Candidate, other: Candidate, costOf: (each: Candidate) => Count): boolean {
  const by = costOf(one) - costOf(other);
  if (by !== 0) return by < 0;
  const at = one.pitches.findIndex((pitch, index) => pitch !== other.pitches[index]);
  return at >= 0 && one.pitches[at]! < other.pitches[at]!;
}

function bent(
  texture: Texture,
  factors: NonNullable<ContinuationRow["factors"]>,
  { question }: AskedMoment,
): Texture {
  const resting = question.locks.filter(({ sounding }) => sounding === "rest").length;
  const most = Math.max(1, question.players.length - resting);
  return {
    span: texture.span * factors.span,
    density: texture.density * factors.density,
    weight: Math.min(most, Math.max(1, texture.weight * factors.weight)),
  };
}

function awkwardMoves(
  phrase: Phrase,
  held: AskedMoment,
  free: AskedMoment,
  pitches: readonly number[],
): readonly AwkwardMove[] {
  const { before, after, step } = stepOf(phrase, held, free);
  const at = (moment: AskedMoment, index: Count): PitchOrRest =>
    ((moment === held ? held.held : pitches)?.[index] ?? 0) as PitchOrRest;
  return phrase.players.flatMap((player, index) => {
    const terms = moveTerms(player, at(before, index), at(after, index), step.situation);
    const cost = terms.reduce((sum, { value }) => sum + value, 0);
    if (cost < lineCheckLimits.awkwardMove) return [];
    return [{ playerId: player.id, text: terms.map(({ text }) => text).join(", ") }];
  });
}

function stepOf(phrase: Phrase, held: AskedMoment, free: AskedMoment) {
  const isFreeAfter = free.moment.index > held.moment.index;
  const [before, after] = isFreeAfter ? [held, free] : [free, held];
  return { isFreeAfter, before, after, step: stepBetween(before, after, phrase.melody) };
}

/** Voicings of the free moment near a texture, each with what the step to or from it costs. */
function poolOf(
  phrase: Phrase,
  held: AskedMoment,
  free: AskedMoment,
  asked: Texture,
): readonly Candidate[] {
  const stage = stageOf({ ...free, asked }, size, undefined, undefined);
  const { isFreeAfter, step } = stepOf(phrase, held, free);
  const fixed = held.held ?? [];
  const width = phrase.players.length;
  return Array.from({ length: stage.count }, (_, row) => {
    const pitches = [...stage.pitches.subarray(row * width, (row + 1) * width)];
    const sounding = pitches.filter((pitch) => pitch > 0);
    const { span } = textureOf(sounding);
    const lines = isFreeAfter
      ? linesCost(phrase, fixed, pitches, step)
      : linesCost(phrase, pitches, fixed, step);
    return {
      pitches,
      span: span as Semitones,
      notes: new Set(sounding).size,
      players: sounding.length,
      texture: stage.texture[row]!,
      cost: { voicing: stage.voicing[row]!, chairs: stage.chairs[row]!, lines },
    };
  });
}
