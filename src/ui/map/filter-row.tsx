import { techniqueTexts, type TechniqueId } from "../../voicing/index.ts";
import { showEverything, showOnly } from "../actions/filter.ts";
import { fitsFilter, isFiltering } from "../state/map-filter.ts";
import { PickList } from "../parts/pick-list.tsx";
import { placeId } from "../state/place-id.ts";
import { usePage } from "../store.ts";

const any = "any";

const techniques = [
  { id: any, text: "any technique", detail: "Whatever it is called." },
  ...[...techniqueTexts.values()].map(({ id, label, meaning }) => ({
    id,
    text: label.toLowerCase(),
    detail: meaning,
  })),
];

const efforts = [
  { id: any, text: "any effort", detail: "Wherever the parts lie." },
  {
    id: "0",
    text: "nobody strained",
    detail: "No part where its chair is usually not put at this dynamic.",
  },
  {
    id: "1",
    text: "1 strained at most",
    detail: "One part where its chair is usually not put at this dynamic.",
  },
  { id: "3", text: "3 strained at most", detail: "Three such parts or fewer." },
];

const clarities = [
  { id: any, text: "any clarity", detail: "However surely the ear gets the chord." },
  {
    id: "0.5",
    text: "clarity from 0.5",
    detail: "Chord clarity, as measured at the right, of 0.5 or more.",
  },
  {
    id: "0.65",
    text: "clarity from 0.65",
    detail: "Chord clarity, as measured at the right, of 0.65 or more.",
  },
];

const numberOf = (id: string): number | null => (id === any ? null : Number(id));

/** Which textures of the map are shown in full, and how many of those in view that leaves. */
export function FilterRow() {
  const filter = usePage((state) => state.filter);
  return (
    <div className="row map-filter">
      <PickList
        label="Only textures of the technique"
        isLabelSeen={false}
        rows={techniques}
        picked={filter.technique ?? any}
        onPick={(id) => showOnly({ technique: id === any ? null : (id as TechniqueId) })}
      />
      <PickList
        label="Only textures of the effort"
        isLabelSeen={false}
        rows={efforts}
        picked={filter.strained === null ? any : String(filter.strained)}
        onPick={(id) => showOnly({ strained: numberOf(id) })}
      />
      <PickList
        label="Only textures of the clarity"
        isLabelSeen={false}
        rows={clarities}
        picked={filter.clarity === null ? any : String(filter.clarity)}
        onPick={(id) => showOnly({ clarity: numberOf(id) })}
      />
      <Fitting />
    </div>
  );
}

function Fitting() {
  const filter = usePage((state) => state.filter);
  const traits = usePage((state) => state.traits);
  const cells = usePage((state) => state.answer?.map.cells);
  const players = usePage((state) => state.view?.report.cell.players);
  if (!isFiltering(filter)) return null;
  const here = (cells ?? []).filter(({ key }) => key.players === players);
  const fitting = here.filter((cell) => {
    const known = traits?.byPlace.get(placeId(cell));
    return known !== undefined && fitsFilter(filter, known);
  });
  return (
    <>
      <span className="quiet" role="status" data-testid="fitting">
        {traits?.cells === cells ? `${fitting.length} of ${here.length} fit` : "looking"}
      </span>
      <button type="button" className="link push" onClick={showEverything}>
        Show all
      </button>
    </>
  );
}
