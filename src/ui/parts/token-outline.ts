import type { SectionId } from "../../band/index.ts";

/**
 * A token's outline: trumpets slant, trombones are square, saxes are round.
 * @param section - whose token
 * @param width - CSS pixels
 * @param height - CSS pixels
 * @returns a path from the token's top left corner
 */
export function outlineOf(section: SectionId, width: number, height: number): string {
  const slant = Math.min(height * 0.22, width * 0.16);
  const round = Math.min(height / 2, width / 2);
  switch (section) {
    case "trumpets":
      return `M${slant},0H${width - slant}L${width},${height}H0Z`;
    case "saxes":
      return `M${round},0H${width - round}A${round},${height / 2} 0 0 1 ${width - round},${height}H${round}A${round},${height / 2} 0 0 1 ${round},0Z`;
    default:
      return `M0,0H${width}V${height}H0Z`;
  }
}
