import { fail, ok, soundingMidi } from "../base/index.ts";
import type { Count, Result, SoundingMidi } from "../base/index.ts";
import { planChannels } from "./midi-channels.ts";
import type { ChannelPlan } from "./midi-channels.ts";
import { allNotesOff, noteOff, noteOn, programmeChange } from "./midi-message.ts";
import type { MidiNote, MidiPlayer, MidiSender } from "./midi-types.ts";

/** A note on its channel. */
interface ChannelNote {
  readonly channel: Count;
  readonly midi: SoundingMidi;
  readonly velocity: Count;
}

const nameOf = ({ channel, midi }: ChannelNote): string => `${channel} ${midi}`;

/** Sends to one output and remembers what it has to end. */
export class PortSender implements MidiSender {
  private plan: ChannelPlan;
  /** Programmes that the receiver knows of. */
  private readonly known = new Map<Count, Count>();
  private sounding: readonly ChannelNote[] = [];
  private isDisposed = false;

  /**
   * @param port - an output
   * @param players - the line-up, in order
   * @throws RangeError for a programme outside 1 to 128, or a player named twice
   */
  constructor(
    private readonly port: MIDIOutput,
    players: readonly MidiPlayer[],
  ) {
    this.plan = planChannels(players);
    port.addEventListener("statechange", this.watch);
  }

  sound(notes: readonly MidiNote[]): Result<void> {
    return this.send(notes, () => true);
  }

  add(notes: readonly MidiNote[]): Result<void> {
    const added = new Set(this.onChannels(notes).map(nameOf));
    return this.send(notes, (old) => added.has(nameOf(old)));
  }

  stop(): void {
    if (this.isDisposed || this.port.state === "disconnected") return;
    try {
      this.endNotes();
      for (const channel of this.plan.programmes.keys()) this.port.send(allNotesOff(channel));
    } catch {
      // The port was closed under our hands. What sounds is still known, to be ended next time.
    }
  }

  setPlayers(players: readonly MidiPlayer[]): void {
    const plan = planChannels(players);
    this.stop();
    this.plan = plan;
  }

  channelOf(channelKey: string): Count | undefined {
    return this.plan.channels.get(channelKey);
  }

  dispose(): void {
    this.stop();
    this.isDisposed = true;
    this.port.removeEventListener("statechange", this.watch);
  }

  /** A device that comes back has forgotten its programmes, and nothing sounds there. */
  private readonly watch = (): void => {
    if (this.port.state !== "disconnected") return;
    this.known.clear();
    this.sounding = [];
  };

  private send(notes: readonly MidiNote[], isToEnd: (old: ChannelNote) => boolean): Result<void> {
    const wanted = this.onChannels(notes);
    if (this.isDisposed || this.port.state === "disconnected") return gone(this.port.name);
    try {
      this.endNotes(isToEnd);
      this.sendProgrammes();
      // Known before they are sent: should a later one fail, the earlier ones can still be ended.
      this.sounding = [...this.sounding, ...wanted];
      for (const { channel, midi, velocity } of wanted)
        this.port.send(noteOn(channel, midi, velocity));
      return ok(undefined);
    } catch {
      this.stop();
      this.known.clear();
      return gone(this.port.name);
    }
  }

  /** Explicit ends: not every receiver heeds the message that ends all. */
  private endNotes(isToEnd: (old: ChannelNote) => boolean = () => true): void {
    for (const old of this.sounding)
      if (isToEnd(old)) this.port.send(noteOff(old.channel, old.midi));
    this.sounding = this.sounding.filter((old) => !isToEnd(old));
  }

  private sendProgrammes(): void {
    for (const [channel, programme] of this.plan.programmes) {
      if (this.known.get(channel) === programme) continue;
      this.port.send(programmeChange(channel, programme));
      this.known.set(channel, programme);
    }
  }

  /** Players who share a channel and a pitch share one note, the louder of the two. */
  private onChannels(notes: readonly MidiNote[]): readonly ChannelNote[] {
    const merged = new Map<string, ChannelNote>();
    for (const { channelKey, midi, velocity } of notes) {
      const channel = this.plan.channels.get(channelKey);
      if (channel === undefined)
        throw new RangeError(`a note must belong to one of the players, got ${channelKey}`);
      if (!Number.isInteger(velocity) || velocity < 1 || velocity > 127)
        throw new RangeError(`velocity must be a whole number from 1 to 127, got ${velocity}`);
      const key = `${channel} ${soundingMidi(midi)}`;
      const before = merged.get(key)?.velocity ?? 0;
      merged.set(key, { channel, midi, velocity: Math.max(before, velocity) });
    }
    return [...merged.values()];
  }
}

/**
 * The problem of a device that is not there.
 * @param name - of the device, where known
 * @returns the problem "midi-disconnected"
 */
export function gone(name: string | null): ReturnType<typeof fail> {
  const which = name ? `The MIDI device "${name}"` : "That MIDI device";
  return fail(
    "midi-disconnected",
    `${which} is no longer connected; plug it in again or choose another one.`,
  );
}

/**
 * The problem of a device that will not open.
 * @param name - of the device, where known
 * @returns the problem "midi-busy"
 */
export function busy(name: string | null): ReturnType<typeof fail> {
  const which = name ? `The MIDI device "${name}"` : "That MIDI device";
  return fail(
    "midi-busy",
    `${which} could not be opened; close other programs that use it and try again.`,
  );
}
