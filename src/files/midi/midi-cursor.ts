import type { Count } from "../../base/index.ts";

/** Why a MIDI file cannot be read. Thrown while it is walked, never leaves the reader. */
export class MidiFault extends Error {
  readonly code: string;
  readonly position: Count;

  constructor(code: string, message: string, position: Count) {
    super(message);
    this.code = code;
    this.position = position;
  }
}

/** Reads bytes of a stretch one after the other. */
export class MidiCursor {
  private readonly bytes: Uint8Array;
  readonly end: Count;
  at: Count;

  constructor(bytes: Uint8Array, from: Count, end: Count) {
    this.bytes = bytes;
    this.at = from;
    this.end = end;
  }

  byte(): number {
    if (this.at >= this.end)
      throw new MidiFault("midi-cut-off", "The MIDI file was cut off.", this.at);
    return this.bytes[this.at++]!;
  }

  /** A data byte: its top bit is clear. */
  data(): number {
    const value = this.byte();
    if (value > 0x7f) throw this.fault("a data byte has its top bit set");
    return value;
  }

  number(length: Count): number {
    let value = 0;
    for (let index = 0; index < length; index += 1) value = value * 256 + this.byte();
    return value;
  }

  variable(): number {
    let value = 0;
    for (let index = 0; index < 4; index += 1) {
      const byte = this.byte();
      value = value * 128 + (byte & 0x7f);
      if (byte < 0x80) return value;
    }
    throw this.fault("a time or length takes more than four bytes");
  }

  letters(length: Count): string {
    let text = "";
    for (let index = 0; index < length; index += 1) text += String.fromCharCode(this.byte());
    return text;
  }

  part(length: Count): MidiCursor {
    if (this.at + length > this.end)
      throw new MidiFault("midi-cut-off", "The MIDI file was cut off.", this.end);
    const part = new MidiCursor(this.bytes, this.at, this.at + length);
    this.at += length;
    return part;
  }

  fault(why: string): MidiFault {
    return new MidiFault("midi-event", `The MIDI file is damaged: ${why}.`, this.at);
  }
}
