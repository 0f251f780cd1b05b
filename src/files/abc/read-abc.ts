import { quantity, type Count } from "../../base/index.ts";
import type {
  Divisions,
  Key,
  MelodyProblem,
  Metre,
  QuartersPerMinute,
} from "../../theory/index.ts";
import { keyOfFifths } from "../musicxml/key-of-fifths.ts";
import { repeatsOf } from "../musicxml/read-repeats.ts";
import { melodyOfScore, type MelodyAnswer } from "../score/melody-of-score.ts";
import { leadSheetScore } from "../score/lead-sheet.ts";
import type { ScoreBar, ScoreHarmony, ScoreNote } from "../score/score-model.ts";
import { abcBars, type AbcBar, type AbcItem } from "./abc-bars.ts";
import type { AbcTune } from "./abc-elements.ts";

/** Longest tune that is read, in characters. */
const MOST_CHARACTERS: Count = 10_000;
const MOST_BARS: Count = 500;
const MOST_PROBLEMS: Count = 20;
const DEFAULT_TEMPO = 120;

/**
 * Reads a melody with chord symbols in quotes, typed in ABC. Text without a head is read in C, in
 * four, in eighth notes.
 * @param typed - one tune; of several the first is read
 * @returns the melody with remarks, or everything wrong with it, each problem naming its bar:
 *   "abc-empty", "abc-too-long", "abc-macro", "abc-unreadable", "melody-metre", those of chord
 *   symbols, of melodyOfScore and of readMelody
 * @source ABC music standard 2.1 (2011), parsed by the library abcjs
 */
export async function readAbc(typed: string): Promise<MelodyAnswer> {
  // Line ends of every system alike: the parser takes a blank before some of them for music.
  const text = typed.replace(/\r\n?/g, "\n");
  if (text.trim() === "") return refused("abc-empty", 'Type a melody, such as "F7" c2 e2 f4 |.');
  if (text.length > MOST_CHARACTERS)
    return refused("abc-too-long", `The tune is longer than ${MOST_CHARACTERS} characters.`);
  // Macros that call each other grow without bound.
  if (/^m:/m.test(text)) return refused("abc-macro", "Macros (lines with m:) are not read.");
  // A large library, fetched when the first tune is read.
  const { parseOnly } = await import("abcjs");
  const tunes = parseOnly(text) as unknown as readonly AbcTune[];
  const [tune] = tunes;
  if (tune === undefined) return refused("abc-empty", "There is no tune in this text.");
  const remarks = tunes.length > 1 ? [`Of ${tunes.length} tunes the first was read.`] : [];
  return melodyOfTune(tune, text, remarks);
}

const refused = (code: string, message: string): MelodyAnswer => ({
  ok: false,
  problems: [{ code, message }],
});

function melodyOfTune(tune: AbcTune, text: string, remarks: readonly string[]): MelodyAnswer {
  const staves = tune.lines.flatMap(({ staff = [] }) => (staff[0] === undefined ? [] : [staff]));
  const voices = Math.max(0, ...staves.map((staff) => staff.flatMap((s) => s.voices ?? []).length));
  const elements = staves.flatMap((staff) => staff[0]?.voices?.[0] ?? []);
  const accidentals = tune.getKeySignature().accidentals ?? [];
  const read = abcBars(elements, accidentals);
  const problems = [...warnings(tune, text, read.bars), ...read.problems];
  if (problems.length > 0)
    return { ok: false, problems: problems.slice(0, MOST_PROBLEMS).sort(byBar) };
  const metre = metreOf(tune);
  if (metre === undefined)
    return refused("melody-metre", "The metre (M:) cannot be read; write it as M:4/4.");
  if (read.bars.length === 0) return refused("melody-none", "There is no note in this text.");
  if (read.bars.length > MOST_BARS)
    return refused("abc-too-long", `The tune has more than ${MOST_BARS} bars.`);
  const found = melodyOfScore(scoreOf(tune, read.bars, metre));
  if (!found.ok) return found;
  const more = [
    ...remarks,
    ...(hasTextBehind(text) ? ["Nothing behind the empty line was read: it ends the tune."] : []),
    ...(voices > 1 ? ["Of several voices the first was read."] : []),
    ...read.remarks,
  ];
  const { melody } = found.value;
  return { ok: true, value: { melody, remarks: [...more, ...found.value.remarks] } };
}

const byBar = (a: MelodyProblem, b: MelodyProblem): number => (a.bar ?? 0) - (b.bar ?? 0);

/** What the library could not read, in plain text, with the bar it stands in. */
function warnings(
  { warnings: texts = [] }: AbcTune,
  text: string,
  bars: readonly AbcBar[],
): readonly MelodyProblem[] {
  const lines = text.split("\n");
  return texts.slice(0, MOST_PROBLEMS).map((warning): MelodyProblem => {
    const [, line = "1", column = "1", why = ""] =
      /^Music Line:(\d+):(\d+): ([^:<]*)/.exec(warning) ?? [];
    const before = lines.slice(0, Number(line) - 1).reduce((sum, each) => sum + each.length + 1, 0);
    const position = before + Number(column) - 1;
    const bar = Math.max(1, bars.filter(({ startChar }) => startChar <= position).length);
    const sign = text[position] ?? "";
    const reason = why.trim().replace(/^[A-Z]/, (first) => first.toLowerCase());
    const what = /ignored|unknown/i.test(why) ? `“${sign}” means nothing here` : reason;
    return {
      code: "abc-unreadable",
      message: `Bar ${bar}: ${what || "this cannot be read"}.`,
      bar,
      position,
    };
  });
}

