import type { Idea, LessonStep, LessonTexture } from "../../explore/index.ts";
import { stopSound } from "../actions/hear.ts";
import { hearTextures, isLevelMatched } from "./hear-texture.ts";
import { teaching, type Topic } from "./teaching-store.ts";

/** The two voicings of a step as they stand. */
export interface StepPair {
  readonly left: LessonTexture;
  readonly right: LessonTexture;
  /** Place of the right one in the track. */
  readonly at: number;
}

/**
 * The two voicings of a step: the one that stays, and the one the learner has moved.
 * @param step - the step
 * @param moved - where the learner has moved the right one, if anywhere
 * @returns both, and the place of the right one
 * @throws RangeError when the step's track has no such places
 */
export function pairOfStep(step: LessonStep, moved: number | undefined): StepPair {
  const at = moved ?? step.right;
  const [left, right] = [step.track[step.left], step.track[at]];
  if (left === undefined || right === undefined)
    throw new RangeError(`the track has ${step.track.length} places, asked for ${at}`);
  return { left, right, at };
}

/** Goes to an idea or to the quiz. */
export function goToTopic(topic: Topic): void {
  stopSound();
  teaching.setState({ topic });
}

/** Moves the right voicing along the track, and sounds it. */
export function moveRight(step: LessonStep, to: number): void {
  const { asked, moved, soundsMoves, matched } = teaching.getState();
  const { idea } = step;
  if (asked === null || to < 0 || to >= step.track.length) return;
  teaching.setState({ moved: { ...moved, [idea]: to } });
  const { right } = pairOfStep(step, to);
  if (soundsMoves)
    hearTextures([{ name: "Right", texture: right }], isLevelMatched(idea, matched[idea]));
}

/** Chooses how loud the voicings of an idea are heard. */
export function matchIdea(idea: Idea, isMatched: boolean): void {
  teaching.setState(({ matched }) => ({ matched: { ...matched, [idea]: isMatched } }));
}
