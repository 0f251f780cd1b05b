import { instrumentOf } from "../../../src/band/index.ts";
import type { Dynamic, InstrumentId, MuteId } from "../../../src/band/index.ts";
import { soundingMidi } from "../../../src/base/index.ts";
import type { Cents, Seconds, SoundingMidi } from "../../../src/base/index.ts";
import { NoteMaker, bandTimbre } from "../../../src/audio/index.ts";
import type { Timbre } from "../../../src/audio/index.ts";
import { seedFrom } from "../../../src/audio/player-scatter.ts";

export const RATE = 48000;

/** A low, a middle and a high pitch of the ordinary compass. */
export function threePitches(instrument: InstrumentId): readonly SoundingMidi[] {
  const { low, high } = instrumentOf(instrument).range;
  return [0.15, 0.5, 0.85].map((share) => soundingMidi(Math.round(low + share * (high - low))));
}

/** The band without vibrato, whose swing would blur the high partials of low notes. */
const straightTimbre: Timbre = {
  ...bandTimbre,
  articulationOf: (...note) => ({
    ...bandTimbre.articulationOf(...note),
    vibratoCents: 0 as Cents,
  }),
};

/** A whole dry note of a player, rendered. */
export function renderedNote(
  instrument: InstrumentId,
  sounding: SoundingMidi,
  dynamic: Dynamic,
  more: {
    readonly seconds?: number;
    readonly player?: string;
    readonly mute?: MuteId;
    readonly isStraight?: boolean;
  } = {},
): Float32Array {
  const { seconds = 1, player = "player", mute = "open", isStraight = false } = more;
  const maker = new NoteMaker(isStraight ? { timbre: straightTimbre } : {});
  const voice = maker.note({
    sound: { kind: "pitched", instrument, sounding, mute },
    duration: seconds as Seconds,
    curve: [{ at: 0 as Seconds, dynamic }],
    seed: seedFrom(`${player} ${instrument} ${sounding}`, 1),
  });
  voice.renderTo(voice.samples.length);
  return voice.samples;
}
