import { describe, expect, it } from "vitest";
import { articulate, type ArticulationChoices } from "../../src/phrase/articulate.ts";
import { articulationRules, markTable } from "../../src/phrase/articulation-rule-table.ts";
import { melodyOf, notesOf, type Head } from "./support/phrases.ts";

function marks(text: string, head: Head = {}, choices: ArticulationChoices = {}): string {
  const melody = melodyOf(text, head);
  return articulate(melody, notesOf(melody), choices)
    .map(({ marks: own }) => own.join("+") || "-")
    .join(" ");
}

// Unmarked defaults of swing practice; values from memory, see the table of rules.
describe("default articulations in swing", () => {
  it("shorten quarters on the beat", () =>
    expect(marks("C5:1 D5:1 E5:2")).toBe("staccato staccato -"));

  it("leave a line of eighths legato and shorten the last before a rest", () =>
    expect(marks("C5:1/2 D5:1/2 E5:1/2 r:5/2")).toBe("- - staccato"));

  it("accent and shorten a last upbeat before a rest", () =>
    expect(marks("C5:1/2 D5:1/2 r:3")).toBe("- marcato"));

  it("accent an upbeat held over the beat, also through a tie", () => {
    expect(marks("C5:1/2 D5:3/2 E5:2")).toBe("- accent -");
    expect(marks("C5:7/2 D5:1/2~ | D5:4")).toBe("- accent");
  });

  it("accent and shorten a quarter before a rest", () => expect(marks("C5:1 r:3")).toBe("marcato"));

  it("count beats from bar 1, whatever the pickup", () =>
    expect(marks("A4:1/2 | C5:1/2 D5:3/2 E5:2")).toBe("- - accent -"));
});

describe("other styles and choices", () => {
  it("leave a ballad alone", () =>
    expect(marks("C5:1 D5:1/2 E5:1/2 r:2", { style: "ballad" })).toBe("- - -"));

  it("give way to what the user set, none included", () => {
    expect(marks("C5:1 D5:1 E5:2", {}, { n1: ["fall"], n2: [] })).toBe("fall - -");
  });

  it("say which rule gave a mark", () => {
    const melody = melodyOf("C5:1 r:3");
    expect(articulate(melody, notesOf(melody), {})[0]?.reason).toBe(
      "A quarter on the beat before a rest is accented and short.",
    );
  });

  it("are made of marks that the table knows", () => {
    for (const { marks: own } of articulationRules)
      for (const mark of own) expect(markTable[mark].share).toBeGreaterThan(0);
  });
});
