import type { Db, DbSpl, Ratio } from "../base/index.ts";

/**
 * Power that a level stands for, relative to the level's own reference.
 * @param level - level in dB
 * @returns power ratio, 1 at 0 dB
 * @example dbToPower(20 as Db) // 100
 */
export function dbToPower(level: Db | DbSpl): Ratio {
  return 10 ** (level / 10);
}

/**
 * Level of a power ratio.
 * @param power - power relative to the reference, 0 or more
 * @returns level in dB; minus infinity for no power
 * @example powerToDb(100) // 20
 */
export function powerToDb(power: Ratio): Db {
  return (10 * Math.log10(power)) as Db;
}

/**
 * Level of independent sounds together: powers add, pressures do not.
 * @param levels - levels in dB SPL, any order
 * @returns level of the sum; minus infinity for none
 * @example sumLevels([60, 60]) // 63.01
 */
export function sumLevels(levels: readonly DbSpl[]): DbSpl {
  return powerToDb(levels.reduce((sum, level) => sum + dbToPower(level), 0)) as number as DbSpl;
}
