import { accidentalMemory, stretchesOf, writtenValues } from "../../../notation/index.ts";
import {
  barCount,
  barLength,
  barStart,
  beatLength,
  fifthsOf,
  type Melody,
} from "../../../theory/index.ts";
import type {
  PlannedBar,
  PlannedBeam,
  PlannedItem,
  PlannedLine,
  PlannedTuplet,
} from "./staff-plan-types.ts";
import { stepsOf } from "./staff-steps.ts";

/** Widths in CSS pixels: least of a bar, of a value, and what a quarter adds. Judgement. */
const sizes = {
  bar: 74,
  padding: 14,
  value: 13,
  quarter: 17,
  accidental: 9,
  sign: 9,
  chordLetter: 9.5,
};
const valueNames: Readonly<Record<string, number>> = Object.freeze({
  breve: 0.5,
  whole: 1,
  half: 2,
  quarter: 4,
  eighth: 8,
  "16th": 16,
  "32nd": 32,
  "64th": 64,
  "128th": 128,
});

interface LooseItem extends Omit<PlannedItem, "x"> {
  readonly width: number;
  readonly tuplet: number | undefined;
  readonly beginsTuplet: boolean;
}

interface LooseBar {
  readonly number: number;
  readonly from: number;
  readonly to: number;
  readonly items: readonly LooseItem[];
  readonly width: number;
}

/**
 * Lays a melody out on lines of a width.
 * @param melody - the melody, in order
 * @param width - CSS pixels
 * @returns lines from the top down
 */
export function planStaff(melody: Melody, width: number): readonly PlannedLine[] {
  const lead = 36 + sizes.sign * Math.abs(fifthsOf(melody.key));
  const bars = looseBars(melody);
  const lines: LooseBar[][] = [];
  let left = 0;
  for (const bar of bars) {
    const isFirst = lines.length === 0 || bar.width > left;
    if (isFirst) {
      lines.push([]);
      left = width - lead - (lines.length === 1 ? 26 : 0);
    }
    lines.at(-1)?.push(bar);
    left -= bar.width;
  }
  return lines.map((line, index) => placedLine(melody, line, width, lead, index, lines.length));
}

function placedLine(
  melody: Melody,
  bars: readonly LooseBar[],
  width: number,
  lead: number,
  index: number,
  count: number,
): PlannedLine {
  const startX = lead + (index === 0 ? 26 : 0);
  const natural = bars.reduce((sum, bar) => sum + bar.width, 0);
  const room = width - startX - 2;
  // A last line that is far from full is not spread over the whole width.
  const isShort = index === count - 1 && count > 1 && natural < 0.6 * room;
  const stretch = isShort ? Math.min(1.3, room / natural) : room / natural;
  const items: PlannedItem[] = [];
  const tuplets: PlannedTuplet[] = [];
  let x = startX;
  const placedBars = bars.map((bar): PlannedBar => {
    const start = x;
    let at = start + sizes.padding * stretch;
    for (const loose of bar.items) {
      const { width: own, tuplet, beginsTuplet, ...item } = loose;
      const shift = loose.accidental === undefined ? 0 : sizes.accidental;
      if (tuplet !== undefined && beginsTuplet) tuplets.push({ items: [], figure: tuplet });
      if (tuplet !== undefined) extendTuplet(tuplets, items.length);
      const isWholeBar = loose.isWholeBar;
      items.push({ ...item, x: isWholeBar ? start + (bar.width * stretch) / 2 : at + shift });
      at += own * stretch;
    }
    x = start + bar.width * stretch;
    return { ...barSigns(melody, bar.number), ...spanOf(bar), x: start, endX: x };
  });
  const first = bars[0];
  const last = bars.at(-1);
  return {
    from: first?.from ?? 0,
    to: last?.to ?? 0,
    bars: placedBars,
    items,
    beams: beamsOf(items, melody),
    tuplets,
    startX,
    endX: x,
    hasMetre: index === 0,
  };
}

const spanOf = ({ number, from, to }: LooseBar) => ({ number, from, to });

