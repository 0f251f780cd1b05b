import { useState } from "react";
import type { ApproachTechnique, NoteChoice } from "../../../phrase/index.ts";
import { readChord } from "../../../theory/index.ts";
import { PickList } from "../../parts/pick-list.tsx";
import { usePage } from "../../store.ts";
import { chordWithSigns, withSigns } from "../../words/signs.ts";
import { setChoice } from "../phrase-actions.ts";
import type { MomentNow } from "./moment-now.ts";

interface Row {
  readonly id: string;
  readonly text: string;
  readonly detail: string;
  readonly choice: NoteChoice | null;
}

const technique = (id: ApproachTechnique, text: string, detail: string): Row => ({
  id,
  text,
  detail,
  choice: { technique: id },
});

/** Ways to harmonise a note, in the words of the trade. */
const rows: readonly Row[] = [
  { id: "automatic", text: "Automatic", detail: "by its length, accent and place", choice: null },
  { id: "chord", text: "Chord sound", detail: "the chord of the song", choice: { role: "target" } },
  {
    id: "coming",
    text: "The coming chord",
    detail: "as an anticipation",
    choice: { role: "target", takesComing: true },
  },
  technique("chromatic", "Approach, chromatic", "every voice moves by the same semitone"),
  technique("diatonic", "Approach, diatonic", "a neighbouring chord of the key"),
  technique("parallel", "Approach, parallel", "the same chord shifted"),
  technique("dominant", "Approach, dominant", "the dominant of the chord it goes into"),
  technique("diminished", "Approach, diminished", "a diminished seventh chord"),
  { id: "unison", text: "Unison line", detail: "all on one pitch", choice: { texture: "unison" } },
  {
    id: "octaves",
    text: "Octaves",
    detail: "the melody in octaves",
    choice: { texture: "octaves" },
  },
];

function rowOf(choice: NoteChoice | undefined): string {
  if (choice === undefined) return "automatic";
  if (choice.technique !== undefined) return choice.technique;
  if (choice.texture === "unison" || choice.texture === "octaves") return choice.texture;
  if (choice.takesComing === true) return "coming";
  return choice.role === "target" ? "chord" : "automatic";
}

/** Gives a note its harmony by hand, or leaves it to the machine. */
export function HarmonyPick({ now }: { readonly now: MomentNow }) {
  const { id } = now.harmonised.note;
  const choice = usePage((state) => state.history.present.phrase?.question.choices[id]);
  return (
    <div className="row harmony-pick">
      <PickList
        label="Harmony"
        rows={rows}
        picked={rowOf(choice)}
        onPick={(picked) => {
          const row = rows.find((each) => each.id === picked);
          if (row !== undefined) setChoice(id, row.choice, `${row.text.toLowerCase()}, one note`);
        }}
      />
      <OwnChord key={id} noteId={id} choice={choice} />
    </div>
  );
}

/** A chord for this note alone. */
function OwnChord(props: { readonly noteId: string; readonly choice: NoteChoice | undefined }) {
  const { noteId, choice } = props;
  const [typed, setTyped] = useState<string | null>(null);
  const text = typed ?? choice?.chordText ?? "";
  const read = text.trim() === "" ? null : readChord(text);
  const problem = read !== null && !read.ok ? read.problem.message : null;
  const keep = () => {
    if (typed === null || problem !== null) return;
    setTyped(null);
    const own = read?.ok === true ? read.value.symbol : undefined;
    if (own === choice?.chordText) return;
    const step = own === undefined ? "no chord of its own" : `${chordWithSigns(own)}, one note`;
    setChoice(noteId, own === undefined ? null : { role: "target", chordText: own }, step);
  };
  return (
    <label className="own-chord">
      <span>Its own chord</span>
      <input
        value={text}
        placeholder="none"
        autoComplete="off"
        spellCheck={false}
        aria-invalid={problem !== null}
        title={problem === null ? "A chord for this note alone" : withSigns(problem)}
        onChange={({ target }) => setTyped(target.value)}
        onBlur={keep}
        onKeyDown={({ key }) => {
          if (key === "Enter") keep();
          if (key === "Escape") setTyped(null);
        }}
      />
      {problem !== null && <span role="alert">{withSigns(problem)}</span>}
    </label>
  );
}
