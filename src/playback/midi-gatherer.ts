import type { Count, Seconds, SoundingMidi } from "../base/index.ts";
import { readKeyMessage } from "./midi-message.ts";
import type { KeyMessage } from "./midi-message.ts";
import type { PlayedEvent, PlayedNote } from "./midi-types.ts";

/**
 * How far apart the notes of one chord may be struck, from the first to the last.
 * @source common practice, no single source
 */
const CHORD_SECONDS = 0.08 as Seconds;

/** Makes notes and chords of what keyboards send. It has no clock: time comes in. */
export interface ChordGatherer {
  /**
   * Takes one message.
   * @param data - its bytes, status byte first
   * @param at - when it was sent
   * @param source - which device sent it
   * @returns what it completes, in order
   */
  feed(data: ArrayLike<number>, at: Seconds, source?: string): readonly PlayedEvent[];
  /**
   * Lets time pass.
   * @param now - the time
   * @returns the note or chord that is complete by now, if any
   */
  tick(now: Seconds): readonly PlayedEvent[];
  /** When the note or chord that is being gathered will be complete; nothing where there is none. */
  closesAt(): Seconds | undefined;
  /**
   * Lets go of every key and pedal, as when a device is unplugged.
   * @param at - when
   * @param source - of this device only
   * @returns releases, and before them what was being gathered
   */
  letGo(at: Seconds, source?: string): readonly PlayedEvent[];
  /** All notes held by finger or pedal, low to high. */
  held(): readonly SoundingMidi[];
}

/**
 * Gathers notes struck together into chords. Notes struck within the window, and all still held as
 * the last of them comes, are one chord; letting go of one of them completes it at once.
 * @param window - longest time from the first note of a chord to its last, seconds; 80 ms unless
 * given
 * @returns a gatherer
 */
export function chordGatherer(window: Seconds = CHORD_SECONDS): ChordGatherer {
  return new Gatherer(window);
}

/** One channel of one device. */
interface Manual {
  readonly source: string;
  readonly channel: Count;
}

/** A note that is kept sounding; two manuals may hold the same one. */
interface Hold extends Manual {
  readonly midi: SoundingMidi;
  /** False where only the pedal holds it. */
  readonly isFingerDown: boolean;
}

function isOf({ source, channel }: Manual): (other: Manual) => boolean {
  return (other) => other.source === source && other.channel === channel;
}

class Gatherer implements ChordGatherer {
  private holds: readonly Hold[] = [];
  private pedals: readonly Manual[] = [];
  private gathered: readonly PlayedNote[] = [];
  private opened = 0 as Seconds;

  constructor(private readonly window: Seconds) {}

  feed(data: ArrayLike<number>, at: Seconds, source = ""): readonly PlayedEvent[] {
    const message = readKeyMessage(data);
    return message ? [...this.tick(at), ...this.take(message, at, source)] : this.tick(at);
  }

  tick(now: Seconds): readonly PlayedEvent[] {
    const end = this.closesAt();
    return end !== undefined && now >= end ? this.close() : [];
  }

  closesAt(): Seconds | undefined {
    if (this.gathered.length === 0) return undefined;
    return (this.opened + this.window) as Seconds;
  }

  letGo(at: Seconds, source?: string): readonly PlayedEvent[] {
    const isMeant = (manual: Manual) => source === undefined || manual.source === source;
    this.pedals = this.pedals.filter((each) => !isMeant(each));
    return this.end(isMeant, at);
  }

  held(): readonly SoundingMidi[] {
    return [...new Set(this.holds.map(({ midi }) => midi))].sort((a, b) => a - b);
  }

  private take(message: KeyMessage, at: Seconds, source: string): readonly PlayedEvent[] {
    if (message.kind === "reset") return this.letGo(at, source);
    const manual = { source, channel: message.channel };
    const isHere = isOf(manual);
    switch (message.kind) {
      case "on":
        return this.strike(manual, message, at);
      case "off":
        return this.lift(manual, message.midi, at);
      case "pedal":
        this.pedals = this.pedals.filter((each) => !isHere(each));
        if (!message.isDown) return this.end((hold) => isHere(hold) && !hold.isFingerDown, at);
        this.pedals = [...this.pedals, manual];
        return [];
      case "all-off":
        return this.end(isHere, at);
    }
  }

  private strike(manual: Manual, note: PlayedNote, at: Seconds): readonly PlayedEvent[] {
    const { midi, velocity } = note;
    const isHere = isOf(manual);
    const same = this.holds.filter((hold) => hold.midi === midi);
    const isAgain = same.some(isHere);
    const before = isAgain ? this.release([midi], at) : [];
    const others = this.holds.filter((hold) => !(hold.midi === midi && isHere(hold)));
    this.holds = [...others, { ...manual, midi, isFingerDown: true }];
    // The same note from a second manual, as of a layered keyboard, is not a second note.
    if (same.length > 0 && !isAgain) return [];
    if (this.gathered.length === 0) this.opened = at;
    this.gathered = [...this.gathered, { midi, velocity }];
    return before;
  }

  private lift(manual: Manual, midi: SoundingMidi, at: Seconds): readonly PlayedEvent[] {
    const isHere = isOf(manual);
    const isMeant = (hold: Hold) => hold.midi === midi && isHere(hold);
    if (!this.pedals.some(isHere)) return this.end(isMeant, at);
    this.holds = this.holds.map((hold) =>
      isMeant(hold) ? { ...hold, isFingerDown: false } : hold,
    );
    return [];
  }

  /** Ends holds; a note ends with the last of its holds. */
  private end(isMeant: (hold: Hold) => boolean, at: Seconds): readonly PlayedEvent[] {
    const left = this.holds.filter((hold) => !isMeant(hold));
    const ending = this.held().filter((midi) => !left.some((hold) => hold.midi === midi));
    const events = this.release(ending, at);
    this.holds = left;
    return events;
  }

  /** Releases, and before them what is being gathered where one of its notes is released. */
  private release(midis: readonly SoundingMidi[], at: Seconds): readonly PlayedEvent[] {
    const isGathered = this.gathered.some(({ midi }) => midis.includes(midi));
    const releases = midis.map((midi) => ({ kind: "release" as const, at, midi }));
    return isGathered ? [...this.close(), ...releases] : releases;
  }

  private close(): readonly PlayedEvent[] {
    const notes = [...this.gathered].sort((a, b) => a.midi - b.midi);
    this.gathered = [];
    const [at, held] = [this.opened, this.held()];
    const only = notes.length === 1 ? notes[0] : undefined;
    return [only ? { kind: "note", at, note: only, held } : { kind: "chord", at, notes, held }];
  }
}
