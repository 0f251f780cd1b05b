import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readMusicXml, type ScoreReading } from "../../../src/files/musicxml/read-musicxml.ts";
import { writeMusicXml } from "../../../src/files/musicxml/write-musicxml.ts";
import { melodyOfScore } from "../../../src/files/score/melody-of-score.ts";
import { scoreOfMelody } from "../../../src/files/score/score-of-melody.ts";
import { formatPitch, readMelody } from "../../../src/theory/index.ts";
import { notesByMusicXmlIo } from "../support/readers.ts";
import { notesOf } from "../support/scores.ts";
import { dataText, hasData, sharedData } from "../support/shared-data.ts";

function read(text: string): ScoreReading {
  const reading = readMusicXml(text);
  if (!reading.ok) throw new Error(reading.problem.message);
  return reading.value;
}

const problemOf = (text: string) => {
  const reading = readMusicXml(text);
  if (reading.ok) throw new Error("was read");
  return reading.problem;
};

/** A score of one part with the given content of its bars. */
function onePart(...bars: readonly string[]): string {
  const measures = bars.map((bar, index) => `<measure number="${index + 1}">${bar}</measure>`);
  return `<score-partwise version="4.0"><part-list><score-part id="P1"><part-name>Alto</part-name>
    </score-part></part-list><part id="P1">${measures.join("")}</part></score-partwise>`;
}

const FOUR = "<attributes><divisions>2</divisions></attributes>";
const note = (step: string, octave: number, duration: number, more = ""): string =>
  `<note><pitch><step>${step}</step><octave>${octave}</octave></pitch><duration>${duration}</duration>${more}</note>`;

const names = ({ score }: ScoreReading, part = 0): string =>
  score.parts[part]!.notes.map(
    ({ onset, duration, pitch }) => `${onset}+${duration} ${formatPitch(pitch)}`,
  ).join(", ");

const tunes = hasData("melody/tunes") ? readdirSync(`${sharedData}/melody/tunes`) : [];
const edges = hasData("musicxml/edge")
  ? readdirSync(`${sharedData}/musicxml/edge`).filter((name) => name.startsWith("tt-"))
  : [];

describe.skipIf(tunes.length === 0)("public-domain lead sheets of the OpenEWLD collection", () => {
  it.each(tunes)("%s is heard as an independent reader hears it", (name) => {
    const text = dataText(`melody/tunes/${name}`);
    expect(notesOf(read(text).score).map(([, ...rest]) => rest)).toEqual(
      notesByMusicXmlIo(text).map(([, ...rest]) => rest),
    );
  });

  it.each(tunes)("%s comes back exactly from our own file", (name) => {
    const { score } = read(dataText(`melody/tunes/${name}`));
    expect(read(writeMusicXml(score)).score).toEqual(score);
  });

  it.each(tunes)("%s gives a melody with its chords, and the melody its lead sheet", (name) => {
    const found = melodyOfScore(read(dataText(`melody/tunes/${name}`)).score);
    if (!found.ok) throw new Error(found.problems[0]!.message);
    const { melody } = found.value;
    expect(readMelody(melody).ok).toBe(true);
    expect(melody.changes.length).toBeGreaterThan(5);
    const again = melodyOfScore(read(writeMusicXml(scoreOfMelody(melody))).score);
    expect(again).toEqual({ ok: true, value: { melody, remarks: [] } });
  });

  it("Shenandoah begins with its upbeat, C F F F G", () => {
    const { score } = read(dataText("melody/tunes/shenandoah.musicxml"));
    expect(score.bars[0]).toMatchObject({ isPickup: true });
    const first = score.parts[0]!.notes.slice(0, 5).map(({ pitch }) => pitch.letter);
    expect(first.join(" ")).toBe("C F F F G");
  });
});

