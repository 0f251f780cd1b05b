import { describe, expect, it } from "vitest";
import { answerTo, run } from "./run-main.ts";

interface ChordAnswer {
  readonly symbol: string;
  readonly root: string | null;
  readonly bass: string | null;
  readonly tones: readonly {
    readonly name: string;
    readonly pitchClass: number;
    readonly role: string;
    readonly kind: string;
  }[];
}

const chord = (symbol: string) => answerTo("chord", symbol) as Promise<ChordAnswer>;
const sounding = ({ tones }: ChordAnswer) =>
  tones.filter(({ kind }) => kind === "stated" || kind === "implied");

describe("chord", () => {
  // Common practice, no single source: the tones of these symbols as every fake book has them.
  it.each([
    ["F13", "F", "F", "F G A C D Eb"],
    ["Abm", "Ab", "Ab", "Ab Cb Eb"],
    ["F#m7/C#", "F#", "C#", "F# A C# E"],
    ["Cø7", "C", "C", "C Eb Gb Bb"],
  ])("names the tones of %s", async (symbol, root, bass, names) => {
    const answer = await chord(symbol);
    expect(answer.root).toBe(root);
    expect(answer.bass).toBe(bass);
    expect(sounding(answer).map(({ name }) => name)).toEqual(names.split(" "));
  });

  it("says what each tone is and how it belongs", async () => {
    const { tones } = await chord("F13");
    expect(tones).toContainEqual(
      expect.objectContaining({ name: "Eb", pitchClass: 3, role: "seventh", kind: "stated" }),
    );
  });

  it("has no root where there is no chord", async () => {
    expect(await chord("N.C.")).toMatchObject({ root: null, bass: null, tones: [] });
  });

  it("prints the tones in columns for people, with the choices made", async () => {
    const { output } = await run(["chord", "C7alt"]);
    expect(output).toMatch(/^tone +degree +role +kind$/m);
    expect(output).toMatch(/^D♭ +♭9 +ninth +implied$/m);
    expect(output).toContain("Altered is read as");
  });
});
