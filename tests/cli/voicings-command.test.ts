import { describe, expect, it } from "vitest";
import { answerTo, run } from "./run-main.ts";

interface VoicingsAnswer {
  readonly question: {
    readonly chord: string;
    readonly midi: number;
    readonly tones: readonly string[];
    readonly required: readonly string[];
    readonly players: readonly string[];
    readonly layer: string;
    readonly level: string;
    readonly remarks: readonly string[];
  };
  readonly voicings: readonly {
    readonly cell: { readonly span: number; readonly notes: number; readonly players: number };
    readonly notes: readonly { readonly player: string; readonly midi: number }[];
    readonly techniques: readonly string[];
    readonly cost: {
      readonly total: number;
      readonly terms: readonly { readonly value: number }[];
    };
    readonly measures: Readonly<Record<string, number | null>>;
  }[];
  readonly emptiedBy?: readonly string[];
}

const ask = (...flags: readonly string[]) =>
  answerTo("voicings", ...flags) as Promise<VoicingsAnswer>;
const underD5 = ["--chord", "F13", "--melody", "D5"];
const fourHorns = [...underD5, "--band", "four-horn"];
type Found = VoicingsAnswer["voicings"][number];
const stackOf = ({ notes }: Found) =>
  [...new Set(notes.map(({ midi }) => midi))].sort((a, b) => a - b);
const lowestOf = (voicing: Found) => stackOf(voicing)[0] ?? 0;

