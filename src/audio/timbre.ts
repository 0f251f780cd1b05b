import { articulationOf, partialsOf } from "../band/index.ts";
import type { Articulation, Dynamic, InstrumentId, Partial, TimbreRequest } from "../band/index.ts";
import type { SoundingMidi } from "../base/index.ts";

/** What the synthesis asks of the instruments. */
export interface Timbre {
  /** Partials of a steady note, ascending in frequency, dB SPL at 1 m. */
  readonly partialsOf: (request: TimbreRequest) => readonly Partial[];
  /** How the note begins, sways, breathes and ends. */
  readonly articulationOf: (
    instrument: InstrumentId,
    sounding: SoundingMidi,
    dynamic: Dynamic,
  ) => Articulation;
}

/** The band's own instruments: the ear hears exactly the partials that the analysis listens to. */
export const bandTimbre: Timbre = Object.freeze({ partialsOf, articulationOf });
