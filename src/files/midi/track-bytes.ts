import type { Count } from "../../base/index.ts";
import { joinBytes, latin1, uint16, uint32, variableLength } from "./midi-bytes.ts";

/** An event at a time; the order decides among events of one time. */
export interface TimedEvent {
  readonly ticks: Count;
  /** 0 settings, 1 note ends, 2 note begins. */
  readonly order: Count;
  readonly bytes: readonly number[];
}

/** Types of meta events. Source: Standard MIDI Files 1.0 (RP-001). */
export const metaTypes = Object.freeze({
  name: 0x03,
  marker: 0x06,
  end: 0x2f,
  tempo: 0x51,
  time: 0x58,
  key: 0x59,
});

/**
 * A meta event.
 * @param type - which
 * @param data - its bytes
 * @returns its bytes with head
 */
export const meta = (type: number, data: readonly number[]): readonly number[] => [
  0xff,
  type,
  ...variableLength(data.length),
  ...data,
];

/** A note in ticks. */
export interface TrackNote {
  readonly onset: Count;
  readonly end: Count;
  /** MIDI key number. */
  readonly key: Count;
  readonly velocity: Count;
}

/** One track with its notes. */
export interface OutTrack {
  readonly name: string;
  /** 1 to 16. */
  readonly channel: Count;
  /** General MIDI programme, 1 to 128. */
  readonly program: Count;
  readonly notes: readonly TrackNote[];
}

/**
 * A Standard MIDI File of format 1.
 * @param ticksPerQuarter - resolution, up to 32767
 * @param leading - events of the first track: tempo, metre, key, markers
 * @param tracks - one after the other
 * @param end - end of all tracks in ticks; notes that sound longer push it back
 * @returns the bytes of the file
 * @source MIDI Association, Standard MIDI Files 1.0 (RP-001)
 */
export function midiBytes(
  ticksPerQuarter: Count,
  leading: readonly TimedEvent[],
  tracks: readonly OutTrack[],
  end: Count,
): Uint8Array {
  const last = tracks.reduce(
    (latest, { notes }) => notes.reduce((late, note) => Math.max(late, note.end), latest),
    end,
  );
  const chunks = [
    trackChunk(leading, last),
    ...tracks.map((track) => trackChunk(eventsOf(track), last)),
  ];
  const head = [...latin1("MThd"), ...uint32(6), ...uint16(1), ...uint16(chunks.length)];
  return joinBytes([Uint8Array.from([...head, ...uint16(ticksPerQuarter)]), ...chunks]);
}

function eventsOf({ name, channel, program, notes }: OutTrack): readonly TimedEvent[] {
  const status = channel - 1;
  const setting = (bytes: readonly number[]): TimedEvent => ({ ticks: 0, order: 0, bytes });
  return [
    setting(meta(metaTypes.name, latin1(name))),
    setting([0xc0 | status, program - 1]),
    ...notes.flatMap(({ onset, end, key, velocity }) => [
      { ticks: onset, order: 2, bytes: [0x90 | status, key, velocity] },
      { ticks: end, order: 1, bytes: [0x80 | status, key, 64] },
    ]),
  ];
}

function trackChunk(events: readonly TimedEvent[], end: Count): Uint8Array {
  const sorted = [...events].sort((a, b) => a.ticks - b.ticks || a.order - b.order);
  const body: number[] = [];
  let now = 0;
  for (const { ticks, bytes } of [...sorted, { ticks: end, bytes: meta(metaTypes.end, []) }]) {
    for (const byte of variableLength(ticks - now)) body.push(byte);
    for (const byte of bytes) body.push(byte);
    now = ticks;
  }
  return joinBytes([
    Uint8Array.from([...latin1("MTrk"), ...uint32(body.length)]),
    Uint8Array.from(body),
  ]);
}
