import { quantity, type Count, type Result, type SoundingMidi } from "../base/index.ts";
import { canSound } from "../band/index.ts";
import {
  brokenRules,
  lineCandidates,
  voicingCandidates,
  type Candidates,
  type CandidateWish,
  type Question,
  type Voicing,
} from "../voicing/index.ts";
import { textureCost } from "./curves.ts";
import { moveCosts } from "./line-cost-table.ts";
import type { AskedMoment } from "./phrase-types.ts";

/** How many voicings a moment is given. */
export type StageSize = Omit<CandidateWish, "textureCost">;

/** The voicings of one moment, as the path search needs them. */
export interface Stage {
  readonly count: Count;
  /** count × players, 0 for rest. */
  readonly pitches: Uint8Array;
  readonly voicing: Int32Array;
  readonly texture: Int32Array;
  readonly chairs: Int32Array;
  /** Row of the next stage that each row must go into, where everyone moves as a block. */
  readonly into?: Int32Array;
  /** Why it is not what was asked; empty when it is. */
  readonly remark: string;
}

/**
 * The voicings of a moment: near the curves, several stacks of each cell and several assignments of
 * each stack. A moment that moves as a block into the next has that one's voicings, moved.
 * @param asked - the moment
 * @param size - how many
 * @param next - the stage of the moment after it, where there is one
 * @param nextAsked - that moment
 * @returns at least one voicing
 * @throws RangeError when the question was not found in order before
 */
export function stageOf(
  asked: AskedMoment,
  size: StageSize,
  next: Stage | undefined,
  nextAsked: AskedMoment | undefined,
): Stage {
  if (asked.held) return heldStage(asked, asked.held);
  if (asked.moment.movesAsBlock && next && nextAsked) {
    const moved = movedStage(asked, next, nextAsked.moment.lead - asked.moment.lead);
    if (moved) return moved;
    const remark =
      "Not everyone can move by the same semitone here, so the chord is voiced freely.";
    return { ...freeStage(asked, size), remark };
  }
  return freeStage(asked, size);
}

function wishOf({ asked }: AskedMoment, size: StageSize): CandidateWish {
  return {
    ...size,
    textureCost: (span, notes, players) => textureCost(asked, span, notes, players),
  };
}

function freeStage(asked: AskedMoment, size: StageSize): Stage {
  const { question, moment } = asked;
  const { texture } = moment;
  const isLine = texture !== "harmony" || asked.asked.weight < 2;
  const harmony = (): Candidates => valueOf(voicingCandidates(question, wishOf(asked, size)));
  const line = (): Candidates => {
    const kind = texture === "unison" ? "unison" : "octaves";
    return valueOf(lineCandidates(question, lineWish(asked, size), kind));
  };
  const asWished = isLine ? line() : harmony();
  if (asWished.count > 0) return stageFrom(asWished, question, "");
  const other = isLine ? harmony() : line();
  if (other.count === 0) return barestStage(asked);
  const remark = isLine
    ? "What is fixed here leaves no line, so the note is harmonised."
    : "No harmony fits under this note with these players and rules, so it is a line.";
  return stageFrom(other, question, remark);
}

function valueOf(found: Result<Candidates>): Candidates {
  if (!found.ok) throw new RangeError(found.problem.message);
  return found.value;
}

/** The melody and what is fixed, nothing else: for locks that leave no voicing within the rules. */
function barestStage(asked: AskedMoment): Stage {
  const { question, moment } = asked;
  const fixed = new Map(question.locks.map(({ playerId, sounding }) => [playerId, sounding]));
  const pitches = question.players.map(({ id }) => {
    const lock = fixed.get(id) ?? "rest";
    return lock === "rest" ? 0 : (lock as number);
  });
  const leader = question.players.findIndex(
    (player) => !fixed.has(player.id) && canSound(player, moment.lead),
  );
  if (leader >= 0 && !pitches.includes(moment.lead)) pitches[leader] = moment.lead;
  const remark =
    "What is fixed here leaves no voicing within the rules: only the melody and the fixed players sound.";
  return { ...heldStage(asked, pitches), remark };
}

/** A line has no density; only span and players are compared. */
function lineWish({ asked }: AskedMoment, size: StageSize): CandidateWish {
  return {
    ...size,
    textureCost: (span, notes, players) =>
      textureCost(
        { ...asked, density: span === 0 ? 0 : (12 * (notes - 1)) / span },
        span,
        notes,
        players,
      ),
  };
}

