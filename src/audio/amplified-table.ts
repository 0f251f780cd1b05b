import type { Db } from "../base/index.ts";

/**
 * What the amplifier adds for each player beside the horns: a plucked bass or a piano without one is
 * lost behind thirteen horns. Set so that each lies some 10 to 15 LU under five horns at mf.
 * Source: judgement.
 */
export const amplifiedDb: Readonly<Record<"bass" | "piano" | "drums", Db>> = Object.freeze({
  bass: 18 as Db,
  piano: 10 as Db,
  drums: 6 as Db,
});

/**
 * What is added on top in a phrase, where a whole band plays and the three are to carry the time:
 * measured over the shout, bass, piano and drums then lie some 10 to 14 LU under the horns together.
 * Source: judgement.
 */
export const carriedDb: Readonly<Record<"bass" | "piano" | "drums", Db>> = Object.freeze({
  bass: 3 as Db,
  piano: 3 as Db,
  drums: 7 as Db,
});
