import type { Chord, SpelledPitchClass } from "../../theory/index.ts";
import { harmonyKindOf } from "./harmony-degrees.ts";
import { xml, xmlText, type XmlOut } from "./xml-writer.ts";

/** A chord as it stands over a staff. */
export interface WrittenChord {
  readonly chord: Chord;
  /** Root and bass as this staff reads them. */
  readonly root: SpelledPitchClass;
  readonly bass: SpelledPitchClass;
  /** Divisions after the place where the element stands. */
  readonly offset: number;
}

/**
 * A chord symbol.
 * @param written - the chord with root and bass for its staff
 * @returns the harmony element
 * @source W3C MusicXML 4.0, harmony
 */
export function harmonyElement({ chord, root, bass, offset }: WrittenChord): XmlOut {
  const { kind, text, degrees } = harmonyKindOf(chord);
  const hasBrackets = degrees.some(({ isPrinted }) => isPrinted);
  return xml(
    "harmony",
    {},
    rootElement("root", root, chord.family === "no-chord"),
    xmlText("kind", kind, { text, "parentheses-degrees": hasBrackets ? "yes" : undefined }),
    chord.hasSlashBass ? rootElement("bass", bass, false) : undefined,
    ...degrees.map(({ value, alter, type, isPrinted }) =>
      xml(
        "degree",
        { "print-object": isPrinted ? undefined : "no" },
        xmlText("degree-value", value),
        xmlText("degree-alter", alter),
        xmlText("degree-type", type),
      ),
    ),
    offset === 0 ? undefined : xmlText("offset", offset),
  );
}

function rootElement(
  name: "root" | "bass",
  { letter, alteration }: SpelledPitchClass,
  isSilent: boolean,
): XmlOut {
  return xml(
    name,
    {},
    xmlText(`${name}-step`, letter, { text: isSilent ? "" : undefined }),
    alteration === 0 ? undefined : xmlText(`${name}-alter`, alteration),
  );
}
