import type { PartDirection, ScoreModel } from "../score/score-model.ts";
import { xml, xmlText, type XmlOut } from "./xml-writer.ts";

/**
 * Tempo, style and swing at the head of the score.
 * @param score - the score
 * @returns the direction
 * @source W3C MusicXML 4.0, metronome, sound, swing
 */
export function tempoDirection(score: ScoreModel): XmlOut {
  const { tempo, style, swing } = score;
  return xml(
    "direction",
    { placement: "above", directive: "yes", system: "only-top" },
    style === undefined ? undefined : xml("direction-type", {}, xmlText("words", style)),
    xml(
      "direction-type",
      {},
      xml(
        "metronome",
        { parentheses: style === undefined ? undefined : "yes" },
        xmlText("beat-unit", "quarter"),
        xmlText("per-minute", tempo),
      ),
    ),
    xml(
      "sound",
      { tempo },
      swing &&
        xml(
          "swing",
          {},
          xmlText("first", swing.first),
          xmlText("second", swing.second),
          xmlText("swing-type", "eighth"),
        ),
    ),
  );
}

/**
 * A rehearsal mark over the score.
 * @param text - letter or number
 * @returns the direction
 */
export function rehearsalDirection(text: string): XmlOut {
  return xml(
    "direction",
    { placement: "above", system: "only-top" },
    xml("direction-type", {}, xmlText("rehearsal", text)),
  );
}

/**
 * Words over the score.
 * @param text - the words
 * @returns the direction
 */
export function wordsOverScore(text: string): XmlOut {
  return xml(
    "direction",
    { placement: "above", system: "only-top" },
    xml("direction-type", {}, xmlText("words", text)),
  );
}

/**
 * A dynamic under a staff, or words over it.
 * @param direction - what and when
 * @param offset - divisions after the place where the element stands
 * @returns the direction
 */
export function partDirection(direction: PartDirection, offset: number): XmlOut {
  const isDynamic = "dynamic" in direction;
  return xml(
    "direction",
    { placement: isDynamic ? "below" : "above" },
    xml(
      "direction-type",
      {},
      isDynamic
        ? xml("dynamics", {}, xml(direction.dynamic, {}))
        : xmlText("words", direction.words),
    ),
    offset === 0 ? undefined : xmlText("offset", offset),
  );
}
