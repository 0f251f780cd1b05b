import {
  quantity,
  type Count,
  type Ratio,
  type Seconds,
  type SoundingMidi,
} from "../base/index.ts";
import { canSound, costOfRegister, type Player, type SoundingRange } from "../band/index.ts";
import {
  barCount,
  placeOf,
  placeText,
  pitchName,
  type Divisions,
  type Melody,
} from "../theory/index.ts";
import { breathTable } from "./breath-table.ts";
import { lineCheckLimits } from "./line-check-table.ts";
import { moveTerms, type PitchOrRest } from "./move-cost.ts";
import { secondsOf } from "./moments.ts";
import type { PartNote, PlayerPart } from "./parts.ts";
import type { DynamicMark, Phrase, PhraseAnswer } from "./phrase-types.ts";
import { dynamicAt } from "./read-phrase.ts";
import { stepBetween } from "./search-phrase.ts";

/** What a remark on a line is about. */
export type LineRemarkKind = "range" | "breath" | "tiring" | "move";

/** A remark on a player's line, with its place. */
export interface LineRemark {
  readonly kind: LineRemarkKind;
  readonly onset: Divisions;
  /** "Bar 3, beat 2: slide from position 1 to 6." */
  readonly text: string;
}

/** Where a line lies in one bar. */
export interface BarTessitura {
  readonly bar: Count;
  readonly low: SoundingMidi;
  readonly high: SoundingMidi;
  /** Middle of the line by sounding time, rounded. */
  readonly middle: SoundingMidi;
}

/** A player's line looked over. */
export interface LineCheck {
  readonly player: Player;
  /** Undefined for a silent player. */
  readonly range?: SoundingRange;
  /** Bars in which the player sounds. */
  readonly tessitura: readonly BarTessitura[];
  /** Longest stretch without a breath, and where it begins. */
  readonly longestStretch: { readonly seconds: Seconds; readonly onset: Divisions };
  /** Share of the sounding time in tiring registers. */
  readonly tiringShare: Ratio;
  readonly remarks: readonly LineRemark[];
}

/**
 * Looks every player's line over: range, tessitura bar by bar, longest stretch without a breath,
 * tiring registers, awkward moves.
 * @param phrase - melody, players
 * @param answer - the voicings
 * @param parts - the same as parts
 * @returns one check a player, in the order of the line-up; remarks in order of time
 * @source limits in line-check-table.ts and breath-table.ts
 */
export function checkLines(
  phrase: Phrase,
  answer: PhraseAnswer,
  parts: readonly PlayerPart[],
): readonly LineCheck[] {
  const { melody, dynamics } = phrase;
  return parts.map(({ player, notes }, index) => {
    const longestStretch = longestOf(notes, melody);
    const tiring = tiringNotes(player, notes, dynamics);
    const tiringShare = shareOf(tiring, notes);
    const remarks = [
      ...rangeRemarks(player, notes, melody),
      ...breathRemarks(player, longestStretch, melody),
      ...tiringRemarks(player, tiring, tiringShare, melody),
      ...moveRemarks(phrase, answer, index),
    ];
    return {
      player,
      ...rangeOf(notes),
      tessitura: tessituraOf(notes, melody),
      longestStretch,
      tiringShare,
      remarks: remarks.sort((a, b) => a.onset - b.onset),
    };
  });
}

