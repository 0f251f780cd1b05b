import type { Count } from "../../base/index.ts";
import { instrumentOf } from "../../band/index.ts";
import { checkScore } from "../score/check-score.ts";
import { midiChannels } from "../score/midi-channels.ts";
import { programOf } from "../score/program-of.ts";
import type { ScoreModel, ScorePart } from "../score/score-model.ts";
import { placedChords, staffReading, type ScorePitch } from "./staff-reading.ts";
import { partElement } from "./write-part.ts";
import { printXml, xml, xmlText, type XmlOut } from "./xml-writer.ts";

/** How a score is written. */
export interface MusicXmlOptions {
  /** Transposed parts unless given. */
  readonly pitch?: ScorePitch;
  /** Which parts show the chord symbols: the top one and the rhythm section unless given. */
  readonly chordsOver?: "top-and-rhythm" | "every-part";
}

const HEAD = `<?xml version="1.0" encoding="UTF-8"?>
<!DOCTYPE score-partwise PUBLIC "-//Recordare//DTD MusicXML 4.0 Partwise//EN" "http://www.musicxml.org/dtds/partwise.dtd">
`;

/**
 * Writes a score as MusicXML.
 * @param score - bars, parts and chords in sounding pitch
 * @param options - transposed parts or a concert score, where chord symbols stand
 * @returns the text of the file, UTF-8
 * @throws RangeError when the score is not in order, see checkScore
 * @source W3C MusicXML 4.0, score-partwise
 */
export function writeMusicXml(score: ScoreModel, options: MusicXmlOptions = {}): string {
  checkScore(score);
  const { pitch = "written", chordsOver = "top-and-rhythm" } = options;
  const { title, composer, parts, harmonies } = score;
  const chords = placedChords(harmonies);
  const showsChords = (part: ScorePart, index: Count): boolean =>
    index === 0 || chordsOver === "every-part" || isRhythm(part);
  const root = xml(
    "score-partwise",
    { version: "4.0" },
    title === "" ? undefined : xml("work", {}, xmlText("work-title", title)),
    xml(
      "identification",
      {},
      composer === undefined ? undefined : xmlText("creator", composer, { type: "composer" }),
      xml("encoding", {}, xmlText("software", "Hornweave"), ...supported()),
    ),
    pitch === "concert" ? xml("defaults", {}, xml("concert-score", {})) : undefined,
    partList(parts),
    ...parts.map((part, index) =>
      partElement({
        score,
        part,
        pitch,
        reading: staffReading(part, pitch, chords),
        chords: showsChords(part, index) ? chords : [],
        isTop: index === 0,
      }),
    ),
  );
  return HEAD + printXml(root);
}

const isRhythm = ({ instrument }: ScorePart): boolean =>
  instrument !== null && instrumentOf(instrument).section === "rhythm";

/** Says that every accidental that is to be seen is in the file. */
const supported = (): readonly XmlOut[] => [
  xml("supports", { element: "accidental", type: "yes" }),
  xml("supports", { element: "transpose", type: "yes" }),
];

/** Sections of two and more players are bracketed, their bar lines drawn through. */
function partList(parts: readonly ScorePart[]): XmlOut {
  const channels = midiChannels(parts.map(programOf));
  const section = (index: Count): string | null => {
    const instrument = parts[index]?.instrument ?? null;
    return instrument === null ? null : instrumentOf(instrument).section;
  };
  const goesOn = (index: Count): boolean =>
    section(index) !== null && section(index) === section(index + 1);
  return xml(
    "part-list",
    {},
    ...parts.flatMap((part, index) => [
      goesOn(index) && !goesOn(index - 1) ? bracketStart() : undefined,
      scorePart(part, channels[index]!),
      !goesOn(index) && goesOn(index - 1)
        ? xml("part-group", { type: "stop", number: 1 })
        : undefined,
    ]),
  );
}

const bracketStart = (): XmlOut =>
  xml(
    "part-group",
    { type: "start", number: 1 },
    xmlText("group-symbol", "bracket"),
    xmlText("group-barline", "yes"),
  );

function scorePart(part: ScorePart, channel: Count): XmlOut {
  const { id, name, abbreviation, instrument } = part;
  const known = instrument === null ? undefined : instrumentOf(instrument);
  return xml(
    "score-part",
    { id },
    xmlText("part-name", name),
    abbreviation === "" ? undefined : xmlText("part-abbreviation", abbreviation),
    xml(
      "score-instrument",
      { id: `${id}-instrument` },
      xmlText("instrument-name", known?.name ?? name),
      known && xmlText("instrument-sound", known.musicXmlSound),
    ),
    xml(
      "midi-instrument",
      { id: `${id}-instrument` },
      xmlText("midi-channel", channel),
      xmlText("midi-program", programOf(part)),
    ),
  );
}
