import { useLayoutEffect, useRef, useState } from "react";
import { layoutVoicing, type StaffPitch } from "../../notation/index.ts";
import { Choice } from "../parts/choice.tsx";
import { useSize } from "../parts/use-size.ts";
import type { Answer, InView } from "../state/page-state.ts";
import { useDrawing } from "./use-drawing.ts";

const pitches: readonly { value: StaffPitch; text: string; meaning: string }[] = [
  { value: "concert", text: "Concert", meaning: "Every note as it sounds." },
  { value: "written", text: "Written", meaning: "Every note as its player reads it." },
];

/** The voicing on paper: a grand staff, or a staff for each player. */
export function PartsView(props: {
  readonly answer: Answer;
  readonly view: InView;
  readonly isGrand: boolean;
}) {
  const { answer, view, isGrand } = props;
  const drawing = useDrawing();
  const [pitch, setPitch] = useState<StaffPitch>("concert");
  const [ref, size] = useSize<HTMLDivElement>({ width: 640, height: 560 });
  const holder = useRef<HTMLDivElement>(null);
  const { chord } = answer.asked.question;
  useLayoutEffect(() => {
    const element = holder.current;
    if (drawing === null || typeof drawing === "string" || element === null) return;
    const layout = layoutVoicing(view.voicing, {
      chord,
      view: isGrand ? "grand" : "by-player",
      pitch,
    });
    drawing.drawStaves(layout, element, { width: Math.max(200, size.width) });
  }, [drawing, view.voicing, chord, isGrand, pitch, size.width]);
  return (
    <div className="parts-view" ref={ref}>
      {!isGrand && (
        <Choice label="Pitch on the staves" options={pitches} value={pitch} onChange={setPitch} />
      )}
      {typeof drawing === "string" && <p className="quiet">{drawing}</p>}
      <div ref={holder} data-testid="parts" />
    </div>
  );
}
