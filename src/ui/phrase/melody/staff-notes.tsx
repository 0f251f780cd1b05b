import { accidentals, flags, glyphs, rests } from "./staff-signs.ts";
import { staff, yOfSteps } from "./staff-sizes.ts";
import { isStemUp } from "./staff-plan.ts";
import type { PlannedItem, PlannedLine } from "./staff-plan-types.ts";

const { space } = staff;
const headWidth = 1.18 * space;
const stemLength = 3.5 * space;

interface Stem {
  readonly x: number;
  readonly from: number;
  readonly to: number;
  readonly isUp: boolean;
  readonly isBeamed: boolean;
}

/** Stems of a line by item; those under a beam reach it. */
function stemsOf({ items, beams }: PlannedLine): ReadonlyMap<number, Stem> {
  const stems = new Map<number, Stem>();
  items.forEach((item, index) => {
    if (item.noteId === undefined || item.value < 2) return;
    stems.set(index, stemOf(item, isStemUp([item.steps])));
  });
  for (const { items: group, isUp } of beams) {
    const own = group.flatMap((at) => {
      const item = items[at];
      return item === undefined ? [] : [{ at, stem: { ...stemOf(item, isUp), isBeamed: true } }];
    });
    const [first] = own;
    const last = own.at(-1);
    if (first === undefined || last === undefined) continue;
    const wanted = (last.stem.to - first.stem.to) / Math.max(1, last.stem.x - first.stem.x);
    const slope = Math.max(-0.12, Math.min(0.12, wanted));
    const reach = own.map(({ stem }) => stem.to - slope * (stem.x - first.stem.x));
    const base = isUp ? Math.min(...reach) : Math.max(...reach);
    for (const { at, stem } of own)
      stems.set(at, { ...stem, to: base + slope * (stem.x - first.stem.x) });
  }
  return stems;
}

function stemOf({ x, steps }: PlannedItem, isUp: boolean): Stem {
  const y = yOfSteps(steps);
  const at = isUp ? x + headWidth - 0.5 : x + 0.5;
  const usual = isUp ? y - stemLength : y + stemLength;
  // Stems of notes far off the staff reach its middle line.
  const middle = yOfSteps(34);
  const to = isUp ? Math.min(usual, middle) : Math.max(usual, middle);
  return { x: at, from: y, to, isUp, isBeamed: false };
}

/** Notes, rests, stems, beams, ties and tuplets of a line. */
export function StaffNotes(props: {
  readonly line: PlannedLine;
  readonly chosen: ReadonlySet<string>;
}) {
  const { line, chosen } = props;
  const stems = stemsOf(line);
  return (
    <g>
      {line.items.map((item, index) => (
        <g key={item.from} data-chosen={item.noteId !== undefined && chosen.has(item.noteId)}>
          {item.noteId === undefined ? (
            <Rest item={item} />
          ) : (
            <Note item={item} stem={stems.get(index)} />
          )}
        </g>
      ))}
      <Beams line={line} stems={stems} />
      <Ties line={line} />
      <Tuplets line={line} stems={stems} />
    </g>
  );
}

function Rest({ item }: { readonly item: PlannedItem }) {
  const y = yOfSteps(item.value === 1 ? 36 : 34);
  return (
    <>
      <text className="music rest" x={item.x} y={y}>
        {rests[item.value] ?? glyphs.wholeRest}
      </text>
      {item.dots > 0 && <Dot item={item} />}
    </>
  );
}

function Dot({ item }: { readonly item: PlannedItem }) {
  const onLine = item.steps % 2 === 0;
  return (
    <text className="music" x={item.x + headWidth + 3} y={yOfSteps(item.steps + (onLine ? 1 : 0))}>
      {glyphs.dot}
    </text>
  );
}

