// @vitest-environment jsdom
// Covers src/files/score/score-of-phrase.ts, phrase-files.ts and melody-frame.ts
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { instrumentOf, soundingMinusWritten } from "../../../src/band/index.ts";
import {
  melodyOfScore,
  musicXmlOfPhrase,
  readMusicXml,
  readScoreFile,
  scoreOfPhrase,
  writeMusicXml,
  writeMxl,
  type ScoreModel,
} from "../../../src/files/index.ts";
import { spelledToMidi } from "../../../src/theory/index.ts";
import { randomMelodies } from "../../phrase/support/random-melodies.ts";
import { notesByMusicXmlIo, notesByOsmd, type HeardNote } from "../support/readers.ts";
import { scoreText } from "../support/score-text.ts";
import { notesOf } from "../support/scores.ts";
import { voicedDemo, voicedMelody, type Voiced } from "../support/voiced-phrases.ts";

const demos = (["shout", "ballad"] as const).map((id) => [id, voicedDemo(id)] as const);

/** What the search placed, in quarters: worked out without the score. */
function placed({ phrase, performance }: Voiced): readonly HeardNote[] {
  const { division } = phrase.melody;
  const rounded = (quarters: number): number => Math.round(quarters * 10_080) / 10_080;
  return performance.parts
    .flatMap(({ player, notes }) =>
      notes.map(({ onset, duration, sounding }): HeardNote => [
        player.id,
        rounded(onset / division),
        rounded(duration / division),
        sounding,
      ]),
    )
    .sort((a, b) => (a[0] < b[0] ? -1 : a[0] > b[0] ? 1 : a[1] - b[1] || a[3] - b[3]));
}

const shifts = ({ parts }: ScoreModel) =>
  parts.map(({ id, instrument }) => ({
    id,
    soundingMinusWritten: soundingMinusWritten(instrumentOf(instrument!).id),
  }));

function readBack(text: string): ScoreModel {
  const read = readMusicXml(text);
  if (!read.ok) throw new Error(read.problem.message);
  expect(read.value.remarks).toEqual([]);
  return read.value.score;
}

/** Two readers of other makers and our own hear what was placed. */
function expectAllHear(one: Voiced): void {
  const score = scoreOfPhrase(one.phrase, one.performance);
  const text = musicXmlOfPhrase(one.phrase, one.performance);
  const expected = placed(one);
  expect(notesOf(score)).toEqual(expected);
  expect(notesByMusicXmlIo(text)).toEqual(expected);
  expect(notesByOsmd(text, shifts(score))).toEqual(expected);
  const concert = writeMusicXml(score, { pitch: "concert" });
  expect(readBack(concert)).toEqual(score);
  expect(notesOf(readBack(text))).toEqual(expected);
}

describe.each(demos)("the %s as a score", (id, one) => {
  const { phrase, performance } = one;
  const score = scoreOfPhrase(phrase, performance);

  it("stays as it was judged", async () => {
    await expect(scoreText(score)).toMatchFileSnapshot(`../../golden/files/phrase-${id}.txt`);
  });

  it("is heard by two readers of other makers and by our own as it was voiced", () => {
    expectAllHear(one);
  });

  it("has a staff for each player in score order, dynamics, tempo, style and chords", () => {
    expect(score.parts.map(({ id: part }) => part)).toEqual(
      "alto1 alto2 tenor1 tenor2 bari tpt1 tpt2 tpt3 tpt4 tbn1 tbn2 tbn3 btbn".split(" "),
    );
    expect(score.tempo).toBe(phrase.melody.tempo);
    expect(score.style).toBe(id === "shout" ? "Swing" : "Ballad");
    expect(score.harmonies).toHaveLength(phrase.changes.length);
    for (const { notes, directions } of score.parts)
      if (notes.length > 0) expect(directions[0]).toMatchObject({ onset: notes[0]!.onset });
  });

  it("brackets the three sections and beams its eighths", () => {
    const text = writeMusicXml(score);
    expect(text.match(/<part-group type="start"/g)).toHaveLength(3);
    expect(text).toContain('<beam number="1">begin</beam>');
  });
});

