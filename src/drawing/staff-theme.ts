import type { SectionId } from "../notation/index.ts";

/** Inside and edge of a section's mark, any CSS colour. */
export interface MarkColours {
  readonly fill: string;
  readonly outline: string;
}

/** Colours of a drawing, any CSS colour; `var(--name)` lets light and dark share one drawing. */
export interface StaffTheme {
  /** Notes, clefs, degrees. */
  readonly ink: string;
  /** Names, leaders. */
  readonly softInk: string;
  /** Staff lines. */
  readonly line: string;
  readonly sections: Readonly<Record<SectionId, MarkColours>>;
}

function sectionColours(section: SectionId): MarkColours {
  const fill = `var(--section-${section}, currentColor)`;
  return { fill, outline: `var(--section-${section}-outline, ${fill})` };
}

/**
 * Takes everything from CSS variables, and from the text colour where they are not set:
 * --staff-ink, --staff-soft-ink, --staff-line, --section-trumpets, --section-trumpets-outline …
 */
export const variableTheme: StaffTheme = Object.freeze({
  ink: "var(--staff-ink, currentColor)",
  softInk: "var(--staff-soft-ink, currentColor)",
  line: "var(--staff-line, currentColor)",
  sections: Object.freeze({
    trumpets: sectionColours("trumpets"),
    trombones: sectionColours("trombones"),
    saxes: sectionColours("saxes"),
    rhythm: sectionColours("rhythm"),
  }),
});
