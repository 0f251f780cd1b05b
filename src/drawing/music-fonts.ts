import academicoUrl from "@vexflow-fonts/academico/academico.woff2?url";
import bravuraUrl from "@vexflow-fonts/bravura/bravura.woff2?url";
import { VexFlow } from "vexflow/core";

const FACES: readonly (readonly [family: string, url: string])[] = [
  ["Bravura", bravuraUrl],
  ["Academico", academicoUrl],
];

let loading: Promise<void> | undefined;

/**
 * Loads the music fonts that come with the page; nothing is fetched from elsewhere. Await it once
 * before the first drawing: glyphs are measured while drawing.
 * @returns settles when both faces can be drawn with; later calls share the first one's work
 * @throws Error when a font file cannot be read; the next call tries again
 */
export function loadMusicFonts(): Promise<void> {
  loading ??= loadFaces().catch((reason: unknown) => {
    loading = undefined;
    throw reason;
  });
  return loading;
}

async function loadFaces(): Promise<void> {
  const faces = await Promise.all(
    FACES.map(([family, url]) => new FontFace(family, `url("${url}")`).load()),
  );
  for (const face of faces) document.fonts.add(face);
  VexFlow.setFonts("Bravura", "Academico");
}
