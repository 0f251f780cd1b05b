import type { Count } from "../../base/index.ts";
import { instrumentOf } from "../../band/index.ts";
import type { ScorePart } from "./score-model.ts";

/**
 * General MIDI programme of a part.
 * @param part - the part
 * @returns 1 to 128; a piano for an instrument the band does not know
 */
export function programOf({ instrument }: Pick<ScorePart, "instrument">): Count {
  return instrument === null ? 1 : instrumentOf(instrument).midiProgram;
}
