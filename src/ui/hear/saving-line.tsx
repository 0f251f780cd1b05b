import { cancelSaving, type Saving } from "../actions/save-sound.ts";

/** How far a recording has come, and the way out. */
export function SavingLine({ saving }: { readonly saving: Saving }) {
  const percent = Math.round(100 * saving.share);
  return (
    <div className="row saving">
      <progress value={percent} max={100} aria-label={`Saving ${saving.fileName}`} />
      <span className="quiet">{percent} % saved</span>
      <button type="button" className="link" onClick={cancelSaving}>
        Cancel
      </button>
    </div>
  );
}
