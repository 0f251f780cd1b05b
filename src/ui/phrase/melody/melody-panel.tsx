import { useState } from "react";
import type { PhraseWork } from "../../../explore/index.ts";
import { Choice } from "../../parts/choice.tsx";
import { EntryTools } from "./entry-tools.tsx";
import { MelodyText } from "./melody-text.tsx";
import { Staff } from "./staff.tsx";

type Way = "staff" | "text";

const ways: readonly { value: Way; text: string; meaning: string }[] = [
  { value: "staff", text: "On the staff", meaning: "By mouse, by keys, or played in" },
  { value: "text", text: "As text", meaning: "In ABC, chords in quotes" },
];

/** The melody and its chords: on the staff, or as text. */
export function MelodyPanel({ work }: { readonly work: PhraseWork }) {
  const [way, setWay] = useState<Way>("staff");
  return (
    <section className="phrase-part" aria-labelledby="melody-head">
      <div className="row phrase-part-head">
        <h2 id="melody-head">Melody</h2>
        <Choice label="Melody as" options={ways} value={way} onChange={setWay} />
        {way === "staff" && <EntryTools />}
      </div>
      {way === "staff" ? (
        <>
          <Staff work={work} />
          <p id="staff-help" className="quiet staff-help">
            Press the staff to write, drag a note to move it, press above it for a chord. Keys: A to
            G notes, 1 2 4 8 6 lengths, arrows, R rest, T tie, H harmony.
          </p>
        </>
      ) : (
        <MelodyText />
      )}
    </section>
  );
}
