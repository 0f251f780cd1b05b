import { SVGContext } from "vexflow/core";
import type { StaffTheme } from "./staff-theme.ts";
import { shortNumber, svgElement } from "./svg-element.ts";

/** Attributes of VexFlow's outer element that its children rely on. */
const INHERITED = ["font-family", "font-size", "font-weight", "font-style", "stroke-width"];

/**
 * Lets VexFlow draw aside, then hands its shapes over as one group, free of ids, of invisible
 * rectangles and of its own colours.
 * @param theme - colours
 * @param scale - size of the music; 1 gives staves 40 pixels high
 * @param draw - draws into the context it is given, in unscaled units
 * @returns the group, not yet in a document
 */
export function musicGroup(
  theme: StaffTheme,
  scale: number,
  draw: (context: SVGContext) => void,
): SVGGElement {
  const context = new SVGContext(document.createElement("div"));
  context.setFillStyle(theme.ink).setStrokeStyle(theme.ink);
  const outer = context.openGroup("music") as SVGGElement;
  draw(context);
  context.closeGroup();
  const group = svgElement("g", {
    class: "staff-music",
    transform: `scale(${shortNumber(scale)})`,
    fill: theme.ink,
    stroke: theme.ink,
  });
  for (const name of INHERITED) {
    const value = outer.getAttribute(name) ?? context.svg.getAttribute(name);
    if (value) group.setAttribute(name, value);
  }
  group.append(...outer.childNodes);
  for (const hidden of group.querySelectorAll('rect[opacity="0"]')) hidden.remove();
  for (const named of group.querySelectorAll("[id]")) named.removeAttribute("id");
  return group;
}