function stageFrom(found: Candidates, question: Question, remark: string): Stage {
  return {
    count: found.count,
    pitches: found.pitches,
    voicing: found.over,
    texture: found.texture,
    chairs: chairCosts(found.pitches, found.count, question),
    remark,
  };
}

/** What it costs that a section's first chair is overtaken by others of the section. */
function chairCosts(pitches: Uint8Array, count: Count, { players }: Question): Int32Array {
  const costs = new Int32Array(count);
  const width = players.length;
  const sections = [...new Set(players.map(({ section }) => section))];
  const members = sections.map((section) =>
    players.flatMap((player, index) => (player.section === section ? [index] : [])),
  );
  for (let row = 0; row < count; row++)
    for (const [first = 0, ...others] of members) {
      const top = pitches[row * width + first]!;
      if (top === 0) continue;
      for (const other of others)
        if (pitches[row * width + other]! > top)
          costs[row] = costs[row]! + moveCosts.overFirstChair;
    }
  return costs;
}

function heldStage({ asked, question }: AskedMoment, held: readonly number[]): Stage {
  const sounding = held.filter((pitch) => pitch > 0);
  const stack = [...new Set(sounding)].sort((a, b) => a - b);
  const span = (stack.at(-1) ?? 0) - (stack[0] ?? 0);
  const pitches = Uint8Array.from(held);
  return {
    count: 1,
    pitches,
    voicing: new Int32Array(1),
    texture: Int32Array.of(textureCost(asked, span, stack.length, sounding.length)),
    chairs: chairCosts(pitches, 1, question),
    remark: "",
  };
}

/** The next stage's voicings moved by the melody's step, those that break no rule here. */
function movedStage(
  { asked, question }: AskedMoment,
  next: Stage,
  leadStep: number,
): Stage | undefined {
  const width = question.players.length;
  const mayStand = legality(question);
  const rows: number[][] = [];
  const into: number[] = [];
  const texture: number[] = [];
  for (let row = 0; row < next.count; row++) {
    const moved = Array.from(next.pitches.subarray(row * width, (row + 1) * width), (pitch) =>
      pitch === 0 ? 0 : pitch - leadStep,
    );
    if (!mayStand(moved)) continue;
    const stack = new Set(moved.filter((pitch) => pitch > 0));
    const span = Math.max(...stack) - Math.min(...stack);
    const sounding = moved.filter((pitch) => pitch > 0).length;
    rows.push(moved);
    into.push(row);
    texture.push(textureCost(asked, span, stack.size, sounding));
  }
  if (rows.length === 0) return undefined;
  const pitches = Uint8Array.from(rows.flat());
  return {
    count: rows.length,
    pitches,
    // What the voicing costs is counted where it arrives.
    voicing: new Int32Array(rows.length),
    texture: Int32Array.from(texture),
    chairs: new Int32Array(rows.length),
    into: Int32Array.from(into),
    remark: "",
  };
}

/** Whether a row of pitches breaks no rule; each stack is looked at once. */
function legality(question: Question): (pitches: readonly number[]) => boolean {
  const known = new Map<string, boolean>();
  const held = new Map(question.locks.map(({ playerId, sounding }) => [playerId, sounding]));
  const { players } = question;
  const stackRules: Question = { ...question, rules: { ...question.rules, H3: false } };
  return (pitches) => {
    const canPlay = players.every((player, index) => {
      const pitch = pitches[index] ?? 0;
      const lock = held.get(player.id);
      if (lock !== undefined && (lock === "rest" ? 0 : lock) !== pitch) return false;
      return pitch === 0 || canSound(player, quantity<SoundingMidi>(pitch));
    });
    if (!canPlay) return false;
    const key = [...new Set(pitches)].sort((a, b) => a - b).join();
    const before = known.get(key);
    if (before !== undefined) return before;
    const voicing: Voicing = {
      placements: players.flatMap((player, index) => {
        const pitch = pitches[index] ?? 0;
        return pitch === 0 ? [] : [{ player, sounding: quantity<SoundingMidi>(pitch) }];
      }),
    };
    const isLegal = brokenRules(voicing, stackRules).length === 0;
    known.set(key, isLegal);
    return isLegal;
  };
}
