import { useState } from "react";
import type { InView } from "../state/page-state.ts";
import { signed } from "../words/counts.ts";
import { withSigns } from "../words/signs.ts";
import { reasonFor, type ReasonPart } from "./reason.ts";

/** Parts shown before the rest is folded away. */
const shownFirst = 3;

/** The reason, first of all: how far from the best here, and why, in terms that add up. */
export function ReasonWords({ view }: { readonly view: InView }) {
  const [isOpen, setOpen] = useState(false);
  const { over, parts } = reasonFor(view.report.cost, view.best?.cost ?? null);
  const shown = isOpen ? parts : parts.slice(0, shownFirst);
  const hidden = parts.slice(shown.length);
  return (
    <p className="reason" data-testid="reason">
      <b className="loud">{headOf(over, view.by === "map")}</b>{" "}
      <PartWords parts={shown} isDifference={over !== 0} />
      {hidden.length > 0 && (
        <>
          {"; "}
          <button type="button" className="link" onClick={() => setOpen(true)}>
            {hidden.length} more ({signed(sumOf(hidden)).replace("+", "")})
          </button>
        </>
      )}
      {isOpen && parts.length > shownFirst && (
        <button type="button" className="link" onClick={() => setOpen(false)}>
          fewer
        </button>
      )}
      {parts.length === 0 ? "nothing speaks against it." : "."}
    </p>
  );
}

function headOf(over: number | null, isBest: boolean): string {
  if (over === null) return "Not on this map; what speaks against it:";
  if (over === 0)
    return isBest ? "The best here; what it still costs:" : "Level with the best here; its cost:";
  return `${signed(over)} ${over > 0 ? "over" : "under"} the best here:`;
}

function sumOf(parts: readonly ReasonPart[]): number {
  return parts.reduce((sum, part) => sum + part.value, 0);
}

/** Dearer terms first, then what it saves. */
function PartWords(props: {
  readonly parts: readonly ReasonPart[];
  readonly isDifference: boolean;
}) {
  const { parts, isDifference } = props;
  const costs = parts.filter((part) => part.value > 0);
  const savings = parts.filter((part) => part.value < 0);
  const words = (list: readonly ReasonPart[]) =>
    list
      .map(({ text, value }) => `${withSigns(text)} (${signed(value).replace("+", "")})`)
      .join("; ");
  const saved =
    savings.length === 0 ? "" : `${isDifference ? "it saves" : "less"}: ${words(savings)}`;
  return <>{[words(costs), saved].filter((text) => text !== "").join("; ")}</>;
}
