import { fail, ok, type Count, type Result } from "../../base/index.ts";
import { MidiCursor, MidiFault } from "./midi-cursor.ts";

/** One note of a track, in ticks. */
export interface MidiNote {
  readonly onsetTicks: Count;
  readonly durationTicks: Count;
  /** MIDI note number, 0 to 127. */
  readonly key: Count;
  readonly velocity: Count;
  /** 1 to 16. */
  readonly channel: Count;
}

/** One track: its notes and what it says of itself. */
export interface MidiTrack {
  readonly name: string;
  /** General MIDI programme, 1 to 128; undefined where the track sets none. */
  readonly program?: Count;
  /** In order of onset. */
  readonly notes: readonly MidiNote[];
}

/** Something the whole file says at a time. */
export interface MidiMark<T> {
  readonly ticks: Count;
  readonly value: T;
}

/** A Standard MIDI File, read. */
export interface MidiFile {
  readonly format: 0 | 1 | 2;
  readonly ticksPerQuarter: Count;
  readonly tracks: readonly MidiTrack[];
  /** Microseconds a quarter note. */
  readonly tempos: readonly MidiMark<Count>[];
  readonly metres: readonly MidiMark<{ readonly beats: Count; readonly beatType: Count }>[];
  /** Sharps above 0, flats below. */
  readonly keys: readonly MidiMark<{ readonly fifths: number; readonly isMinor: boolean }>[];
  readonly markers: readonly MidiMark<string>[];
}

/** Largest file that is opened, in bytes. */
const MOST_BYTES: Count = 16_000_000;
const MOST_TRACKS: Count = 1000;

/**
 * Reads a Standard MIDI File. Chunks must be whole and fill the file exactly; a file that was cut
 * off or has something behind its end is refused, not mended.
 * @param bytes - the file
 * @returns the file, or the problem: "midi-too-large", "midi-header", "midi-time-code",
 *   "midi-cut-off", "midi-extra", "midi-chunk", "midi-event"
 * @source MIDI Association, Standard MIDI Files 1.0 (RP-001)
 */
export function readMidi(bytes: Uint8Array): Result<MidiFile> {
  if (bytes.length > MOST_BYTES)
    return fail("midi-too-large", `The file is larger than ${MOST_BYTES / 1e6} MB.`);
  try {
    return ok(readFile(new MidiCursor(bytes, 0, bytes.length)));
  } catch (fault) {
    if (fault instanceof MidiFault)
      return fail(fault.code, fault.message, { position: fault.position });
    throw fault;
  }
}

interface Gathered {
  readonly tempos: MidiMark<Count>[];
  readonly metres: MidiFile["metres"][number][];
  readonly keys: MidiFile["keys"][number][];
  readonly markers: MidiMark<string>[];
}

function readFile(cursor: MidiCursor): MidiFile {
  const { format, count, ticksPerQuarter } = readHeader(cursor);
  const gathered: Gathered = { tempos: [], metres: [], keys: [], markers: [] };
  const tracks: MidiTrack[] = [];
  while (cursor.at < cursor.end) {
    const from = cursor.at;
    const isWhole = cursor.end - from >= 8;
    const type = isWhole ? cursor.letters(4) : "";
    if (!/^[\x20-\x7e]{4}$/.test(type))
      throw new MidiFault("midi-extra", "Bytes follow the last track of the MIDI file.", from);
    const chunk = cursor.part(cursor.number(4));
    // Chunks of other types are allowed and passed over.
    if (type === "MTrk") tracks.push(readTrack(chunk, gathered));
  }
  if (tracks.length !== count)
    throw new MidiFault(
      tracks.length < count ? "midi-cut-off" : "midi-chunk",
      `The MIDI file says that it has ${count} tracks, but has ${tracks.length}.`,
      cursor.at,
    );
  return { format, ticksPerQuarter, tracks, ...gathered };
}

