import type { SectionId } from "../notation/index.ts";
import type { StaffTheme } from "./staff-theme.ts";
import { svgElement } from "./svg-element.ts";

/** Room a mark takes, width and height. */
export const MARK_SIZE = 10;

/**
 * The sign of a section: trumpets a triangle, trombones a bar, saxes a disc, rhythm a square. The
 * shape carries the meaning; colour only helps.
 * @param section - whose sign
 * @param x - left edge
 * @param y - middle
 * @param theme - colours
 * @returns the shape, with a class named after the section
 */
export function sectionMark(
  section: SectionId,
  x: number,
  y: number,
  theme: StaffTheme,
): SVGElement {
  const { fill, outline } = theme.sections[section];
  const look = {
    class: `section-mark section-mark-${section}`,
    fill,
    stroke: outline,
    "stroke-width": 1,
  };
  switch (section) {
    case "trumpets":
      return svgElement("path", {
        ...look,
        d: `M${x + 5} ${y - 4.5}L${x + 9.7} ${y + 4}H${x + 0.3}Z`,
      });
    case "trombones":
      return svgElement("rect", { ...look, x: x + 0.5, y: y - 2.75, width: 9, height: 5.5 });
    case "saxes":
      return svgElement("circle", { ...look, cx: x + 5, cy: y, r: 4.5 });
    case "rhythm":
      return svgElement("rect", { ...look, x: x + 1, y: y - 4, width: 8, height: 8 });
  }
}
