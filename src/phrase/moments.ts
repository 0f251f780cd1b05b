import { quantity, type Count, type Seconds, type SoundingMidi } from "../base/index.ts";
import type { Chord, Divisions, Melody, ReadChange } from "../theory/index.ts";
import type { ApproachTechnique, Harmonised, NoteTexture } from "./harmony-types.ts";

/** A stretch of time with one melody note and one chord: what one voicing is found for. */
export interface Moment {
  /** Id of its note; "n3+1" for what is left of the note after a change of chord under it. */
  readonly id: string;
  readonly index: Count;
  readonly noteId: string;
  readonly onset: Divisions;
  readonly duration: Divisions;
  readonly lead: SoundingMidi;
  readonly chord: Chord;
  readonly texture: NoteTexture;
  readonly technique?: ApproachTechnique;
  /** The melody holds on from the moment before: only the harmony changes. */
  readonly isHeld: boolean;
  /** Silence of the melody before this moment. */
  readonly restBefore: Divisions;
  /** Every voice moves by the same semitone into the moment after this one. */
  readonly movesAsBlock: boolean;
}

/**
 * Cuts harmonised notes into moments: one a note, more where the chord changes under a held note.
 * @param harmonised - notes with their chords, in order
 * @param changes - the chords of the song
 * @returns moments in order of time
 */
export function momentsOf(
  harmonised: readonly Harmonised[],
  changes: readonly ReadChange[],
): readonly Moment[] {
  const moments: Moment[] = [];
  for (const [at, one] of harmonised.entries()) {
    const { note, texture, technique } = one;
    const before = moments.at(-1);
    const cuts = cutsOf(one, changes);
    const next = harmonised[at + 1];
    cuts.forEach(({ onset, end, chord }, part) =>
      moments.push({
        id: part === 0 ? note.id : `${note.id}+${part}`,
        index: moments.length,
        noteId: note.id,
        onset: quantity<Divisions>(onset),
        duration: quantity<Divisions>(end - onset),
        lead: note.sounding,
        chord,
        texture,
        ...(technique ? { technique } : {}),
        isHeld: part > 0,
        restBefore: restBetween(before, onset, part),
        movesAsBlock:
          technique === "chromatic" &&
          part === cuts.length - 1 &&
          next?.texture === "harmony" &&
          Math.abs(next.note.sounding - note.sounding) === 1,
      }),
    );
  }
  return moments;
}

function restBetween(before: Moment | undefined, onset: number, part: number): Divisions {
  const end = before && part === 0 ? before.onset + before.duration : onset;
  return quantity<Divisions>(Math.max(0, onset - end));
}

interface Cut {
  readonly onset: number;
  readonly end: number;
  readonly chord: Chord;
}

/** Stretches of one note by the chord under it. A note with a chord of its own is not cut. */
function cutsOf(one: Harmonised, changes: readonly ReadChange[]): readonly Cut[] {
  const { note, chord, main, role, texture, anticipates } = one;
  const end = note.onset + note.duration;
  const isOwn = role === "approach" || texture !== "harmony" || chord !== main;
  const later = isOwn
    ? []
    : changes.filter(
        ({ onset }) => onset > note.onset && onset < end && onset > (anticipates ?? note.onset),
      );
  const starts = [note.onset as number, ...later.map(({ onset }) => onset as number)];
  const chords = [chord, ...later.map((change) => change.chord)];
  return starts.map((onset, part) => ({
    onset,
    end: starts[part + 1] ?? end,
    chord: chords[part] ?? chord,
  }));
}

/**
 * A length of musical time in seconds, every beat even.
 * @param length - divisions
 * @param melody - division and tempo
 * @returns seconds
 */
export function secondsOf(
  length: Divisions,
  { division, tempo }: Pick<Melody, "division" | "tempo">,
): Seconds {
  return quantity<Seconds>((length / division) * (60 / tempo));
}
