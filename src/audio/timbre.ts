import type { Cents, Db, Hertz, Seconds, SoundingMidi } from "../base/index.ts";
import type { Dynamic, InstrumentId, Partial, TimbreRequest } from "../band/index.ts";

/** How a player starts, colours and ends a note. */
export interface NoteArticulation {
  /** Time the level takes from 10 to 90 % of its steady value. */
  readonly attack: Seconds;
  /** Time the level takes to die away after the note ends. */
  readonly release: Seconds;
  /** 0 where the instrument plays straight. */
  readonly vibratoRate: Hertz;
  /** Largest departure to each side. */
  readonly vibratoExtent: Cents;
  /** When the vibrato begins, after the onset. */
  readonly vibratoOnset: Seconds;
  /** Breath or bow noise against the whole note. */
  readonly breathLevel: Db;
}

/** What the synthesis asks of the instruments. The band answers it; tests may stand in for it. */
export interface Timbre {
  /** Partials of a steady note, ascending in frequency, dB SPL at 1 m. */
  readonly partialsOf: (request: TimbreRequest) => readonly Partial[];
  readonly articulationOf: (
    instrument: InstrumentId,
    sounding: SoundingMidi,
    dynamic: Dynamic,
  ) => NoteArticulation;
}
