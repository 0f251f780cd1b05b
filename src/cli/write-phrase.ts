import { closeSync, openSync, writeSync } from "node:fs";
import { fail, ok, quantity, type Db, type Result } from "../base/index.ts";
import { NoteMaker, planPhrase, renderBlocks } from "../audio/index.ts";
import { midiOfPhrase, musicXmlOfPhrase, renderWav, writeMxl } from "../files/index.ts";
import type { BlockRenderer } from "../files/index.ts";
import type { Phrase, PhrasePerformance, RhythmPart } from "../phrase/index.ts";
import { beside, kindOf, reasonOf, writeFile } from "./files.ts";
import type { Request } from "./option-types.ts";

/** A phrase that is to be written, and how. */
export interface PhraseOutput {
  readonly phrase: Phrase;
  readonly performance: PhrasePerformance;
  readonly request: Request;
}

/** Kinds of files that a phrase is written as. */
export const phraseKinds = ["musicxml", "mxl", "mid", "wav"] as const;

/**
 * Writes a phrase to a file, and with stems each player to one beside it.
 * @param path - the file; the end of its name says what it is
 * @param output - phrase, performance, what was asked
 * @returns the files written, or the problem
 */
export async function writePhrase(
  path: string,
  output: PhraseOutput,
): Promise<Result<readonly string[]>> {
  const kind = kindOf(path);
  if (kind === "wav") return writeSound(path, output);
  const written = writeFile(path, contentOf(kind, output));
  return written.ok ? ok([path]) : written;
}

function contentOf(kind: string, output: PhraseOutput): Uint8Array | string {
  const { phrase, performance, request } = output;
  const rhythm = rhythmIn(request);
  if (kind === "mid") {
    const timing = request["straight"] === true ? "written" : "played";
    return midiOfPhrase(phrase, performance, { timing, rhythm });
  }
  const pitched = rhythm.filter((part) => part !== "drums");
  const pitch = request["pitch"] === "concert" ? "concert" : "written";
  const text = musicXmlOfPhrase(phrase, performance, { pitch, rhythm: pitched });
  return kind === "mxl" ? writeMxl(text) : text;
}

const everybody: readonly RhythmPart[] = ["bass", "piano", "drums"];

const rhythmIn = (request: Request): readonly RhythmPart[] =>
  everybody.filter((part) => ((request["with"] ?? []) as readonly string[]).includes(part));

async function writeSound(
  path: string,
  { phrase, performance, request }: PhraseOutput,
): Promise<Result<readonly string[]>> {
  const maker = new NoteMaker();
  const silent = everybody.filter((part) => !rhythmIn(request).includes(part));
  const horns = performance.parts
    .filter(({ notes }) => notes.length > 0)
    .map(({ player }) => player.id);
  const all: readonly string[] = [...horns, ...rhythmIn(request)];
  const stems = request["stems"] === true ? all : [];
  const written: string[] = [];
  for (const only of [undefined, ...stems]) {
    const others = only === undefined ? silent : [...silent, ...all.filter((id) => id !== only)];
    const file = only === undefined ? path : beside(path, only);
    const { plan } = planPhrase(phrase, performance, { silentIds: others });
    const done = await streamWav(file, plan, maker);
    if (!done.ok) return done;
    written.push(file);
  }
  return ok(written);
}

/** Piece by piece into the file, so that no whole sound is held. */
async function streamWav(
  path: string,
  plan: Parameters<typeof renderBlocks>[0],
  maker: NoteMaker,
): Promise<Result<boolean>> {
  const render: BlockRenderer = (what, onBlock, { signal }) => {
    for (const block of renderBlocks(what, { maker })) {
      if (signal.aborted) return Promise.resolve(ok(false));
      onBlock(block);
    }
    return Promise.resolve(ok(true));
  };
  let file: number;
  try {
    file = openSync(path, "w");
  } catch (error) {
    return fail("file-not-written", `${path} could not be written (${reasonOf(error)}).`);
  }
  const sink = (bytes: Uint8Array): void => {
    for (let at = 0; at < bytes.length;) at += writeSync(file, bytes, at);
  };
  try {
    const turns = [{ plan, gain: quantity<Db>(0) }];
    return await renderWav(turns, { render, sink, sampleRate: maker.sampleRate });
  } finally {
    closeSync(file);
  }
}
