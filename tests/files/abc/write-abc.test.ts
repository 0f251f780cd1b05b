// Covers src/files/abc/abc-pieces.ts and src/files/abc/abc-signature.ts
import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { readAbc, writeAbc } from "../../../src/files/index.ts";
import { demoPhrase } from "../../../src/phrase/index.ts";
import {
  heardNotes,
  keyText,
  melodyFromBars,
  placeText,
  type Melody,
  type NoteLength,
  type WrittenItem,
} from "../../../src/theory/index.ts";

/** What must survive: everything but the names of notes and how they are split by ties. */
function essence(melody: Melody) {
  const { title, metre, key, tempo, style, division, pickup, length, changes, repeats } = melody;
  return {
    head: { title, metre, key: keyText(key), tempo, style, repeats },
    pickup: pickup / division,
    length: length / division,
    changes: changes.map(({ onset, text }) => [onset / division, text]),
    notes: heardNotes(melody).map(({ onset, duration, pitch }) => [
      (onset * 5040) / division,
      (duration * 5040) / division,
      pitch,
    ]),
  };
}

async function thereAndBack(melody: Melody): Promise<Melody> {
  const read = await readAbc(writeAbc(melody));
  if (!read.ok) throw new Error(`${read.problems[0]?.message}\n${writeAbc(melody)}`);
  return read.value.melody;
}

describe("writing ABC", () => {
  it.each(["shout", "ballad"] as const)("keeps the %s phrase whole", async (id) => {
    const { melody } = demoPhrase(id);
    expect(essence(await thereAndBack(melody))).toEqual(essence(melody));
  });

  // ABC 2.1, sections 4.1 to 4.13: lengths over L:, accidentals, (3, ties, repeats and endings.
  it("writes what it read, signs and all", async () => {
    const text = [
      "X:1",
      "T:Signs",
      "M:4/4",
      "L:1/8",
      "Q:1/4=132",
      "R:swing",
      "K:Bb",
      '|: "Bb6"B2 (3cde f2 z2 | "F7"^f=ef2- f2 z _d |[1 "Cm7"c4 (3:2:2e4 c2 :| [2 B8 |]',
      "",
    ].join("\n");
    const read = await readAbc(text);
    if (!read.ok) throw new Error(read.problems[0]?.message);
    const again = await thereAndBack(read.value.melody);
    expect(essence(again)).toEqual(essence(read.value.melody));
    expect(read.value.melody.repeats).toHaveLength(1);
  });

  it("gives back any melody of plain and triplet bars", async () => {
    const quarters: readonly (readonly NoteLength[])[] = [
      [[1, 1]],
      [
        [1, 2],
        [1, 2],
      ],
      [
        [1, 3],
        [1, 3],
        [1, 3],
      ],
      [
        [2, 3],
        [1, 3],
      ],
      [
        [3, 4],
        [1, 4],
      ],
    ];
    const pitch = fc.record({
      letter: fc.constantFrom(..."CDEFGAB"),
      alteration: fc.integer({ min: -1, max: 1 }),
      octave: fc.integer({ min: 3, max: 6 }),
    });
    const item = (length: NoteLength) =>
      fc
        .record({ pitch: fc.option(pitch, { nil: undefined }), chord: fc.constant(undefined) })
        .map((one): WrittenItem => ({
          length,
          ...(one.pitch ? { pitch: one.pitch as NonNullable<WrittenItem["pitch"]> } : {}),
        }));
    const beat = fc
      .constantFrom(...quarters)
      .chain((lengths) => fc.tuple(...lengths.map((length) => item(length))));
    const bar = fc.tuple(beat, beat, beat, beat).map((beats) => beats.flat());
    await fc.assert(
      fc.asyncProperty(fc.array(bar, { minLength: 1, maxLength: 4 }), async (bars) => {
        const built = melodyFromBars(
          {
            title: "Any",
            metre: { beats: 4, beatType: 4 },
            key: { tonic: { letter: "A", alteration: -1 }, mode: "major" },
            tempo: 120 as Melody["tempo"],
            style: "straight",
          },
          bars,
        );
        if (!built.ok || built.value.notes.length === 0) return;
        const again = await thereAndBack(built.value);
        expect(essence(again).notes).toEqual(essence(built.value).notes);
      }),
      { seed: 7, numRuns: 60 },
    );
  });

  it("names the same places after a pickup", async () => {
    const { melody } = demoPhrase("shout");
    const again = await thereAndBack(melody);
    const places = (one: Melody) => one.changes.map(({ onset }) => placeText(one, onset));
    expect(places(again)).toEqual(places(melody));
  });
});