it("marks swing by the ratio of the tempo, and none where eighths are even", () => {
  const [[, shout], [, ballad]] = demos as [(typeof demos)[0], (typeof demos)[0]];
  // At 168 the second eighth keeps 100 ms of 357: Friberg & Sundström 2002.
  expect(scoreOfPhrase(shout.phrase, shout.performance).swing).toEqual({ first: 13, second: 5 });
  expect(scoreOfPhrase(ballad.phrase, ballad.performance).swing).toBeUndefined();
});

describe("what is written by choice", () => {
  const shout = demos[0]![1];
  const { phrase, performance } = shout;

  it("is one player's part with the changes over it", () => {
    const options = { playerIds: ["alto1"], chordsOver: "every-part" } as const;
    const text = musicXmlOfPhrase(phrase, performance, options);
    expect(text.match(/<part id/g)).toHaveLength(1);
    expect(text).toContain("<harmony");
  });

  it("has piano and bass below the horns where asked, heard as they accompany", () => {
    const score = scoreOfPhrase(phrase, performance, { rhythm: ["piano", "bass"] });
    expect(score.parts.slice(-2).map(({ id }) => id)).toEqual(["piano", "bass"]);
    const pitched = performance.rhythm.filter(({ sound }) => sound.kind === "pitched");
    const written = score.parts.slice(-2).flatMap(({ notes }) => notes);
    expect(written).toHaveLength(pitched.length);
    expect(readBack(writeMusicXml(score, { pitch: "concert" }))).toEqual(score);
  });

  it("refuses a score of nobody", () =>
    expect(() => scoreOfPhrase(phrase, performance, { playerIds: [] })).toThrow(RangeError));

  it("comes back from a compressed file, and the same bytes each time", () => {
    const text = musicXmlOfPhrase(phrase, performance);
    const bytes = writeMxl(text);
    expect(writeMxl(text)).toEqual(bytes);
    const read = readScoreFile(bytes);
    expect(read.ok && notesOf(read.value.score)).toEqual(placed(shout));
    // W3C MusicXML 4.0: the media type stands first and unpacked, so that files are told by it.
    const head = new TextDecoder("latin1").decode(bytes.subarray(30, 90));
    expect(head).toContain("mimetypeapplication/vnd.recordare.musicxml");
  });
});

describe("any phrase as a score", () => {
  it("is heard by two readers of other makers and by our own as it was voiced", () => {
    fc.assert(
      fc.property(randomMelodies, (melody) => expectAllHear(voicedMelody(melody))),
      { seed: 7, numRuns: 40 },
    );
  });

  it("keeps its lead as a melody that can be read again", () => {
    fc.assert(
      fc.property(randomMelodies, (melody) => {
        const { phrase, performance } = voicedMelody(melody);
        const score = scoreOfPhrase(phrase, performance);
        const { parts } = score;
        const tops = parts.filter(({ notes }) => notes.length > 0);
        const read = melodyOfScore({ ...score, parts: tops.slice(0, 1) });
        expect(read.ok).toBe(true);
        if (!read.ok) return;
        expect(read.value.melody.pickup).toBe(phrase.melody.pickup);
        expect(read.value.melody.length).toBe(phrase.melody.length);
        expect(read.value.melody.style).toBe(phrase.melody.style);
      }),
      { seed: 7, numRuns: 40 },
    );
  });

  it("sounds the melody in every note of its lead", () => {
    for (const [, { phrase, performance }] of demos) {
      const score = scoreOfPhrase(phrase, performance);
      for (const { moment } of phrase.moments) {
        const heard = score.parts.flatMap(({ notes }) =>
          notes.filter(
            ({ onset, duration }) => onset <= moment.onset && moment.onset < onset + duration,
          ),
        );
        expect(heard.some(({ pitch }) => spelledToMidi(pitch) === moment.lead)).toBe(true);
      }
    }
  });
});
