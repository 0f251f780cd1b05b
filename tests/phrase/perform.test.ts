import { describe, expect, it } from "vitest";
import fc from "fast-check";
import type { PlayerPart } from "../../src/phrase/parts.ts";
import { performParts } from "../../src/phrase/perform.ts";
import { clockOf, feelOf, type Feel } from "../../src/phrase/swing.ts";
import type { ArticulationMark } from "../../src/phrase/articulation-rule-table.ts";
import { at, melodyOf, notesOf, playersOf, type Head } from "./support/phrases.ts";

const even: Feel = { ride: 1, horns: 1, isLaidBack: false };
const hard: Feel = { ride: 2, horns: 2, isLaidBack: false };

/** The melody as one player's part, played. */
function played(
  text: string,
  feel: Feel,
  marks: readonly ArticulationMark[] = [],
  head: Head = {},
) {
  const melody = melodyOf(text, head);
  const notes = notesOf(melody);
  const [player] = playersOf("three-horn");
  const part: PlayerPart = {
    player: player!,
    notes: notes.map(({ onset, duration, sounding, pitch, id }) => ({
      onset,
      duration,
      sounding,
      pitch,
      marks,
      noteId: id,
      momentId: id,
    })),
  };
  return performParts(melody, notes, [part], [{ at: at(0), dynamic: "mf" }], feel);
}

const onsets = (notes: ReturnType<typeof played>) =>
  notes.map(({ onset }) => Number(onset.toFixed(4)));

describe("playing in time", () => {
  it("places even eighths evenly", () =>
    expect(onsets(played("C5:1/2 D5:1/2 E5:3", even))).toEqual([0, 0.25, 0.5]));

  it("places swung upbeats late: two to one at 120 is a third of a second", () =>
    expect(onsets(played("C5:1/2 D5:1/2 E5:3", hard))).toEqual([0, 0.3333, 0.5]));

  it("leaves beats that are cut into triplets or sixteenths even", () => {
    expect(onsets(played("C5:1/3 D5:1/3 E5:1/3 F5:3", hard))).toEqual([0, 0.1667, 0.3333, 0.5]);
    expect(onsets(played("C5:1/4 D5:1/4 E5:1/4 F5:1/4 G5:1/2 A5:5/2", hard))).toEqual([
      0, 0.125, 0.25, 0.375, 0.5, 0.8333,
    ]);
  });

  it("swings a pickup of one upbeat inside the even half beat that it fills", () =>
    expect(onsets(played("A4:1/2 | C5:4", hard))).toEqual([0.0833, 0.25]));

  it("shortens by the mark and lengthens none", () => {
    expect(played("C5:1 D5:3", even, ["staccato"])[0]?.duration).toBeCloseTo(0.25, 6);
    expect(played("C5:1 D5:3", even, ["tenuto"])[0]?.duration).toBeCloseTo(0.5, 6);
    const marcato = played("C5:1 D5:3", even, ["marcato"])[0]?.duration ?? 0;
    // Half to two thirds of the value: E. Rogers, big band arranging series.
    expect(marcato).toBeGreaterThanOrEqual(0.25);
    expect(marcato).toBeLessThanOrEqual(0.334);
  });

  it("plays accents a step louder", () => {
    expect(played("C5:4", even, ["accent"])[0]?.dynamic).toBe("f");
    expect(played("C5:4", even)[0]?.dynamic).toBe("mf");
  });

  it("never plays a note before the one before it has begun, at any tempo", () =>
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom("1/2", "1", "1/3", "1/4", "3/2"), { minLength: 2, maxLength: 12 }),
        fc.integer({ min: 40, max: 380 }),
        (lengths, tempo) => {
          const text = lengths.map((length, n) => `${"CDEFG"[n % 5]}5:${length}`).join(" ");
          const melody = melodyOf(text, { metre: { beats: 20, beatType: 4 }, tempo });
          const notes = played(text, feelOf("swing", melody.tempo), [], {
            metre: melody.metre,
            tempo,
          });
          notes.forEach((note, n) => {
            expect(note.duration).toBeGreaterThan(0);
            const next = notes[n + 1];
            if (next) expect(next.onset).toBeGreaterThanOrEqual(note.onset + note.duration);
          });
        },
      ),
      { seed: 7 },
    ));
});

describe("a clock", () => {
  it("keeps beats on time for the rhythm section and bars as long as they are", () => {
    const melody = melodyOf("A4:1 | C5:4 | D5:4", { tempo: 180 });
    const clock = clockOf(melody, feelOf("swing", melody.tempo));
    for (let beat = 0; beat <= 9; beat++)
      expect(clock.rhythm(at(beat * melody.division))).toBeCloseTo(beat / 3, 9);
  });

  it("is even in every style but swing", () => {
    for (const style of ["straight", "ballad", "latin"] as const)
      expect(feelOf(style, melodyOf("C5:1").tempo)).toEqual(even);
  });
});

describe("metres", () => {
  it("of halves swing in quarters, of eighths not at all", () => {
    const cut = { metre: { beats: 2, beatType: 2 } };
    expect(onsets(played("C5:1/2 D5:1/2 E5:3", hard, [], cut))).toEqual([0, 0.3333, 0.5]);
    const six = { metre: { beats: 6, beatType: 8 } };
    expect(onsets(played("C5:1/2 D5:1/2 E5:2", hard, [], six))).toEqual([0, 0.25, 0.5]);
  });
});