function metreOf(tune: AbcTune): Metre | undefined {
  const { type, value } = tune.getMeter();
  if (type === "common_time") return { beats: 4, beatType: 4 };
  if (type === "cut_time") return { beats: 2, beatType: 2 };
  const beats = (value?.[0]?.num ?? "").split("+").reduce((sum, part) => sum + Number(part), 0);
  const beatType = Number(value?.[0]?.den ?? 4);
  const isUsual = Number.isInteger(beats) && beats >= 1 && beats <= 32;
  return isUsual && [1, 2, 4, 8, 16, 32].includes(beatType) ? { beats, beatType } : undefined;
}

function keyOf(tune: AbcTune): Key {
  const { accidentals = [], mode = "" } = tune.getKeySignature();
  const count = (acc: string): number => accidentals.filter((each) => each.acc === acc).length;
  return keyOfFifths(count("sharp") - count("flat"), mode === "m" ? "minor" : "major");
}

function tempoOf({ metaText: { tempo } }: AbcTune): QuartersPerMinute {
  const beat = (tempo?.duration ?? [0.25]).reduce((sum, each) => sum + each, 0);
  return quantity(tempo?.bpm === undefined ? DEFAULT_TEMPO : tempo.bpm * beat * 4);
}

function scoreOf(tune: AbcTune, bars: readonly AbcBar[], metre: Metre) {
  const division = divisionFor(bars, metre);
  const full = (metre.beats * 4 * division) / metre.beatType;
  const key = keyOf(tune);
  const notes: ScoreNote[] = [];
  const harmonies: ScoreHarmony[] = [];
  const scoreBars: ScoreBar[] = [];
  let at = 0;
  let isTied = false;
  for (const bar of bars) {
    const start = at;
    for (const item of bar.items) {
      const onset = quantity<Divisions>(at);
      const duration = quantity<Divisions>(lengthOf(item, division));
      if (item.chord !== undefined) harmonies.push({ onset, symbol: item.chord });
      if (item.pitch !== undefined) addNote(notes, { onset, duration, pitch: item.pitch }, isTied);
      isTied = item.isTied;
      at += duration;
    }
    const restBars = bar.restBars ?? 0;
    if (restBars > 0) at = start + restBars * full;
    const count = Math.max(1, restBars);
    for (let index = 0; index < count; index += 1)
      scoreBars.push({ length: quantity<Divisions>((at - start) / count), metre, key });
  }
  const first = scoreBars[0]!;
  const hasPickup = scoreBars.length > 1 && first.length < full;
  if (hasPickup) scoreBars[0] = { ...first, isPickup: true };
  return leadSheetScore({
    title: tune.metaText.title ?? "",
    division,
    tempo: tempoOf(tune),
    style: [tune.metaText.rhythm, tune.metaText.tempo?.preString].filter(Boolean).join(" "),
    bars: scoreBars,
    harmonies,
    repeats: repeatsOf(bars, hasPickup ? 0 : 1),
    notes,
  });
}

/** Joins a note to the one it is tied from. */
function addNote(notes: ScoreNote[], note: ScoreNote, isTied: boolean): void {
  const before = notes.at(-1);
  const isSame =
    before?.onset !== undefined &&
    before.onset + before.duration === note.onset &&
    JSON.stringify(before.pitch) === JSON.stringify(note.pitch);
  if (isTied && before !== undefined && isSame)
    notes[notes.length - 1] = {
      ...before,
      duration: quantity<Divisions>(before.duration + note.duration),
    };
  else notes.push(note);
}

const lengthOf = ({ length: [numerator, denominator] }: AbcItem, division: Count): Count =>
  (numerator * division) / denominator;

function greatestCommon(a: number, b: number): number {
  return b === 0 ? a : greatestCommon(b, a % b);
}

/** The coarsest division in which every note and every beat is whole. */
function divisionFor(bars: readonly AbcBar[], { beatType }: Metre): Count {
  const parts = bars.flatMap(({ items }) => items.map(({ length }) => length[1]));
  return [Math.max(1, beatType / 4), 2, ...parts].reduce(
    (found, next) => (found * next) / greatestCommon(found, next),
    1,
  );
}

/** An empty line ends a tune; what follows and is no other tune is easily taken for part of it. */
function hasTextBehind(text: string): boolean {
  const [, ...behind] = text.trim().split(/\n[ \t]*\n/);
  const lines = behind.join("\n").split("\n");
  if (lines.some((line) => /^X:/.test(line))) return false;
  return lines.some((line) => line.trim() !== "" && !line.startsWith("%"));
}
