import { quantity, type Semitones, type SoundingMidi, type WrittenMidi } from "../base/index.ts";
import type { InstrumentId } from "./band-types.ts";
import { instrumentOf } from "./instruments.ts";

/**
 * How far an instrument sounds above what is written for it.
 * @param instrument - instrument id
 * @returns semitones; below 0 when it sounds lower
 * @source W3C MusicXML 4.0, `<transpose>`: chromatic + 12 × octave-change
 * @example soundingMinusWritten("tenor-sax") // -14
 */
export function soundingMinusWritten(instrument: InstrumentId): Semitones {
  const { chromatic, octaveChange } = instrumentOf(instrument).transposition;
  return quantity(chromatic + 12 * octaveChange);
}

/**
 * What is heard when a player reads a pitch.
 * @param written - written MIDI note number
 * @param instrument - instrument id
 * @returns sounding MIDI note number
 * @example toSounding(quantity<WrittenMidi>(72), "tenor-sax") // 58
 */
export function toSounding(written: WrittenMidi, instrument: InstrumentId): SoundingMidi {
  return quantity(written + soundingMinusWritten(instrument));
}

/**
 * What a player must read for a pitch to be heard.
 * @param sounding - sounding MIDI note number
 * @param instrument - instrument id
 * @returns written MIDI note number
 * @example toWritten(soundingMidi(58), "tenor-sax") // 72
 */
export function toWritten(sounding: SoundingMidi, instrument: InstrumentId): WrittenMidi {
  return quantity(sounding - soundingMinusWritten(instrument));
}
