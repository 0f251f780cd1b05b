import { moveSpelled, withoutDoubles } from "../../notation/index.ts";
import { spelledToMidi, type Letter, type SpelledPitch } from "../../theory/index.ts";
import { articulationTable } from "./articulation-table.ts";
import { ScoreFault, type FileNote } from "./reading-types.ts";
import { durationOf, moveBy, where, type Gathering, type Walk } from "./walk.ts";
import { childOf, childrenOf, textOfChild, wholeOfChild, type XmlElement } from "./xml-reader.ts";

/**
 * Takes a note or rest into the bar.
 * @param note - the note element
 * @param walk - changed
 * @param bar - changed
 * @throws ScoreFault on a note without a usable length or pitch
 */
export function readNote(note: XmlElement, walk: Walk, bar: Gathering): void {
  if (childOf(note, "grace") !== undefined)
    return walk.remark(`${where(walk, bar)}: grace notes were left out.`);
  const length = durationOf(note, walk, bar);
  const isChord = childOf(note, "chord") !== undefined;
  const at = isChord ? bar.chordAt : bar.at;
  if (!isChord) {
    bar.chordAt = bar.at;
    moveBy(length, walk, bar);
  }
  if (childOf(note, "cue") !== undefined)
    return walk.remark(`${where(walk, bar)}: cue notes were left out.`);
  if (childOf(note, "rest") !== undefined) return;
  const pitch = readPitchOf(note, walk, bar);
  if (pitch === undefined) return;
  const notations = childrenOf(note, "notations").flatMap(({ children }) => children);
  const voice = textOfChild(note, "voice") ?? "1";
  followSlurs(notations, voice, walk.slurs);
  bar.notes.push({
    at,
    length,
    pitch,
    voice,
    isTiedFrom: hasTie(note, notations, "stop"),
    isTiedOn: hasTie(note, notations, "start"),
    isSlurredOn: [...walk.slurs].some((slur) => slur.startsWith(`${voice}/`)),
    marks: readMarks(notations),
  });
}

function readPitchOf(note: XmlElement, walk: Walk, bar: Gathering): SpelledPitch | undefined {
  const element = childOf(note, "pitch");
  if (element === undefined) {
    walk.remark(`${where(walk, bar)}: notes without a pitch were left out.`);
    return undefined;
  }
  const step = textOfChild(element, "step") ?? "";
  const octave = wholeOfChild(element, "octave");
  const alteration = Number(textOfChild(element, "alter") ?? 0);
  if (!/^[A-G]$/.test(step) || octave === undefined || octave < 0 || octave > 9)
    throw new ScoreFault("musicxml-pitch", `${where(walk, bar)}: a note has no readable pitch.`);
  if (!Number.isInteger(alteration) || Math.abs(alteration) > 2)
    throw new ScoreFault(
      "musicxml-pitch",
      `${where(walk, bar)}: a note is altered by ${alteration} semitones, which is no half-tone sign.`,
    );
  const written = { letter: step as Letter, alteration, octave };
  const moved = moveSpelled(written, walk.toSounding);
  const pitch = Math.abs(moved.alteration) > 2 ? withoutDoubles(moved) : moved;
  try {
    spelledToMidi(pitch);
  } catch {
    throw new ScoreFault(
      "musicxml-pitch",
      `${where(walk, bar)}: ${step}${octave} sounds outside the notes that can be played.`,
    );
  }
  return pitch;
}

function hasTie(
  note: XmlElement,
  notations: readonly XmlElement[],
  type: "start" | "stop",
): boolean {
  const ties = childrenOf(note, "tie");
  const found = ties.length > 0 ? ties : notations.filter(({ name }) => name === "tied");
  return found.some(({ attributes }) => attributes.get("type") === type);
}

function followSlurs(notations: readonly XmlElement[], voice: string, slurs: Set<string>): void {
  const own = notations.filter(({ name }) => name === "slur");
  const id = ({ attributes }: XmlElement): string => `${voice}/${attributes.get("number") ?? "1"}`;
  for (const slur of own) if (slur.attributes.get("type") === "stop") slurs.delete(id(slur));
  for (const slur of own) if (slur.attributes.get("type") === "start") slurs.add(id(slur));
}

function readMarks(notations: readonly XmlElement[]): FileNote["marks"] {
  const names = notations
    .filter(({ name }) => name === "articulations")
    .flatMap(({ children }) => children.map(({ name }) => name));
  return articulationTable.filter(([, element]) => names.includes(element)).map(([mark]) => mark);
}
