import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { quantity } from "../base/index.ts";
import { firstInquiry, readInquiry, referencePoints } from "../explore/index.ts";
import { voicingOf, type Question, type Voicing } from "../voicing/index.ts";
import { chosenCells } from "./chosen-cells.ts";
import { renderVoicing } from "./render-voicing.ts";
import { sampleTable, type SampleRow } from "./sample-table.ts";

/**
 * Renders the listening examples again.
 * @param words - where to; "samples-audio" unless given
 * @returns exit code 0
 */
export async function main([folder = "samples-audio"]: readonly string[]): Promise<number> {
  const reading = readInquiry(firstInquiry());
  if (!reading.ok) throw new Error("the first question cannot be read");
  mkdirSync(folder, { recursive: true });
  for (const row of sampleTable) {
    const recording = renderVoicing(voicingFor(row, reading.question), {
      dynamic: reading.question.dynamic,
      manner: row.manner,
      seconds: quantity(row.seconds),
      format: "pcm16",
    });
    const file = join(folder, `${row.name}.wav`);
    writeFileSync(file, recording.bytes);
    process.stdout.write(`${file}: ${recording.seconds.toFixed(1)} s, ${recording.lufs} LUFS\n`);
  }
  return 0;
}

function voicingFor({ voicing, notes, name }: SampleRow, question: Question): Voicing {
  if (voicing === "by the book") {
    const [first] = referencePoints(question);
    if (first === undefined) throw new Error(`${name}: no construction by section`);
    return first.report.voicing;
  }
  const wanted = { layer: voicing, limit: 1, ...(notes === undefined ? {} : { notes }) };
  const cells = chosenCells(question, wanted);
  const [best] = cells.ok ? cells.value : [];
  if (best === undefined) throw new Error(`${name}: no such voicing`);
  return voicingOf(question, best);
}
