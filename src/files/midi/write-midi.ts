import type { Count } from "../../base/index.ts";
import type { Dynamic } from "../../band/index.ts";
import { fifthsOf, spelledToMidi, type Key } from "../../theory/index.ts";
import { checkScore } from "../score/check-score.ts";
import { midiChannels } from "../score/midi-channels.ts";
import { playedScore } from "../score/played-score.ts";
import { programOf } from "../score/program-of.ts";
import type { ScoreModel, ScoreNote, ScorePart } from "../score/score-model.ts";
import { placedBars } from "../score/score-times.ts";
import { joinBytes, latin1, uint16, uint32, variableLength } from "./midi-bytes.ts";
import { ACCENT_VELOCITY, velocityOf } from "./velocity-table.ts";

/** Fewest ticks a quarter note that are written; programs work with 96 to 960. */
const LEAST_TICKS: Count = 480;
const MOST_TICKS: Count = 0x7fff;
const META = Object.freeze({
  name: 0x03,
  marker: 0x06,
  end: 0x2f,
  tempo: 0x51,
  time: 0x58,
  key: 0x59,
});

/** An event at a time; the order decides among events of one time. */
interface TimedEvent {
  readonly ticks: Count;
  /** 0 settings, 1 note ends, 2 note begins. */
  readonly order: Count;
  readonly bytes: readonly number[];
}

/**
 * Writes a score as a Standard MIDI File of format 1: a first track with tempo, metre, key and the
 * chord symbols as markers, then one track a part. Repeats are written out, and eighth notes are
 * even.
 * @param score - bars, parts and chords in sounding pitch
 * @returns the bytes of the file
 * @throws RangeError when the score is not in order, or its division is above 32767
 * @source MIDI Association, Standard MIDI Files 1.0 (RP-001)
 */
export function writeMidi(score: ScoreModel): Uint8Array {
  checkScore(score);
  const played = playedScore(score);
  const { division, parts } = played;
  const scale = Math.max(1, Math.ceil(LEAST_TICKS / division));
  if (division > MOST_TICKS)
    throw new RangeError(`a MIDI file holds up to ${MOST_TICKS} ticks a quarter, got ${division}`);
  const channels = midiChannels(parts.map(programOf));
  const end = placedBars(played).at(-1)!.end * scale;
  const tracks = [
    trackChunk(leadingEvents(played, scale), end),
    ...parts.map((part, index) => trackChunk(partEvents(part, channels[index]!, scale), end)),
  ];
  const head = [...latin1("MThd"), ...uint32(6), ...uint16(1), ...uint16(tracks.length)];
  return joinBytes([Uint8Array.from([...head, ...uint16(division * scale)]), ...tracks]);
}

const meta = (type: number, data: readonly number[]): readonly number[] => [
  0xff,
  type,
  ...variableLength(data.length),
  ...data,
];

function leadingEvents(score: ScoreModel, scale: Count): readonly TimedEvent[] {
  const { title, tempo, harmonies, swing, style } = score;
  const at = (ticks: Count, bytes: readonly number[]): TimedEvent => ({ ticks, order: 0, bytes });
  const events = [at(0, meta(META.name, latin1(title)))];
  const microseconds = Math.min(0xffffff, Math.round(60_000_000 / tempo));
  events.push(at(0, meta(META.tempo, uint32(microseconds).slice(1))));
  const feel = style ?? (swing && "Swing");
  if (feel !== undefined) events.push(at(0, meta(META.marker, latin1(feel))));
  const seen = { metre: "", key: "" };
  for (const { bar, start } of placedBars(score)) {
    const metre = `${bar.metre.beats}/${bar.metre.beatType}`;
    if (metre !== seen.metre) {
      const power = Math.log2(bar.metre.beatType);
      events.push(at(start * scale, meta(META.time, [bar.metre.beats, power, 24, 8])));
    }
    const key = JSON.stringify(bar.key);
    if (bar.key !== null && key !== seen.key)
      events.push(at(start * scale, meta(META.key, keyBytes(bar.key))));
    seen.metre = metre;
    seen.key = key;
    const words = [bar.rehearsal, bar.words].filter((each) => each !== undefined).join(" ");
    if (words !== "") events.push(at(start * scale, meta(META.marker, latin1(words))));
  }
  for (const { onset, symbol } of harmonies)
    events.push(at(onset * scale, meta(META.marker, latin1(symbol))));
  return events;
}

/** Sharps above 0, flats below; keys of more than seven signs are written enharmonically. */
function keyBytes(key: Key): readonly number[] {
  const fifths = fifthsOf(key);
  const written = fifths > 7 ? fifths - 12 : fifths < -7 ? fifths + 12 : fifths;
  return [written & 0xff, key.mode === "minor" ? 1 : 0];
}

function partEvents(part: ScorePart, channel: Count, scale: Count): readonly TimedEvent[] {
  const status = channel - 1;
  const setting = (bytes: readonly number[]): TimedEvent => ({ ticks: 0, order: 0, bytes });
  return [
    setting(meta(META.name, latin1(part.name))),
    setting([0xc0 | status, programOf(part) - 1]),
    ...part.notes.flatMap((note) => noteEvents(note, part, status, scale)),
  ];
}

function noteEvents(
  note: ScoreNote,
  part: ScorePart,
  status: number,
  scale: Count,
): readonly TimedEvent[] {
  const { onset, duration, pitch } = note;
  const key = spelledToMidi(pitch);
  const velocity = velocityAt(note, part);
  const off = [0x80 | status, key, 64];
  return [
    { ticks: onset * scale, order: 2, bytes: [0x90 | status, key, velocity] },
    { ticks: (onset + duration) * scale, order: 1, bytes: off },
  ];
}

function velocityAt({ onset, marks = [] }: ScoreNote, { directions }: ScorePart): Count {
  let dynamic: Dynamic = "mf";
  for (const each of directions)
    if ("dynamic" in each && each.onset <= onset) dynamic = each.dynamic;
  const isAccented = marks.includes("accent") || marks.includes("marcato");
  return Math.min(127, velocityOf[dynamic] + (isAccented ? ACCENT_VELOCITY : 0));
}

function trackChunk(events: readonly TimedEvent[], end: Count): Uint8Array {
  const sorted = [...events].sort((a, b) => a.ticks - b.ticks || a.order - b.order);
  const body: number[] = [];
  let now = 0;
  for (const { ticks, bytes } of [...sorted, { ticks: end, bytes: meta(META.end, []) }]) {
    for (const byte of variableLength(ticks - now)) body.push(byte);
    for (const byte of bytes) body.push(byte);
    now = ticks;
  }
  return joinBytes([
    Uint8Array.from([...latin1("MTrk"), ...uint32(body.length)]),
    Uint8Array.from(body),
  ]);
}