function at(melody: Melody, onset: Divisions): string {
  const text = placeText(melody, onset);
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function rangeOf(notes: readonly PartNote[]): { readonly range?: SoundingRange } {
  if (notes.length === 0) return {};
  const pitches = notes.map(({ sounding }) => sounding);
  const low = quantity<SoundingMidi>(Math.min(...pitches));
  return { range: { low, high: quantity<SoundingMidi>(Math.max(...pitches)) } };
}

function rangeRemarks(
  player: Player,
  notes: readonly PartNote[],
  melody: Melody,
): readonly LineRemark[] {
  return notes
    .filter(({ sounding }) => !canSound(player, sounding))
    .map(({ onset, sounding }) => ({
      kind: "range",
      onset,
      text: `${at(melody, onset)}: ${pitchName(sounding, undefined, { signs: "unicode" })} is out of range.`,
    }));
}

function tessituraOf(notes: readonly PartNote[], melody: Melody): readonly BarTessitura[] {
  const bars: BarTessitura[] = [];
  for (let bar = 0; bar <= barCount(melody); bar++) {
    const inside = notes.filter(({ onset }) => placeOf(melody, onset).bar === bar);
    if (inside.length === 0) continue;
    const pitches = inside.map(({ sounding }) => sounding);
    const time = inside.reduce((sum, { duration }) => sum + duration, 0);
    const sum = inside.reduce((total, note) => total + note.sounding * note.duration, 0);
    bars.push({
      bar,
      low: quantity<SoundingMidi>(Math.min(...pitches)),
      high: quantity<SoundingMidi>(Math.max(...pitches)),
      middle: quantity<SoundingMidi>(Math.round(sum / time)),
    });
  }
  return bars;
}

function longestOf(notes: readonly PartNote[], melody: Melody): LineCheck["longestStretch"] {
  let best = { seconds: quantity<Seconds>(0), onset: quantity<Divisions>(0) };
  let start: Divisions | undefined;
  let end = 0;
  for (const note of notes) {
    const silence = secondsOf(quantity<Divisions>(note.onset - end), melody);
    if (start === undefined || silence >= breathTable.breathSeconds) start = note.onset;
    end = note.onset + note.duration;
    const seconds = secondsOf(quantity<Divisions>(end - start), melody);
    if (seconds > best.seconds) best = { seconds, onset: start };
  }
  return best;
}

function breathRemarks(
  { instrument }: Player,
  { seconds, onset }: LineCheck["longestStretch"],
  melody: Melody,
): readonly LineRemark[] {
  const longest = breathTable.longestSeconds[instrument];
  if (seconds <= longest) return [];
  const text = `${at(melody, onset)}: ${seconds.toFixed(1)} seconds without a breath; ${longest} is long for this instrument.`;
  return [{ kind: "breath", onset, text }];
}

function tiringNotes(
  player: Player,
  notes: readonly PartNote[],
  dynamics: readonly DynamicMark[],
): readonly PartNote[] {
  return notes.filter(({ sounding, onset }) => {
    const isHigh = sounding > (player.home.low + player.home.high) / 2;
    if (!isHigh || !canSound(player, sounding)) return false;
    return (
      costOfRegister(player, sounding, dynamicAt(dynamics, onset)) >= lineCheckLimits.tiringCost
    );
  });
}

function shareOf(some: readonly PartNote[], all: readonly PartNote[]): Ratio {
  const time = (notes: readonly PartNote[]): number =>
    notes.reduce((sum, { duration }) => sum + duration, 0);
  return all.length === 0 ? 0 : time(some) / time(all);
}

function tiringRemarks(
  player: Player,
  tiring: readonly PartNote[],
  share: Ratio,
  melody: Melody,
): readonly LineRemark[] {
  const [first] = tiring;
  if (!first || share < lineCheckLimits.tiringShare) return [];
  const top = Math.max(...tiring.map(({ sounding }) => sounding));
  const times = tiring.filter(({ sounding }) => sounding === top).length;
  const name = pitchName(quantity<SoundingMidi>(top), undefined, { signs: "unicode" });
  const text = `${at(melody, first.onset)}: from here ${Math.round(share * 100)} % of the line lies in a tiring register, the top ${name} ${times === 1 ? "once" : `${times} times`}; spare ${player.name}’s lip in rehearsal.`;
  return [{ kind: "tiring", onset: first.onset, text }];
}

function moveRemarks(phrase: Phrase, answer: PhraseAnswer, player: Count): readonly LineRemark[] {
  const { melody, players, moments } = phrase;
  return answer.moments.flatMap((voiced, index): readonly LineRemark[] => {
    const before = answer.moments[index - 1];
    const [from, to] = [moments[index - 1], moments[index]];
    const who = players[player];
    if (!before || !from || !to || !who) return [];
    const { situation } = stepBetween(from, to, melody);
    const start = (before.pitches[player] ?? 0) as PitchOrRest;
    const end = (voiced.pitches[player] ?? 0) as PitchOrRest;
    const terms = moveTerms(who, start, end, situation);
    const cost = terms.reduce((sum, { value }) => sum + value, 0);
    if (cost < lineCheckLimits.awkwardMove) return [];
    const { onset } = voiced.moment;
    const words = terms.map(({ text }) => text).join(", ");
    return [{ kind: "move", onset, text: `${at(melody, onset)}: ${words}.` }];
  });
}
