import { voicingOfTexture, type Idea, type LessonTexture } from "../../explore/index.ts";
import { hearThese } from "../actions/hear.ts";
import { useSound } from "../actions/sound-state.ts";
import { teaching, useTeaching } from "./teaching-store.ts";

/** A texture with the name it is heard under: "Left", "B". */
export interface NamedTexture {
  readonly name: string;
  readonly texture: LessonTexture;
}

/**
 * Whether an idea's voicings are heard equally loud. Loudness is part of weight; of everything
 * else it would only give the answer away.
 * @param idea - what is compared
 * @param chosen - what the learner chose, if anything
 * @returns true when the levels are matched
 */
export function isLevelMatched(idea: Idea, chosen: boolean | undefined): boolean {
  return chosen ?? idea !== "weight";
}

/**
 * Sounds textures of the lessons' question, held, one after the other.
 * @param turns - what to sound, in order
 * @param isMatched - equally loud, or as loud as they are
 */
export function hearTextures(turns: readonly NamedTexture[], isMatched: boolean): void {
  const { asked } = teaching.getState();
  if (asked === null) return;
  const { question } = asked;
  const heard = turns.map(({ name, texture }) => ({
    name,
    question,
    voicing: voicingOfTexture(question, texture),
  }));
  teaching.setState({ heard: turns.map(({ name }) => name) });
  void hearThese(heard, "sustained", isMatched);
}

/**
 * What sounds now, or is about to.
 * @returns the name of the voicing, or null in silence
 */
export function useNowSounding(): string | null {
  const turn = useSound((state) => state.turn);
  const isSilent = useSound((state) => state.phase === "silent");
  const first = useTeaching((state) => state.heard[0] ?? null);
  // One voicing alone, or the first of several before it starts, has no turn of its own.
  return isSilent ? null : (turn ?? first);
}
