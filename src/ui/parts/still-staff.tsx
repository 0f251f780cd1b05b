import { useLayoutEffect, useRef } from "react";
import { layoutVoicing } from "../../notation/index.ts";
import type { Chord } from "../../theory/index.ts";
import type { Voicing } from "../../voicing/index.ts";
import { useDrawing } from "../voicing/use-drawing.ts";

/** A voicing on the grand staff at concert pitch, the players beside each note. */
export function StillStaff(props: {
  readonly voicing: Voicing;
  readonly chord: Chord;
  readonly width: number;
  readonly labels?: "players" | "degrees" | "none";
}) {
  const { voicing, chord, width, labels = "none" } = props;
  const drawing = useDrawing();
  const holder = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const element = holder.current;
    if (drawing === null || typeof drawing === "string" || element === null) return;
    const layout = layoutVoicing(voicing, { chord, view: "grand", pitch: "concert" });
    drawing.drawStaves(layout, element, { width, labels });
  }, [drawing, voicing, chord, width, labels]);
  return (
    <div className="still-staff" ref={holder}>
      {typeof drawing === "string" && <p className="quiet">{drawing}</p>}
    </div>
  );
}
