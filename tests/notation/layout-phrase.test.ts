/** Covers src/notation/phrase-staff.ts: a staff is judged as a whole. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { instrumentOf } from "../../src/band/index.ts";
import { layoutPhrase, type PhraseStaff } from "../../src/notation/index.ts";
import { articulate, type PartNote, type PlayerPart } from "../../src/phrase/index.ts";
import type { Phrase } from "../../src/phrase/index.ts";
import { barLength, spelledToMidi } from "../../src/theory/index.ts";
import { demoPlayed } from "../audio/support/demo-performance.ts";
import { melodyOf, notesOf, phraseOf, playersOf, questionOf } from "../phrase/support/phrases.ts";
import { staffText } from "./support/phrase-text.ts";
import type { Head } from "../phrase/support/phrases.ts";

/** A melody as the part of one player of the four horns. */
function lone(text: string, head: Head = {}, playerAt = 0) {
  const melody = melodyOf(text, head);
  const phrase: Phrase = { ...phraseOf(questionOf(melody)), melody };
  const notes = notesOf(melody);
  const marks = new Map(articulate(melody, notes, {}).map((one) => [one.noteId, one.marks]));
  const part: PlayerPart = {
    player: playersOf("four-horn")[playerAt]!,
    notes: notes.map(({ id, onset, duration, pitch, sounding }) => ({
      onset,
      duration,
      pitch,
      sounding,
      marks: marks.get(id) ?? [],
      noteId: id,
      momentId: id,
    })),
  };
  return { phrase, playing: { parts: [part] } };
}

function text(melody: string, head: Head = {}, written = false): string {
  const { phrase, playing } = lone(`${melody}`, head);
  const layout = layoutPhrase(phrase, playing, { pitch: written ? "written" : "concert" });
  return staffText(layout.staves[0]!).replaceAll(/!\w+/g, "");
}

/** Notes of a staff with ties undone: [onset, duration, written midi] in order. */
function undone(staff: PhraseStaff): readonly (readonly number[])[] {
  const found: [number, number, number][] = [];
  for (const { values } of staff.bars)
    for (const { onset, length, heads } of values)
      for (const { spelled, isTiedFrom } of heads) {
        const midi = spelledToMidi(spelled);
        const last = found.filter((one) => one[2] === midi).at(-1);
        if (isTiedFrom && last) last[1] += length;
        else found.push([onset, length, midi]);
      }
  return found;
}

describe("a line on paper", () => {
  it("fills bars with values and rests, ties over the bar line and keeps the middle in sight", () => {
    expect(text("C5:1@C6 D5:1/2 r:1/2 E5:2~ | E5:1 r:3")).toBe(
      "q:C5 e:D5 e:r h:E5~ | q:E5 q:r h:r",
    );
    expect(text("C5:1@C6 D5:2 E5:1 | F5:3/2 G5:5/2")).toBe(
      "q:C5 q:D5~ q:D5 q:E5 | q.:F5 e:G5~ h:G5",
    );
  });

  it("writes triplets and a rest for an empty bar", () => {
    expect(text("C5:1/3@C6 D5:1/3 E5:1/3 F5:3 | r:4 | C5:4")).toBe(
      "e3:C5 e3:D5 e3:E5 q:F5~ h:F5 | - | w:C5",
    );
  });

  it("shows accidentals once a bar, again in the next, and reminds of what was altered", () => {
    expect(text("F#5:1@C6 F#5:1 F5:2 | F#5:2 G5:2 | F5:4")).toBe(
      "q:#F5 q:F5 h:nF5 | h:#F5 h:G5 | w:(n)F5",
    );
  });

  it("needs no accidental for what the key signature says, nor for a tied note", () => {
    expect(text("F#5:4@G6", { key: "G" })).toBe("w:F5");
    expect(text("F#5:4~@C6 | F#5:2 F#5:2")).toBe("w:#F5~ | h:F5 h:#F5");
  });

  it("counts a pickup from the end of its bar", () => {
    expect(text("A4:1/2@C6 B4:1/2 | C5:4")).toBe("e:A4 e:B4 | w:C5");
  });

  it("is read a tone higher on a trumpet, in its own key", () => {
    const { phrase, playing } = lone("F5:4@F6", { key: "F" });
    const [staff] = layoutPhrase(phrase, playing, { pitch: "written" }).staves;
    expect(staff?.fifths).toBe(1);
    expect(staffText(staff!)).toContain("G5");
    expect(staff?.bars[0]?.symbols.map((symbol) => symbol.text)).toEqual(["G6"]);
  });
});