describe.skipIf(edges.length === 0)("small files of a published test set", () => {
  it.each(edges.filter((name) => !/partial|multivoice|two-voices|grand/.test(name)))(
    "%s is heard as an independent reader hears it",
    (name) => {
      const text = dataText(`musicxml/edge/${name}`);
      expect(notesOf(read(text).score)).toEqual(notesByMusicXmlIo(text));
    },
  );

  it("voices become lines of their own, and so does a chord of which only some notes are tied", () => {
    const lines = (name: string): readonly number[] =>
      read(dataText(`musicxml/edge/${name}`)).score.parts.map(({ notes }) => notes.length);
    expect(lines("tt-two-voices.xml")).toEqual([2, 4]);
    expect(lines("tt-multivoice-tie.xml")).toEqual([4, 2]);
    expect(lines("tt-chord-partial-tie.xml")).toEqual([5, 1]);
    expect(lines("tt-piano-grand-staff.xml")).toEqual([1, 1]);
  });

  it("a chain of ties over three bars is one note", () => {
    expect(names(read(dataText("musicxml/edge/tt-tied-notes-chain.xml")))).toMatch(/^0\+12 \w+$/);
  });
});

describe.skipIf(!hasData("musicxml/suite-k"))("the articulations of a published test suite", () => {
  it("are read by name, and come back from our own file", () => {
    const { score } = read(dataText("musicxml/suite-k/k001a_Articulations.xml"));
    const marks = score.parts[0]!.notes.flatMap((each) => each.marks ?? []);
    for (const mark of [
      "accent",
      "marcato",
      "staccato",
      "tenuto",
      "staccatissimo",
      "scoop",
      "plop",
      "doit",
      "fall",
      "breath",
    ] as const)
      expect(marks).toContain(mark);
    expect(read(writeMusicXml(score)).score).toEqual(score);
  });
});

describe("written pitch", () => {
  // Source: W3C MusicXML 4.0, transpose: what is added to written to get sounding.
  it.each([
    ["B flat instrument", "<diatonic>-1</diatonic><chromatic>-2</chromatic>", "Bb3"],
    ["E flat instrument", "<diatonic>-5</diatonic><chromatic>-9</chromatic>", "Eb3"],
    ["octave apart", "<chromatic>-2</chromatic><octave-change>-1</octave-change>", "Bb2"],
    [
      "octave counted in, as some files have it",
      "<diatonic>-8</diatonic><chromatic>-14</chromatic>",
      "Bb2",
    ],
    ["without the steps", "<chromatic>-9</chromatic>", "Eb3"],
  ])("of a part with %s becomes sounding pitch", (_, interval, expected) => {
    const head = `<attributes><divisions>1</divisions><transpose>${interval}</transpose></attributes>`;
    expect(names(read(onePart(head + note("C", 4, 4))))).toBe(`0+4 ${expected}`);
  });

  it("takes key and chord symbols along", () => {
    const head = `<attributes><divisions>1</divisions><key><fifths>3</fifths></key>
      <transpose><diatonic>-5</diatonic><chromatic>-9</chromatic></transpose></attributes>
      <harmony><root><root-step>A</root-step></root><kind>dominant</kind>
      <bass><bass-step>E</bass-step></bass></harmony>`;
    const { score } = read(onePart(head + note("A", 4, 4)));
    expect(score.harmonies).toEqual([{ onset: 0, symbol: "C7/G" }]);
    expect(score.bars[0]!.key).toEqual({ tonic: { letter: "C", alteration: 0 }, mode: "major" });
  });

  it("of a chord read enharmonically comes back as the plain chord", () => {
    const head = `<attributes><divisions>1</divisions>
      <transpose><diatonic>-5</diatonic><chromatic>-9</chromatic></transpose></attributes>
      <harmony><root><root-step>A</root-step><root-alter>-1</root-alter></root><kind>dominant</kind></harmony>`;
    expect(read(onePart(head + note("A", 4, 4))).score.harmonies[0]!.symbol).toBe("B7");
  });
});

