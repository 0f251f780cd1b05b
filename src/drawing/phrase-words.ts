import type { Stave } from "vexflow/core";
import type { PhraseLayout, PhraseStaff } from "../notation/index.ts";
import type { MadeBar } from "./phrase-notes.ts";
import type { SystemBars } from "./phrase-system-plan.ts";
import { MARK_SIZE, sectionMark } from "./section-mark.ts";
import type { StaffTheme } from "./staff-theme.ts";
import { svgElement } from "./svg-element.ts";

/** A staff in one bar, as far as words go by it. */
interface WordPlace {
  readonly staff: PhraseStaff;
  readonly stave: Stave;
  readonly made: MadeBar;
}

interface Look {
  readonly scale: number;
  readonly theme: StaffTheme;
  readonly tops: readonly number[];
}

const NAME_SIZE = 12;
const SYMBOL_SIZE = 14;
const NUMBER_SIZE = 11;

/**
 * Everything of a line that is text: names, bar numbers, chord symbols, dynamics, style and tempo.
 * @param layout - the phrase
 * @param system - the line
 * @param columns - bars of the line, staves top to bottom
 * @param look - size, colours, top line of each staff in drawing units
 * @returns elements in CSS pixels
 */
export function phraseWords(
  layout: PhraseLayout,
  system: SystemBars,
  columns: readonly (readonly WordPlace[])[],
  look: Look,
): readonly SVGElement[] {
  return [
    ...names(columns[0] ?? [], look),
    ...numbers(layout, system, columns, look),
    ...symbols(layout, system, columns, look),
    ...columns.flatMap((column) => column.flatMap((place) => dynamicsOf(place, look))),
    ...columns.flatMap((column) => column.flatMap((place) => plopsOf(place, look))),
    ...(system.from === 0 ? [headWords(layout, look)] : []),
  ];
}

function names(column: readonly WordPlace[], { scale, theme, tops }: Look): readonly SVGElement[] {
  return column.flatMap(({ staff }, row) => {
    const middle = ((tops[row] ?? 0) + 20) * scale;
    const look = { x: MARK_SIZE + 4, y: middle + NAME_SIZE * 0.35, fill: theme.ink };
    return [
      sectionMark(staff.section, 0, middle, theme),
      svgElement("text", { ...look, "font-size": NAME_SIZE }, staff.abbreviation),
    ];
  });
}

function numbers(
  { bars }: PhraseLayout,
  { from }: SystemBars,
  columns: readonly (readonly WordPlace[])[],
  { scale, theme }: Look,
): readonly SVGElement[] {
  return columns.flatMap(([first], index) => {
    const bar = bars[from + index];
    if (!first || !bar || bar.number === 0) return [];
    const place = { x: first.stave.getX() * scale + 2, y: first.stave.getY() * scale - 6 };
    const look = { "font-size": NUMBER_SIZE, fill: theme.softInk, class: "phrase-bar-number" };
    return [svgElement("text", { ...place, ...look }, String(bar.number))];
  });
}

/** Over the first staff; where players read other pitches, over the first of each section. */
function symbols(
  { pitch, staves }: PhraseLayout,
  { from }: SystemBars,
  columns: readonly (readonly WordPlace[])[],
  { scale, theme }: Look,
): readonly SVGElement[] {
  const isFirst = (row: number): boolean =>
    row === 0 || (pitch === "written" && staves[row - 1]?.section !== staves[row]?.section);
  return columns.flatMap((column, index) =>
    column.flatMap(({ staff, stave, made }, row) => {
      if (!isFirst(row)) return [];
      const bar = staff.bars[from + index];
      const start = stave.getNoteStartX();
      const end = stave.getX() + stave.getWidth();
      const first = bar?.values[0]?.onset;
      return (bar?.symbols ?? []).map(({ onset, text }) => {
        const at = made.values.find(({ value }) => value.onset >= onset);
        const x = at && (onset !== first || row > 0) ? at.note.getAbsoluteX() : start;
        const reach = Math.max(0, stave.getYForLine(0) - highest(made)) * scale;
        const y = stave.getYForLine(0) * scale - reach - 20;
        const look = { "font-size": SYMBOL_SIZE, "font-weight": 700, fill: theme.ink };
        return svgElement(
          "text",
          { class: "staff-chord-symbol", x: Math.min(x, end) * scale, y, ...look },
          text,
        );
      });
    }),
  );
}

function highest({ values }: MadeBar): number {
  return Math.min(
    Infinity,
    ...values.flatMap(({ value, note }) => (value.heads.length > 0 ? note.getYs() : [])),
  );
}

function dynamicsOf({ stave, made }: WordPlace, { scale, theme }: Look): readonly SVGElement[] {
  return made.values.flatMap(({ value, note }) => {
    if (!value.dynamic) return [];
    const lowest = Math.max(stave.getYForLine(4), ...note.getYs());
    const place = { x: (note.getAbsoluteX() - 2) * scale, y: lowest * scale + 20 };
    const look = { class: "dynamic-sign", "font-size": 14, fill: theme.ink };
    return [svgElement("text", { ...place, ...look }, value.dynamic)];
  });
}

/** A plop has no sign in the music font: it is said. */
function plopsOf({ made }: WordPlace, { scale, theme }: Look): readonly SVGElement[] {
  return made.values.flatMap(({ value, note }) => {
    if (!value.marks.includes("plop")) return [];
    const place = {
      x: (note.getAbsoluteX() - 6) * scale,
      y: Math.min(...note.getYs()) * scale - 12,
    };
    return [svgElement("text", { ...place, "font-size": 11, fill: theme.ink }, "plop")];
  });
}

function headWords({ style, tempo, pitch }: PhraseLayout, { theme }: Look): SVGElement {
  const text = `${style}, ${tempo} quarters a minute, ${pitch === "concert" ? "concert pitch" : "as written for each player"}`;
  return svgElement(
    "text",
    { x: 0, y: 14, "font-size": 13, "font-weight": 640, fill: theme.ink },
    text,
  );
}
