import tonejs from "@tonejs/midi";
import fc from "fast-check";
import midiFile from "midi-file";
import { describe, expect, it } from "vitest";
import { latin1, variableLength } from "../../../src/files/midi/midi-bytes.ts";
import { readMidi, type MidiFile } from "../../../src/files/midi/read-midi.ts";
import { velocityOf } from "../../../src/files/midi/velocity-table.ts";
import { writeMidi } from "../../../src/files/midi/write-midi.ts";
import type { ScoreModel } from "../../../src/files/score/score-model.ts";
import { playedScore } from "../../../src/files/score/played-score.ts";
import { scoreOfVoicings } from "../../../src/files/score/score-of-voicings.ts";
import { dynamics } from "../../../src/band/index.ts";
import { closeB7, examples, notesOf, scores, shortPhrase, wideF13 } from "../support/scores.ts";
import type { HeardNote } from "../support/readers.ts";
import { dataBytes, hasData } from "../support/shared-data.ts";

const sorted = (notes: readonly HeardNote[]): readonly HeardNote[] =>
  [...notes].sort((a, b) => (a[0] < b[0] ? -1 : a[0] > b[0] ? 1 : a[1] - b[1] || a[3] - b[3]));
const idOf = ({ parts }: ScoreModel, track: number): string => parts[track - 1]!.id;

/** Notes as midi-file lists their events; counted up and paired here. */
function notesByMidiFile(bytes: Uint8Array, score: ScoreModel): readonly HeardNote[] {
  const { header, tracks } = midiFile.parseMidi(bytes);
  return sorted(
    tracks.flatMap((track, index) => {
      let ticks = 0;
      const begun = new Map<number, number>();
      return track.flatMap((event): HeardNote[] => {
        ticks += event.deltaTime;
        if (event.type === "noteOn") begun.set(event.noteNumber, ticks);
        if (event.type !== "noteOff") return [];
        const onset = begun.get(event.noteNumber)!;
        const beat = header.ticksPerBeat!;
        return [[idOf(score, index), onset / beat, (ticks - onset) / beat, event.noteNumber]];
      });
    }),
  );
}

function notesByTone(bytes: Uint8Array, score: ScoreModel): readonly HeardNote[] {
  const midi = new tonejs.Midi(bytes);
  const quarter = midi.header.ppq;
  return sorted(
    // This reader leaves out tracks without notes, so the track is known by its name.
    midi.tracks.flatMap(({ name, notes }) =>
      notes.map((note): HeardNote => [
        score.parts.find((part) => part.name === name)!.id,
        note.ticks / quarter,
        note.durationTicks / quarter,
        note.midi,
      ]),
    ),
  );
}

function read(bytes: Uint8Array): MidiFile {
  const file = readMidi(bytes);
  if (!file.ok) throw new Error(file.problem.message);
  return file.value;
}

const notesByOurs = (bytes: Uint8Array, score: ScoreModel): readonly HeardNote[] => {
  const { tracks, ticksPerQuarter } = read(bytes);
  return sorted(
    tracks.flatMap(({ notes }, index) =>
      notes.map(({ onsetTicks, durationTicks, key }): HeardNote => [
        idOf(score, index),
        onsetTicks / ticksPerQuarter,
        durationTicks / ticksPerQuarter,
        key,
      ]),
    ),
  );
};

describe("readers of other makers and our own", () => {
  it.each(examples)("hear in %s what the score sounds, its repeats played", (_, score) => {
    const bytes = writeMidi(score);
    const expected = notesOf(playedScore(score));
    expect(notesByMidiFile(bytes, score)).toEqual(expected);
    expect(notesByTone(bytes, score)).toEqual(expected);
    expect(notesByOurs(bytes, score)).toEqual(expected);
  });

  it("agree on random scores", () => {
    fc.assert(
      fc.property(scores, (score) => {
        const bytes = writeMidi(score);
        const expected = notesOf(score);
        expect(notesByMidiFile(bytes, score)).toEqual(expected);
        expect(notesByTone(bytes, score)).toEqual(expected);
        expect(notesByOurs(bytes, score)).toEqual(expected);
      }),
      { seed: 7, numRuns: 60 },
    );
  });
});

