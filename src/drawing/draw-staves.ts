import type { StaffLayout } from "../notation/index.ts";
import { drawByPlayer } from "./draw-by-player.ts";
import { drawGrand } from "./draw-grand.ts";
import type { DrawOptions, StaffDrawing } from "./drawing-types.ts";
import { textMeasure } from "./measure-text.ts";
import { variableTheme } from "./staff-theme.ts";
import { svgElement } from "./svg-element.ts";

/** Size of degrees and names in CSS pixels. */
const TEXT_SIZE = 13;

/**
 * Draws a laid-out voicing into a container, in place of what was there. Call loadMusicFonts first.
 * The picture takes its text font and colours from the page around it.
 * @param layout - from layoutVoicing
 * @param container - an element of the page
 * @param options - width in CSS pixels, labels, colours
 * @returns the picture, its size, and where each note stands
 * @throws RangeError when the width is not a number above 0
 */
export function drawStaves(
  layout: StaffLayout,
  container: HTMLElement,
  options: DrawOptions,
): StaffDrawing {
  const { width, labels = "players", theme = variableTheme } = options;
  if (!(width > 0)) throw new RangeError(`width must be a number above 0, got ${width}`);
  const measure = textMeasure(container, TEXT_SIZE);
  const brush = { width, labels, theme, measure, textSize: TEXT_SIZE };
  const draw = layout.view === "grand" ? drawGrand : drawByPlayer;
  const { children, height, notes } = draw(layout, brush);
  const svg = svgElement(
    "svg",
    {
      class: `staves staves-${layout.view}`,
      role: "img",
      "aria-label": `${layout.title}. ${layout.description}`,
      viewBox: `0 0 ${width} ${height}`,
      width,
      height,
    },
    [
      svgElement("title", {}, layout.title),
      svgElement("desc", {}, layout.description),
      ...children,
    ],
  );
  container.replaceChildren(svg);
  return { svg, width, height, notes };
}
