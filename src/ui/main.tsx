import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./app.tsx";
import { takeDroppedFiles } from "./projects/drop-file.ts";
import { NoticeBar } from "./projects/notice-bar.tsx";
import { Rescue } from "./projects/rescue.tsx";
import { beginWork } from "./projects/start-up.ts";
import { showTheme, storedTheme } from "./state/theme.ts";
import "./styles/tokens.css";
import "./styles/base.css";
import "./styles/page.css";
import "./styles/strip.css";
import "./styles/map.css";
import "./styles/voicing.css";
import "./styles/side.css";
import "./styles/sheet.css";
import "./styles/hear.css";
import "./styles/projects.css";

const place = document.getElementById("page");
if (place === null) throw new Error("the page has no element #page");
const root = createRoot(place);
showTheme(storedTheme());
takeDroppedFiles();
// Whatever became of the work, the page is shown.
void beginWork().finally(() =>
  root.render(
    <StrictMode>
      <NoticeBar />
      <Rescue>
        <App />
      </Rescue>
    </StrictMode>,
  ),
);
