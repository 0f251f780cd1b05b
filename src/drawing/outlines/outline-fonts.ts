import boldUrl from "@vexflow-fonts/academico/academico-bold.otf?url";
import plainUrl from "@vexflow-fonts/academico/academico.otf?url";
import musicUrl from "@vexflow-fonts/bravura/bravura.otf?url";
import { readOutlineFont, type OutlineFont } from "./outline-font.ts";

/** The faces that a figure is written in. */
export interface OutlineFonts {
  readonly music: OutlineFont;
  readonly plain: OutlineFont;
  readonly bold: OutlineFont;
}

let loading: Promise<OutlineFonts> | undefined;

/**
 * Loads the faces as shapes; only figures that leave the page need them.
 * @returns the faces; later calls share the first one's work
 * @throws Error when a font file cannot be read; the next call tries again
 */
export function loadOutlineFonts(): Promise<OutlineFonts> {
  loading ??= loadFaces().catch((reason: unknown) => {
    loading = undefined;
    throw reason;
  });
  return loading;
}

async function loadFaces(): Promise<OutlineFonts> {
  const [music, plain, bold] = await Promise.all([musicUrl, plainUrl, boldUrl].map(loadFace));
  if (!music || !plain || !bold) throw new RangeError("three faces are loaded at once");
  return { music, plain, bold };
}

async function loadFace(url: string): Promise<OutlineFont> {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`the font could not be read (${answer.status})`);
  return readOutlineFont(new Uint8Array(await answer.arrayBuffer()));
}
