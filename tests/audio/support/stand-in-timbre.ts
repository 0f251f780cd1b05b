import { midiToHz } from "../../../src/base/index.ts";
import type { Cents, Db, DbSpl, Hertz, Seconds } from "../../../src/base/index.ts";
import { dynamics } from "../../../src/band/index.ts";
import type { Timbre } from "../../../src/audio/index.ts";

/**
 * A made-up timbre for tests of the machinery, not of the instruments: each dynamic step adds 4 dB
 * and opens the spectrum by 2 dB an octave.
 */
export const standInTimbre: Timbre = {
  partialsOf: ({ sounding, dynamic, instrument, trim = 0 }) => {
    const step = dynamics.indexOf(dynamic);
    const fundamental = midiToHz(sounding);
    const tilt = 14 - 1.2 * step + (instrument.length % 3);
    const count = Math.max(1, Math.floor(12000 / fundamental));
    return Array.from({ length: count }, (_, i) => ({
      hz: ((i + 1) * fundamental) as Hertz,
      dbSpl: (64 + 4 * step + trim - tilt * Math.log2(i + 1)) as DbSpl,
    }));
  },
  articulationOf: () => ({
    attackSeconds: 0.03 as Seconds,
    releaseSeconds: 0.08 as Seconds,
    vibratoHz: 5 as Hertz,
    vibratoCents: 20 as Cents,
    vibratoDelaySeconds: 0.4 as Seconds,
    noiseDb: -45 as Db,
    decaySeconds: Infinity as Seconds,
  }),
};
