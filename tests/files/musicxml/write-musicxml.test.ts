// @vitest-environment jsdom
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readMusicXml } from "../../../src/files/musicxml/read-musicxml.ts";
import { writeMusicXml } from "../../../src/files/musicxml/write-musicxml.ts";
import type { ScoreModel } from "../../../src/files/score/score-model.ts";
import { scoreOfVoicings } from "../../../src/files/score/score-of-voicings.ts";
import { spelledToMidi } from "../../../src/theory/index.ts";
import { notesByMusicXmlIo, notesByOsmd } from "../support/readers.ts";
import { closeB7, examples, notesOf, scores, shortPhrase } from "../support/scores.ts";

/** Semitones that sounding lies above written. Source: W3C MusicXML 4.0 examples and handbooks. */
const soundingMinusWritten: Readonly<Record<string, number>> = {
  trumpet: -2,
  flugelhorn: -2,
  horn: -7,
  "soprano-sax": -2,
  "alto-sax": -9,
  "tenor-sax": -14,
  "baritone-sax": -21,
  clarinet: -2,
  "bass-clarinet": -14,
  "double-bass": -12,
};

function shifts({ parts }: ScoreModel, pitch: "written" | "concert") {
  return parts.map(({ id, instrument }) => {
    const shift = soundingMinusWritten[instrument ?? ""] ?? 0;
    const isShown = pitch === "written" || shift === -12;
    return { id, soundingMinusWritten: isShown ? shift : 0 };
  });
}

function read(text: string): ScoreModel {
  const reading = readMusicXml(text);
  if (!reading.ok) throw new Error(reading.problem.message);
  expect(reading.value.remarks).toEqual([]);
  return reading.value.score;
}

/** A score by what sounds: spellings replaced by MIDI numbers and pitch classes. */
function bySound(score: ScoreModel): unknown {
  return {
    ...score,
    harmonies: score.harmonies.map(({ onset }) => onset),
    bars: score.bars.map((bar) => ({ ...bar, key: bar.key === null })),
    parts: score.parts.map((part) => ({
      ...part,
      notes: part.notes.map((note) => ({ ...note, pitch: spelledToMidi(note.pitch) })),
    })),
  };
}

describe("two independent readers", () => {
  it.each(examples)("hear in %s what the score sounds, transposed", (_, score) => {
    const text = writeMusicXml(score);
    expect(notesByMusicXmlIo(text)).toEqual(notesOf(score));
    expect(notesByOsmd(text, shifts(score, "written"))).toEqual(notesOf(score));
  });

  it.each(examples)("hear in %s what the score sounds, at concert pitch", (_, score) => {
    const text = writeMusicXml(score, { pitch: "concert" });
    expect(notesByMusicXmlIo(text)).toEqual(notesOf(score));
    expect(notesByOsmd(text, shifts(score, "concert"))).toEqual(notesOf(score));
  });

  it("agree on random scores", () => {
    fc.assert(
      fc.property(scores, (score) => {
        const text = writeMusicXml(score);
        expect(notesByMusicXmlIo(text)).toEqual(notesOf(score));
        expect(notesByOsmd(text, shifts(score, "written"))).toEqual(notesOf(score));
      }),
      { seed: 7, numRuns: 40 },
    );
  });
});

describe("our own round trip", () => {
  it.each(examples)("gives %s back exactly at concert pitch", (_, score) => {
    expect(read(writeMusicXml(score, { pitch: "concert" }))).toEqual(score);
  });

  it.each(examples)("gives %s back exactly by sound from transposed parts", (_, score) => {
    expect(bySound(read(writeMusicXml(score)))).toEqual(bySound(score));
  });

  it("keeps the spelling of transposed parts wherever the interval is kept", () => {
    expect(read(writeMusicXml(shortPhrase))).toEqual(shortPhrase);
  });

  it("is exact for random scores", () => {
    fc.assert(
      fc.property(scores, (score) => {
        expect(read(writeMusicXml(score, { pitch: "concert" }))).toEqual(score);
        expect(bySound(read(writeMusicXml(score)))).toEqual(bySound(score));
      }),
      { seed: 7, numRuns: 100 },
    );
  });
});

describe("files as text", () => {
  it.each([
    ["four-horns-written", closeB7, {}],
    ["four-horns-concert", closeB7, { pitch: "concert" }],
  ] as const)("%s stays as it was judged", async (name, voicing, options) => {
    const text = writeMusicXml(scoreOfVoicings([voicing]), options);
    await expect(text).toMatchFileSnapshot(`../../golden/files/${name}.musicxml`);
  });

  it("a phrase stays as it was judged", async () => {
    await expect(writeMusicXml(shortPhrase)).toMatchFileSnapshot(
      "../../golden/files/phrase-written.musicxml",
    );
  });
});

describe("the list of parts", () => {
  // Common practice in scores: a bracket round each section of two and more.
  it("brackets saxes, trumpets and trombones, and leaves a single player alone", () => {
    const text = writeMusicXml(examples[0]![1]);
    const order = [...text.matchAll(/<part-group type="(\w+)"|<score-part id="(\w+)"/g)].map(
      ([, type, id]) => type ?? id,
    );
    const saxes = ["start", "alto1", "alto2", "tenor1", "tenor2", "bari", "stop"];
    expect(order.slice(0, 8)).toEqual([...saxes, "start"]);
    expect(order.filter((each) => each === "start")).toHaveLength(3);
    expect(writeMusicXml(shortPhrase)).not.toContain("part-group");
  });
});
