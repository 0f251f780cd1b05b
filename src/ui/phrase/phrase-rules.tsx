import { ruleTexts } from "../../explore/index.ts";
import type { PhraseQuestion } from "../../phrase/index.ts";
import type { Colour } from "../../theory/index.ts";
import { Choice } from "../parts/choice.tsx";
import { PickList } from "../parts/pick-list.tsx";
import { Sheet } from "../parts/sheet.tsx";
import { SwitchRow, rulesInWords } from "../strip/rules-sheet.tsx";
import { askLead, askPhrase } from "./phrase-actions.ts";

const options: readonly {
  id: "bassSounds" | "strictLowIntervals" | "clusterSetting" | "homes" | "breaths";
  name: string;
  meaning: string;
}[] = [
  {
    id: "bassSounds",
    name: "Root by the bass",
    meaning: "A bass player sounds the root below the horns; off, the lowest horn must have it.",
  },
  {
    id: "breaths",
    name: "Rests to breathe",
    meaning: "Players rest for a breath where a stretch without one is too long.",
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
    id: "homes",
    name: "Chairs in their homes",
    meaning: "Players are preferred where their chair mostly lies; off, anyone plays anywhere.",
  },
];

const colours: readonly { value: Colour; text: string; meaning: string }[] = [
  { value: "plain", text: "plain", meaning: "Only the tones that the chord symbols say" },
  { value: "tensions", text: "tensions", meaning: "With the natural tensions" },
  { value: "altered", text: "altered", meaning: "Dominants with altered tensions" },
];

/** Colour, rules and what the search takes for granted, for every moment of the phrase. */
export function PhraseRules({ question }: { readonly question: PhraseQuestion }) {
  const { rules } = question;
  return (
    <Sheet title="Rules of the search" control={rulesInWords(rules)}>
      <div className="row sheet-line">
        <span>Tones that chords may take</span>
        <Choice
          label="Tones that chords may take"
          options={colours}
          value={question.colour}
          onChange={(colour) => askPhrase({ colour }, `${colour} tones`)}
        />
      </div>
      <LeadPick question={question} />
      <ul className="switches">
        {ruleTexts.map(({ id, name, meaning, source }) => (
          <SwitchRow
            key={id}
            name={name}
            meaning={meaning}
            source={source}
            isOn={rules[id]}
            onChange={(isOn) =>
              askPhrase({ rules: { ...rules, [id]: isOn } }, `${name} ${isOn ? "on" : "off"}`)
            }
          />
        ))}
      </ul>
      <h3 className="sheet-part">What the search takes for granted</h3>
      <ul className="switches">
        {options.map(({ id, name, meaning }) => (
          <SwitchRow
            key={id}
            name={name}
            meaning={meaning}
            isOn={question[id]}
            onChange={(isOn) => askPhrase({ [id]: isOn }, `${name} ${isOn ? "on" : "off"}`)}
          />
        ))}
      </ul>
    </Sheet>
  );
}

const anyone = "anyone";

/** Who has the melody wherever the player reaches it. */
function LeadPick({ question }: { readonly question: PhraseQuestion }) {
  const rows = question.players.map(({ id, name }) => ({ id, text: name }));
  return (
    <div className="row sheet-line">
      <PickList
        label="The melody goes to"
        rows={[{ id: anyone, text: "anyone" }, ...rows]}
        picked={question.leadPlayer ?? anyone}
        onPick={(id) => askLead(id === anyone ? null : id)}
      />
    </div>
  );
}
