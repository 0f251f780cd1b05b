import type { PhraseLayout } from "../notation/index.ts";
import { figureOf, printTheme, type Figure } from "./draw-figure.ts";
import { drawPhraseSystem } from "./draw-phrase.ts";
import { loadMusicFonts } from "./music-fonts.ts";
import { loadOutlineFonts } from "./outlines/outline-fonts.ts";
import { systemsOf } from "./phrase-system-plan.ts";
import { svgElement } from "./svg-element.ts";

/** CSS pixels. */
const sizes = { margin: 24, width: 1120, gap: 18, titleRoom: 34, titleSize: 20, nameRoom: 76 };

/**
 * Draws a whole phrase for use outside the page: every letter and sign is a shape.
 * @param layout - from layoutPhrase
 * @param scale - size of the music; 1 gives staves 40 pixels high
 * @returns the figure
 * @throws Error when the fonts cannot be read
 */
export async function drawPhraseFigure(layout: PhraseLayout, scale: number): Promise<Figure> {
  const [fonts] = await Promise.all([loadOutlineFonts(), loadMusicFonts()]);
  const { margin, width, gap, titleRoom, titleSize, nameRoom } = sizes;
  const options = { width, scale, nameRoom, theme: printTheme };
  const look = { "font-size": titleSize, "font-weight": 700, fill: printTheme.ink };
  const title = svgElement("text", { x: margin, y: margin + titleSize, ...look }, layout.title);
  let top = margin + titleRoom;
  const systems = systemsOf(layout, (width - nameRoom - 2) / scale).map((bars) => {
    const { svg, height } = drawPhraseSystem(layout, bars, options);
    const place = { transform: `translate(${margin} ${top})` };
    top += height + gap;
    return svgElement("g", place, [...svg.children] as SVGElement[]);
  });
  const description = layout.staves.map(({ name }) => name).join(", ");
  const size = { width: width + 2 * margin, height: Math.ceil(top + margin - gap) };
  return figureOf(
    { title: layout.title, description, groups: [title, ...systems], ...size },
    fonts,
  );
}
