import { boxOf } from "./measuring.ts";

/** A sign as drawn, pixels. */
export interface DrawnBox {
  readonly kind: "head" | "sign";
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function inherited(element: Element, name: string): string {
  const holder = element.closest(`[${name}]`);
  return holder?.getAttribute(name) ?? "";
}

function pixels(size: string): number {
  return parseFloat(size) * (size.endsWith("pt") ? 4 / 3 : 1);
}

/** Boxes of all note heads and accidentals of a drawing, in the music's own units. */
export function musicBoxes(svg: SVGSVGElement): readonly DrawnBox[] {
  return [...svg.querySelectorAll(".staff-note")].flatMap((group) =>
    [...group.querySelectorAll("text")].map((text, index): DrawnBox => {
      const families = inherited(text, "font-family").split(",");
      const box = boxOf(text.textContent, pixels(inherited(text, "font-size")), families);
      const x = Number(text.getAttribute("x"));
      const y = Number(text.getAttribute("y"));
      return {
        kind: index === 0 ? "head" : "sign",
        left: x + box.left,
        right: x + box.right,
        top: y + box.top,
        bottom: y + box.bottom,
      };
    }),
  );
}

/** How far two boxes lie over each other, the smaller of width and height; 0 when apart. */
export function overlap(a: DrawnBox, b: DrawnBox): number {
  const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const high = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
  return Math.max(0, Math.min(wide, high));
}
