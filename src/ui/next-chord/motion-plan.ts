import { sectionOrder, type Player, type SectionId } from "../../band/index.ts";
import type { Voicing } from "../../voicing/index.ts";
import {
  sharedScale,
  stillLadderPlan,
  stillSizes,
  type PitchScale,
  type StillLadderPlan,
} from "../parts/still-ladder-plan.ts";
import { tokenLabel } from "../teaching/token-label.ts";
import { spreadLabels } from "../voicing/ladder-plan.ts";

/** Players of a section who make the same step. */
export interface Thread {
  readonly section: SectionId;
  readonly players: readonly Player[];
  /** Sounding MIDI note numbers; null for rest. */
  readonly from: number | null;
  readonly to: number | null;
  /** Middles of both ends, CSS pixels; null for rest. */
  readonly fromY: number | null;
  readonly toY: number | null;
  readonly labelY: number;
  readonly label: string;
}

/** Where everything of two joined ladders lies. */
export interface MotionPlan {
  readonly height: number;
  readonly left: StillLadderPlan;
  readonly right: StillLadderPlan;
  /** Left edge of the right ladder's plan. */
  readonly rightX: number;
  /** Between the ladders. */
  readonly gap: readonly [from: number, to: number];
  readonly labelWidth: number;
  /** Whether there is room for tokens; without, the threads name the players. */
  readonly hasTokens: boolean;
  readonly threads: readonly Thread[];
}

/** CSS pixels. */
const sizes = { label: 18, labelWidth: 150, widestTokens: 250, leastTokens: 130, type: 12.5 };

/**
 * Lays two voicings out on one pitch scale, joined by the players' steps.
 * @param before - the voicing that comes first
 * @param after - the one it moves into
 * @param players - the line-up
 * @param width - CSS pixels
 * @param room - height there is, CSS pixels; the ladders stretch into it, within reason
 * @returns where everything lies
 */
export function motionPlan(
  before: Voicing,
  after: Voicing,
  players: readonly Player[],
  width: number,
  room = 0,
): MotionPlan {
  const scale = sharedScale([before, after]);
  const perSemitone = heightOfSemitone(scale, room);
  const side = sideOf(width);
  const hasTokens = side > stillSizes.labels;
  const left = stillLadderPlan(before, players, scale, side + 8, perSemitone);
  const right = stillLadderPlan(after, players, scale, side + 8, perSemitone);
  const groups = groupsOf(before, after, players);
  const height = Math.max(left.height, groups.length * sizes.label + 2 * stillSizes.margin);
  const yOf = (pitch: number | null) =>
    pitch === null ? null : stillSizes.margin + perSemitone * (scale.top - pitch);
  const threads = groups
    .map((group) => ({ ...group, fromY: yOf(group.from), toY: yOf(group.to) }))
    .sort((a, b) => middleOf(a) - middleOf(b) || (a.fromY ?? 0) - (b.fromY ?? 0));
  const labelYs = within(spreadLabels(threads.map(middleOf), sizes.label), height);
  return {
    height,
    left,
    right,
    rightX: width - side - stillSizes.labels,
    gap: [side + 8, width - side - 8],
    labelWidth: sizes.labelWidth,
    hasTokens,
    threads: threads.map((thread, index) => ({
      ...thread,
      labelY: labelYs[index] ?? middleOf(thread),
      label: tokenLabel(thread.players, sizes.labelWidth - 62, sizes.type),
    })),
  };
}

/** Labels and tokens of one ladder; labels alone where there is no room for tokens. */
function sideOf(width: number): number {
  const room = (width - 2 * stillSizes.labels - sizes.labelWidth - 80) / 2;
  if (room < sizes.leastTokens) return stillSizes.labels;
  return stillSizes.labels + Math.min(sizes.widestTokens, room);
}

/** Highest a semitone grows. */
const tallestSemitone = 15;

function heightOfSemitone({ top, bottom }: PitchScale, room: number): number {
  const fitting = (room - 2 * stillSizes.margin) / Math.max(1, top - bottom);
  return Math.max(stillSizes.perSemitone, Math.min(tallestSemitone, fitting));
}

function middleOf(thread: Pick<Thread, "fromY" | "toY">): number {
  const ends = [thread.fromY, thread.toY].filter((y) => y !== null);
  return ends.reduce((sum, y) => sum + y, 0) / Math.max(1, ends.length);
}

/** Keeps labels inside the picture, in order. */
function within(ys: readonly number[], height: number): readonly number[] {
  const half = sizes.label / 2;
  const down = ys.map((y, index) => Math.max(y, half + sizes.label * index));
  return down.map((y, index) => Math.min(y, height - half - sizes.label * (ys.length - 1 - index)));
}

type Group = Pick<Thread, "section" | "players" | "from" | "to">;

/** Players of one section with the same step; who rests in both is left out. */
function groupsOf(before: Voicing, after: Voicing, players: readonly Player[]): readonly Group[] {
  const pitchOf = ({ placements }: Voicing, id: string): number | null =>
    placements.find(({ player }) => player.id === id)?.sounding ?? null;
  const groups = new Map<string, Group>();
  for (const section of sectionOrder)
    for (const player of players.filter((one) => one.section === section)) {
      const [from, to] = [pitchOf(before, player.id), pitchOf(after, player.id)];
      if (from === null && to === null) continue;
      const key = `${section} ${from ?? "rest"} ${to ?? "rest"}`;
      const known = groups.get(key)?.players ?? [];
      groups.set(key, { section, from, to, players: [...known, player] });
    }
  return [...groups.values()];
}

/**
 * A step in a word or two.
 * @param from - sounding MIDI note number, null for rest
 * @param to - the same after the step
 * @returns "held", "up 2", "down 9", "comes in", "rests"
 */
export function stepText(from: number | null, to: number | null): string {
  if (to === null) return "rests";
  if (from === null) return "comes in";
  if (from === to) return "held";
  return `${to > from ? "up" : "down"} ${Math.abs(to - from)}`;
}