describe("what a file may hold", () => {
  it("tempo, dynamics, words and rehearsal marks are read", () => {
    const direction = (body: string, more = "") =>
      `<direction><direction-type>${body}</direction-type>${more}</direction>`;
    const { score } = read(
      onePart(
        FOUR +
          direction("<words>Ballad</words>", '<sound tempo="66"/>') +
          direction("<rehearsal>A</rehearsal>") +
          direction("<dynamics><pp/></dynamics>") +
          direction("<words>warm</words>") +
          note("C", 5, 8),
      ),
    );
    expect(score).toMatchObject({ tempo: 66, style: "Ballad", bars: [{ rehearsal: "A" }] });
    expect(score.parts[0]!.directions).toEqual([
      { onset: 0, dynamic: "pp" },
      { onset: 0, words: "warm" },
    ]);
  });

  it("a dotted metronome mark is counted in quarters", () => {
    const mark = `<direction><direction-type><metronome><beat-unit>quarter</beat-unit><beat-unit-dot/>
      <per-minute>60</per-minute></metronome></direction-type></direction>`;
    expect(read(onePart(FOUR + mark + note("C", 5, 8))).score.tempo).toBe(90);
  });

  it("grace notes, cues, unpitched notes and jumps are left out, and it says so", () => {
    const grace = "<note><grace/><pitch><step>C</step><octave>4</octave></pitch></note>";
    const cue =
      "<note><cue/><pitch><step>C</step><octave>4</octave></pitch><duration>4</duration></note>";
    const drum = "<note><unpitched/><duration>4</duration></note>";
    const jump =
      "<direction><direction-type><words>D.C. al Fine</words></direction-type></direction>";
    const reading = read(onePart(FOUR + grace + cue + drum + jump, note("D", 4, 8)));
    expect(names(reading)).toBe("8+8 D4");
    expect(reading.remarks).toEqual([
      "Bar 1, Alto: grace notes were left out.",
      "Bar 1, Alto: cue notes were left out.",
      "Bar 1, Alto: notes without a pitch were left out.",
      "Bar 1, Alto: jumps such as D.C. are not followed.",
    ]);
  });

  it("divisions that change inside a part are brought to one", () => {
    const reading = read(
      onePart(
        FOUR + note("C", 4, 8),
        "<attributes><divisions>3</divisions></attributes>" + note("D", 4, 12),
      ),
    );
    expect(reading.score.division).toBe(6);
    expect(names(reading)).toBe("0+24 C4, 24+24 D4");
  });

  it("a chord symbol that cannot be read is named with its bar", () => {
    const odd = "<harmony><root><root-step>C</root-step></root><kind>Neapolitan</kind></harmony>";
    expect(read(onePart(FOUR + odd + note("C", 4, 8))).remarks).toEqual([
      "Bar 1, Alto: a chord symbol could not be read and was left out.",
    ]);
  });
});

describe("what is refused, in one sentence that names the bar", () => {
  it.each([
    ["another kind of XML", "<html></html>", "musicxml-root"],
    ["a score ordered by time", "<score-timewise/>", "musicxml-timewise"],
    ["a score without bars", "<score-partwise><part id='P1'/></score-partwise>", "musicxml-empty"],
    [
      "a note without a length",
      onePart(FOUR + note("C", 4, 8).replace(/<duration>8<\/duration>/, "")),
      "musicxml-duration",
    ],
    [
      "a length that is not finite",
      onePart(FOUR + note("C", 4, 8).replace(">8<", ">1e9<")),
      "musicxml-duration",
    ],
    ["a pitch that is none", onePart(FOUR + note("H", 4, 8)), "musicxml-pitch"],
    ["a pitch nobody hears", onePart(FOUR + note("C", 99, 8)), "musicxml-pitch"],
    [
      "a quarter tone",
      onePart(FOUR + note("C", 4, 8).replace("<octave>", "<alter>0.5</alter><octave>")),
      "musicxml-pitch",
    ],
    [
      "a step back before the bar",
      onePart(FOUR + "<backup><duration>2</duration></backup>"),
      "musicxml-backup",
    ],
    [
      "divisions without end",
      onePart("<attributes><divisions>99999989</divisions></attributes>" + note("C", 4, 8)),
      "musicxml-division",
    ],
  ])("%s", (_, text, code) => {
    const problem = problemOf(text);
    expect(problem.code).toBe(code);
    expect(problem.message).toMatch(/^[A-Z][^\n]*\.$/);
    if (/duration|pitch|backup/.test(code)) expect(problem.message).toContain("Bar 1, Alto");
  });

  it("too many bars", () => {
    const bars = Array.from({ length: 5001 }, () => "");
    expect(problemOf(onePart(...bars)).code).toBe("musicxml-too-large");
  });
});
