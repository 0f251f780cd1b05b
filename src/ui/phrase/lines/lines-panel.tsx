import { SectionSign } from "../../parts/section-mark.tsx";
import { usePhrase } from "../phrase-store.ts";
import { LineChecks } from "./line-checks.tsx";
import { LinesDrawing } from "./lines-drawing.tsx";
import "./lines.css";

const sections = ["trumpets", "trombones", "saxes"] as const;

/** Every player's line over time, and what a player would say of it. */
export function LinesPanel() {
  const view = usePhrase((state) => state.view);
  if (view === null) return null;
  return (
    <section className="phrase-part" aria-labelledby="lines-head">
      <div className="row phrase-part-head">
        <h2 id="lines-head">Lines</h2>
        <span className="row push quiet">
          {sections.map((section) => (
            <span key={section} className="row lines-key">
              <SectionSign section={section} /> {section}
            </span>
          ))}
        </span>
      </div>
      <LinesDrawing view={view} />
      <LineChecks view={view} />
    </section>
  );
}
