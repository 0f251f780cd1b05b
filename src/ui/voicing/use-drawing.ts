import { useEffect, useState } from "react";
import type * as drawingFolder from "../../drawing/index.ts";

/** The drawing folder, loaded with its music fonts. */
export type Drawing = typeof drawingFolder;

/**
 * Loads the drawing of staves after the first paint: it and its fonts are the page's largest part.
 * @returns the folder once it is ready to draw; null before, a message when it could not be had
 */
export function useDrawing(): Drawing | string | null {
  const [drawing, setDrawing] = useState<Drawing | string | null>(null);
  useEffect(() => {
    let isGone = false;
    loadDrawing().then(
      (loaded) => {
        if (!isGone) setDrawing(loaded);
      },
      () => {
        if (!isGone) setDrawing("The staff could not be loaded; reload the page to try again.");
      },
    );
    return () => {
      isGone = true;
    };
  }, []);
  return drawing;
}

async function loadDrawing(): Promise<Drawing> {
  const drawing = await import("../../drawing/index.ts");
  await drawing.loadMusicFonts();
  return drawing;
}
