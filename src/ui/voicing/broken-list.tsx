import { WarnSign } from "../parts/warn-sign.tsx";
import type { InView } from "../state/page-state.ts";
import { withSigns } from "../words/signs.ts";

/** The rules a voicing breaks, each in words. */
export function BrokenList({ view }: { readonly view: InView }) {
  const { broken } = view.report;
  if (broken.length === 0) return null;
  return (
    <ul className="broken" data-testid="broken">
      {broken.slice(0, 3).map((rule) => (
        <li key={rule.rule + rule.text}>
          <WarnSign />
          {withSigns(rule.text)}
        </li>
      ))}
      {broken.length > 3 && <li className="quiet">and {broken.length - 3} more, at the tokens</li>}
    </ul>
  );
}
