import { describe, expect, it } from "vitest";
import {
  brokenRules,
  costOf,
  isLine,
  searchAtlas,
  voicingOf,
  type AtlasCell,
  type Question,
} from "../../src/voicing/index.ts";
import { buildInstance } from "../../src/voicing/instance.ts";
import { lineCells } from "../../src/voicing/lines.ts";
import { ask, playersOf } from "./support/questions.ts";

function linesOf(question: Question): readonly AtlasCell[] {
  const built = buildInstance(question);
  if (!built.ok) throw new Error(built.problem.message);
  return lineCells(question, built.value);
}

describe("unison and octave lines", () => {
  const question = ask("F13", "D5", "f");
  const lines = linesOf(question);

  it("have every player on the lead or octaves below it, at the cost of their registers", () => {
    expect(lines.length).toBeGreaterThan(20);
    for (const cell of lines) {
      const voicing = voicingOf(question, cell);
      expect(isLine(voicing, question.lead)).toBe(true);
      expect(costOf(voicing, question).total).toBe(cell.cost);
      expect(brokenRules(voicing, question)).toEqual([]);
    }
  });

  it("reach from a lone trumpet to three octaves of D", () => {
    const spans = new Set(lines.map(({ key }) => key.span));
    expect([...spans].sort((a, b) => a - b)).toEqual([0, 12, 24, 36]);
    const keys = lines.map(({ key }) => `${key.span} ${key.notes} ${key.players}`);
    expect(keys).toContain("0 1 1");
    expect(new Set(keys).size).toBe(keys.length);
  });

  it("are the cheapest: what trying everything gives for four horns", () => {
    const asked = ask("F13", "D5", "mf", { players: playersOf("four-horn") });
    const octaves = [0, 74, 62, 50, 38];
    const least = new Map<string, number>();
    for (let code = 0; code < octaves.length ** 4; code++) {
      const pitches = [1, 5, 25, 125].map((place) => octaves[Math.floor(code / place) % 5]!);
      const cell: AtlasCell = { ...lines[0]!, pitches };
      const voicing = voicingOf(asked, cell);
      const sounding = new Set(pitches.filter((pitch) => pitch > 0));
      if (!sounding.has(74) || brokenRules(voicing, asked).length > 0) continue;
      const key = `${74 - Math.min(...sounding)} ${sounding.size} ${voicing.placements.length}`;
      const { total } = costOf(voicing, asked);
      least.set(key, Math.min(total, least.get(key) ?? total));
    }
    const found = linesOf(asked).map(
      ({ key, cost }) => [`${key.span} ${key.notes} ${key.players}`, cost] as const,
    );
    expect(new Map(found)).toEqual(least);
  });

  it("have octaves of any melody note, also one that is foreign to the chord or lies low", () => {
    // Common practice, no single source: a unison line needs no chord.
    const foreign = linesOf(ask("F13", "C#5", "f"));
    expect(foreign.map(({ key }) => key.span)).toContain(24);
    const low = foreign.find(({ key }) => key.span === 36);
    expect(low?.pitches).toContain(37);
  });

  it("are all there is where there is no chord, octaves among them", () => {
    const search = searchAtlas(ask("N.C.", "D5", "f", { players: playersOf("four-horn") }));
    if (!search.ok) throw new Error(search.problem.message);
    let step = search.value.next();
    while (!step.done) step = search.value.next();
    expect(step.value.cells.some(({ key }) => key.span === 12)).toBe(true);
    expect(step.value.cells.every(({ family }) => family === "line")).toBe(true);
  });
});
