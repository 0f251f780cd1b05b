import type { SectionId } from "../../band/index.ts";
import { goToSections } from "../actions/walk.ts";
import { PickList } from "../parts/pick-list.tsx";
import { usePage } from "../store.ts";
import { listed } from "../words/counts.ts";

const any = "any";

/** Every choice of sections that the line-up has, single ones first. */
function choicesOf(sections: readonly SectionId[]): readonly (readonly SectionId[])[] {
  const choices: SectionId[][] = [];
  for (let mask = 1; mask < 1 << sections.length; mask += 1)
    choices.push(sections.filter((_, index) => ((mask >> index) & 1) === 1));
  return choices.sort((a, b) => a.length - b.length);
}

/** Which sections sound on the map: any, or exactly the ones picked. */
export function SectionsPick() {
  const picked = usePage((state) => state.history.present.sections);
  const players = usePage((state) => state.history.present.inquiry.players);
  const present = [...new Set(players.map((player) => player.section))];
  if (present.length < 2) return null;
  const choices = choicesOf(present);
  return (
    <PickList
      className="pick sections-pick"
      label="Sections"
      isLabelSeen={false}
      rows={[
        { id: any, text: "any sections", detail: "Whoever serves the texture best." },
        ...choices.map((sections) => ({
          id: sections.join(" "),
          text: sections.length === 1 ? `${listed(sections)} only` : listed(sections),
          detail:
            sections.length === 1
              ? "Nobody else sounds."
              : "Each with a player at least; nobody else.",
        })),
      ]}
      picked={picked === null ? any : picked.join(" ")}
      onPick={(id) => goToSections(choices.find((sections) => sections.join(" ") === id) ?? null)}
    />
  );
}
