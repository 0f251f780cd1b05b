import { seededChance, type Chance, type Count } from "../base/index.ts";
import { metrics } from "../metrics/index.ts";
import type { Question } from "../voicing/index.ts";
import { fullNotes } from "./lesson-table.ts";
import { ideaValue, isSameStack, voicingOfTexture } from "./lesson-textures.ts";
import type { Idea, IdeaValue, LessonTexture } from "./lesson-types.ts";
import { pairsALevel, quizRules, type QuizRule } from "./quiz-table.ts";
import type { QuizDeck, QuizPair } from "./quiz-types.ts";

const ideas: readonly Idea[] = ["span", "weight", "density", "interleaving"];

/**
 * Finds pairs of textures for a listening quiz: clearly different in what is asked, within the
 * stated tolerance in everything else.
 * @param question - the question the textures answer
 * @param textures - the question's textures, of any layers
 * @param seed - any whole number; the same seed gives the same pairs
 * @returns pairs by idea and level; a level without a pair is empty
 */
export function quizDeck(
  question: Question,
  textures: readonly LessonTexture[],
  seed: Count,
): QuizDeck {
  const chance = seededChance(seed);
  const deck = ideas.map((idea) => {
    const levels = pairsByLevel(quizRules[idea], textures);
    return [idea, levels.map((pairs) => drawn(question, pairs, chance))] as const;
  });
  return Object.fromEntries(deck) as unknown as QuizDeck;
}

/**
 * How far apart a pair is in what is asked.
 * @param pair - the pair
 * @returns the difference in the idea's unit; for weight the larger value over the smaller
 */
export function pairMargin(pair: Pick<QuizPair, "idea" | "less" | "more">): IdeaValue {
  return marginOf(quizRules[pair.idea], pair.less, pair.more);
}

function marginOf({ idea, by }: QuizRule, less: LessonTexture, more: LessonTexture): number {
  const [low, high] = [ideaValue(less, idea), ideaValue(more, idea)];
  return by === "ratio" ? high / low : high - low;
}

/** Every fitting pair, at the hardest level whose margin it still reaches. */
function pairsByLevel(rule: QuizRule, textures: readonly LessonTexture[]): QuizPair[][] {
  const { idea, margins } = rule;
  const levels: QuizPair[][] = margins.map(() => []);
  const least = margins[margins.length - 1] ?? 0;
  for (const group of alikeGroups(rule, textures))
    for (const less of group)
      for (const more of group) {
        const margin = marginOf(rule, less, more);
        if (!(margin >= least) || !isAlikeOtherwise(rule, less, more)) continue;
        const level = margins.findIndex((each) => margin >= each);
        levels[level]?.push({ idea, level, less, more });
      }
  return levels;
}

/** Textures that agree in everything that must be equal: no need to compare across groups. */
function alikeGroups(
  { most }: QuizRule,
  textures: readonly LessonTexture[],
): readonly (readonly LessonTexture[])[] {
  const equal = (["span", "notes", "players"] as const).filter((field) => most[field] === 0);
  const groups = new Map<string, LessonTexture[]>();
  for (const texture of textures) {
    const key = equal.map((field) => texture[field]).join();
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [texture]);
    else group.push(texture);
  }
  return [...groups.values()];
}

function isAlikeOtherwise(rule: QuizRule, a: LessonTexture, b: LessonTexture): boolean {
  const { idea, most } = rule;
  if (idea === "interleaving" && (a.interleaving === null || b.interleaving === null)) return false;
  const apart = Math.abs(ideaValue(a, "interleaving") - ideaValue(b, "interleaving"));
  return (
    Math.abs(a.notes - b.notes) <= most.notes &&
    Math.abs(a.players - b.players) <= most.players &&
    Math.abs(a.span - b.span) <= most.span &&
    Math.max(a.weight, b.weight) <= most.weight * Math.min(a.weight, b.weight) &&
    apart <= most.interleaving
  );
}

/** A few pairs at random, the plainest ones first. */
function drawn(question: Question, pairs: readonly QuizPair[], chance: Chance): QuizPair[] {
  const order = pairs
    .map((pair) => ({ pair, oddity: oddityOf(pair), lot: chance() }))
    .sort((a, b) => a.oddity - b.oddity || a.lot - b.lot);
  const chosen: QuizPair[] = [];
  for (const { pair } of order) {
    if (chosen.length === pairsALevel) break;
    if (isRepeat(pair, chosen) || !isLoudnessFair(question, pair)) continue;
    chosen.push(pair);
  }
  return chosen;
}

/** What makes a pair less plain: thin chords, and other notes where notes are not the point. */
function oddityOf({ idea, less, more }: QuizPair): number {
  const isThin = Math.min(less.notes, more.notes) < fullNotes - 1;
  const isOther = (idea === "weight" || idea === "interleaving") && !isSameStack(less, more);
  return (isThin ? 2 : 0) + (isOther ? 1 : 0);
}

/** Whether one of the two is in a chosen pair already: the ear would know it again. */
function isRepeat({ less, more }: QuizPair, chosen: readonly QuizPair[]): boolean {
  return chosen.filter((other) => other.less === less || other.more === more).length > 1;
}

/** The heavier of two is asked for as played: there it must not be the softer one. */
function isLoudnessFair(question: Question, { idea, less, more }: QuizPair): boolean {
  if (idea !== "weight") return true;
  const loudness = metrics.find((metric) => metric.id === "loudness");
  if (loudness === undefined) throw new RangeError('there is no measure "loudness"');
  const [soft, loud] = [less, more].map(
    (texture) => loudness.measure(voicingOfTexture(question, texture), question).value ?? 0,
  );
  return (loud ?? 0) > (soft ?? 0);
}
