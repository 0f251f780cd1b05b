import type { Count, Problem, Result, Seconds, SoundingMidi } from "../base/index.ts";

/** A MIDI device as the user may choose it. */
export interface MidiPortInfo {
  /** The same from visit to visit, as far as the browser can tell. */
  readonly id: string;
  readonly name: string;
}

/** A player as a MIDI receiver sees one. */
export interface MidiPlayer {
  /** Whatever tells players apart, such as the player's id. */
  readonly channelKey: string;
  /** General MIDI programme, 1 to 128. */
  readonly programme: Count;
}

/** A note to be sent. */
export interface MidiNote {
  /** Whose it is: one of the players the sender was opened with. */
  readonly channelKey: string;
  readonly midi: SoundingMidi;
  /** How hard it is struck, 1 to 127. */
  readonly velocity: Count;
}

/** A note that someone played. */
export interface PlayedNote {
  readonly midi: SoundingMidi;
  /** How hard it was struck, 1 to 127. */
  readonly velocity: Count;
}

/** What someone did at a keyboard. Every note begins in one event and ends in one release. */
export type PlayedEvent =
  | {
      readonly kind: "note";
      readonly at: Seconds;
      readonly note: PlayedNote;
      /** All that is held by now, earlier notes included, low to high. */
      readonly held: readonly SoundingMidi[];
    }
  | {
      readonly kind: "chord";
      /** When the first of its notes was struck. */
      readonly at: Seconds;
      /** Two or more, low to high. */
      readonly notes: readonly PlayedNote[];
      /** All that is held by now, earlier notes included, low to high. */
      readonly held: readonly SoundingMidi[];
    }
  | { readonly kind: "release"; readonly at: Seconds; readonly midi: SoundingMidi };

/** Sends voicings to one output, each player on a channel. */
export interface MidiSender {
  /**
   * Sounds notes in place of what sounds now.
   * @param notes - any number; none is silence
   * @returns nothing, or the problem "midi-disconnected"
   * @throws RangeError for an unknown player, or a note or velocity outside MIDI's range
   */
  sound(notes: readonly MidiNote[]): Result<void>;
  /**
   * Sounds notes beside what sounds now, for chords that are rolled.
   * @param notes - any number; one that sounds already is struck again
   * @returns nothing, or the problem "midi-disconnected"
   * @throws RangeError as `sound` does
   */
  add(notes: readonly MidiNote[]): Result<void>;
  /** Ends every note of ours, and tells the receiver to end all notes on our channels. */
  stop(): void;
  /**
   * Takes another line-up, after silence.
   * @param players - in the order that channels are given out
   * @throws RangeError for a programme outside 1 to 128, or a player named twice
   */
  setPlayers(players: readonly MidiPlayer[]): void;
  /** Channel of a player, 1 to 16, or nothing for an unknown one. */
  channelOf(channelKey: string): Count | undefined;
  /** Silence, for good. */
  dispose(): void;
}

/** Which inputs to hear, and who is told when one cannot be opened. */
export interface HearOptions {
  /** One input; all of them, present and to come, unless given. */
  readonly inputId?: string;
  /** Hears the problem "midi-busy". */
  readonly onProblem?: (problem: Problem) => void;
}

/** The MIDI devices of this computer. */
export interface MidiPorts {
  /** Inputs connected now. */
  inputs(): readonly MidiPortInfo[];
  /** Outputs connected now. */
  outputs(): readonly MidiPortInfo[];
  /**
   * Hears of devices that come and go.
   * @param listener - is told after the lists have changed
   * @returns stops listening
   */
  onChange(listener: () => void): () => void;
  /**
   * Hears what is played. A device that is unplugged lets go of its notes.
   * @param listener - notes, chords and releases, in order; times as `performance.now()` counts
   * @param options - which input
   * @returns stops listening, after releases for all that is held
   */
  hear(listener: (event: PlayedEvent) => void, options?: HearOptions): () => void;
  /**
   * Opens an output. A sender opened before on the same output is disposed of.
   * @param outputId - from `outputs`
   * @param players - in the order that channels are given out
   * @returns the sender, or the problem "midi-disconnected" or "midi-busy"
   * @throws RangeError as `setPlayers` does
   */
  openSender(outputId: string, players: readonly MidiPlayer[]): Promise<Result<MidiSender>>;
  /** Silences every output and lets go of all devices. */
  dispose(): void;
}
