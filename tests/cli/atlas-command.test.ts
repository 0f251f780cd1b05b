import { describe, expect, it } from "vitest";
import { answerTo, run } from "./run-main.ts";

interface AtlasAnswer {
  readonly counts: { readonly cells: number; readonly stacks: number };
  readonly ms: number;
  readonly cells: readonly {
    readonly span: number;
    readonly notes: number;
    readonly players: number;
    readonly cost: number;
    readonly voicing: Readonly<Record<string, number>>;
  }[];
}

const flags = ["--chord", "F13", "--melody", "D5", "--band", "four-horn"];

describe("atlas", () => {
  it("lists each texture once, with a voicing that has it", async () => {
    const { counts, ms, cells } = (await answerTo("atlas", ...flags)) as AtlasAnswer;
    expect(ms).toBeGreaterThan(0);
    expect(counts.cells).toBe(cells.length);
    expect(cells.length).toBeGreaterThan(10);
    const keys = cells.map(({ span, notes, players }) => `${span} ${notes} ${players}`);
    const sameKey = cells.filter((_, index) => keys.indexOf(keys[index] ?? "") !== index);
    expect(sameKey).toEqual([]);
    for (const { span, notes, players, voicing } of cells) {
      const pitches = Object.values(voicing);
      expect(pitches).toHaveLength(players);
      expect(new Set(pitches).size).toBe(notes);
      expect(Math.max(...pitches)).toBe(74);
      expect(74 - Math.min(...pitches)).toBe(span);
    }
  });

  it("is the same whenever it is asked for", async () => {
    const { cells } = (await answerTo("atlas", ...flags)) as AtlasAnswer;
    expect(((await answerTo("atlas", ...flags)) as AtlasAnswer).cells).toEqual(cells);
  });

  it("prints itself as a numeric problem that claims the same costs", async () => {
    const { cells } = (await answerTo("atlas", ...flags)) as AtlasAnswer;
    const { output } = await run(["atlas", ...flags, "--problem"]);
    const problem = JSON.parse(output) as {
      readonly candidates: readonly number[];
      readonly cells: readonly { readonly claimed: { readonly cost: number } }[];
    };
    expect(problem.candidates[0]).toBe(74);
    expect(problem.cells.map(({ claimed }) => claimed.cost)).toEqual(cells.map(({ cost }) => cost));
  });

  it("lets exactly the sections asked for sound, and refuses what is no section", async () => {
    const { cells } = (await answerTo("atlas", ...flags, "--sections", "saxes")) as AtlasAnswer;
    expect(cells.length).toBeGreaterThan(0);
    for (const { voicing } of cells)
      expect(Object.keys(voicing).every((id) => /^(alto|tenor|bari)/.test(id))).toBe(true);
    const { errors, code } = await run(["atlas", ...flags, "--sections", "strings"]);
    expect(code).toBe(2);
    expect(errors).toContain("--sections is one of trumpets, trombones, saxes");
  });

  it("prints one texture a line for people", async () => {
    const { output } = await run(["atlas", ...flags]);
    expect(output).toMatch(/^\d+ textures from \d+ stacks/);
    expect(output).toMatch(/^span +notes +players +cost +tpt1/m);
  });
});
