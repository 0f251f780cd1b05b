// Covers src/ui/phrase/melody/melody-edit.ts, src/ui/phrase/with-melody.ts,
// src/ui/phrase/melody-frame.ts and src/ui/phrase/texture/turn-grid.ts
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { quantity } from "../../src/base/index.ts";
import { demoPhrase, playsAt } from "../../src/phrase/index.ts";
import {
  barLength,
  heardNotes,
  readMelody,
  type Divisions,
  type Melody,
} from "../../src/theory/index.ts";
import {
  cleared,
  countedFinely,
  placed,
  relengthed,
  repitched,
  withChord,
  without,
} from "../../src/ui/phrase/melody/melody-edit.ts";
import { keyNamed, withBars, withMetre, withPickup } from "../../src/ui/phrase/melody-frame.ts";
import { gridBars, withTurn } from "../../src/ui/phrase/texture/turn-grid.ts";
import { withMelody, withOldNames } from "../../src/ui/phrase/with-melody.ts";

const at = (value: number) => quantity<Divisions>(value);
const shout = demoPhrase("shout");
const melody = countedFinely(shout.melody);
const b4 = { letter: "B", alteration: 0, octave: 4 } as const;

function inOrder(one: Melody): boolean {
  const read = readMelody(one);
  return read.ok || read.problems.every(({ code }) => code === "melody-empty");
}

describe("writing on the staff", () => {
  it("leaves a melody in order whatever is put where", () => {
    const step = fc.record({
      at: fc.integer({ min: 0, max: melody.length + 30 }),
      duration: fc.constantFrom(6, 8, 12, 16, 24, 36, 96, 144),
      kind: fc.constantFrom("place", "clear", "longer", "gone"),
    });
    fc.assert(
      fc.property(fc.array(step, { maxLength: 12 }), (steps) => {
        let now: Melody = melody;
        for (const { at: time, duration, kind } of steps) {
          const note = now.notes[time % Math.max(1, now.notes.length)];
          if (kind === "place")
            now = placed(now, { at: at(time), duration: at(duration), pitch: b4 });
          else if (kind === "clear") now = cleared(now, at(time), at(time + duration));
          else if (note && kind === "longer") now = relengthed(now, note.id, at(duration));
          else if (note) now = without(now, note.id);
          expect(inOrder(now)).toBe(true);
          expect(new Set(now.notes.map(({ id }) => id)).size).toBe(now.notes.length);
        }
      }),
      { seed: 7, numRuns: 200 },
    );
  });

  it("writes a note over a bar line as two that are heard as one", () => {
    const full = barLength(melody);
    const next = placed(melody, {
      at: at(melody.pickup + full - 24),
      duration: at(48),
      pitch: b4,
    });
    const heard = heardNotes(next).find(({ onset }) => onset === melody.pickup + full - 24);
    expect(heard?.duration).toBe(48);
    expect(heard?.writtenIds).toHaveLength(2);
  });

  it("keeps every name but those of the notes that go", () => {
    const [first] = melody.notes;
    const next = repitched(melody, first!.id, b4);
    expect(next.notes.map(({ id }) => id)).toEqual(melody.notes.map(({ id }) => id));
    expect(without(melody, first!.id).notes[0]?.id).toBe(melody.notes[1]?.id);
  });

  it("puts chords over beats in order, and takes them away", () => {
    const next = withChord(melody, at(24 + 48), "Gm7");
    expect(next.changes.map(({ onset }) => onset)).toEqual(
      [...next.changes].map(({ onset }) => onset).sort((a, b) => a - b),
    );
    expect(withChord(next, at(24 + 48), "").changes).toEqual(melody.changes);
  });
});

describe("another melody for the same phrase", () => {
  const work = { typed: "", question: shout, articulations: { n3: [] }, alternative: 0 };

  it("keeps what was held at notes that stay, and lets go where the pitch is another", () => {
    const lock = (momentId: string) => ({ momentId, playerId: "tpt1", sounding: "rest" as const });
    const held = {
      ...work,
      question: { ...shout, locks: { notes: [lock("n1"), lock("n2")], moments: [] } },
    };
    const next = withMelody(held, repitched(melody, "n1", b4));
    expect(next.question.locks.notes.map(({ momentId }) => momentId)).toEqual(["n2"]);
  });

  it("counts curves in the new melody's time", () => {
    const next = withMelody(work, melody);
    const factor = melody.division / shout.melody.division;
    expect(next.question.curves.span.map((point) => point.at)).toEqual(
      shout.curves.span.map((point) => point.at * factor),
    );
  });

  it("gives notes that were read anew the names they had", () => {
    const renamed = {
      ...melody,
      notes: melody.notes.map((note, index) => ({ ...note, id: `x${index}` })),
    };
    expect(withOldNames(renamed, shout.melody).notes.map(({ id }) => id)).toEqual(
      melody.notes.map(({ id }) => id),
    );
  });
});

describe("the frame of a melody", () => {
  it("changes metre, bars and pickup and stays in order", () => {
    for (const next of [
      withMetre(melody, { beats: 3, beatType: 4 }),
      withMetre(melody, { beats: 6, beatType: 8 }),
      withBars(melody, 3),
      withBars(melody, 20),
      withPickup(melody, at(0)),
      withPickup(melody, at(48)),
    ])
      expect(inOrder(next)).toBe(true);
  });

  it("reads keys by their names", () => {
    expect(keyNamed("Bb major")).toEqual({ tonic: { letter: "B", alteration: -1 }, mode: "major" });
    expect(keyNamed("F# minor")).toEqual({ tonic: { letter: "F", alteration: 1 }, mode: "minor" });
  });
});

describe("who plays in which bar", () => {
  it("changes the one decision and no other", () => {
    const bars = gridBars(shout.melody);
    const { players } = shout;
    const change = fc.record({
      player: fc.integer({ min: 0, max: players.length - 1 }),
      bar: fc.integer({ min: 0, max: bars.length - 1 }),
      plays: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(change, { maxLength: 10 }), (changes) => {
        let turns = shout.turns;
        const wanted = new Map<string, boolean>();
        for (const { player, bar, plays } of changes) {
          const id = players[player]!.id;
          turns = withTurn(players, turns, bars, { who: [id], bar: bars[bar]!.number, plays });
          wanted.set(`${id} ${bars[bar]!.number}`, plays);
        }
        for (const one of players)
          for (const { number, from } of bars)
            expect(playsAt(one, from, turns)).toBe(wanted.get(`${one.id} ${number}`) ?? true);
      }),
      { seed: 7, numRuns: 100 },
    );
  });
});
