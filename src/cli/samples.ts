import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { quantity, type Seconds } from "../base/index.ts";
import type { Answered } from "./own-voicing.ts";
import { renderVoicings, type Recording } from "./render-voicing.ts";
import { findPair } from "./sample-finders.ts";
import { measuresOf, sourcesPage, unmetClaims, type Sample } from "./sample-sources.ts";
import { samplePairs, type SamplePair } from "./sample-table.ts";

/** Sustained so long; the room rings on after it. */
const SECONDS = quantity<Seconds>(2.7);

/**
 * Finds, measures and renders the listening examples again, and writes down where they come from.
 * @param words - where to; "samples-audio" unless given
 * @returns exit code 0; 1 when a pair is no longer what it is said to be, and then writes nothing
 */
export async function main([folder = "samples-audio"]: readonly string[]): Promise<number> {
  const pairs = samplePairs.map((pair) => ({ pair, samples: samplesOf(pair) }));
  const unmet = pairs.flatMap(({ pair, samples }) => unmetClaims(pair, samples));
  if (unmet.length > 0) {
    process.stderr.write(`${unmet.join("\n")}\n`);
    return 1;
  }
  mkdirSync(folder, { recursive: true });
  for (const { name, recording } of pairs.flatMap(({ samples }) => samples)) {
    const file = join(folder, `${name}.wav`);
    writeFileSync(file, recording.bytes);
    const { seconds, lufs, truePeakDb } = recording;
    process.stdout.write(`${file}: ${seconds.toFixed(1)} s, ${lufs} LUFS, ${truePeakDb} dBTP\n`);
  }
  writeFileSync(join(folder, "SOURCES.md"), sourcesPage(pairs));
  return 0;
}

function samplesOf(pair: SamplePair): readonly [Sample, Sample] {
  const [first, second] = findPair(pair);
  const sample = (name: string, answered: Answered): Sample => ({
    name,
    answered,
    measures: measuresOf(answered),
    recording: sampleRecording(answered),
  });
  return [sample(pair.names[0], first), sample(pair.names[1], second)];
}

/**
 * Renders one listening example.
 * @param answered - the voicing and its question
 * @returns the file's bytes and measures
 */
export function sampleRecording({ voicing, question }: Answered): Recording {
  return renderVoicings([voicing], {
    dynamic: question.dynamic,
    manner: "sustained",
    seconds: SECONDS,
    format: "pcm16",
    isMatched: true,
  });
}
