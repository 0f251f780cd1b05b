import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { soundingMidi } from "../../src/base/index.ts";
import { makePlayer, withMute } from "../../src/band/index.ts";
import {
  bestOfCell,
  costOf,
  isLine,
  reasonsFor,
  voicingOf,
  type Cost,
  type Question,
  type Voicing,
} from "../../src/voicing/index.ts";
import { ask, midi } from "./support/questions.ts";

/*
 * Covers src/voicing/stack-terms.ts, src/voicing/player-terms.ts and src/voicing/sharing-terms.ts:
 * a cost in words is judged as a whole, by what a reader gets.
 */
const question = ask("F13", "D5", "f");

/** "F2 btbn bari, A3 tbn3": a voicing note by note. */
function voicing(text: string, asked: Question = question): Voicing {
  const placements = text.split(", ").flatMap((note) => {
    const [name = "", ...ids] = note.split(" ");
    return ids.map((id) => {
      const player = asked.players.find((each) => each.id === id);
      if (!player) throw new Error(`nobody is called ${id}`);
      return { player, sounding: midi(name) };
    });
  });
  return { placements };
}

const said = (cost: Cost, best: Cost | null = null): readonly string[] =>
  reasonsFor(cost, best).map(({ value, text }) => `${value} ${text}`);

const tutti = "F2 btbn bari, A3 tbn3 tenor2, C4 tpt4 tbn2, Eb4 tbn1 alto2, G4 tpt3 tenor1";

describe("a cost in words", () => {
  it("tells a tutti in a handful of sentences that add up to the search model's figure", () => {
    // F13 under D5 with six notes: 7, worked in section 12 of the search model.
    const cost = costOf(voicing(`${tutti}, D5 tpt1 tpt2 alto1`), question);
    expect(cost.total).toBe(7);
    expect(said(cost)).toEqual([
      "4 A3, C4, E♭4 and G4 are each shared by two players",
      "1 F2 and A3, a major tenth, are wide apart down there",
      "1 the fifth on C4 takes tenor room that the guide tones could have",
      "1 G4 and D5, a fifth, are wide apart up there",
    ]);
  });

  it("names the player, the register and the home in one sentence", () => {
    const cost = costOf(voicing("C4 alto1, Eb4 tenor1, G4 tbn1, D5 tpt1"), question);
    expect(said(cost)).toContain(
      "3 Trombone 1 on G4 is above its easy register and its home range",
    );
    const soft = ask("F13", "D5", "p");
    expect(said(costOf(voicing("A4 alto1, D5 tpt1", soft), soft))).toContain(
      "1 Trumpet 1 on D5 is hard to hold down to p",
    );
  });

  it("says when a player's level or mute is in the way", () => {
    const school = makePlayer({ seat: "tpt1", level: "school" });
    const cup = withMute(makePlayer({ seat: "tpt2" }), "cup");
    if (!cup.ok) throw new Error(cup.problem.message);
    const players = [school, cup.value, makePlayer({ seat: "tbn1" })];
    const asked = ask("F13", "A5", "f", { players });
    const cost = costOf(voicing("F3 tpt2, A5 tpt1", asked), asked);
    const words = said(cost).join("; ");
    expect(words).toMatch(/Trumpet 1 on A5 is \w+ semitones? beyond what is easy for a school/);
    expect(words).toMatch(/Trumpet 2 on F3 is .*hampered by its mute \(cup/);
  });

  it("tells how a crowded note is crowded", () => {
    const cost = costOf(
      voicing("F2 bari, Eb4 tpt3 tpt4 tbn1 tenor1, A4 alto2 tenor2, D5 tpt1 tpt2 alto1 tbn2"),
      question,
    );
    const words = said(cost);
    expect(words).toContain("8 E♭4 is shared by four players, two of them trumpets");
    expect(words).toContain("3 A4 is shared by two saxes");
    expect(words).toContain("1 the lead, D5, is shared by four players, two of them trumpets");
  });

  it("tells what the lowest note is instead, and where a tension lies", () => {
    const words = said(costOf(voicing("G3 tenor2, Eb4 tbn1, A4 alto1, D5 tpt1"), question));
    expect(words).toContain("9 the lowest note, G3, is the ninth instead of the root");
    expect(words).toContain("2 the ninth on G3 lies low for a tension");
    const slash = ask("C/E", "C5", "f");
    expect(said(costOf(voicing("C4 tenor1, E4 tbn1, C5 tpt1", slash), slash))).toContain(
      "3 the lowest note, C4, is the root instead of the bass note E",
    );
  });

  it("charges a line for its players only", () => {
    const octaves = voicing("D4 tenor1 tbn1, D5 tpt1 alto1");
    expect(isLine(octaves, question.lead)).toBe(true);
    expect(costOf(octaves, question)).toEqual({ total: 0, terms: [] });
  });

  it("leaves out one who plays an octave above the lead", () => {
    const asked: Question = { ...question, octaveAbovePlayer: "tpt1" };
    const beside = voicing("A4 alto1, D5 tpt2", asked);
    const above = { player: asked.players[0]!, sounding: soundingMidi(86) };
    expect(costOf({ placements: [...beside.placements, above] }, asked)).toEqual(
      costOf(beside, asked),
    );
  });
});

describe("a cost against the best of its texture", () => {
  const best = costOf(voicing(`${tutti}, D5 tpt1 tpt2 alto1`), question);

  it("tells the difference only", () => {
    const other =
      "F2 btbn bari, Eb3 tbn3 tenor2, A3 tbn2 tenor1, D4 tpt4 tbn1, G4 tpt3 alto2, D5 tpt1 tpt2 alto1";
    const cost = costOf(voicing(other), question);
    expect(said(cost, best)).toEqual([
      "3 F2 and E♭3, a minor seventh, stand less firm down there than a fifth or an octave",
      "-1 F2 and A3, a major tenth, are wide apart down there",
      "-1 the fifth on C4 takes tenor room that the guide tones could have",
    ]);
  });

  it("says nothing of the best itself", () => {
    expect(said(best, best)).toEqual([]);
  });

  it("adds up, whatever two voicings are compared", () => {
    const cells = [
      { span: 33, notes: 7, players: 13 },
      { span: 26, notes: 6, players: 8 },
      { span: 33, notes: 10, players: 12 },
    ].map((key) => {
      const found = bestOfCell(question, key, 12);
      if (!found.ok) throw new Error(found.problem.message);
      return found.value.map((cell) => costOf(voicingOf(question, cell), question));
    });
    const pair = fc
      .constantFrom(...cells)
      .chain((costs) => fc.tuple(fc.constantFrom(...costs), fc.constantFrom(...costs)));
    fc.assert(
      fc.property(pair, ([one, other]) => {
        const sum = (cost: Cost, than: Cost | null): number =>
          reasonsFor(cost, than).reduce((total, { value }) => total + value, 0);
        expect(sum(one, other)).toBe(one.total - other.total);
        expect(sum(one, null)).toBe(one.total);
        for (const { text, subject } of reasonsFor(one, other))
          expect(text.startsWith(subject)).toBe(true);
      }),
      { seed: 7, numRuns: 200 },
    );
  });
});
