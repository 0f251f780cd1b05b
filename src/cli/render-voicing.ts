import { quantity, type Db, type Seconds } from "../base/index.ts";
import {
  integratedLoudness,
  levelMatchGain,
  NoteMaker,
  planLoudness,
  plansInTurn,
  planVoicing,
  renderPlan,
  truePeak,
  type PlanOptions,
} from "../audio/index.ts";
import { encodeWav, type WavFormat } from "../files/index.ts";
import type { Voicing } from "../voicing/index.ts";

/** How voicings are to be heard. */
export interface Hearing extends PlanOptions {
  readonly format: WavFormat;
  /** Brings every voicing to one loudness, so that louder does not win by being louder. */
  readonly isMatched?: boolean;
}

/** A file's bytes and what was measured on them. */
export interface Recording {
  readonly bytes: Uint8Array;
  readonly sampleRate: number;
  readonly seconds: number;
  /** Integrated loudness; null when it is too short for one. */
  readonly lufs: number | null;
  readonly truePeakDb: number | null;
  /** Level change of each voicing against as played. */
  readonly gainsDb: readonly number[];
}

/** Level-matching goes by the three-second sustained sound. */
const MATCH_SECONDS = quantity<Seconds>(3);

/** One for the whole process: what it keeps changes no result. */
let notes: NoteMaker | undefined;

/**
 * Renders voicings in turn as the page sounds them, room and limiter included.
 * @param voicings - who sounds what, in the order of hearing
 * @param hearing - dynamic, manner, length, company, level-matching, format
 * @returns a WAV file and its measures
 */
export function renderVoicings(voicings: readonly Voicing[], hearing: Hearing): Recording {
  const maker = (notes ??= new NoteMaker());
  const turns = voicings.map((voicing) => ({
    plan: planVoicing(voicing, hearing),
    gain: hearing.isMatched === true ? matchedGain(voicing, hearing, maker) : quantity<Db>(0),
  }));
  const { left, right, sampleRate } = renderPlan(plansInTurn(turns), { maker });
  const { format } = hearing;
  return {
    bytes: encodeWav([left, right], { sampleRate, format }),
    sampleRate,
    seconds: left.length / sampleRate,
    lufs: finite(integratedLoudness([left, right], sampleRate)),
    truePeakDb: finite(truePeak([left, right])),
    gainsDb: turns.map(({ gain }) => Math.round(gain * 100) / 100),
  };
}

function matchedGain(voicing: Voicing, hearing: Hearing, maker: NoteMaker): Db {
  const plan = planVoicing(voicing, { ...hearing, manner: "sustained", seconds: MATCH_SECONDS });
  return levelMatchGain(planLoudness(plan, maker));
}

const finite = (value: number): number | null =>
  Number.isFinite(value) ? Math.round(value * 100) / 100 : null;