function Note({ item, stem }: { readonly item: PlannedItem; readonly stem: Stem | undefined }) {
  const { x, steps, value } = item;
  const y = yOfSteps(steps);
  const head = value <= 1 ? glyphs.headWhole : value === 2 ? glyphs.headHalf : glyphs.headBlack;
  const flag = stem?.isBeamed === true ? undefined : flags[value]?.[stem?.isUp === true ? 0 : 1];
  const sign = item.accidental === undefined ? undefined : accidentals[item.accidental];
  return (
    <>
      {ledgersOf(steps).map((at) => (
        <line
          key={at}
          className="staff-line"
          x1={x - 3}
          x2={x + headWidth + 3}
          y1={yOfSteps(at)}
          y2={yOfSteps(at)}
        />
      ))}
      {sign !== undefined && (
        <text className="music" x={x - 2.5} y={y} textAnchor="end">
          {sign}
        </text>
      )}
      <text className="music" x={x} y={y}>
        {head}
      </text>
      {stem !== undefined && (
        <line className="stem" x1={stem.x} x2={stem.x} y1={stem.from} y2={stem.to} />
      )}
      {stem !== undefined && flag !== undefined && (
        <text className="music" x={stem.x - 0.5} y={stem.to}>
          {flag}
        </text>
      )}
      {item.dots > 0 && <Dot item={item} />}
    </>
  );
}

/** Ledger lines of a note, letter steps. */
export function ledgersOf(steps: number): readonly number[] {
  const found: number[] = [];
  for (let at = 40; at <= steps; at += 2) found.push(at);
  for (let at = 28; at >= steps; at -= 2) found.push(at);
  return found;
}

type Stems = ReadonlyMap<number, Stem>;

function Beams({ line, stems }: { readonly line: PlannedLine; readonly stems: Stems }) {
  return line.beams.map(({ items, isUp }) => (
    <path key={items[0]} className="beam" d={beamPath(line, items, stems, isUp)} />
  ));
}

/** One bar for eighths, a second and third below it where shorter notes are neighbours. */
function beamPath(
  { items }: PlannedLine,
  group: readonly number[],
  stems: Stems,
  isUp: boolean,
): string {
  const parts: string[] = [];
  for (const [level, value] of [8, 16, 32].entries()) {
    const shift = level * 6 * (isUp ? 1 : -1);
    group.forEach((at, index) => {
      const stem = stems.get(at);
      const isIn = (each: number | undefined) => (items[each ?? -1]?.value ?? 0) >= value;
      if (stem === undefined || !isIn(at)) return;
      const next = isIn(group[index + 1]) ? stems.get(group[index + 1] ?? -1) : undefined;
      const isAlone = next === undefined && !isIn(group[index - 1]);
      if (next !== undefined) parts.push(bar(stem, next.x, next.to, shift, isUp));
      else if (isAlone) {
        const neighbour = stems.get(group[index - 1] ?? group[index + 1] ?? -1);
        const side = neighbour !== undefined && neighbour.x < stem.x ? -8 : 8;
        parts.push(bar(stem, stem.x + side, stem.to, shift, isUp));
      }
    });
  }
  return parts.join("");
}

function bar(stem: Stem, x: number, y: number, shift: number, isUp: boolean): string {
  const thick = isUp ? 4 : -4;
  return `M${stem.x},${stem.to + shift}L${x},${y + shift}v${thick}L${stem.x},${stem.to + shift + thick}Z`;
}

function Ties({ line }: { readonly line: PlannedLine }) {
  return line.items.map((item, index) => {
    if (!item.isTied) return null;
    const next = line.items[index + 1];
    const from = item.x + headWidth;
    const to = next === undefined ? line.endX : next.x;
    const isAbove = !isStemUp([item.steps]);
    const y = yOfSteps(item.steps) + (isAbove ? -5 : 5);
    const bend = isAbove ? -7 : 7;
    const middle = (from + to) / 2;
    return (
      <path
        key={item.from}
        className="tie"
        d={`M${from - 3},${y}Q${middle},${y + bend} ${to + 3},${y}`}
      />
    );
  });
}

function Tuplets({ line, stems }: { readonly line: PlannedLine; readonly stems: Stems }) {
  return line.tuplets.map(({ items, figure }) => {
    const own = items.flatMap((at) => line.items[at] ?? []);
    const [first] = own;
    const last = own.at(-1);
    if (first === undefined || last === undefined) return null;
    const tops = items.map((at) =>
      Math.min(stems.get(at)?.to ?? 999, yOfSteps(line.items[at]?.steps ?? 34)),
    );
    const y = Math.min(...tops, yOfSteps(38)) - 6;
    const end = last.x + headWidth;
    const middle = (first.x + end) / 2;
    return (
      <g key={first.from}>
        <path
          className="tie"
          d={`M${first.x},${y + 3}v-4H${middle - 7}M${middle + 7},${y - 1}H${end}v4`}
        />
        <text className="tuplet" x={middle} y={y + 3} textAnchor="middle">
          {figure}
        </text>
      </g>
    );
  });
}
