import type { Count } from "../../base/index.ts";
import {
  readChord,
  type Letter,
  type MelodyProblem,
  type SpelledPitch,
} from "../../theory/index.ts";
import type { FileEnding } from "../musicxml/reading-types.ts";
import type { AbcAccidental, AbcElement, AbcPitch } from "./abc-elements.ts";

/** A note or rest, its length a fraction of a quarter. */
export interface AbcItem {
  readonly length: readonly [numerator: Count, denominator: Count];
  readonly pitch?: SpelledPitch;
  readonly isTied: boolean;
  /** Chord symbol in this project's spelling. */
  readonly chord?: string;
}

/** One bar with what its bar lines say. */
export interface AbcBar {
  readonly items: AbcItem[];
  beginsRepeat: boolean;
  repeatTimes: Count | undefined;
  readonly endings: FileEnding[];
  /** Where it begins in the text. */
  readonly startChar: Count;
  /** Bars of rest that stand for so many bars. */
  restBars?: Count;
}

/** Everything read from a voice. */
export interface AbcBars {
  readonly bars: readonly AbcBar[];
  readonly problems: readonly MelodyProblem[];
  readonly remarks: readonly string[];
}

const LETTERS: readonly Letter[] = ["C", "D", "E", "F", "G", "A", "B"];
const ALTERATIONS: Readonly<Record<string, number>> = Object.freeze({
  flat: -1,
  natural: 0,
  sharp: 1,
  dblsharp: 2,
  dblflat: -2,
});
/** Most bars that one sign for rests may stand for. */
const MOST_REST_BARS = 100;

/**
 * The bars of a voice.
 * @param elements - the voice, all lines one behind the other
 * @param key - accidentals of the key signature
 * @returns bars, and everything wrong with them, each naming its bar
 * @source ABC 2.1, sections 4.1 to 4.18; an accidental holds for its letter in all octaves to the end
 *   of the bar (11.3, default)
 */
export function abcBars(elements: readonly AbcElement[], key: readonly AbcAccidental[]): AbcBars {
  const reading = new Reading(key);
  for (const element of elements) reading.take(element);
  return reading.finished();
}

class Reading {
  private readonly bars: AbcBar[] = [];
  private readonly problems: MelodyProblem[] = [];
  private readonly remarks = new Set<string>();
  private signature: Map<string, number>;
  private shown = new Map<string, number>();
  private current = emptyBar(0);
  /** Letter step and alteration of a note that is tied on. */
  private tied: { readonly step: number; readonly alteration: number } | undefined;
  private shortening = 1;
  private isInEnding = false;

  constructor(key: readonly AbcAccidental[]) {
    this.signature = signatureOf(key);
  }

  take(element: AbcElement): void {
    if (element.el_type === "note") this.takeNote(element);
    else if (element.el_type === "bar") this.takeBarLine(element);
    else if (element.el_type === "key") this.signature = signatureOf(element.accidentals ?? []);
    else if (element.el_type === "meter") this.problem("melody-metre-changes", "the metre changes");
  }

  finished(): AbcBars {
    if (this.current.items.length > 0) this.bars.push(this.current);
    // An ending that nothing closes lasts to the end of the tune.
    if (this.isInEnding) this.bars.at(-1)?.endings.push({ passes: [1], isStart: false });
    return { bars: this.bars, problems: this.problems, remarks: [...this.remarks] };
  }

  /** Number of the bar that is being read; a pickup is told apart later. */
  private get number(): Count {
    return this.bars.length + 1;
  }

  private problem(code: string, why: string): void {
    const bar = this.number;
    this.problems.push({ code, message: `Bar ${bar}: ${why}.`, bar });
  }

  private takeNote(element: AbcElement): void {
    const { rest, pitches, duration = 0 } = element;
    if (element.gracenotes !== undefined) this.remarks.add("Grace notes were left out.");
    if (rest?.type === "spacer") return;
    if (element.startTriplet !== undefined) this.shortening = element.tripletMultiplier ?? 1;
    const factor = this.shortening;
    if (element.endTriplet === true) this.shortening = 1;
    const chord = this.chordOf(element);
    if (rest?.type.endsWith("multimeasure") === true) return this.takeRestBars(rest.text ?? 1);
    const length = fractionOf(duration * 4 * factor);
    if (length === undefined) return this.problem("note-length", "a note has an unusable length");
    const top = pitches?.reduce((high, each) => (each.pitch > high.pitch ? each : high));
    const pitch = top === undefined ? undefined : this.pitchOf(top);
    if (pitches !== undefined && pitches.length > 1)
      this.remarks.add("Of notes that sound together the highest was taken.");
    this.current.items.push({
      length,
      isTied: top?.startTie !== undefined,
      ...(pitch === undefined ? {} : { pitch }),
      ...(chord === undefined ? {} : { chord }),
    });
  }

