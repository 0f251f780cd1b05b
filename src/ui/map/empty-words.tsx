import { ruleTexts } from "../../explore/index.ts";
import type { AtlasCell, CellKey, RuleId } from "../../voicing/index.ts";
import { liftRules } from "../actions/ask.ts";
import { goTo } from "../actions/walk.ts";
import { WarnSign } from "../parts/warn-sign.tsx";
import { usePage } from "../store.ts";
import { inWords, listed } from "../words/counts.ts";
import { spanText } from "../words/interval-words.ts";

/** Why the place the user went to holds nothing, and ways on. */
export function EmptyPlaceWords() {
  const empty = usePage((state) => state.emptyPlace);
  const cells = usePage((state) => state.answer?.map.cells);
  if (empty === null || cells === undefined) return null;
  const { key, rules } = empty;
  const narrower = nearest(cells, key, -1);
  const wider = nearest(cells, key, 1);
  return (
    <div className="empty-words" role="status">
      <p>
        <b>
          Nothing at {spanText(key.span)} with {key.notes} notes and {key.players} players.
        </b>{" "}
        {rules === null ? "" : reasonOf(rules)}
      </p>
      <div className="row">
        {rules !== null && rules.length > 0 && (
          <button type="button" className="act" onClick={() => liftRules(rules)}>
            {rules.length === 1 ? "Lift the rule" : `Lift the ${inWords(rules.length)} rules`}
          </button>
        )}
        {narrower !== undefined && (
          <button type="button" className="link" onClick={() => goTo(narrower.key)}>
            Nearest narrower: {narrower.key.span}
          </button>
        )}
        {wider !== undefined && (
          <button type="button" className="link" onClick={() => goTo(wider.key)}>
            Nearest wider: {wider.key.span}
          </button>
        )}
      </div>
    </div>
  );
}

/** What to say when the whole map holds nothing. */
export function EmptyMapWords() {
  const map = usePage((state) => state.answer?.map);
  if (map === undefined || !map.isWhole || map.cells.length > 0) return null;
  return (
    <div className="empty-words row" role="alert">
      <WarnSign />
      <div>
        <p>
          <b>Nothing is possible.</b>{" "}
          {map.emptiedBy.length === 0
            ? "No single rule is to blame: free the fixed players, tick more tones, or change the line-up."
            : `${namesOf(map.emptiedBy)} ${map.emptiedBy.length === 1 ? "leaves" : "leave"} nothing; each alone can be lifted.`}
        </p>
        <div className="row">
          {map.emptiedBy.slice(0, 3).map((rule) => (
            <button key={rule} type="button" className="act" onClick={() => liftRules([rule])}>
              Lift: {nameOf(rule)}
            </button>
          ))}
        </div>
      </div>
    </div>
  );
}

function reasonOf(rules: readonly RuleId[]): string {
  if (rules.length === 0)
    return "No rule empties it: these tones and players cannot make it at all.";
  const count = inWords(rules.length);
  const verb = rules.length === 1 ? "rule empties" : "rules empty";
  return `${count.charAt(0).toUpperCase()}${count.slice(1)} ${verb} it: ${namesOf(rules)}.`;
}

function nameOf(rule: RuleId): string {
  return ruleTexts.find((text) => text.id === rule)?.name ?? rule;
}

function namesOf(rules: readonly RuleId[]): string {
  return listed(rules.map((rule) => `“${nameOf(rule)}”`));
}

/** The nearest texture with as many notes and players, narrower or wider. */
function nearest(cells: readonly AtlasCell[], key: CellKey, sign: 1 | -1): AtlasCell | undefined {
  return cells
    .filter(
      (cell) =>
        cell.key.players === key.players &&
        cell.key.notes === key.notes &&
        sign * (cell.key.span - key.span) > 0,
    )
    .sort((a, b) => sign * (a.key.span - b.key.span))[0];
}
