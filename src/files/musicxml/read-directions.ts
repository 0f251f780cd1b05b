import { dynamics, type Dynamic } from "../../band/index.ts";
import type { FileDirection, TempoMark } from "./reading-types.ts";
import { childOf, childrenOf, textOfChild, wholeOfChild, type XmlElement } from "./xml-reader.ts";

/** Note values in quarter notes. Source: W3C MusicXML 4.0, note-type-value. */
const QUARTERS: Readonly<Record<string, number>> = Object.freeze({
  whole: 4,
  half: 2,
  quarter: 1,
  eighth: 0.5,
  "16th": 0.25,
});
const JUMPS = ["dacapo", "dalsegno", "tocoda", "coda", "segno", "fine"] as const;

/**
 * What a direction says, as far as it is kept: dynamics, words, rehearsal marks, tempo, swing.
 * @param element - the direction element
 * @returns what it says, without its time
 */
export function readDirection(element: XmlElement): readonly FileDirection["what"][] {
  const types = childrenOf(element, "direction-type").flatMap(({ children }) => children);
  const words = types
    .filter(({ name }) => name === "words")
    .map(({ text }) => text.trim())
    .filter((text) => text !== "")
    .join(" ");
  const rehearsal = types.find(({ name }) => name === "rehearsal")?.text.trim();
  const tempo = tempoMark(element, types);
  const isOverScore = element.attributes.get("system") === "only-top";
  const found: FileDirection["what"][] = dynamicsIn(types).map((dynamic) => ({ dynamic }));
  if (tempo !== undefined) found.push({ ...tempo, ...(words === "" ? {} : { style: words }) });
  else if (words !== "") found.push(isOverScore ? { wordsOverScore: words } : { words });
  if (rehearsal !== undefined && rehearsal !== "") found.push({ rehearsal });
  return found;
}

/**
 * What a sound element says about tempo and swing.
 * @param sound - the element
 * @returns tempo in quarter notes a minute and swing, as far as they are there
 */
export function readSound(sound: XmlElement): TempoMark | undefined {
  const tempo = Number(sound.attributes.get("tempo"));
  const swing = childOf(sound, "swing");
  const first = swing && wholeOfChild(swing, "first");
  const second = swing && wholeOfChild(swing, "second");
  const hasSwing = first !== undefined && second !== undefined && first > 0 && second > 0;
  if (!(tempo > 0) && !hasSwing) return undefined;
  return { ...(tempo > 0 ? { tempo } : {}), ...(hasSwing ? { swing: { first, second } } : {}) };
}

/**
 * Whether a direction or sound makes the music jump.
 * @param element - direction or sound element
 * @returns true for D.C., D.S., coda and the like
 */
export function jumps(element: XmlElement): boolean {
  const sound = element.name === "sound" ? element : childOf(element, "sound");
  const words = childrenOf(element, "direction-type").flatMap((type) => childrenOf(type, "words"));
  return (
    JUMPS.some((jump) => sound?.attributes.has(jump)) ||
    words.some(({ text }) => /\bD\. ?[CS]\.|\bfine\b|\bcoda\b/i.test(text))
  );
}

const isDynamic = (name: string): name is Dynamic => dynamics.some((each) => each === name);

const dynamicsIn = (types: readonly XmlElement[]): readonly Dynamic[] =>
  types
    .filter(({ name }) => name === "dynamics")
    .flatMap(({ children }) => children.map(({ name }) => name))
    .filter(isDynamic)
    .slice(0, 1);

function tempoMark(element: XmlElement, types: readonly XmlElement[]): TempoMark | undefined {
  const sound = childOf(element, "sound");
  const heard = sound && readSound(sound);
  if (heard?.tempo !== undefined) return heard;
  const metronome = types.find(({ name }) => name === "metronome");
  const printed = metronome && metronomeTempo(metronome);
  return printed === undefined ? heard : { ...heard, tempo: printed };
}

function metronomeTempo(metronome: XmlElement): number | undefined {
  const unit = QUARTERS[textOfChild(metronome, "beat-unit") ?? ""];
  const beats = Number.parseFloat(textOfChild(metronome, "per-minute") ?? "");
  if (unit === undefined || !(beats > 0)) return undefined;
  const isDotted = childOf(metronome, "beat-unit-dot") !== undefined;
  return beats * unit * (isDotted ? 1.5 : 1);
}
