import { memo, useDeferredValue, useLayoutEffect, useMemo, useRef, useState } from "react";
import { layoutVoicing } from "../../notation/index.ts";
import { useSize } from "../parts/use-size.ts";
import type { Answer, InView } from "../state/page-state.ts";
import type { Chord } from "../../theory/index.ts";
import type { Voicing } from "../../voicing/index.ts";
import { Ladder } from "./ladder.tsx";
import { ladderPlan, ladderSizes } from "./ladder-plan.ts";
import { Roles } from "./roles.tsx";
import { Threads, type ThreadEnd } from "./threads.tsx";
import { useDrawing } from "./use-drawing.ts";

/** Room of the staff beside the ladder, CSS pixels. */
const staffRoom = { width: 132, between: 44 };
const phoneLeft = 58;

/** The ladder, joined by threads to the staff beside it. */
export function LadderRoom(props: {
  readonly answer: Answer;
  readonly view: InView;
  readonly isNarrow: boolean;
}) {
  const { answer, view, isNarrow } = props;
  const [ref, size] = useSize<HTMLDivElement>({ width: 640, height: 560 });
  const [ends, setEnds] = useState<readonly ThreadEnd[]>([]);
  const left = isNarrow ? phoneLeft : ladderSizes.left;
  const aside = isNarrow ? 0 : staffRoom.width + staffRoom.between;
  const width = Math.max(240, size.width - aside);
  const height = isNarrow ? 560 : Math.max(420, size.height);
  const { lead, players, chord } = answer.asked.question;
  // The staff may come a moment after the tokens: a token under the finger never waits for it.
  const voicing = useDeferredValue(view.voicing);
  const lowest = useMemo(() => lowestPitch(answer), [answer]);
  const plan = useMemo(
    () =>
      ladderPlan({
        players,
        pitches: view.pitches,
        by: isNarrow ? "section" : "instrument",
        top: lead,
        bottom: lowest,
        left,
        width,
        height,
      }),
    [players, view.pitches, isNarrow, lead, lowest, left, width, height],
  );
  return (
    <div className="ladder-room" ref={ref}>
      <Ladder answer={answer} view={view} plan={plan} width={width} left={left} />
      {!isNarrow && (
        <>
          <Threads plan={plan} ends={ends} width={size.width} lead={lead} />
          <div className="beside" style={{ width: staffRoom.width }}>
            <GrandStaff voicing={voicing} chord={chord} onDrawn={setEnds} room={height} />
            <Roles />
          </div>
        </>
      )}
      {isNarrow && <Roles />}
    </div>
  );
}

/** The lowest pitch of any texture of the map: the ladder's scale reaches so far. */
function lowestPitch(answer: Answer): number {
  const spans = answer.free.cells.map((cell) => cell.key.span);
  const placed = answer.references.map((point) => point.report.cell.span);
  return answer.asked.question.lead - Math.max(12, ...spans, ...placed);
}

/** The grand staff, drawn small; tells where its notes stand. */
const GrandStaff = memo(function GrandStaff(props: {
  readonly voicing: Voicing;
  readonly chord: Chord;
  readonly room: number;
  readonly onDrawn: (ends: readonly ThreadEnd[]) => void;
}) {
  const { voicing, chord, room, onDrawn } = props;
  const drawing = useDrawing();
  const holder = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const element = holder.current;
    if (drawing === null || typeof drawing === "string" || element === null) return;
    const layout = layoutVoicing(voicing, { chord, view: "grand", pitch: "concert" });
    const drawn = drawing.drawStaves(layout, element, { width: staffRoom.width, labels: "none" });
    const box = element.getBoundingClientRect();
    const base = element.closest(".ladder-room")?.getBoundingClientRect();
    onDrawn(
      drawn.notes.map((note) => ({
        pitch: note.midi,
        x: box.left - (base?.left ?? 0) + note.x,
        y: box.top - (base?.top ?? 0) + note.y,
      })),
    );
  }, [drawing, voicing, chord, onDrawn, room]);
  return (
    <div className="grand-staff" ref={holder} data-testid="staff">
      {typeof drawing === "string" && <p className="quiet">{drawing}</p>}
    </div>
  );
});