describe("a MIDI file of ours", () => {
  const bytes = writeMidi(shortPhrase);
  const file = read(bytes);

  it("tells tempo, metre, key and chords, as midi-file reads them too", () => {
    const quarter = file.ticksPerQuarter;
    expect(file.tempos).toEqual([{ ticks: 0, value: Math.round(60_000_000 / 168) }]);
    expect(file.metres).toEqual([{ ticks: 0, value: { beats: 4, beatType: 4 } }]);
    expect(file.keys).toEqual([{ ticks: 0, value: { fifths: -3, isMinor: false } }]);
    expect(file.markers.map(({ ticks, value }) => [ticks / quarter, value])).toEqual([
      [0, "Swing"],
      [1, "A"],
      [1, "Ebmaj7"],
      [3, "C7(b9)"],
      [5, "Fm9/Bb"],
      [9, "A"],
      [9, "Ebmaj7"],
      [11, "C7(b9)"],
      [13, "Fm9/Bb"],
    ]);
    const [first = []] = midiFile.parseMidi(bytes).tracks;
    expect(first.find(({ type }) => type === "keySignature")).toMatchObject({ key: -3, scale: 0 });
    expect(first.find(({ type }) => type === "timeSignature")).toMatchObject({ numerator: 4 });
  });

  it("has a named track a player with General MIDI programmes, and never channel 10", () => {
    const score = scoreOfVoicings([wideF13]);
    const { tracks } = read(writeMidi(score));
    expect(tracks.slice(1).map(({ name }) => name)).toEqual(score.parts.map(({ name }) => name));
    // General MIDI Level 1: 57 trumpet, 58 trombone, 66 alto, 67 tenor, 68 baritone sax.
    expect(tracks.slice(1).map(({ program }) => program)).toEqual([
      66, 66, 67, 67, 68, 57, 57, 57, 57, 58, 58, 58, 58,
    ]);
    const channels = tracks.flatMap(({ notes }) => notes.map(({ channel }) => channel));
    expect(channels).not.toContain(10);
    expect(new Set(channels).size).toBe(13);
  });

  it("plays dynamics and accents as velocities", () => {
    const velocities = (manner: "sustained" | "hit") =>
      read(writeMidi(scoreOfVoicings([wideF13, closeB7], { manner }))).tracks[1]!.notes.map(
        ({ velocity }) => velocity,
      );
    expect(velocities("sustained")).toEqual([velocityOf.f, velocityOf.mp]);
    expect(velocities("hit")[0]).toBeGreaterThan(velocityOf.f);
    const rising = dynamics.map((dynamic) => velocityOf[dynamic]);
    expect(rising).toEqual([...rising].sort((a, b) => a - b));
  });

  it("writes text in Latin-1, with plain forms of signs it lacks", () => {
    const { tracks } = read(writeMidi({ ...shortPhrase, title: "B♭ – “Café” 字" }));
    expect(tracks[0]!.name).toBe('Bb - "Café" ?');
    expect(latin1("♯9")).toEqual([0x23, 0x39]);
  });

  it("is byte for byte what midi-file writes from its events", () => {
    const again = midiFile.writeMidi(midiFile.parseMidi(bytes), { running: false });
    expect(Uint8Array.from(again)).toEqual(bytes);
  });

  it("stays as it was judged", async () => {
    const events = midiFile
      .parseMidi(bytes)
      .tracks.map((track) => track.map((event) => JSON.stringify(event)).join("\n"));
    await expect(`${events.join("\n\n")}\n`).toMatchFileSnapshot(
      "../../golden/files/phrase.mid.txt",
    );
  });

  // Standard MIDI Files 1.0, table of variable-length quantities.
  it.each([
    [0x00, [0x00]],
    [0x7f, [0x7f]],
    [0x80, [0x81, 0x00]],
    [0x2000, [0xc0, 0x00]],
    [0x1fffff, [0xff, 0xff, 0x7f]],
    [0x0fffffff, [0xff, 0xff, 0xff, 0x7f]],
  ])("writes the quantity %i as the standard prints it", (value, expected) => {
    expect(variableLength(value)).toEqual(expected);
  });

  it("refuses times it cannot hold", () => {
    expect(() => variableLength(2 ** 28)).toThrow(RangeError);
    expect(() => writeMidi({ ...shortPhrase, division: 40_000 })).toThrow(RangeError);
  });
});

