import { moveSpelled, withoutDoubles, type Reading } from "../../notation/index.ts";
import type { Letter, SpelledPitchClass } from "../../theory/index.ts";
import { chordOfHarmony, type ReadHarmony } from "./chord-of-harmony.ts";
import { ownDegrees, type HarmonyDegree, type HarmonyKind } from "./harmony-degrees.ts";
import { childOf, childrenOf, textOfChild, wholeOfChild, type XmlElement } from "./xml-reader.ts";

/**
 * Reads a chord symbol. Of several chords in one element the first is taken.
 * @param element - the harmony element
 * @param toSounding - from this part's written to sounding pitch
 * @returns the concert chord; undefined where it cannot be read
 */
export function readHarmony(element: XmlElement, toSounding: Reading): ReadHarmony | undefined {
  const kind = childOf(element, "kind");
  const root = readRoot(childOf(element, "root"), "root");
  if (kind === undefined || root === undefined) return undefined;
  const harmony: HarmonyKind = {
    kind: kind.text.trim(),
    text: kind.attributes.get("text")?.trim() ?? "",
    degrees: childrenOf(element, "degree").flatMap(readDegree),
  };
  const bass = readRoot(childOf(element, "bass"), "bass");
  const readAt = (reading: Reading): ReadHarmony | undefined =>
    chordOfHarmony(moved(root, reading), harmony, bass && moved(bass, reading));
  const strict = readAt(toSounding);
  if (strict === undefined || !hasDoubles(strict)) return strict;
  // A part that reads its chord enharmonically: F sharp seventh behind an E flat part's E flat 7.
  const other = [1, -1]
    .map((change) =>
      readAt({ ...toSounding, steps: (toSounding.steps + change) as Reading["steps"] }),
    )
    .find((each) => each !== undefined && !hasDoubles(each));
  return other ?? strict;
}

function hasDoubles({ chord }: ReadHarmony): boolean {
  // Diminished chords on flats have double flats however they are written: A flat's E and G.
  const isUsual = (degree: string): boolean =>
    degree === "bb7" || (degree === "b5" && /dim/.test(chord.symbol));
  const own = new Set(ownDegrees(chord).filter((degree) => !isUsual(degree)));
  return chord.tones.some(
    ({ degree, spelled }) => own.has(degree) && Math.abs(spelled.alteration) > 1,
  );
}

function moved(root: SpelledPitchClass, reading: Reading): SpelledPitchClass {
  const { letter, alteration } = moveSpelled({ ...root, octave: 4 }, reading);
  const isReadable = Math.abs(alteration) <= 2;
  if (isReadable) return { letter, alteration };
  const plain = withoutDoubles(moveSpelled({ ...root, octave: 4 }, reading));
  return { letter: plain.letter, alteration: plain.alteration };
}

function readRoot(
  element: XmlElement | undefined,
  name: "root" | "bass",
): SpelledPitchClass | undefined {
  if (element === undefined) return undefined;
  const step = textOfChild(element, `${name}-step`) ?? "";
  if (!/^[A-G]$/.test(step)) return undefined;
  const alteration = wholeOfChild(element, `${name}-alter`) ?? 0;
  if (Math.abs(alteration) > 2) return undefined;
  return { letter: step as Letter, alteration };
}

function readDegree(element: XmlElement): readonly HarmonyDegree[] {
  const value = wholeOfChild(element, "degree-value");
  const alter = wholeOfChild(element, "degree-alter") ?? 0;
  const type = textOfChild(element, "degree-type");
  if (value === undefined || value < 1 || value > 13 || Math.abs(alter) > 2) return [];
  if (type !== "add" && type !== "alter" && type !== "subtract") return [];
  return [{ value, alter, type, isPrinted: element.attributes.get("print-object") !== "no" }];
}
