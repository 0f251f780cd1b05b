import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  musicXmlOfPhrase,
  readMelodyFile,
  readMusicXml,
  writeAbc,
  readAbc,
} from "../../../src/files/index.ts";
import { heardNotes, readMelody, spelledToMidi, type Melody } from "../../../src/theory/index.ts";
import { notesByMusicXmlIo } from "../support/readers.ts";
import { dataBytes, dataText, hasData, sharedData } from "../support/shared-data.ts";
import { voicedMelody } from "../support/voiced-phrases.ts";

// Traditional tunes as lead sheets with chord symbols, from an open collection (OpenEWLD).
const folder = "melody/tunes";
const tunes = hasData(folder) ? readdirSync(`${sharedData}/${folder}`) : ["none"];

async function melodyIn(name: string): Promise<Melody> {
  const read = await readMelodyFile(dataBytes(`${folder}/${name}`));
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join(" "));
  return read.value.melody;
}

const soundsOf = (melody: Melody): readonly (readonly number[])[] =>
  heardNotes(melody).map(({ onset, duration, sounding }) => [
    onset / melody.division,
    duration / melody.division,
    sounding,
  ]);

describe.skipIf(!hasData(folder)).each(tunes)("the traditional tune in %s", (name) => {
  it("is read as a reader of another maker hears it, repeats apart", async () => {
    const melody = await melodyIn(name);
    const heard = notesByMusicXmlIo(dataText(`${folder}/${name}`));
    const tops = new Map(heard.map(([, onset, , midi]) => [onset, midi]));
    const own = soundsOf(melody);
    expect(readMelody(melody).ok).toBe(true);
    // Where repeats had to be written out, the first pass is what stands on paper.
    const pairs = own.filter(([onset]) => tops.has(onset!));
    expect(pairs.length).toBeGreaterThan(0.5 * tops.size);
    const firstPass = own.slice(0, Math.min(own.length, 20));
    expect(firstPass.map(([, , midi]) => midi)).toEqual(
      [...tops].slice(0, firstPass.length).map(([, midi]) => midi),
    );
  });

  it("is voiced, exported and read back with its melody on top and every note in place", async () => {
    const voiced = voicedMelody(await melodyIn(name));
    const { phrase, performance, answer } = voiced;
    const read = readMusicXml(musicXmlOfPhrase(phrase, performance));
    if (!read.ok) throw new Error(read.problem.message);
    const { parts, division } = read.value.score;
    for (const { player, notes } of performance.parts)
      expect(
        parts
          .find(({ id }) => id === player.id)!
          .notes.map(({ onset, duration, pitch }) => [
            onset / division,
            duration / division,
            spelledToMidi(pitch),
          ]),
      ).toEqual(
        notes.map(({ onset, duration, sounding }) => [
          onset / phrase.melody.division,
          duration / phrase.melody.division,
          sounding,
        ]),
      );
    for (const { moment, pitches } of answer.moments)
      expect(Math.max(...pitches)).toBe(moment.lead);
  });

  it("comes back from ABC as it went there", async () => {
    const melody = await melodyIn(name);
    const read = await readAbc(writeAbc(melody));
    if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join(" "));
    expect(soundsOf(read.value.melody)).toEqual(soundsOf(melody));
    expect(read.value.melody.changes).toHaveLength(melody.changes.length);
  });
});
