// Covers src/drawing/outlines: fonts read by us and by fontkit (npm, reference library) must agree.
import { readFileSync } from "node:fs";
import { openSync, type Font } from "fontkit";
import { describe, expect, it } from "vitest";
import { readOutlineFont } from "../../../src/drawing/outlines/outline-font.ts";
import type { OutlineStep } from "../../../src/drawing/outlines/pen.ts";

const folder = "node_modules/@vexflow-fonts";
const letters = Array.from({ length: 95 }, (_, index) => 32 + index);

/** Every step in a form that both readers can be brought to. */
function ours(steps: readonly OutlineStep[]): readonly (readonly number[])[] {
  return steps.flatMap((step) => {
    if (step.kind === "close") return [];
    return [step.kind === "curve" ? step.points : step.to];
  });
}

function theirs(font: Font, codePoint: number): readonly (readonly number[])[] {
  return font
    .glyphForCodePoint(codePoint)
    .path.commands.filter(({ command }) => command !== "closePath")
    .map(({ args }) => args);
}

describe.each([
  {
    file: "bravura/bravura.otf",
    codePoints: [0xe050, 0xe062, 0xe0a2, 0xe0a4, 0xe260, 0xe261, 0xe262, 0xe263, 0xe264, 0xe000],
  },
  {
    file: "academico/academico.otf",
    codePoints: [...letters, 0x266d, 0x266e, 0x266f, 0xe9, 0x2019],
  },
  { file: "academico/academico-bold.otf", codePoints: [...letters, 0x266d, 0x266f] },
])("the outlines of $file", ({ file, codePoints }) => {
  const font = readOutlineFont(readFileSync(`${folder}/${file}`));
  const reference = openSync(`${folder}/${file}`) as Font;

  it("are those that a reference library reads", () => {
    expect(font.unitsPerEm).toBe(reference.unitsPerEm);
    for (const codePoint of codePoints) {
      const glyph = font.glyphOf(codePoint);
      if (glyph === undefined) throw new Error(`no glyph for ${codePoint}`);
      expect(glyph).toBe(reference.glyphForCodePoint(codePoint).id);
      expect(font.advanceOf(glyph)).toBe(reference.glyphForCodePoint(codePoint).advanceWidth);
      const [mine, other] = [ours(font.outlineOf(glyph)), theirs(reference, codePoint)];
      expect(mine.length).toBe(other.length);
      mine.forEach((points, index) =>
        points.forEach((value, at) => expect(value).toBeCloseTo(other[index]?.[at] ?? NaN, 3)),
      );
    }
  });

  it("leave out what the font does not have", () => {
    expect(font.glyphOf(0x1f3ba)).toBeUndefined();
  });
});

describe("a file that is no font", () => {
  it("is refused by name of what is missing", () => {
    expect(() => readOutlineFont(new Uint8Array(64))).toThrow(/no table/);
  });
});
