import type { Count } from "../../base/index.ts";
import type { Ending, Repeat } from "../../theory/index.ts";
import type { FileBar } from "./reading-types.ts";

type MarkedBar = Pick<FileBar, "beginsRepeat" | "repeatTimes" | "endings">;

/**
 * Repeats as the bar lines of a part tell them.
 * @param bars - the part's bars
 * @param first - number of the first bar: 0 for a pickup, else 1
 * @returns repeats in order; one that begins nowhere begins after the one before
 */
export function repeatsOf(bars: readonly MarkedBar[], first: Count): readonly Repeat[] {
  const endings = endingsOf(bars, first);
  const repeats: Repeat[] = [];
  let from = first;
  bars.forEach((bar, index) => {
    const number = first + index;
    if (number < from) return;
    if (bar.beginsRepeat) from = number;
    if (bar.repeatTimes === undefined) return;
    const repeat = repeatAt(from, number, bar.repeatTimes, endings);
    repeats.push(repeat);
    from = repeat.toBar + 1;
  });
  return repeats;
}

function endingsOf(bars: readonly MarkedBar[], first: Count): readonly Ending[] {
  const found: Ending[] = [];
  let begun: { readonly fromBar: Count; readonly passes: readonly Count[] } | undefined;
  bars.forEach(({ endings }, index) => {
    for (const { isStart, passes } of endings) {
      if (isStart) begun = { fromBar: first + index, passes };
      else if (begun !== undefined) {
        found.push({ fromBar: begun.fromBar, toBar: first + index, passes: begun.passes });
        begun = undefined;
      }
    }
  });
  return found;
}

/** A repeat that ends here, or after the last of its endings. */
function repeatAt(fromBar: Count, number: Count, times: Count, endings: readonly Ending[]): Repeat {
  const chain = endings.filter((each) => each.fromBar >= fromBar && each.toBar <= number);
  if (chain.length === 0) return { fromBar, toBar: number, times };
  for (const next of endings) if (next.fromBar === chain.at(-1)!.toBar + 1) chain.push(next);
  const passes = chain.flatMap((each) => each.passes);
  return {
    fromBar,
    toBar: chain.at(-1)!.toBar,
    times: Math.max(2, ...passes),
    endings: chain,
  };
}
