import type { ReactNode } from "react";
import { askOption } from "../actions/ask.ts";
import { takeAgain, takeBack } from "../actions/steps.ts";
import { MidiSheet } from "../midi/midi-sheet.tsx";
import { ProjectLine } from "../projects/project-line.tsx";
import { undoLimit, usePage } from "../store.ts";
import { TeachingDoor } from "../teaching/door.tsx";
import { ViewSwitch } from "../view-switch.tsx";
import { counted } from "../words/counts.ts";
import { HelpSheet } from "./help-sheet.tsx";

/** The view, what the question takes for granted, undo and help. */
export function StripTools({ children }: { readonly children: ReactNode }) {
  const back = usePage((state) => state.history.past.length);
  const forth = usePage((state) => state.history.future.length);
  const step = usePage((state) => state.history.present.step);
  return (
    <div className="strip-part strip-tools">
      <ProjectLine />
      <span className="row strip-views">
        <ViewSwitch />
      </span>
      <span className="row">{children}</span>
      <span className="row">
        <button
          type="button"
          className="link"
          disabled={back === 0}
          title={back === 0 ? undefined : `Take back: ${step}; ${back} of ${undoLimit} steps kept`}
          onClick={takeBack}
        >
          Undo
        </button>
        <button
          type="button"
          className="link"
          disabled={forth === 0}
          title={forth === 0 ? undefined : `${counted(forth, "step")} can be taken again`}
          onClick={takeAgain}
        >
          Redo
        </button>
        <MidiSheet />
        <TeachingDoor />
        <HelpSheet />
      </span>
    </div>
  );
}

/** Who has the root: a bass player below the horns, or the lowest horn. */
export function BassSwitch() {
  const bassSounds = usePage((state) => state.history.present.inquiry.bassSounds);
  return (
    <button
      type="button"
      className="link"
      title="A bass player sounds the root below the horns; press to give it to the lowest horn, or back"
      onClick={() => askOption("bassSounds", !bassSounds, "root by the bass")}
    >
      {bassSounds ? "Root by the bass" : "Root by a horn"}
    </button>
  );
}
