import type { Count, SoundingMidi } from "../base/index.ts";

/** What a message from a keyboard asks for, as far as notes are concerned. */
export type KeyMessage =
  | {
      readonly kind: "on";
      readonly channel: Count;
      readonly midi: SoundingMidi;
      readonly velocity: Count;
    }
  | { readonly kind: "off"; readonly channel: Count; readonly midi: SoundingMidi }
  | { readonly kind: "pedal"; readonly channel: Count; readonly isDown: boolean }
  | { readonly kind: "all-off"; readonly channel: Count }
  | { readonly kind: "reset" };

const NOTE_OFF = 0x80;
const NOTE_ON = 0x90;
const CONTROL = 0xb0;
const PROGRAMME = 0xc0;
const SYSTEM_RESET = 0xff;

const DAMPER_PEDAL = 64;
const ALL_SOUND_OFF = 120;
const RESET_ALL_CONTROLLERS = 121;
const ALL_NOTES_OFF = 123;
/** The mode messages from here to the last controller end all notes too. */
const LAST_MODE = 127;
/** From here up a switch such as the pedal is on. */
const SWITCH_ON = 64;
/** Of a keyboard that does not measure how keys are let go. */
const RELEASE_VELOCITY = 64;

/**
 * Reads one message. Whoever delivers it has already put a status byte in front of every message.
 * @param data - its bytes
 * @returns what it asks for; nothing where it is cut short or about something else
 * @source MIDI 1.0 Detailed Specification, channel voice and channel mode messages
 */
export function readKeyMessage(data: ArrayLike<number>): KeyMessage | undefined {
  const [status, first, second] = [data[0], data[1], data[2]];
  if (status === SYSTEM_RESET) return { kind: "reset" };
  if (!isDataByte(first) || !isDataByte(second) || status === undefined) return undefined;
  const channel = (status & 0x0f) + 1;
  const midi = first as SoundingMidi;
  switch (status & 0xf0) {
    case NOTE_ON:
      // A note struck with no velocity is a note let go.
      if (second === 0) return { kind: "off", channel, midi };
      return { kind: "on", channel, midi, velocity: second };
    case NOTE_OFF:
      return { kind: "off", channel, midi };
    case CONTROL:
      return readControl(channel, first, second);
    default:
      return undefined;
  }
}

function readControl(channel: Count, controller: Count, value: Count): KeyMessage | undefined {
  if (controller === DAMPER_PEDAL) return { kind: "pedal", channel, isDown: value >= SWITCH_ON };
  if (controller === RESET_ALL_CONTROLLERS) return { kind: "pedal", channel, isDown: false };
  const endsAll =
    controller === ALL_SOUND_OFF || (controller >= ALL_NOTES_OFF && controller <= LAST_MODE);
  return endsAll ? { kind: "all-off", channel } : undefined;
}

function isDataByte(byte: number | undefined): byte is Count {
  return byte !== undefined && byte >= 0 && byte <= 0x7f;
}

/**
 * Bytes that start a note.
 * @param channel - 1 to 16
 * @param midi - the note
 * @param velocity - 1 to 127
 * @returns the message
 */
export function noteOn(channel: Count, midi: SoundingMidi, velocity: Count): number[] {
  return [NOTE_ON | (channel - 1), midi, velocity];
}

/**
 * Bytes that end a note.
 * @param channel - 1 to 16
 * @param midi - the note
 * @returns the message
 */
export function noteOff(channel: Count, midi: SoundingMidi): number[] {
  return [NOTE_OFF | (channel - 1), midi, RELEASE_VELOCITY];
}

/**
 * Bytes that choose the sound of a channel.
 * @param channel - 1 to 16
 * @param programme - 1 to 128, as General MIDI counts them
 * @returns the message
 */
export function programmeChange(channel: Count, programme: Count): number[] {
  return [PROGRAMME | (channel - 1), programme - 1];
}

/**
 * Bytes that end every note of a channel.
 * @param channel - 1 to 16
 * @returns the message
 */
export function allNotesOff(channel: Count): number[] {
  return [CONTROL | (channel - 1), ALL_NOTES_OFF, 0];
}
