import { seededChance } from "../base/index.ts";
import type { Seconds } from "../base/index.ts";
import type { CymbalRow } from "./cymbal-table.ts";
import type { DynamicPosition } from "./dynamic-steps.ts";
import { dbSplToPeak } from "./level-calibration.ts";
import type { Mode } from "./ringing-modes.ts";
import type { StruckMaterial } from "./struck-voice.ts";

/** Place of f on the row of dynamics, and what one step is worth for a stick: value from memory. */
const STEP_OF_F = 5;
const DB_PER_STEP = 4;
const SEED = 17;

/**
 * A cymbal ready to be struck: its modes are laid out by chance, once and for all.
 * @param row - the cymbal
 * @param dynamic - how hard it is struck
 * @param noise - noise of the row's colour, unit rms
 * @returns modes, noise and times for a struck voice
 */
export function cymbalMaterial(
  row: CymbalRow,
  dynamic: DynamicPosition,
  noise: Float32Array,
): StruckMaterial {
  const change = DB_PER_STEP * (dynamic - STEP_OF_F);
  const level = (atF: number): number => dbSplToPeak((atF + change) as never);
  return {
    modes: cloudOf(row, level(row.modesAtF)),
    noise,
    noisePeak: level(row.noiseAtF) / Math.SQRT2,
    noiseT60: row.noiseT60,
    rise: 0.001 as Seconds,
    duration: (row.length - 0.1) as Seconds,
    release: 0.1 as Seconds,
  };
}

function cloudOf(row: CymbalRow, peak: number): readonly Mode[] {
  const chance = seededChance(SEED);
  const octaves = Math.log2(row.highest / row.lowest);
  const modes = Array.from({ length: row.modeCount }, (_, m) => {
    const height = (m + chance()) / row.modeCount;
    const hz = row.lowest * 2 ** (octaves * height);
    const away = Math.log2(hz / row.strongest);
    const amplitude = 10 ** ((away < 0 ? 6 * away : -3 * away) / 20) * (0.5 + chance());
    const t60 = row.lowT60 * (row.highT60 / row.lowT60) ** height;
    return { hz: hz as Mode["hz"], peak: amplitude, t60, phase: 2 * Math.PI * chance() };
  });
  const whole = Math.sqrt(modes.reduce((sum, mode) => sum + mode.peak * mode.peak, 0));
  return modes.map((mode) => ({ ...mode, peak: (mode.peak * peak) / whole }));
}
