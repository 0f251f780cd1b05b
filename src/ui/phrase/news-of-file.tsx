import { WarnSign } from "../parts/warn-sign.tsx";
import { closeNews, useFileNews } from "./open-file.ts";

/** Most sentences shown of one file. */
const mostShown = 6;

/** Why a file could not be opened, or what was left out of it. */
export function NewsOfFile() {
  const news = useFileNews();
  if (news === null) return null;
  const { name, problems, remarks } = news;
  const isRefused = problems.length > 0;
  const all = isRefused ? problems : remarks;
  return (
    <div className="file-news" role={isRefused ? "alert" : "status"}>
      {isRefused && <WarnSign />}
      <div>
        <p>
          <b>{isRefused ? `${name} could not be opened.` : `${name} is open.`}</b>
        </p>
        <ul>
          {all.slice(0, mostShown).map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
        {all.length > mostShown && <p className="quiet">And {all.length - mostShown} more.</p>}
      </div>
      <button type="button" className="link push" onClick={closeNews}>
        Close
      </button>
    </div>
  );
}
