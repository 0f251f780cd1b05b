import type { Count, Hertz, Ratio, Sone } from "../base/index.ts";
import { earGrid } from "./ear-grid.ts";
import { excitationPass } from "./excitation-pass.ts";
import { groupJudge, type HeardGroup } from "./fast-audibility.ts";
import { fastLoudness } from "./fast-loudness.ts";
import { preparedMud, type HeardMud } from "./fast-mud.ts";
import type { SoundField } from "./iso532-2-cochlea.ts";
import { powerSteps } from "./level-steps.ts";
import { preparedRoughness } from "./pair-roughness.ts";
import { fundamentalOf, prepareNote, type PreparedNote } from "./prepared-note.ts";
import { HUTCHINSON_KNOPOFF } from "./roughness-hutchinson.ts";
import type { RoughnessMethod } from "./roughness-types.ts";
import { slopeRows } from "./slope-rows.ts";
import type { Spectrum } from "./spectrum.ts";

/** Everything a listener's model says of one voicing. */
export interface HeardVoicing {
  readonly loudness: Sone;
  /** One entry a group, in the order in which the groups first appear. */
  readonly groups: readonly HeardGroup[];
  readonly mud: HeardMud;
  /** Total roughness by the engine's method. */
  readonly roughness: Ratio;
  /** Spectral centroid by sound pressure and by power; 0 for no note. */
  readonly centroidByAmplitude: Hertz;
  readonly centroidByPower: Hertz;
}

/** A fast ear for many voicings of the same notes. */
export interface HearingEngine {
  /**
   * Prepares a note once (about half a millisecond); give the same prepared note to every voicing
   * it is in.
   */
  readonly prepare: (spectrum: Spectrum) => PreparedNote;
  /** Loudness of notes together, within 1 % of the full method. */
  readonly loudness: (notes: readonly PreparedNote[]) => Sone;
  /** Who is heard only, for another grouping of the same notes, at about half the cost. */
  readonly judge: (
    notes: readonly PreparedNote[],
    groups: ArrayLike<Count>,
  ) => readonly HeardGroup[];
  /**
   * Everything at once. Groups number the sources: notes with one number are judged as one (players
   * of one section on one note); every note for itself unless given.
   */
  readonly listen: (notes: readonly PreparedNote[], groups?: ArrayLike<Count>) => HeardVoicing;
}

/** What an engine may be told. */
export interface HearingOptions {
  /** Where the levels were taken, a free field unless given. */
  readonly field?: SoundField;
  /** Tuning of the grid; other tunings work, a little less exactly. */
  readonly a4Hz?: Hertz;
  /** Hutchinson and Knopoff unless given. */
  readonly roughness?: RoughnessMethod;
}

function centroids(notes: readonly PreparedNote[]): { amplitude: Hertz; power: Hertz } {
  const sums = [0, 0, 0, 0];
  for (const { moments } of notes)
    for (let index = 0; index < 4; index += 1) sums[index] = sums[index]! + moments[index]!;
  const [pressure, pressureHz, power, powerHz] = sums as [number, number, number, number];
  return {
    amplitude: (pressure > 0 ? pressureHz / pressure : 0) as Hertz,
    power: (power > 0 ? powerHz / power : 0) as Hertz,
  };
}

function checkGroups(notes: readonly PreparedNote[], groups: ArrayLike<Count>): void {
  if (groups.length !== notes.length)
    throw new RangeError(`every note needs a group: ${notes.length}, got ${groups.length}`);
}

/** Numbers fundamentals as they come. */
function pitchNumbers(): (fundamental: Hertz) => Count {
  const known = new Map<Hertz, Count>();
  return (fundamental) => {
    const number = known.get(fundamental) ?? known.size;
    known.set(fundamental, number);
    return number;
  };
}

/**
 * Makes a fast ear: per note everything that can be reckoned beforehand, per voicing one sum of
 * powers and one pass of excitation whose filters follow the total. Its buffers are its own: use one
 * engine a worker.
 * @param options - field, tuning, roughness method
 * @returns the engine
 * @source loudness: ISO 532-2:2017; audibility, mud, roughness and centroid as the full methods here
 * @example createHearingEngine().loudness([note])
 */
export function createHearingEngine(options: HearingOptions = {}): HearingEngine {
  const grid = earGrid(options.a4Hz);
  const rows = slopeRows(grid);
  const stepOf = powerSteps();
  const workshop = { grid, rows, stepOf, field: options.field ?? "free" };
  const pass = excitationPass(grid, rows, stepOf);
  const loudnessOf = fastLoudness(grid);
  const judge = groupJudge(grid, pass);
  const mudOf = preparedMud();
  const roughnessOf = preparedRoughness(options.roughness ?? HUTCHINSON_KNOPOFF);
  const pitchOf = pitchNumbers();
  let prepared = 0;

  return {
    prepare: (spectrum) => {
      const numbers = { index: prepared, pitch: pitchOf(fundamentalOf(spectrum)) };
      const note = prepareNote(workshop, spectrum, numbers);
      prepared += 1;
      return note;
    },
    loudness: (notes) => {
      pass.run(notes);
      return loudnessOf(pass.excitation);
    },
    judge: (notes, groups) => {
      checkGroups(notes, groups);
      pass.run(notes);
      return judge(notes, groups);
    },
    listen: (notes, groups = notes.map((_, index) => index)) => {
      checkGroups(notes, groups);
      pass.run(notes);
      const { amplitude, power } = centroids(notes);
      return {
        loudness: loudnessOf(pass.excitation),
        groups: judge(notes, groups),
        mud: mudOf(notes),
        roughness: roughnessOf(notes),
        centroidByAmplitude: amplitude,
        centroidByPower: power,
      };
    },
  };
}
