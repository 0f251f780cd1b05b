import type { Measured, Metric, Situation } from "../../src/metrics/index.ts";
import type { Dynamic } from "../../src/band/index.ts";
import { chordOf, pitch, voicingOf } from "../voicing/techniques/questions.ts";

/** F13 under D5 with a bass player. */
export function situation(dynamic: Dynamic = "f"): Situation {
  return { chord: chordOf("F13"), lead: pitch("D5"), dynamic, bassSounds: true };
}

/** One metric on a voicing such as "tpt1=D5 alto1=A4". */
export function read(metric: Metric, voicing: string, dynamic: Dynamic = "f"): Measured {
  return metric.measure(voicingOf(voicing), situation(dynamic));
}

/** Nobody plays. */
export function readSilence(metric: Metric): Measured {
  return metric.measure({ placements: [] }, situation());
}
