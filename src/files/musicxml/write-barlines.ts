import type { Count } from "../../base/index.ts";
import type { Ending, Repeat } from "../../theory/index.ts";
import { xml, xmlText, type XmlOut } from "./xml-writer.ts";

/**
 * The bar line at the beginning of a bar.
 * @param bar - its number
 * @param repeats - the score's repeats
 * @returns the element; undefined where nothing special stands
 */
export function leftBarline(bar: Count, repeats: readonly Repeat[]): XmlOut | undefined {
  const begins = repeats.some(({ fromBar }) => fromBar === bar);
  const ending = endingsOf(repeats).find(({ fromBar }) => fromBar === bar);
  if (!begins && !ending) return undefined;
  return xml(
    "barline",
    { location: "left" },
    begins ? xmlText("bar-style", "heavy-light") : undefined,
    ending && endingElement(ending, "start"),
    begins ? xml("repeat", { direction: "forward" }) : undefined,
  );
}

/**
 * The bar line at the end of a bar.
 * @param bar - its number
 * @param repeats - the score's repeats
 * @param isLast - whether the score ends here
 * @returns the element; undefined for a plain line
 */
export function rightBarline(
  bar: Count,
  repeats: readonly Repeat[],
  isLast: boolean,
): XmlOut | undefined {
  const ending = endingsOf(repeats).find(({ toBar }) => toBar === bar);
  const repeat = repeats.find((each) => turnsBackAt(each).includes(bar));
  if (!ending && !repeat && !isLast) return undefined;
  const times = repeat?.endings === undefined && repeat?.times !== 2 ? repeat?.times : undefined;
  return xml(
    "barline",
    { location: "right" },
    repeat || isLast ? xmlText("bar-style", "light-heavy") : undefined,
    ending && endingElement(ending, "stop"),
    repeat && xml("repeat", { direction: "backward", times }),
  );
}

const endingsOf = (repeats: readonly Repeat[]): readonly Ending[] =>
  repeats.flatMap(({ endings = [] }) => endings);

/** Bars at whose end a repeat goes back: of each ending but the one of the last pass. */
function turnsBackAt({ toBar, times, endings = [] }: Repeat): readonly Count[] {
  if (endings.length === 0) return [toBar];
  return endings.filter(({ passes }) => !passes.includes(times)).map((ending) => ending.toBar);
}

function endingElement({ passes }: Ending, type: "start" | "stop"): XmlOut {
  return xml("ending", { number: passes.join(","), type });
}
