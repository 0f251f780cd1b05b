import type { Seconds } from "../base/index.ts";
import type { Dynamic } from "../band/index.ts";
import {
  integratedLoudness,
  NoteMaker,
  planVoicing,
  renderPlan,
  truePeak,
  type Manner,
} from "../audio/index.ts";
import { encodeWav, type WavFormat } from "../files/index.ts";
import type { Voicing } from "../voicing/index.ts";

/** How a voicing is to be heard. */
export interface Hearing {
  readonly dynamic: Dynamic;
  readonly manner: Manner;
  readonly seconds: Seconds;
  readonly format: WavFormat;
}

/** A file's bytes and what was measured on them. */
export interface Recording {
  readonly bytes: Uint8Array;
  readonly sampleRate: number;
  readonly seconds: number;
  /** Integrated loudness; null when it is too short for one. */
  readonly lufs: number | null;
  readonly truePeakDb: number | null;
}

/**
 * Renders a voicing as the page sounds it, room and limiter included.
 * @param voicing - who sounds what
 * @param hearing - dynamic, manner, length, format
 * @returns a WAV file and its measures
 */
export function renderVoicing(voicing: Voicing, hearing: Hearing): Recording {
  const { left, right, sampleRate } = renderPlan(planVoicing(voicing, hearing), {
    maker: new NoteMaker(),
  });
  const { format } = hearing;
  return {
    bytes: encodeWav([left, right], { sampleRate, format }),
    sampleRate,
    seconds: left.length / sampleRate,
    lufs: finite(integratedLoudness([left, right], sampleRate)),
    truePeakDb: finite(truePeak([left, right])),
  };
}

const finite = (value: number): number | null =>
  Number.isFinite(value) ? Math.round(value * 100) / 100 : null;