describe.each(["shout", "ballad"] as const)("the %s on paper", (id) => {
  const { phrase, playing } = demoPlayed(id);
  const bar = barLength(phrase.melody);

  it.each(["concert", "written"] as const)(
    "%s: every bar is full and sounds the parts",
    (pitch) => {
      const layout = layoutPhrase(phrase, playing, { pitch });
      expect(layout.staves).toHaveLength(13);
      for (const staff of layout.staves) {
        staff.bars.forEach(({ values }, index) => {
          const { number, onset } = layout.bars[index]!;
          if (values.length === 0) return;
          const sum = values.reduce((total, { length }) => total + length, 0);
          expect(sum).toBe(number === 0 ? phrase.melody.pickup : bar);
          expect(values[0]?.onset).toBe(onset);
        });
        const part = playing.parts.find(({ player }) => player.id === staff.id)!;
        const { chromatic, octaveChange } = instrumentOf(part.player.instrument).transposition;
        const moved = pitch === "written" ? chromatic + 12 * octaveChange : 0;
        expect(undone(staff)).toEqual(
          part.notes.map((note) => [note.onset, note.duration, note.sounding - moved]),
        );
      }
    },
  );

  it("stands on four staves when condensed, with every sounding pitch", () => {
    const { staves } = layoutPhrase(phrase, playing, { isCondensed: true });
    expect(staves.map((staff) => staff.id)).toEqual(["saxes", "low-sax", "trumpets", "trombones"]);
    const pitches = (notes: readonly PartNote[]) => notes.map(({ sounding }) => sounding as number);
    for (const staff of staves) {
      const ids = staff.players.map((player) => player.id);
      const own = playing.parts.filter(({ player }) => ids.includes(player.id));
      const shown = new Set(undone(staff).map(([, , midi]) => midi));
      expect(shown).toEqual(new Set(own.flatMap(({ notes }) => pitches(notes))));
    }
  });
});

describe("any rhythm", () => {
  const lengths = ["1/2", "1", "3/2", "2", "1/4", "3/4", "3"] as const;
  const values: Readonly<Record<string, number>> = {
    "1/2": 2,
    "1": 4,
    "3/2": 6,
    "2": 8,
    "1/4": 1,
    "3/4": 3,
    "3": 12,
  };

  it("fills every bar exactly and undoes to the notes it was made of", () =>
    fc.assert(
      fc.property(
        fc.array(
          fc.tuple(fc.constantFrom(...lengths), fc.boolean(), fc.integer({ min: 60, max: 72 })),
          {
            minLength: 1,
            maxLength: 24,
          },
        ),
        (items) => {
          // Notes laid end to end over bars of four, sixteenths as parts.
          const { phrase, playing } = lone(
            "C5:4@C6 | C5:4 | C5:4 | C5:4 | C5:4 | C5:4 | C5:4 | C5:4",
          );
          const part = playing.parts[0]!;
          const [seed] = part.notes;
          const unit = phrase.melody.division / 4;
          let at = 0;
          const notes: PartNote[] = [];
          for (const [length, isRest, midi] of items) {
            const duration = values[length]! * unit;
            if (at + duration > phrase.melody.length || !Number.isInteger(duration)) break;
            if (!isRest)
              notes.push({
                ...seed!,
                onset: at as PartNote["onset"],
                duration: duration as PartNote["duration"],
                sounding: midi as PartNote["sounding"],
                pitch: { letter: "C", alteration: 0, octave: midi % 2 === 0 ? 4 : 5 },
              });
            at += duration;
          }
          const [staff] = layoutPhrase(phrase, { parts: [{ ...part, notes }] }).staves;
          for (const { values: own } of staff!.bars)
            expect([0, barLength(phrase.melody)]).toContain(
              own.reduce((sum, { length }) => sum + length, 0),
            );
          expect(undone(staff!).map(([onset, duration]) => [onset, duration])).toEqual(
            notes.map(({ onset, duration }) => [onset, duration]),
          );
        },
      ),
      { seed: 7 },
    ));
});