const conformance = "midi/conformance/test-";
describe.skipIf(!hasData("midi/conformance"))(
  "odd and broken files of jazz-soft/test-midi-files",
  () => {
    const MAJOR_SCALE = [0, 2, 4, 5, 7, 9, 11, 12];

    it.each([
      ["c-major-scale", 1],
      ["vlq-2-byte", 1],
      ["vlq-3-byte", 1],
      ["vlq-4-byte", 1],
      ["running-status-metaevent", 1],
      ["2-tracks-type-1", 2],
      ["2-tracks-type-2", 2],
    ])("%s is read: a major scale in each of %i tracks", (name, tracks) => {
      const file = read(dataBytes(`${conformance}${name}.mid`));
      expect(file.tracks).toHaveLength(tracks);
      for (const { notes } of file.tracks) {
        expect(notes.map(({ key }) => key - notes[0]!.key)).toEqual(MAJOR_SCALE);
      }
    });

    it.each([
      ["corrupt-file-missing-byte", "midi-cut-off"],
      ["corrupt-file-extra-byte", "midi-extra"],
      ["2-tracks-type-0", "midi-header"],
    ])("%s is refused in one sentence", (name, code) => {
      const file = readMidi(dataBytes(`${conformance}${name}.mid`));
      expect(file).toMatchObject({ ok: false, problem: { code, message: /^[A-Z][^\n]*\.$/ } });
    });
  },
);

describe("a broken MIDI file", () => {
  const bytes = writeMidi(scoreOfVoicings([closeB7]));
  const codeOf = (changed: Uint8Array): string => {
    const file = readMidi(changed);
    return file.ok ? "read" : file.problem.code;
  };
  const withByte = (at: number, value: number): Uint8Array => {
    const changed = bytes.slice();
    changed[at] = value;
    return changed;
  };

  it("is refused when it is none, cut off, or has something behind its end", () => {
    expect(codeOf(new Uint8Array())).toBe("midi-header");
    expect(codeOf(new TextEncoder().encode("<score-partwise/> and more"))).toBe("midi-header");
    for (let length = 1; length < bytes.length; length += 1)
      expect(codeOf(bytes.subarray(0, length))).not.toBe("read");
    expect(codeOf(Uint8Array.from([...bytes, 0]))).toBe("midi-extra");
  });

  it("is refused for an unknown format, film time, no track, too many", () => {
    expect(codeOf(withByte(9, 7))).toBe("midi-header");
    expect(codeOf(withByte(12, 0xe2))).toBe("midi-time-code");
    expect(codeOf(withByte(11, 0))).toBe("midi-header");
    expect(codeOf(withByte(10, 0xff))).toBe("midi-header");
    expect(codeOf(withByte(11, 1))).toBe("midi-chunk");
    expect(codeOf(withByte(11, 200))).toBe("midi-cut-off");
  });

  it("never throws, whatever byte is changed", () => {
    fc.assert(
      fc.property(fc.nat(bytes.length - 1), fc.nat(255), (at, value) => {
        expect(typeof readMidi(withByte(at, value)).ok).toBe("boolean");
      }),
      { seed: 7, numRuns: 2000 },
    );
  });
});
