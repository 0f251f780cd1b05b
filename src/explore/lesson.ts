import type { CellKey } from "../voicing/index.ts";
import {
  fullNotes,
  lessonPrices,
  lessonRules,
  mostOnTrack,
  sameInterleaving,
  type LessonRule,
} from "./lesson-table.ts";
import { ideaValue, isSameStack, movedPlayers, notShared } from "./lesson-textures.ts";
import type { Idea, LessonPart, LessonTexture } from "./lesson-types.ts";

interface Pair {
  readonly less: LessonTexture;
  readonly more: LessonTexture;
  readonly score: number;
}

/** What textures must share to be compared in one idea. */
const heldEqual: Readonly<Record<Idea, (texture: LessonTexture) => string>> = {
  span: ({ notes, players, weight }) => `${notes} ${players} ${weight}`,
  weight: ({ span, notes }) => `${span} ${notes}`,
  density: ({ span, players, weight }) => `${span} ${players} ${weight}`,
  interleaving: ({ span, notes, players, weight }) => `${span} ${notes} ${players} ${weight}`,
};

/**
 * The steps of a lesson on one question: for each idea two textures that differ in it and in as
 * little else as the atlas allows, and the row of textures between and around them.
 * @param textures - the question's textures, of any layers
 * @param near - the texture the learner looks at; pairs near it are preferred
 * @returns one part an idea, in the order of the lesson; a gap says why it has no pair
 */
export function lessonParts(
  textures: readonly LessonTexture[],
  near: CellKey,
): readonly LessonPart[] {
  return lessonRules.map((rule) => lessonPart(rule, textures, near));
}

function lessonPart(
  rule: LessonRule,
  textures: readonly LessonTexture[],
  near: CellKey,
): LessonPart {
  const { idea } = rule;
  // Interlocking is compared across layers; everything else among the best there is.
  const fit = idea === "interleaving" ? textures : textures.filter(isOfFreeLayer);
  let best: Pair | undefined;
  let around: readonly LessonTexture[] = [];
  for (const group of groupsOf(fit, heldEqual[idea])) {
    const pair = bestPair(rule, group, near);
    if (pair !== undefined && (best === undefined || pair.score > best.score)) {
      best = pair;
      around = group;
    }
  }
  if (best === undefined) return { kind: "gap", idea, reason: rule.gap };
  const track = trackOf(idea, around, best);
  const left = track.indexOf(best.less);
  return { kind: "step", idea, track, left, right: track.indexOf(best.more) };
}

function isOfFreeLayer({ layer }: LessonTexture): boolean {
  return layer === "free";
}

function groupsOf(
  textures: readonly LessonTexture[],
  key: (texture: LessonTexture) => string,
): Iterable<readonly LessonTexture[]> {
  const groups = new Map<string, LessonTexture[]>();
  for (const texture of textures) {
    const group = groups.get(key(texture));
    if (group === undefined) groups.set(key(texture), [texture]);
    else group.push(texture);
  }
  return groups.values();
}

function bestPair(
  rule: LessonRule,
  group: readonly LessonTexture[],
  near: CellKey,
): Pair | undefined {
  let best: Pair | undefined;
  for (const less of group)
    for (const more of group) {
      const score = scoreOf(rule, less, more, near);
      if (score !== null && (best === undefined || score > best.score))
        best = { less, more, score };
    }
  return best;
}

/** How well a pair shows the idea; null where it does not. */
function scoreOf(
  rule: LessonRule,
  less: LessonTexture,
  more: LessonTexture,
  near: CellKey,
): number | null {
  const { idea } = rule;
  const [low, high] = [ideaValue(less, idea), ideaValue(more, idea)];
  if (high - low < rule.least || high < rule.leastRatio * low) return null;
  if (idea === "interleaving" && (less.layer !== "by-section" || more.interleaving === null))
    return null;
  if (idea !== "interleaving" && !isAsInterlocked(less, more)) return null;
  const worth = rule.worth * Math.min(rule.clear, high - low);
  return worth - priceOf(idea, less, more) - Math.min(away(less, near), away(more, near));
}

function priceOf(idea: Idea, less: LessonTexture, more: LessonTexture): number {
  const { onlyA, onlyB } = notShared(less, more);
  // Where notes are added, the sparse one should be part of the dense one.
  const strange = idea === "density" ? onlyA : Math.max(onlyA, onlyB);
  const moving = idea === "interleaving" ? 0 : movedPlayers(less, more);
  const locked =
    idea === "interleaving" ? 0 : Math.abs((less.interleaving ?? 0) - (more.interleaving ?? 0));
  const missing = Math.max(0, fullNotes - Math.min(less.notes, more.notes));
  return (
    lessonPrices.note * strange +
    lessonPrices.player * moving +
    lessonPrices.interleaving * locked +
    lessonPrices.missing * missing
  );
}

function away({ span, notes, players }: LessonTexture, near: CellKey): number {
  const far = Math.abs(notes - near.notes) + Math.abs(players - near.players);
  return lessonPrices.away * far + Math.abs(span - near.span);
}

function isAsInterlocked(a: LessonTexture, b: LessonTexture): boolean {
  return Math.abs((a.interleaving ?? 0) - (b.interleaving ?? 0)) <= sameInterleaving;
}

/** The textures the learner can go to: like the one that stays, each with a value of its own. */
function trackOf(
  idea: Idea,
  group: readonly LessonTexture[],
  { less, more }: Pair,
): readonly LessonTexture[] {
  const byValue = new Map<number, LessonTexture>();
  const isOneStack = isSameStack(less, more);
  const fit = group.filter(
    (texture) =>
      (idea === "interleaving" || isAsInterlocked(texture, less)) &&
      (!isOneStack || isSameStack(texture, less)),
  );
  for (const texture of fit) {
    const value = ideaValue(texture, idea);
    const before = byValue.get(value);
    if (before === undefined || priceOf(idea, less, texture) < priceOf(idea, less, before))
      byValue.set(value, texture);
  }
  byValue.set(ideaValue(less, idea), less);
  byValue.set(ideaValue(more, idea), more);
  const row = [...byValue].sort(([a], [b]) => a - b).map(([, texture]) => texture);
  return thinned(row, [less, more], mostOnTrack);
}

/** At most so many of a row, spread evenly, some of them in any case. */
function thinned(
  row: readonly LessonTexture[],
  kept: readonly LessonTexture[],
  most: number,
): readonly LessonTexture[] {
  if (row.length <= most) return row;
  const stays = new Set<LessonTexture>(kept);
  for (let step = 0; stays.size < most; step += 1) {
    // Ends first, then halves, quarters …: every round fills the widest hole.
    const next = widestHole(row, stays, step);
    if (next === undefined) break;
    stays.add(next);
  }
  return row.filter((texture) => stays.has(texture));
}

function widestHole(
  row: readonly LessonTexture[],
  stays: ReadonlySet<LessonTexture>,
  step: number,
): LessonTexture | undefined {
  const ends = [row[0], row[row.length - 1]];
  const end = step < 2 ? ends[step] : undefined;
  if (end !== undefined && !stays.has(end)) return end;
  let best: LessonTexture | undefined;
  let widest = 0;
  let from = 0;
  row.forEach((texture, at) => {
    if (!stays.has(texture)) return;
    if (at - from > widest) {
      widest = at - from;
      best = row[Math.floor((from + at) / 2)];
    }
    from = at;
  });
  return best !== undefined && !stays.has(best) ? best : row.find((one) => !stays.has(one));
}
