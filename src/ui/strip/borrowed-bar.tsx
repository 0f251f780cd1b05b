import { holdBorrowed, leaveBorrowed } from "../actions/borrow.ts";
import { usePage } from "../store.ts";
import { plainName } from "../words/pitch-names.ts";
import { withSigns } from "../words/signs.ts";

/** Tells that the voicing belongs to a moment of the phrase, and takes it back there. */
export function BorrowedBar() {
  const borrowed = usePage((state) => state.borrowed);
  const pitches = usePage((state) => state.view?.pitches);
  if (borrowed === null) return null;
  const hasLead = pitches !== undefined && Object.values(pitches).includes(borrowed.lead);
  const lead = withSigns(plainName(borrowed.lead));
  return (
    <div className="borrowed row" role="group" aria-label="From the phrase">
      <span>
        This is <b>{borrowed.where}</b> of your phrase.{" "}
        {hasLead
          ? "Look for another voicing, then:"
          : `The melody there is ${lead}, which nobody sounds here.`}
      </span>
      <button type="button" className="act" disabled={!hasLead} onClick={holdBorrowed}>
        Fix this voicing there
      </button>
      <button type="button" className="link" onClick={leaveBorrowed}>
        Back to the phrase as it was
      </button>
    </div>
  );
}
