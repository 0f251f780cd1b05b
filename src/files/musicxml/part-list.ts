import { instruments, type InstrumentId } from "../../band/index.ts";
import { childOf, childrenOf, textOfChild, type XmlElement } from "./xml-reader.ts";

/** What the list of parts says of one. */
export interface ListedPart {
  readonly name: string;
  readonly abbreviation: string;
  /** Null where the band has no such instrument. */
  readonly instrument: InstrumentId | null;
}

const NO_NAME = "Part";

/**
 * Reads the list of parts.
 * @param root - the score
 * @returns by part id
 * @source W3C MusicXML 4.0, score-part; instruments are known by their sound, else by name
 */
export function partList(root: XmlElement): ReadonlyMap<string, ListedPart> {
  const list = childOf(root, "part-list");
  const parts = list === undefined ? [] : childrenOf(list, "score-part");
  return new Map(
    parts.map((part) => {
      const name = textOfChild(part, "part-name") || NO_NAME;
      const instrument = childOf(part, "score-instrument");
      const sound = instrument && textOfChild(instrument, "instrument-sound");
      const instrumentName = instrument && textOfChild(instrument, "instrument-name");
      return [
        part.attributes.get("id") ?? "",
        {
          name,
          abbreviation: textOfChild(part, "part-abbreviation") ?? "",
          instrument:
            instruments.find((each) => each.musicXmlSound === sound)?.id ??
            named(instrumentName) ??
            named(name) ??
            null,
        },
      ];
    }),
  );
}

const named = (name = ""): InstrumentId | undefined =>
  instruments.find((each) => each.name.toLowerCase() === name.toLowerCase())?.id;
