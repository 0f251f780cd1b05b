import { parseMidi, writeMidi } from "midi-file";
import type { MidiEvent } from "midi-file";
import { describe, expect, it } from "vitest";
import type { SoundingMidi } from "../../src/base/index.ts";
import {
  allNotesOff,
  noteOff,
  noteOn,
  programmeChange,
  readKeyMessage,
} from "../../src/playback/midi-message.ts";

/** Reads messages with an independent reader, by way of a Standard MIDI File. */
function readElsewhere(messages: readonly number[][]): MidiEvent[] {
  const track = [...messages.flatMap((message) => [0, ...message]), 0, 0xff, 0x2f, 0];
  const header = [0x4d, 0x54, 0x68, 0x64, 0, 0, 0, 6, 0, 0, 0, 1, 0, 96];
  const bytes = [...header, 0x4d, 0x54, 0x72, 0x6b, 0, 0, 0, track.length, ...track];
  return parseMidi(Uint8Array.from(bytes)).tracks[0]!.slice(0, -1);
}

/** Writes one event with an independent writer. */
function writtenElsewhere(event: MidiEvent): number[] {
  const file = writeMidi({
    header: { format: 0, numTracks: 1, ticksPerBeat: 96 },
    tracks: [[event, { deltaTime: 0, meta: true, type: "endOfTrack" }]],
  });
  // Header 14 bytes, track head 8, delta time 1; the end of the track takes the last 4.
  return file.slice(23, -4);
}

const c4 = 60 as SoundingMidi;

// MIDI 1.0 Detailed Specification, table of channel messages; reader and writer: midi-file 1.2.4.
describe("MIDI messages", () => {
  it("are what another reader takes them for, on the first and the last channel", () => {
    const events = readElsewhere([
      noteOn(1, c4, 100),
      noteOff(1, c4),
      programmeChange(16, 57),
      allNotesOff(16),
    ]);
    expect(events).toMatchObject([
      { type: "noteOn", channel: 0, noteNumber: 60, velocity: 100 },
      { type: "noteOff", channel: 0, noteNumber: 60 },
      // General MIDI Level 1 counts from 1 (57 is the trumpet), the byte from 0.
      { type: "programChange", channel: 15, programNumber: 56 },
      { type: "controller", channel: 15, controllerType: 123, value: 0 },
    ]);
  });

  it("are read as another writer means them", () => {
    const note = { deltaTime: 0, channel: 4, noteNumber: 60, velocity: 33 };
    expect(readKeyMessage(writtenElsewhere({ ...note, type: "noteOn" }))).toEqual({
      kind: "on",
      channel: 5,
      midi: 60,
      velocity: 33,
    });
    expect(readKeyMessage(writtenElsewhere({ ...note, type: "noteOff" }))).toEqual({
      kind: "off",
      channel: 5,
      midi: 60,
    });
    const pedal = { deltaTime: 0, channel: 0, type: "controller", controllerType: 64 } as const;
    const read = (value: number) => readKeyMessage(writtenElsewhere({ ...pedal, value }));
    expect(read(127)).toEqual({ kind: "pedal", channel: 1, isDown: true });
    // "0 to 63 is off, 64 to 127 is on."
    expect(read(64)).toEqual({ kind: "pedal", channel: 1, isDown: true });
    expect(read(63)).toEqual({ kind: "pedal", channel: 1, isDown: false });
  });

  it("end a note that is struck with no velocity", () => {
    expect(readKeyMessage([0x90, 60, 0])).toEqual({ kind: "off", channel: 1, midi: 60 });
  });

  it.each([120, 123, 124, 125, 126, 127])("end all notes with controller %i", (controller) => {
    expect(readKeyMessage([0xb2, controller, 0])).toEqual({ kind: "all-off", channel: 3 });
  });

  it.each([
    ["nothing", []],
    ["a note cut short", [0x90, 60]],
    ["a data byte too large", [0x90, 60, 0x80]],
    ["bytes without a status", [60, 100, 0]],
    ["local control", [0xb0, 122, 0]],
    ["modulation", [0xb0, 1, 64]],
    ["pitch bend", [0xe0, 0, 64]],
    ["channel pressure", [0xd0, 64]],
    ["the clock", [0xf8]],
    ["system exclusive", [0xf0, 0x7e, 0xf7]],
  ])("about something else are passed over: %s", (_, bytes) => {
    expect(readKeyMessage(bytes)).toBeUndefined();
  });
});
