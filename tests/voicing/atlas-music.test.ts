import { describe, expect, it } from "vitest";
import type { Dynamic } from "../../src/band/index.ts";
import { readPitch } from "../../src/theory/index.ts";
import {
  brokenRules,
  costOf,
  searchAtlas,
  stackOf,
  voicingOf,
  type Atlas,
  type AtlasCell,
  type Question,
} from "../../src/voicing/index.ts";
import { ask, playersOf } from "./support/questions.ts";

/**
 * Twelve questions with the answers the weights give, judged by ear and eye. Source: the search
 * model's own prototype, an independent program; a change here is a musical decision to be argued.
 */
const answers: readonly (readonly [string, string, Dynamic, number, string, number])[] = [
  ["F13", "D5", "f", 5, "F2 A3 Eb4 G4 D5", 11],
  ["F13", "D5", "f", 6, "F2 A3 C4 Eb4 G4 D5", 7],
  ["F13", "D5", "f", 8, "F2 C3 Eb3 A3 D4 G4 A4 D5", 7],
  ["Cm9", "Bb4", "mf", 6, "G2 Eb3 Bb3 D4 F4 Bb4", 6],
  ["Cm9", "Bb4", "mf", 7, "C2 G2 Eb3 Bb3 D4 F4 Bb4", 4],
  ["C7alt", "Bb5", "f", 6, "C3 Bb3 E4 Ab4 Eb5 Bb5", 20],
  ["C7alt", "Bb5", "f", 7, "C3 E3 Bb3 E4 Ab4 Eb5 Bb5", 15],
  ["C9sus", "D5", "f", 6, "C3 G3 D4 F4 Bb4 D5", 7],
  ["C°7", "C5", "f", 6, "C2 Eb3 A3 D4 Gb4 C5", 7],
  ["C", "C5", "f", 6, "C3 E3 C4 E4 G4 C5", 10],
  ["Cmaj7", "C5", "f", 6, "C3 E3 A3 D4 G4 C5", 6],
  ["Cmaj7", "F5", "f", 7, "C3 F3 D4 F4 A4 D5 F5", 8],
  ["Cmaj7", "B4", "p", 6, "C3 E3 B3 D4 G4 B4", 10],
];

function atlasOf(question: Question): Atlas {
  const search = searchAtlas(question);
  if (!search.ok) throw new Error(search.problem.message);
  let step = search.value.next();
  while (!step.done) step = search.value.next();
  return step.value;
}

function bestWith(atlas: Atlas, notes: number, players: number): readonly AtlasCell[] {
  const cells = atlas.cells.filter(
    ({ key, family }) => family === "harmony" && key.notes === notes && key.players === players,
  );
  const least = Math.min(...cells.map((cell) => cell.cost));
  return cells.filter((cell) => cell.cost === least);
}

function stackMidi(question: Question, cell: AtlasCell): string {
  return stackOf(voicingOf(question, cell)).join(" ");
}

function midiOf(names: string): string {
  const midi = names.split(" ").map((name) => {
    const read = readPitch(name);
    if (!read.ok) throw new Error(read.problem.message);
    return read.value.sounding;
  });
  return midi.join(" ");
}

describe("the whole band on the twelve questions", () => {
  for (const [chord, lead, dynamic, notes, stack, cost] of answers)
    it(`takes ${stack} for ${chord} under ${lead} at ${dynamic} with ${notes} notes`, () => {
      const question = ask(chord, lead, dynamic);
      const best = bestWith(atlasOf(question), notes, 13);
      expect(best.map((cell) => cell.cost)).toContain(cost);
      expect(best.map((cell) => stackMidi(question, cell))).toContain(midiOf(stack));
    });

  it("gives four horns a drop or a spread with both guide tones for F13 under D5 at mf", () => {
    const question = ask("F13", "D5", "mf", { players: playersOf("four-horn") });
    const best = bestWith(atlasOf(question), 4, 4);
    expect(best[0]?.cost).toBe(3);
    const stacks = best.map((cell) => stackMidi(question, cell));
    expect(stacks).toEqual(expect.arrayContaining(["C4 Eb4 A4 D5", "F3 Eb4 A4 D5"].map(midiOf)));
  });

  it("puts two players on a note, three on the lead, the low horns on the root of F13", () => {
    const question = ask("F13", "D5", "f");
    const best = bestWith(atlasOf(question), 6, 13);
    const cell = best.find((each) => each.key.span === 33);
    const on = (midi: number): string[] =>
      question.players.filter((_, p) => cell?.pitches[p] === midi).map((player) => player.id);
    expect(on(74)).toHaveLength(3);
    expect(on(41).sort()).toEqual(["bari", "btbn"]);
  });
});

describe("every cell of an atlas", () => {
  for (const [chord, lead, dynamic] of [
    ["F13", "D5", "f"],
    ["Cmaj7", "F5", "mf"],
    ["Ebm9/Ab", "F5", "ff"],
    ["D7b9", "Eb5", "p"],
  ] as const)
    it(`costs what its terms say and breaks no rule: ${chord} under ${lead} at ${dynamic}`, () => {
      const question = ask(chord, lead, dynamic);
      const { cells } = atlasOf(question);
      expect(cells.length).toBeGreaterThan(100);
      for (const cell of cells) {
        const voicing = voicingOf(question, cell);
        const stack = stackOf(voicing);
        const cost = costOf(voicing, question);
        expect(cost.total).toBe(cell.cost);
        expect(cost.terms.reduce((sum, term) => sum + term.value, 0)).toBe(cost.total);
        expect(brokenRules(voicing, question)).toEqual([]);
        expect({
          span: stack[stack.length - 1]! - stack[0]!,
          notes: stack.length,
          players: voicing.placements.length,
        }).toEqual(cell.key);
      }
    });
});