function extendTuplet(tuplets: PlannedTuplet[], item: number): void {
  const last = tuplets.pop();
  if (last !== undefined) tuplets.push({ ...last, items: [...last.items, item] });
}

function barSigns({ repeats }: Melody, number: number) {
  const repeat = repeats.find(({ toBar }) => toBar === number);
  const endings = repeats.flatMap((one) => one.endings ?? []);
  const ending = endings.find(({ fromBar }) => fromBar === number);
  const isInner = endings.some(({ toBar }, at) => toBar === number && at < endings.length - 1);
  const endsHere = repeat !== undefined && (repeat.endings ?? []).length === 0;
  return {
    beginsRepeat: repeats.some(({ fromBar }) => fromBar === number),
    endsRepeat: endsHere ? repeat.times : isInner ? 2 : null,
    ending: ending === undefined ? null : `${ending.passes.join(", ")}.`,
  };
}

function looseBars(melody: Melody): readonly LooseBar[] {
  const memory = accidentalMemory();
  const fifths = fifthsOf(melody.key);
  const bars: LooseBar[] = [];
  for (let number = melody.pickup > 0 ? 0 : 1; number <= barCount(melody); number += 1) {
    memory.beginBar(fifths);
    const from = barStart(melody, number);
    const to = Math.min(melody.length, number === 0 ? melody.pickup : from + barLength(melody));
    const bare = looseItems(melody, from, to, (pitch) => memory.shown(pitch)?.name);
    const items = withChordRoom(melody, bare, to);
    const natural = items.reduce((sum, item) => sum + item.width, 2 * sizes.padding);
    bars.push({ number, from, to, items, width: Math.max(sizes.bar, natural) });
  }
  return bars;
}

/** Room for the chord symbols: each ends before the next begins. */
function withChordRoom(
  { changes }: Melody,
  items: readonly LooseItem[],
  end: number,
): readonly LooseItem[] {
  return items.map((item) => {
    const at = changes.filter(({ onset }) => onset <= item.from).length - 1;
    const change = changes[at];
    const next = Math.min(end, changes[at + 1]?.onset ?? end);
    if (change === undefined || change.onset < (items[0]?.from ?? 0)) return item;
    const own = items.filter(({ from }) => from >= change.onset && from < next);
    const natural = own.reduce((sum, one) => sum + one.width, 0);
    const needed = sizes.chordLetter * change.text.length + sizes.padding;
    return natural >= needed ? item : { ...item, width: (item.width * needed) / natural };
  });
}

type Note = Melody["notes"][number];

function looseItems(
  melody: Melody,
  from: number,
  to: number,
  shown: (pitch: Note["pitch"]) => string | undefined,
): readonly LooseItem[] {
  const inside = melody.notes.filter(
    ({ onset, duration }) => onset < to && onset + duration > from,
  );
  const sounding = inside.map((note) => ({
    note,
    from: Math.max(0, note.onset - from),
    to: Math.min(to, note.onset + note.duration) - from,
  }));
  const stretches = stretchesOf(sounding, to - from);
  const full = barLength(melody);
  const offset = from < melody.pickup ? full - melody.pickup : 0;
  const written = writtenValues(stretches, {
    metre: melody.metre,
    division: melody.division,
    offset,
  });
  const isEmpty = inside.length === 0 && to - from === full;
  if (isEmpty) return [emptyBar(from, to, melody)];
  return written.map((value): LooseItem => {
    const own = sounding.find((each) => each.from <= value.from && value.from < each.to);
    const note = own?.note;
    const isFirst = own?.from === value.from;
    const before = melody.notes[melody.notes.findIndex(({ id }) => id === note?.id) - 1];
    const isHeldOn = note !== undefined && before?.isTied === true && from === note.onset;
    const sign = note && isFirst && !isHeldOn ? shown(note.pitch) : undefined;
    const quarters = value.length / melody.division;
    return {
      noteId: note?.id,
      from: from + value.from,
      to: from + value.from + value.length,
      value: valueNames[value.value] ?? 4,
      dots: value.dots,
      steps: note === undefined ? 34 : stepsOf(note.pitch),
      accidental: sign,
      isTied: own !== undefined && (value.from + value.length < own.to || own.note.isTied),
      isWholeBar: false,
      width:
        sizes.value +
        sizes.quarter * Math.sqrt(quarters) +
        (sign ? sizes.accidental : 0) +
        (value.dots > 0 ? 4 : 0),
      tuplet: value.tuplet?.notes,
      beginsTuplet: value.beginsTuplet === true,
    };
  });
}

