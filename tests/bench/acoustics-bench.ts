import {
  createHearingEngine,
  loudnessIso5322,
  type PreparedNote,
  type Spectrum,
} from "../../src/acoustics/index.ts";
import { seededChance, soundingMidi } from "../../src/base/index.ts";
import { lineUpById, partialsOf, type Player } from "../../src/band/index.ts";

/** What the fast ear costs and how far it is from the full method. */
export interface AcousticsBench {
  readonly players: number;
  readonly prepareMs: number;
  /** Best and median of the runs, all heard measures, one voicing. */
  readonly bestMicroseconds: number;
  readonly medianMicroseconds: number;
  readonly voicingsPerSecond: number;
  /** First hearing of the same voicings, roughness of new pairs of notes included. */
  readonly firstMicroseconds: number;
  /** Loudness against the full method, 0.01 = 1 %. */
  readonly worstLoudnessError: number;
  readonly meanLoudnessError: number;
  readonly compared: number;
}

interface Sounding {
  readonly spectrum: Spectrum;
  readonly note: PreparedNote;
}

const VOICINGS = 1000;
const RUNS = 9;

/** Thirteen players, each on a random pitch of the easy range. */
function randomSounds(): {
  readonly voicings: readonly (readonly Sounding[])[];
  readonly prepare: readonly Sounding[];
  readonly engine: ReturnType<typeof createHearingEngine>;
} {
  const engine = createHearingEngine({ field: "diffuse" });
  const chance = seededChance(1);
  const known = new Map<string, Sounding>();
  const band = lineUpById("big-band");
  if (!band.ok) throw new Error(band.problem.message);
  const players = band.value.players.filter(({ section }) => section !== "rhythm");
  const soundOf = ({ instrument, mute, easyRange }: Player): Sounding => {
    const { low, high } = easyRange;
    const sounding = soundingMidi(low + Math.floor(chance() * (high - low + 1)));
    const key = `${instrument} ${sounding}`;
    const spectrum = partialsOf({ instrument, sounding, dynamic: "f", mute });
    const found = known.get(key) ?? { spectrum, note: engine.prepare(spectrum) };
    known.set(key, found);
    return found;
  };
  const voicings = Array.from({ length: VOICINGS }, () => players.map(soundOf));
  return { voicings, prepare: [...known.values()], engine };
}

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;

/**
 * Times all heard measures over random thirteen-player voicings, and compares their loudness with
 * the full method.
 * @param now - clock in milliseconds
 */
export function acousticsBench(now: () => number): AcousticsBench {
  const { voicings, prepare, engine } = randomSounds();
  const notes = voicings.map((voicing) => voicing.map(({ note }) => note));
  const groups = Int32Array.from(notes[0] ?? [], (_note, index) => index);
  const timed = (work: () => unknown): number => {
    const start = now();
    work();
    return now() - start;
  };
  const hearAll = (): number =>
    notes.reduce((sum, voicing) => sum + engine.listen(voicing, groups).loudness, 0);
  const prepareMs = timed(() => prepare.forEach(({ spectrum }) => engine.prepare(spectrum)));
  const first = timed(hearAll);
  const times = Array.from({ length: RUNS }, () => timed(hearAll));
  const errors = voicings.map((voicing, index) => {
    const full = loudnessIso5322(
      voicing.flatMap(({ spectrum }) => spectrum),
      { field: "diffuse" },
    );
    return engine.loudness(notes[index] ?? []) / full - 1;
  });
  const perVoicing = (ms: number): number => (ms * 1000) / VOICINGS;
  return {
    players: groups.length,
    prepareMs: prepareMs / prepare.length,
    bestMicroseconds: perVoicing(Math.min(...times)),
    medianMicroseconds: perVoicing(median(times)),
    voicingsPerSecond: 1e6 / perVoicing(median(times)),
    firstMicroseconds: perVoicing(first),
    worstLoudnessError: Math.max(...errors.map(Math.abs)),
    meanLoudnessError: errors.reduce((sum, error) => sum + error, 0) / errors.length,
    compared: errors.length,
  };
}
