import { WarnSign } from "../parts/warn-sign.tsx";
import { keepAsCopy, takeStored } from "./open.ts";
import { dismissNotice, useProjects, type Notice, type ProjectsState } from "./projects-state.ts";
import { saveAsFile } from "./save-as-file.ts";
import { saveNow } from "./save.ts";

/** What is to be said about the work as a whole; it stands over the columns and covers nothing. */
export function NoticeBar() {
  const conflict = useProjects((state) => state.conflict);
  const problem = useProjects((state) => state.problem);
  const notice = useProjects((state) => state.notice);
  const lasting = conflict === null ? problem && refused(problem.message) : conflicts[conflict];
  return (
    <>
      {lasting !== null && <Bar notice={lasting} />}
      {notice !== null && <Bar notice={notice} onClose={dismissNotice} />}
    </>
  );
}

const copy = { text: "Keep this as a copy", act: () => void keepAsCopy() };
const file = { text: "Save as a file", act: () => void saveAsFile() };

const conflicts: Readonly<Record<NonNullable<ProjectsState["conflict"]>, Notice>> = {
  changed: {
    text: "This project was changed in another tab. Nothing is overwritten: choose which version to go on with here.",
    isWrong: true,
    ways: [{ text: "Take the other version", act: () => void takeStored() }, copy],
  },
  removed: {
    text: "This project was removed in another tab; it is still here on the page.",
    isWrong: true,
    ways: [copy, file],
  },
};

const refused = (message: string): Notice => ({
  text: `Not saved. ${message}`,
  isWrong: true,
  ways: [file, { text: "Try again", act: () => void saveNow() }],
});

function Bar({ notice, onClose }: { readonly notice: Notice; readonly onClose?: () => void }) {
  const { text, isWrong, ways, copyable } = notice;
  return (
    <div className="notice" role={isWrong ? "alert" : "status"} data-testid="notice">
      {isWrong && <WarnSign />}
      <p>{text}</p>
      {copyable !== undefined && (
        <input
          className="notice-copy"
          aria-label="The link"
          readOnly
          value={copyable}
          onFocus={(event) => event.target.select()}
        />
      )}
      {ways.map((way) => (
        <button key={way.text} type="button" className="act" onClick={way.act}>
          {way.text}
        </button>
      ))}
      {onClose && (
        <button type="button" className="link push" onClick={onClose}>
          Close
        </button>
      )}
    </div>
  );
}
