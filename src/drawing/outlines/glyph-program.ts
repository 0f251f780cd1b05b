import { ByteReader } from "./byte-reader.ts";
import { smallNumber, type CffTable } from "./cff-table.ts";
import { Pen, type OutlineStep } from "./pen.ts";

/** Deeper calls than this are a damaged font. Source: Adobe Technical Note 5177, appendix B. */
const deepest = 10;

/**
 * Runs a glyph's program.
 * @param font - the font's CFF table
 * @param glyph - its number
 * @returns the outline in font units, y upwards; closed contours
 * @throws RangeError for a program that does not follow the specification
 * @source Adobe Technical Note 5177, The Type 2 Charstring Format, 2000
 */
export function glyphOutline(font: CffTable, glyph: number): readonly OutlineStep[] {
  const program = font.glyphs[glyph];
  if (program === undefined) throw new RangeError(`there is no glyph ${glyph} in this font`);
  const run = new Run(font);
  run.execute(program, 0);
  return run.pen.finished();
}

class Run {
  readonly pen = new Pen();
  private stack: number[] = [];
  private hints = 0;
  private isEnded = false;

  constructor(private readonly font: CffTable) {}

  execute(program: Uint8Array, depth: number): void {
    if (depth > deepest) throw new RangeError("a glyph calls itself");
    const reader = new ByteReader(program);
    for (let at = 0; at < program.length && !this.isEnded;) {
      const byte = reader.u8(at);
      if (byte === 28 || byte >= 32) {
        const [value, length] = programNumber(reader, at);
        this.stack.push(value);
        at += length;
      } else if (byte === 11) return;
      else if (byte === 10 || byte === 29) {
        this.call(byte === 10 ? this.font.localParts : this.font.globalParts, depth);
        at += 1;
      } else if (byte === 19 || byte === 20) {
        this.countHints();
        at += 1 + Math.ceil(this.hints / 8);
      } else {
        this.operate(byte === 12 ? 256 + reader.u8(at + 1) : byte);
        at += byte === 12 ? 2 : 1;
      }
    }
  }

  private call(parts: readonly Uint8Array[], depth: number): void {
    // Source: 5177, section 4.7: small fonts number their parts from −107.
    const bias = parts.length < 1240 ? 107 : parts.length < 33900 ? 1131 : 32768;
    const part = parts[(this.stack.pop() ?? 0) + bias];
    if (part === undefined) throw new RangeError("a glyph calls a part that is not there");
    this.execute(part, depth + 1);
  }

  private countHints(): void {
    this.hints += this.stack.length >> 1;
    this.stack = [];
  }

  private operate(operator: number): void {
    if ([1, 3, 18, 23].includes(operator)) return this.countHints();
    // The first operator may have the glyph's width before its own numbers.
    const { stack, pen } = this;
    this.stack = [];
    switch (operator) {
      case 4:
        return pen.move(0, stack.at(-1) ?? 0);
      case 21:
        return pen.move(stack.at(-2) ?? 0, stack.at(-1) ?? 0);
      case 22:
        return pen.move(stack.at(-1) ?? 0, 0);
      case 14:
        this.isEnded = true;
        return;
      default:
        drawn(pen, operator, stack);
    }
  }
}

function programNumber(reader: ByteReader, at: number): readonly [number, number] {
  const byte = reader.u8(at);
  if (byte === 28) return [reader.i16(at + 1), 3];
  if (byte === 255) return [(reader.u32(at + 1) | 0) / 65536, 5];
  return smallNumber(reader, at);
}

/** Lines and curves. Source: 5177, section 4.1. */
function drawn(pen: Pen, operator: number, values: readonly number[]): void {
  switch (operator) {
    case 5:
      return lines(pen, values);
    case 6:
      return values.forEach((by, index) => straight(pen, by, index % 2 === 0));
    case 7:
      return values.forEach((by, index) => straight(pen, by, index % 2 === 1));
    case 8:
      return curves(pen, values);
    case 24:
      curves(pen, values.slice(0, -2));
      return lines(pen, values.slice(-2));
    case 25:
      lines(pen, values.slice(0, -6));
      return curves(pen, values.slice(-6));
    case 26:
      return level(pen, values, false);
    case 27:
      return level(pen, values, true);
    case 30:
      return turning(pen, values, false);
    case 31:
      return turning(pen, values, true);
    default:
      return flexed(pen, operator, values);
  }
}

const straight = (pen: Pen, by: number, isLevel: boolean): void =>
  isLevel ? pen.line(by, 0) : pen.line(0, by);

function lines(pen: Pen, values: readonly number[]): void {
  for (let at = 0; at + 1 < values.length; at += 2) pen.line(values[at]!, values[at + 1]!);
}

function curves(pen: Pen, values: readonly number[]): void {
  for (let at = 0; at + 5 < values.length; at += 6) {
    const [a, b, c, d, e, f] = values.slice(at, at + 6);
    pen.curve(a!, b!, c!, d!, e!, f!);
  }
}

/** Curves that begin and end level, or upright. */
function level(pen: Pen, values: readonly number[], isLevel: boolean): void {
  const isOdd = values.length % 4 === 1;
  let aside = isOdd ? values[0]! : 0;
  for (let at = isOdd ? 1 : 0; at + 3 < values.length; at += 4) {
    const [a, b, c, d] = values.slice(at, at + 4);
    if (isLevel) pen.curve(a!, aside, b!, c!, d!, 0);
    else pen.curve(aside, a!, b!, c!, 0, d!);
    aside = 0;
  }
}

/** Curves that begin level and end upright, and the other way round, in turn. */
function turning(pen: Pen, values: readonly number[], startsLevel: boolean): void {
  let isLevel = startsLevel;
  for (let at = 0; at + 3 < values.length; at += 4) {
    const [a, b, c, d] = values.slice(at, at + 4);
    const last = values.length - at === 5 ? values[at + 4]! : 0;
    if (isLevel) pen.curve(a!, 0, b!, c!, last, d!);
    else pen.curve(0, a!, b!, c!, d!, last);
    isLevel = !isLevel;
  }
}

/** Two curves that meet almost flat. Source: 5177, section 4.1, flex operators. */
function flexed(pen: Pen, operator: number, values: readonly number[]): void {
  const v = (at: number) => values[at] ?? 0;
  if (operator === 256 + 35) return curves(pen, values.slice(0, 12));
  if (operator === 256 + 34)
    return curves(pen, [v(0), 0, v(1), v(2), v(3), 0, v(4), 0, v(5), -v(2), v(6), 0]);
  if (operator === 256 + 36) {
    const back = -(v(1) + v(3) + v(7));
    return curves(pen, [v(0), v(1), v(2), v(3), v(4), 0, v(5), 0, v(6), v(7), v(8), back]);
  }
  if (operator !== 256 + 37) throw new RangeError(`a glyph uses the operator ${operator}`);
  const across = v(0) + v(2) + v(4) + v(6) + v(8);
  const up = v(1) + v(3) + v(5) + v(7) + v(9);
  const isWide = Math.abs(across) > Math.abs(up);
  curves(pen, [...values.slice(0, 10), isWide ? v(10) : -across, isWide ? -up : v(10)]);
}
