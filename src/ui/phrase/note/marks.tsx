import type { ArticulationMark } from "../../../phrase/index.ts";
import { usePage } from "../../store.ts";
import { setMarks } from "../phrase-actions.ts";
import type { MomentNow } from "./moment-now.ts";

const marks: readonly { mark: ArticulationMark; meaning: string }[] = [
  { mark: "staccato", meaning: "Short" },
  { mark: "tenuto", meaning: "Held for its full length" },
  { mark: "accent", meaning: "Louder, full length" },
  { mark: "marcato", meaning: "Louder and short" },
  { mark: "scoop", meaning: "Slid into from just below" },
  { mark: "plop", meaning: "Dropped into from above" },
  { mark: "doit", meaning: "Bent up at the end" },
  { mark: "fall", meaning: "Falls off at the end" },
];

/** Articulation of the note: by the rules of its style, or by hand. */
export function Marks({ now }: { readonly now: MomentNow }) {
  const { id } = now.harmonised.note;
  const found = now.view.performance.articulated.find(({ noteId }) => noteId === id);
  const isByHand = usePage(
    (state) => state.history.present.phrase?.articulations[id] !== undefined,
  );
  const on = found?.marks ?? [];
  const press = (mark: ArticulationMark) =>
    setMarks(id, on.includes(mark) ? on.filter((one) => one !== mark) : [...on, mark]);
  return (
    <div className="marks">
      <h3>Marks</h3>
      <div className="row mark-row" role="group" aria-label="Marks of this note">
        {marks.map(({ mark, meaning }) => (
          <button
            key={mark}
            type="button"
            className="entry-tool"
            aria-pressed={on.includes(mark)}
            title={meaning}
            onClick={() => press(mark)}
          >
            {mark}
          </button>
        ))}
      </div>
      <p className="quiet">
        {isByHand
          ? "Set by hand. "
          : found?.reason === ""
            ? "No rule asks for a mark."
            : found?.reason}
        {isByHand && (
          <button type="button" className="link" onClick={() => setMarks(id, null)}>
            Back to the rules
          </button>
        )}
      </p>
    </div>
  );
}
