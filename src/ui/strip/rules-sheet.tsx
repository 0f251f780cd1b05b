import { Switch } from "react-aria-components";
import { ruleTexts } from "../../explore/index.ts";
import type { RuleSettings } from "../../voicing/index.ts";
import { askOption, askRule, type Option } from "../actions/ask.ts";
import { Sheet } from "../parts/sheet.tsx";
import { usePage } from "../store.ts";

const options: readonly { id: Option; name: string; meaning: string }[] = [
  {
    id: "bassSounds",
    name: "Root by the bass",
    meaning: "A bass player sounds the root below the horns; off, the lowest horn must have it.",
  },
  {
    id: "strictLowIntervals",
    name: "Strict low intervals",
    meaning: "Low-interval limits as they stand; off, they soften as the dynamic does.",
  },
  {
    id: "clusterSetting",
    name: "Clusters welcome",
    meaning: "Semitone neighbours cost nothing from G3 up.",
  },
  {
    id: "shortNote",
    name: "Short melody note",
    meaning: "A second right under the lead costs nothing, because the note is soon over.",
  },
  {
    id: "homes",
    name: "Chairs in their homes",
    meaning: "Players are preferred where their chair mostly lies; off, anyone plays anywhere.",
  },
];

/** How many of the rules are on, in words. */
export function rulesInWords(rules: RuleSettings): string {
  const states = ruleTexts.map(({ id }) => rules[id]);
  const off = states.filter((isOn) => !isOn).length;
  return off === 0 ? `Rules: all ${states.length} on` : `Rules: ${off} of ${states.length} off`;
}

/** The rules of the search as switches, each with its meaning and source. */
export function RulesSheet() {
  const inquiry = usePage((state) => state.history.present.inquiry);
  return (
    <Sheet title="Rules of the search" control={rulesInWords(inquiry.rules)}>
      <p className="sheet-lead">
        The map holds only voicings that keep every rule that is on. Voicings made by hand or by the
        book are never filtered: the rules they break are named.
      </p>
      <ul className="switches">
        {ruleTexts.map((rule) => (
          <SwitchRow
            key={rule.id}
            name={rule.name}
            meaning={rule.meaning}
            source={rule.source}
            isOn={inquiry.rules[rule.id]}
            onChange={(isOn) => askRule(rule.id, isOn, rule.name)}
          />
        ))}
      </ul>
      <h3 className="sheet-part">What the search takes for granted</h3>
      <ul className="switches">
        {options.map((option) => (
          <SwitchRow
            key={option.id}
            name={option.name}
            meaning={option.meaning}
            isOn={inquiry[option.id]}
            onChange={(isOn) => askOption(option.id, isOn, option.name)}
          />
        ))}
      </ul>
    </Sheet>
  );
}

/** One switch with its meaning. */
export function SwitchRow(props: {
  readonly name: string;
  readonly meaning: string;
  readonly source?: string;
  readonly isOn: boolean;
  readonly onChange: (isOn: boolean) => void;
}) {
  const { name, meaning, source, isOn, onChange } = props;
  return (
    <li>
      <Switch className="switch" isSelected={isOn} onChange={onChange}>
        <span className="switch-sign" aria-hidden="true">
          {isOn ? "on" : "off"}
        </span>
        <span className="switch-words">
          <b>{name}</b>
          <span>{meaning}</span>
          {source !== undefined && <span className="quiet">Source: {source}</span>}
        </span>
      </Switch>
    </li>
  );
}