describe("voicings", () => {
  it("put the melody on top and say what cell they lie in", async () => {
    const { question, voicings } = await ask(...fourHorns);
    expect(question).toMatchObject({ chord: "F13", midi: 74, layer: "free" });
    expect(voicings.length).toBeGreaterThan(1);
    for (const voicing of voicings) {
      const stack = stackOf(voicing);
      expect(stack.at(-1)).toBe(74);
      expect(voicing.cell).toEqual({
        span: 74 - lowestOf(voicing),
        notes: stack.length,
        players: voicing.notes.length,
      });
      expect(voicing.measures["span"]).toBe(voicing.cell.span);
      const sum = voicing.cost.terms.reduce((total, { value }) => total + value, 0);
      expect(voicing.cost.total).toBe(sum);
    }
  });

  it("find root, third, seventh and tensions under the thirteenth for a whole band", async () => {
    // The usual layout of a dominant thirteenth, root below, third and seventh above it, ninth and
    // thirteenth on top: common practice, no single source.
    const { voicings } = await ask(...underD5, "--notes", "6", "--limit", "1");
    const classes = new Set(voicings[0]?.notes.map(({ midi }) => midi % 12));
    expect(classes).toEqual(new Set([5, 9, 3, 7, 2, 0]));
    expect(voicings[0] && lowestOf(voicings[0]) % 12).toBe(5);
    expect(voicings[0]?.notes).toHaveLength(13);
  });

  it("keep to span, notes, players and limit", async () => {
    const flags = ["--span", "14", "--notes", "4", "--players", "4", "--limit", "3"];
    const { voicings } = await ask(...fourHorns, ...flags);
    expect(voicings.length).toBeGreaterThan(0);
    expect(voicings.length).toBeLessThanOrEqual(3);
    for (const { cell } of voicings) expect(cell).toEqual({ span: 14, notes: 4, players: 4 });
    expect(new Set(voicings.map((each) => stackOf(each).join(" "))).size).toBe(voicings.length);
    const three = await ask(...fourHorns, "--players", "3", "--limit", "2");
    for (const { cell } of three.voicings) expect(cell.players).toBe(3);
  });

  it("leave no section's notes apart by section, and no two together when crossed", async () => {
    const flags = ["--notes", "6", "--players", "13", "--limit", "1"];
    const bySection = await ask(...underD5, ...flags, "--layer", "by-section");
    const crossed = await ask(...underD5, ...flags, "--layer", "crossed");
    expect(bySection.voicings[0]?.measures["interleaving"]).toBe(0);
    expect(crossed.voicings[0]?.measures["interleaving"]).toBeGreaterThan(0.3);
  });

  it("put the root at the bottom when no bass player has it", async () => {
    const { voicings } = await ask(...underD5, "--bass", "none", "--limit", "20");
    const harmony = voicings.filter((each) => new Set(each.notes.map((n) => n.midi % 12)).size > 1);
    expect(harmony.length).toBeGreaterThan(5);
    for (const voicing of harmony) expect(lowestOf(voicing) % 12).toBe(5);
  });

  it("let only the tones sound that were asked for", async () => {
    expect((await ask(...fourHorns, "--colour", "plain")).question.tones).toContain("9");
    expect((await ask(...fourHorns, "--untick", "9,5")).question.tones).not.toContain("9");
    expect((await ask(...fourHorns, "--tick", "#11")).question.tones).toContain("#11");
    const { question, voicings } = await ask(...fourHorns, "--require", "9", "--notes", "4");
    expect(question.required).toEqual(["9"]);
    for (const voicing of voicings) expect(voicing.notes.map(({ midi }) => midi % 12)).toContain(7);
  });

  it("mean a chord's own seventh by 7", async () => {
    const { question } = await ask(...fourHorns, "--untick", "7");
    expect(question.tones).not.toContain("b7");
  });

  it("ask no school band for what only professionals reach", async () => {
    const high = ["voicings", "--chord", "C7", "--melody", "Bb5", "--limit", "1"];
    expect((await run([...high, "--level", "pro"])).code).toBe(0);
    const { code, errors } = await run([...high, "--level", "school"]);
    expect(code).toBe(2);
    expect(errors).toContain("Nobody in this line-up can play the melody note");
  });

  it("say which rules leave nothing, or that no such texture exists", async () => {
    const lowCrossed = ["--chord", "Cmaj7", "--melody", "D3", "--layer", "crossed"];
    const { voicings, emptiedBy = [] } = await ask(...lowCrossed);
    expect(voicings).toEqual([]);
    expect(emptiedBy).toContain("H4");
    const { output } = await run(["voicings", ...lowCrossed]);
    expect(output).toContain("dropping any one of these rules gives some");
    expect(output).toContain("The chord is complete");
    const noSuch = await run(["voicings", ...fourHorns, "--span", "1"]);
    expect(noSuch.code).toBe(0);
    expect(noSuch.output).toContain("No voicing has such a texture");
  });

  it.each([
    [["--melody", "D5"], "voicings needs --chord"],
    [["--chord", "F13"], "voicings needs --melody"],
    [["--chord", "X7", "--melody", "D5"], "chord"],
    [["--chord", "F13", "--melody", "D"], "octave"],
    [["--chord", "F13", "--melody", "C8"], "C8"],
    [[...underD5, "--band", "choir"], "--band is one of"],
    [
      [...underD5, "--tick", "blue"],
      '--tick takes degrees of F13 such as 9, b9 or #11, not "blue"',
    ],
    [[...underD5, "--layer", "upside-down"], "--layer is one of"],
  ])("refuse %j with one sentence", async (flags, words) => {
    const { code, output, errors } = await run(["voicings", ...flags]);
    expect(code).toBe(2);
    expect(output).toBe("");
    expect(errors).toContain(words);
    expect(errors.trimEnd()).not.toContain("\n");
  });

  it("are printed from the top note down for people", async () => {
    const { output } = await run(["voicings", ...fourHorns, "--notes", "4", "--limit", "1"]);
    expect(output).toMatch(/^span \d+, 4 notes, 4 players/);
    expect(output).toMatch(/^ {2}D5 +13 +tpt1$/m);
    expect(output).toMatch(/^ {2}cost \d+/m);
  });

  it("come out of a batch as they do from flags", async () => {
    const line = { chord: "F13", melody: "D5", band: "four-horn", limit: 2, tick: ["#11"] };
    const { output } = await run(["voicings", "--batch"], JSON.stringify(line));
    const flags = [...fourHorns, "--limit", "2", "--tick", "#11"];
    expect(JSON.parse(output)).toEqual(await ask(...flags));
  });
});