function readHeader(cursor: MidiCursor): {
  readonly format: 0 | 1 | 2;
  readonly count: Count;
  readonly ticksPerQuarter: Count;
} {
  if (cursor.end < 14 || cursor.letters(4) !== "MThd")
    throw new MidiFault("midi-header", "This is not a Standard MIDI File.", 0);
  const head = cursor.part(cursor.number(4));
  const format = head.number(2);
  const count = head.number(2);
  const ticksPerQuarter = head.number(2);
  if (format !== 0 && format !== 1 && format !== 2)
    throw new MidiFault("midi-header", `There is no MIDI file format ${format}.`, 8);
  if (format === 0 && count !== 1)
    throw new MidiFault(
      "midi-header",
      `A MIDI file of format 0 has one track, this one says ${count}: save it as format 1.`,
      10,
    );
  if (count === 0 || count > MOST_TRACKS)
    throw new MidiFault("midi-header", `A MIDI file of ${count} tracks cannot be read.`, 10);
  if (ticksPerQuarter === 0 || ticksPerQuarter > 0x7fff)
    throw new MidiFault(
      "midi-time-code",
      "The MIDI file counts in film frames, not in notes; save it with ticks per quarter note.",
      12,
    );
  return { format, count, ticksPerQuarter };
}

interface TrackWork {
  readonly notes: MidiNote[];
  /** Notes that sound, by channel and key, the oldest first. */
  readonly sounding: Map<Count, { readonly onset: Count; readonly velocity: Count }[]>;
  name: string;
  program: Count | undefined;
  ticks: Count;
  status: number;
  isEnded: boolean;
}

function readTrack(cursor: MidiCursor, gathered: Gathered): MidiTrack {
  const work: TrackWork = {
    notes: [],
    sounding: new Map(),
    name: "",
    program: undefined,
    ticks: 0,
    status: 0,
    isEnded: false,
  };
  while (cursor.at < cursor.end) {
    if (work.isEnded) throw cursor.fault("events follow the end of a track");
    work.ticks += cursor.variable();
    readEvent(cursor, work, gathered);
  }
  if (!work.isEnded) throw cursor.fault("a track has no end");
  const { name, program, notes } = work;
  const sorted = notes.sort((a, b) => a.onsetTicks - b.onsetTicks || a.key - b.key);
  return { name, ...(program === undefined ? {} : { program }), notes: sorted };
}

function readEvent(cursor: MidiCursor, work: TrackWork, gathered: Gathered): void {
  const first = cursor.byte();
  // A meta event ends running status by the standard; files that go on are understood all the same.
  if (first === 0xff) return readMeta(cursor, work, gathered);
  if (first === 0xf0 || first === 0xf7) {
    work.status = 0;
    cursor.part(cursor.variable());
    return;
  }
  if (first > 0xf0) throw cursor.fault("a system message stands in a track");
  if (first >= 0x80) work.status = first;
  else if (work.status === 0) throw cursor.fault("a message has no status byte");
  const one = first >= 0x80 ? cursor.data() : first;
  const kind = work.status & 0xf0;
  const two = kind === 0xc0 || kind === 0xd0 ? 0 : cursor.data();
  readMessage(kind, one, two, work);
}

function readMessage(kind: number, one: number, two: number, work: TrackWork): void {
  const channel = (work.status & 0x0f) + 1;
  if (kind === 0xc0) work.program ??= one + 1;
  if (kind !== 0x80 && kind !== 0x90) return;
  const id = channel * 128 + one;
  const queue = work.sounding.get(id) ?? [];
  if (kind === 0x90 && two > 0) {
    queue.push({ onset: work.ticks, velocity: two });
    work.sounding.set(id, queue);
    return;
  }
  const begun = queue.shift();
  if (begun === undefined) return;
  work.notes.push({
    onsetTicks: begun.onset,
    durationTicks: work.ticks - begun.onset,
    key: one,
    velocity: begun.velocity,
    channel,
  });
}

function readMeta(cursor: MidiCursor, work: TrackWork, gathered: Gathered): void {
  const type = cursor.byte();
  const body = cursor.part(cursor.variable());
  const length = body.end - body.at;
  const { ticks } = work;
  const needs = (wanted: Count): void => {
    if (length !== wanted) throw cursor.fault("an event has the wrong length");
  };
  if (type === 0x2f) {
    needs(0);
    work.isEnded = true;
  } else if (type === 0x03) work.name ||= body.letters(length);
  else if (type === 0x06) gathered.markers.push({ ticks, value: body.letters(length) });
  else if (type === 0x51) {
    needs(3);
    gathered.tempos.push({ ticks, value: body.number(3) });
  } else if (type === 0x58) {
    needs(4);
    gathered.metres.push({ ticks, value: { beats: body.byte(), beatType: 2 ** body.byte() } });
  } else if (type === 0x59) {
    needs(2);
    const signs = body.byte();
    const fifths = signs > 127 ? signs - 256 : signs;
    gathered.keys.push({ ticks, value: { fifths, isMinor: body.byte() === 1 } });
  }
}
