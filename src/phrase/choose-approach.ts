import { pitchClass, type Result } from "../base/index.ts";
import { readChord, scaleOf, spelledToMidi, type Chord } from "../theory/index.ts";
import { approachChord, type Approach } from "./approach-chord.ts";
import { approachOrder } from "./approach-table.ts";
import type { ApproachTechnique } from "./harmony-types.ts";

/** A technique, its chord, and why it was taken. */
export interface ChosenApproach {
  readonly technique: ApproachTechnique;
  readonly chord: Chord;
  /** What the choice looked at, in a few words. */
  readonly words: string;
}

/** Whether a diminished chord through this note is the target's own dominant without its root. */
function leadsHome({ from, target }: Approach): boolean {
  return pitchClass(spelledToMidi(from) - target.rootPitchClass - 11) % 3 === 0;
}

/**
 * Chooses a technique for an approach note.
 * @param approach - the note, the note it goes into, that note's chord, the key
 * @returns the first technique of its row that is possible here
 * @throws RangeError when there is no chord to approach
 * @source approach-table.ts
 */
export function chooseApproach(approach: Approach): ChosenApproach {
  const isInKey = scaleOf(approach.key).includes(pitchClass(spelledToMidi(approach.from)));
  const step = Math.abs(spelledToMidi(approach.from) - spelledToMidi(approach.into));
  const situation = { isInKey, step, target: approach.target.family };
  const row = approachOrder.find(({ holds }) => holds(situation));
  const order = row?.order ?? [];
  const fitting = order.filter((each) => each !== "diminished" || leadsHome(approach));
  for (const technique of [...fitting, ...order]) {
    const chord: Result<Chord> = approachChord(technique, approach);
    if (chord.ok) return { technique, chord: chord.value, words: row?.words ?? "" };
  }
  throw new RangeError("an approach needs a chord to go into, got none");
}

/**
 * The chord that stands for silence of the harmony.
 * @returns N.C.
 */
export function noChord(): Chord {
  const read = readChord("N.C.");
  if (!read.ok) throw new RangeError("N.C. must be readable");
  return read.value;
}
