import { askBoth } from "../actions/ask.ts";
import { chordWithSigns, withSigns } from "../words/signs.ts";

const ready = [
  ["F13", "D5"],
  ["Cm9", "Bb4"],
  ["C7alt", "Bb5"],
] as const;

/** What the page shows when the user has cleared the question. */
export function EmptyQuestion() {
  return (
    <main className="empty-question">
      <p>
        <b>A chord and the note above it.</b> From these two every texture for your line-up is
        worked out. Type them, or start from one of these:
      </p>
      <div className="row">
        {ready.map(([chord, melody]) => (
          <button key={chord} type="button" className="act" onClick={() => askBoth(chord, melody)}>
            {chordWithSigns(chord)} under {withSigns(melody)}
          </button>
        ))}
      </div>
    </main>
  );
}
