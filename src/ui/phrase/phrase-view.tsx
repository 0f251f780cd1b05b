import { useEffect, useState, type DragEvent } from "react";
import { LiveRegion } from "../parts/live-region.tsx";
import { isProjectFile, openFile } from "../projects/file-moves.ts";
import { usePage } from "../store.ts";
import { AlternativesPanel } from "./alternatives-panel.tsx";
import { LinesPanel } from "./lines/lines-panel.tsx";
import { MelodyPanel } from "./melody/melody-panel.tsx";
import { MomentPanel } from "./note/moment-panel.tsx";
import { NewsOfFile } from "./news-of-file.tsx";
import { openMelodyFile } from "./open-file.ts";
import { PhraseBegin } from "./phrase-begin.tsx";
import { PhraseHead } from "./phrase-head.tsx";
import { PhraseStatus } from "./phrase-status.tsx";
import { followPhrase } from "./solve-phrase.ts";
import { PhraseHear, PhraseScore } from "../phrase-score/index.ts";
import { TexturePanel } from "./texture/texture-panel.tsx";
import "./phrase.css";
import "./texture/texture.css";

/** A melody with its changes, voiced note by note. */
export function PhraseView() {
  useEffect(followPhrase, []);
  const isBegun = usePage((state) => state.history.present.phrase !== null);
  const { isOver, ...dropping } = useDrop();
  return (
    <div className="page-phrase" data-drop={isOver} {...dropping}>
      <PhraseHead />
      <NewsOfFile />
      {isBegun ? <PhraseBody /> : <PhraseBegin />}
      <LiveRegion />
    </div>
  );
}

function PhraseBody() {
  const work = usePage((state) => state.history.present.phrase);
  if (work === null) return null;
  return (
    <main className="phrase-body">
      <div className="phrase-main">
        <PhraseStatus melody={work.question.melody} />
        <MelodyPanel work={work} />
        <TexturePanel work={work} />
        <LinesPanel />
        <PhraseScore />
      </div>
      <div className="phrase-foot">
        <PhraseHear />
      </div>
      <aside className="phrase-aside" aria-label="One moment">
        <MomentPanel />
        <AlternativesPanel />
      </aside>
    </main>
  );
}

/** A file dropped anywhere on the view is opened. */
function useDrop() {
  const [isOver, setOver] = useState(false);
  const hasFile = ({ dataTransfer }: DragEvent) => dataTransfer.types.includes("Files");
  return {
    isOver,
    onDragOver: (event: DragEvent) => {
      if (!hasFile(event)) return;
      event.preventDefault();
      setOver(true);
    },
    onDragLeave: (event: DragEvent) => {
      if (event.currentTarget === event.target) setOver(false);
    },
    onDrop: (event: DragEvent) => {
      if (!hasFile(event)) return;
      event.preventDefault();
      setOver(false);
      const [file] = event.dataTransfer.files;
      if (file === undefined) return;
      if (isProjectFile(file)) void openFile(file);
      else void openMelodyFile(file);
    },
  };
}