  private takeRestBars(count: Count): void {
    if (count > MOST_REST_BARS) return this.problem("bar-length", "so long a rest cannot be read");
    this.current.restBars = count;
    this.current.items.push({ length: [0, 1], isTied: false });
  }

  private chordOf({ chord }: AbcElement): string | undefined {
    const text = chord?.find(({ position = "default" }) => position === "default")?.name.trim();
    if (text === undefined || text === "") return undefined;
    const read = readChord(text);
    if (read.ok) return read.value.symbol;
    const bar = this.number;
    const message = `Bar ${bar}, chord “${text.slice(0, 40)}”: ${read.problem.message}`;
    this.problems.push({ ...read.problem, message, bar });
    return undefined;
  }

  private pitchOf({
    pitch: step,
    accidental,
    endTie,
    startTie,
  }: AbcPitch): SpelledPitch | undefined {
    const letter = LETTERS[((step % 7) + 7) % 7] ?? "C";
    const octave = 4 + Math.floor(step / 7);
    const held = endTie === true && this.tied?.step === step ? this.tied.alteration : undefined;
    const printed = accidental === undefined ? undefined : ALTERATIONS[accidental];
    if (accidental !== undefined && printed === undefined) {
      this.problem("note-pitch", "quarter tones cannot be read");
      return undefined;
    }
    if (printed !== undefined) this.shown.set(letter, printed);
    const alteration = printed ?? held ?? this.shown.get(letter) ?? this.signature.get(letter) ?? 0;
    this.tied = startTie === undefined ? undefined : { step, alteration };
    if (octave >= 0 && octave <= 9) return { letter, alteration, octave };
    this.problem("note-pitch", "a note lies outside the notes that can be sounded");
    return undefined;
  }

  private takeBarLine({ type = "", startEnding, endEnding, startChar = 0 }: AbcElement): void {
    this.shown = new Map();
    if (this.current.items.length > 0) {
      this.bars.push(this.current);
      this.current = emptyBar(startChar);
    }
    const before = this.bars.at(-1);
    const turnsBack = type === "bar_right_repeat" || type === "bar_dbl_repeat";
    if (turnsBack && before !== undefined) before.repeatTimes = 2;
    if (type === "bar_left_repeat" || type === "bar_dbl_repeat") this.current.beginsRepeat = true;
    const passes = passesOf(startEnding ?? "");
    if (this.isInEnding && (endEnding === true || passes.length > 0)) {
      before?.endings.push({ passes: [1], isStart: false });
      this.isInEnding = false;
    }
    if (passes.length > 0) {
      this.current.endings.push({ passes, isStart: true });
      this.isInEnding = true;
    }
  }
}

const emptyBar = (startChar: Count): AbcBar => ({
  items: [],
  beginsRepeat: false,
  repeatTimes: undefined,
  endings: [],
  startChar,
});

const signatureOf = (key: readonly AbcAccidental[]): Map<string, number> =>
  new Map(key.map(({ acc, note }) => [note.toUpperCase(), ALTERATIONS[acc] ?? 0]));

/** "1", "1,2", "1-3". */
function passesOf(text: string): readonly Count[] {
  return text.split(",").flatMap((part) => {
    const [, from, to = from] = /^\s*(\d{1,2})(?:-(\d{1,2}))?\s*$/.exec(part) ?? [];
    const first = Number(from);
    const count = Math.min(16, Number(to)) - first + 1;
    return count >= 1 ? Array.from({ length: count }, (_, index) => first + index) : [];
  });
}

/** Finest part of a quarter that is looked for. */
const MOST_PARTS = 1920;

/** The fraction that a length is, in lowest terms. */
function fractionOf(quarters: number): readonly [Count, Count] | undefined {
  if (!(quarters > 0 && quarters < 1000)) return undefined;
  for (let parts = 1; parts <= MOST_PARTS; parts += 1) {
    const count = quarters * parts;
    if (Math.abs(count - Math.round(count)) < 1e-6) return [Math.round(count), parts];
  }
  return undefined;
}
