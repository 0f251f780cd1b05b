// @vitest-environment jsdom
import { describe, expect, it } from "vitest";
import { drawLabelLines, labelLines } from "../../src/drawing/player-labels.ts";
import { variableTheme } from "../../src/drawing/staff-theme.ts";
import { layoutVoicing, type StaffNote } from "../../src/notation/index.ts";
import { F13, voicing } from "../notation/support/voicings.ts";

const measure = (text: string) => text.length * 7;

function noteOf(ids: string): StaffNote {
  const text = ids.split(" ").map((id) => `${id}=D5`);
  const layout = layoutVoicing(voicing(text.join(" ")), {
    chord: F13,
    view: "grand",
    pitch: "concert",
  });
  return layout.staves[0]!.notes[0]!;
}

const everyone = noteOf("tpt1 tpt2 tpt3 tpt4 tbn1 tbn2 tbn3 btbn alto1 alto2 tenor1 tenor2 bari");
const linesAt = (room: number) =>
  labelLines(everyone, measure, room).map((line) => line.map((item) => item.text));

describe("players written beside a note", () => {
  it("stand on one line where there is room", () => {
    expect(linesAt(600)).toEqual([["Tpt 1–4", "Tbn 1–3; B. Tbn", "Alto 1, 2; Ten 1, 2; Bari"]]);
  });

  it("break between sections", () => {
    expect(linesAt(240)).toEqual([["Tpt 1–4", "Tbn 1–3; B. Tbn"], ["Alto 1, 2; Ten 1, 2; Bari"]]);
  });

  it("break inside a section where even that is too wide", () => {
    expect(linesAt(120)).toEqual([
      ["Tpt 1–4"],
      ["Tbn 1–3; B. Tbn"],
      ["Alto 1, 2"],
      ["Ten 1, 2", "Bari"],
    ]);
  });

  it("carry the section's mark at every name", () => {
    const lines = labelLines(everyone, measure, 120);
    const look = { lineHeight: 16, fontSize: 13, theme: variableTheme };
    const parts = drawLabelLines(lines, { x: 0, y: 50 }, look);
    const marks = parts.filter((part) => part.classList.contains("section-mark"));
    expect(marks).toHaveLength(5);
    const heights = parts
      .filter((part) => part.tagName === "text")
      .map((part) => part.getAttribute("y"));
    expect(heights.map(Number).map((y) => Math.round(y - 50 - 13 * 0.35))).toEqual([
      -24, -8, 8, 24, 24,
    ]);
  });
});
