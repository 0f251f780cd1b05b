import type { StaffLayout } from "../notation/index.ts";
import { drawStaves } from "./draw-staves.ts";
import { loadMusicFonts } from "./music-fonts.ts";
import { loadOutlineFonts } from "./outlines/outline-fonts.ts";
import { outlineTexts } from "./outlines/outline-tree.ts";
import { paintTree } from "./outlines/paint-tree.ts";
import type { StaffTheme } from "./staff-theme.ts";
import { svgElement } from "./svg-element.ts";

/** One voicing of a figure. */
export interface FigurePart {
  readonly layout: StaffLayout;
  /** Over its staves; nothing when empty. */
  readonly caption: string;
}

/** A drawing that leaves the page: it needs no font and no style of it. */
export interface Figure {
  readonly width: number;
  readonly height: number;
  /** The text of an SVG file. */
  readonly svg: string;
  /**
   * The same as pixels.
   * @param scale - pixels to a unit of the drawing
   * @returns the bytes of a PNG file
   * @throws Error when the browser cannot make it
   */
  readonly png: (scale: number) => Promise<Blob>;
}

/** CSS pixels. */
const sizes = { margin: 20, column: 360, gap: 16, captionSize: 15, captionRoom: 26, mostInRow: 4 };

/** Ink on white, sections in the colours of the light page. Source: the look's tokens. */
export const printTheme: StaffTheme = Object.freeze({
  ink: "#000000",
  softInk: "#333333",
  line: "#000000",
  sections: Object.freeze({
    trumpets: { fill: "#e7b140", outline: "#9b690b" },
    trombones: { fill: "#7d222a", outline: "#7d222a" },
    saxes: { fill: "#3369af", outline: "#3369af" },
    rhythm: { fill: "#6c7775", outline: "#6c7775" },
  }),
});

/**
 * Draws voicings side by side for use outside the page: every letter and sign is a shape.
 * @param parts - in order, at least one
 * @param title - name of the whole, for those who cannot see it
 * @returns the figure
 * @throws Error when the fonts cannot be read
 */
export async function drawFigure(parts: readonly FigurePart[], title: string): Promise<Figure> {
  const [fonts] = await Promise.all([loadOutlineFonts(), loadMusicFonts()]);
  const drawn = drawnParts(parts);
  const inRow = Math.min(sizes.mostInRow, parts.length);
  const width = 2 * sizes.margin + inRow * sizes.column + (inRow - 1) * sizes.gap;
  const { groups, bottom } = placed(drawn, inRow);
  const height = Math.ceil(bottom + sizes.margin);
  const description = parts.map(({ layout }) => layout.description).join(" ");
  return figureOf({ title, description, groups, width, height }, fonts);
}

/**
 * Makes a finished figure of groups: white ground, every letter a shape.
 * @param content - what is in it, and its size in CSS pixels
 * @param fonts - from loadOutlineFonts
 * @returns the figure
 */
export function figureOf(
  content: {
    readonly title: string;
    readonly description: string;
    readonly groups: readonly SVGElement[];
    readonly width: number;
    readonly height: number;
  },
  fonts: Awaited<ReturnType<typeof loadOutlineFonts>>,
): Figure {
  const { title, description, groups, width, height } = content;
  const root = svgElement(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${width} ${height}`,
      width,
      height,
      role: "img",
    },
    [
      svgElement("title", {}, title),
      svgElement("desc", {}, description),
      svgElement("rect", { x: 0, y: 0, width, height, fill: "#ffffff" }),
      ...groups,
    ],
  );
  outlineTexts(root, fonts);
  return {
    width,
    height,
    svg: `<?xml version="1.0" encoding="UTF-8"?>\n${new XMLSerializer().serializeToString(root)}\n`,
    png: (scale) => pngOf(root, { width, height }, scale),
  };
}

interface DrawnPart {
  readonly group: SVGGElement;
  readonly height: number;
}

/** Texts are measured where they are drawn, so the drawing is on the page for a moment, unseen. */
function drawnParts(parts: readonly FigurePart[]): readonly DrawnPart[] {
  const aside = document.createElement("div");
  aside.style.position = "absolute";
  aside.style.visibility = "hidden";
  aside.style.fontFamily = "Academico";
  document.body.append(aside);
  try {
    return parts.map(({ layout, caption }) => {
      const options = { width: sizes.column, theme: printTheme };
      const { svg, height } = drawStaves(layout, aside, options);
      const shapes = [...svg.children].filter(({ localName }) => localName !== "title");
      const staves = svgElement(
        "g",
        { transform: `translate(0 ${sizes.captionRoom})` },
        shapes.filter(({ localName }) => localName !== "desc") as SVGElement[],
      );
      return {
        group: svgElement("g", {}, [captionText(caption), staves]),
        height: height + sizes.captionRoom,
      };
    });
  } finally {
    aside.remove();
  }
}

function captionText(caption: string): SVGElement {
  const look = { "font-size": sizes.captionSize, "font-weight": 700, fill: printTheme.ink };
  return svgElement("text", { x: 0, y: sizes.captionSize, ...look }, caption);
}

/** Puts the parts into rows. */
function placed(
  parts: readonly DrawnPart[],
  inRow: number,
): { readonly groups: readonly SVGGElement[]; readonly bottom: number } {
  let top = sizes.margin;
  let tallest = 0;
  parts.forEach(({ group, height }, index) => {
    const column = index % inRow;
    if (column === 0 && index > 0) {
      top += tallest + sizes.gap;
      tallest = 0;
    }
    const x = sizes.margin + column * (sizes.column + sizes.gap);
    group.setAttribute("transform", `translate(${x} ${top})`);
    tallest = Math.max(tallest, height);
  });
  return { groups: parts.map(({ group }) => group), bottom: top + tallest };
}

function pngOf(
  root: SVGElement,
  { width, height }: { readonly width: number; readonly height: number },
  scale: number,
): Promise<Blob> {
  const canvas = document.createElement("canvas");
  canvas.width = Math.round(width * scale);
  canvas.height = Math.round(height * scale);
  const context = canvas.getContext("2d");
  if (context === null) return Promise.reject(new Error("the browser gives no canvas"));
  context.scale(scale, scale);
  paintTree(root, context);
  return new Promise((resolve, reject) => {
    canvas.toBlob((blob) => {
      if (blob === null) reject(new Error("the picture is too large for this browser"));
      else resolve(blob);
    }, "image/png");
  });
}
