import type { Count } from "../../base/index.ts";
import { fifthsOf, type Key } from "../../theory/index.ts";
import type { ScoreModel } from "../score/score-model.ts";
import { placedBars } from "../score/score-times.ts";
import { latin1, uint32 } from "./midi-bytes.ts";
import { meta, metaTypes, type TimedEvent } from "./track-bytes.ts";

/**
 * What the first track of a score's MIDI file says: title, tempo, metre, key, and as markers the
 * style, rehearsal marks, words and chord symbols.
 * @param score - the score, repeats written out
 * @param scale - ticks of one division
 * @returns events in no particular order
 * @source MIDI Association, Standard MIDI Files 1.0 (RP-001), meta events
 */
export function leadingEvents(score: ScoreModel, scale: Count): readonly TimedEvent[] {
  const { title, tempo, harmonies, swing, style } = score;
  const at = (ticks: Count, bytes: readonly number[]): TimedEvent => ({ ticks, order: 0, bytes });
  const events = [at(0, meta(metaTypes.name, latin1(title)))];
  const microseconds = Math.min(0xffffff, Math.round(60_000_000 / tempo));
  events.push(at(0, meta(metaTypes.tempo, uint32(microseconds).slice(1))));
  const feel = style ?? (swing && "Swing");
  if (feel !== undefined) events.push(at(0, meta(metaTypes.marker, latin1(feel))));
  const seen = { metre: "", key: "" };
  for (const { bar, start } of placedBars(score)) {
    const metre = `${bar.metre.beats}/${bar.metre.beatType}`;
    if (metre !== seen.metre) {
      const power = Math.log2(bar.metre.beatType);
      events.push(at(start * scale, meta(metaTypes.time, [bar.metre.beats, power, 24, 8])));
    }
    const key = JSON.stringify(bar.key);
    if (bar.key !== null && key !== seen.key)
      events.push(at(start * scale, meta(metaTypes.key, keyBytes(bar.key))));
    seen.metre = metre;
    seen.key = key;
    const words = [bar.rehearsal, bar.words].filter((each) => each !== undefined).join(" ");
    if (words !== "") events.push(at(start * scale, meta(metaTypes.marker, latin1(words))));
  }
  for (const { onset, symbol } of harmonies)
    events.push(at(onset * scale, meta(metaTypes.marker, latin1(symbol))));
  return events;
}

/** Sharps above 0, flats below; keys of more than seven signs are written enharmonically. */
function keyBytes(key: Key): readonly number[] {
  const fifths = fifthsOf(key);
  const written = fifths > 7 ? fifths - 12 : fifths < -7 ? fifths + 12 : fifths;
  return [written & 0xff, key.mode === "minor" ? 1 : 0];
}