function emptyBar(from: number, to: number, { division }: Melody): LooseItem {
  return {
    noteId: undefined,
    from,
    to,
    value: 1,
    dots: 0,
    steps: 34,
    accidental: undefined,
    isTied: false,
    isWholeBar: true,
    width: sizes.value + 1.6 * sizes.quarter * Math.sqrt((to - from) / division),
    tuplet: undefined,
    beginsTuplet: false,
  };
}

/** Eighths and shorter notes of one beat hang together. Source: common practice. */
function beamsOf(items: readonly PlannedItem[], melody: Melody): readonly PlannedBeam[] {
  const beat = beatLength(melody);
  const full = barLength(melody);
  const offset = melody.pickup > 0 ? full - melody.pickup : 0;
  const beatOf = (item: PlannedItem) => Math.floor((item.from + offset) / beat);
  const groups: number[][] = [];
  items.forEach((item, index) => {
    const before = items[index - 1];
    const joins =
      before !== undefined &&
      isShort(before) &&
      isShort(item) &&
      before.to === item.from &&
      beatOf(before) === beatOf(item);
    if (joins) groups.at(-1)?.push(index);
    else if (isShort(item)) groups.push([index]);
  });
  return groups
    .filter((group) => group.length > 1)
    .map((group) => ({ items: group, isUp: isStemUp(group.map((at) => items[at]?.steps ?? 34)) }));
}

const isShort = ({ value, noteId }: PlannedItem): boolean => value >= 8 && noteId !== undefined;

/**
 * Whether stems point up: when the note farthest from the middle line lies below it.
 * @param steps - letter steps of the notes under one beam, or of one note
 * @returns true for up
 */
export function isStemUp(steps: readonly number[]): boolean {
  const far = Math.max(...steps) - 34 >= 34 - Math.min(...steps);
  return !far;
}

/**
 * Time at a place on a line.
 * @param line - the line
 * @param x - CSS pixels
 * @returns divisions, between the items in proportion
 */
export function timeAt(line: PlannedLine, x: number): number {
  const stops = stopsOf(line);
  const after = stops.findIndex((stop) => stop.x > x);
  const before = stops[(after < 0 ? stops.length : after) - 1];
  const next = stops[after];
  if (before === undefined) return line.from;
  if (next === undefined) return line.to;
  return before.at + ((x - before.x) / (next.x - before.x)) * (next.at - before.at);
}

/**
 * Place of a time on a line.
 * @param line - the line
 * @param at - divisions
 * @returns CSS pixels
 */
export function xOf(line: PlannedLine, at: number): number {
  const stops = stopsOf(line);
  const after = stops.findIndex((stop) => stop.at > at);
  const before = stops[(after < 0 ? stops.length : after) - 1];
  const next = stops[after];
  if (before === undefined) return line.startX;
  if (next === undefined) return before.x;
  return before.x + ((at - before.at) / (next.at - before.at)) * (next.x - before.x);
}

function stopsOf(line: PlannedLine): readonly { readonly at: number; readonly x: number }[] {
  const bars = line.bars.map((bar) => ({ at: bar.from, x: bar.x + sizes.padding }));
  const items = line.items
    .filter(({ isWholeBar }) => !isWholeBar)
    .map(({ from, x }) => ({ at: from, x }));
  const all = [...items, ...bars.filter((bar) => !items.some(({ at }) => at === bar.at))];
  return [...all.sort((a, b) => a.at - b.at), { at: line.to, x: line.endX }];
}
