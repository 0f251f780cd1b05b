import { readFileSync } from "node:fs";
import { join } from "node:path";
import { create, type Font } from "fontkit";
import { Element as MusicElement, VexFlow } from "vexflow/core";

/*
 * Node has no canvas to measure text with. The music fonts themselves tell how wide and high each
 * sign is, so drawings come out as in a browser.
 */

const FONT_FOLDER = join(import.meta.dirname, "../../../node_modules/@vexflow-fonts");

function fontAt(path: string): Font {
  const font = create(readFileSync(join(FONT_FOLDER, path)));
  if (!("glyphForCodePoint" in font)) throw new Error(`${path} holds more than one font`);
  return font;
}

const fonts: Readonly<Record<string, Font>> = {
  Bravura: fontAt("bravura/bravura.woff2"),
  Academico: fontAt("academico/academico.woff2"),
};

/** Extent of a text around the start of its baseline, pixels, y downwards. */
export interface TextBox {
  readonly width: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Measures a text in the first of the families that has each sign. */
export function boxOf(text: string, sizePx: number, families: readonly string[]): TextBox {
  const choices = [...families, "Academico"].flatMap((family) => fonts[family] ?? []);
  const box = { width: 0, left: Infinity, right: -Infinity, top: Infinity, bottom: -Infinity };
  for (const sign of text) {
    const code = sign.codePointAt(0) ?? 32;
    const font = choices.find((each) => each.hasGlyphForCodePoint(code)) ?? choices[0]!;
    const glyph = font.glyphForCodePoint(code);
    const scale = sizePx / font.unitsPerEm;
    box.left = Math.min(box.left, box.width + glyph.bbox.minX * scale);
    box.right = Math.max(box.right, box.width + glyph.bbox.maxX * scale);
    box.top = Math.min(box.top, -glyph.bbox.maxY * scale);
    box.bottom = Math.max(box.bottom, -glyph.bbox.minY * scale);
    box.width += glyph.advanceWidth * scale;
  }
  return box;
}

function sizeIn(font: string): number {
  const [, size = "10", unit = "px"] = /([\d.]+)(pt|px)/.exec(font) ?? [];
  return Number(size) * (unit === "pt" ? 4 / 3 : 1);
}

function familiesIn(font: string): readonly string[] {
  const list = font.replace(/^.*?[\d.]+(?:pt|px)\s*/, "");
  return list.split(",").map((family) => family.trim().replaceAll('"', ""));
}

/** Lets VexFlow measure by the fonts. Call it once before drawing in Node. */
export function measureByFonts(): void {
  const context = {
    font: "",
    measureText(text: string) {
      const size = sizeIn(this.font);
      const box = boxOf(text, size, familiesIn(this.font));
      return {
        width: box.width,
        actualBoundingBoxLeft: -box.left,
        actualBoundingBoxRight: box.right,
        actualBoundingBoxAscent: -box.top,
        actualBoundingBoxDescent: box.bottom,
        fontBoundingBoxAscent: size,
        fontBoundingBoxDescent: size / 4,
      };
    },
  };
  const canvas = { getContext: () => context };
  MusicElement.setTextMeasurementCanvas(canvas as unknown as HTMLCanvasElement);
  VexFlow.setFonts("Bravura", "Academico");
}
