import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { answerQuestion } from "./actions/answer.ts";
import { App } from "./app.tsx";
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

const place = document.getElementById("page");
if (place === null) throw new Error("the page has no element #page");
showTheme(storedTheme());
answerQuestion();
createRoot(place).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
