import type { Seconds } from "../base/index.ts";
import { chordGatherer } from "./midi-gatherer.ts";
import { busy } from "./midi-sender.ts";
import type { HearOptions, PlayedEvent } from "./midi-types.ts";

function now(): Seconds {
  return (performance.now() / 1000) as Seconds;
}

/** Listens to inputs, whichever are there, and passes on what the gatherer makes of them. */
export class MidiEars {
  private readonly gatherer = chordGatherer();
  private readonly attached = new Map<MIDIInput, (event: MIDIMessageEvent) => void>();
  private timer: ReturnType<typeof setTimeout> | undefined;

  /**
   * @param access - the devices
   * @param listener - hears what is played
   * @param options - which input, and who hears of one that cannot be opened
   */
  constructor(
    private readonly access: MIDIAccess,
    private readonly listener: (event: PlayedEvent) => void,
    private readonly options: HearOptions,
  ) {
    this.follow();
  }

  /** Turns to the inputs that are there now; those that went let go of their keys. */
  follow(): void {
    const { inputId } = this.options;
    const present = [...this.access.inputs.values()].filter(
      ({ id, state }) => state === "connected" && (inputId === undefined || id === inputId),
    );
    for (const input of [...this.attached.keys()]) if (!present.includes(input)) this.detach(input);
    for (const input of present) if (!this.attached.has(input)) this.attach(input);
  }

  /** Hears nothing more; what is held is released. */
  dispose(): void {
    for (const input of [...this.attached.keys()]) this.detach(input);
  }

  private attach(input: MIDIInput): void {
    const hear = ({ data, timeStamp }: MIDIMessageEvent) => {
      if (data) this.pass(this.gatherer.feed(data, (timeStamp / 1000) as Seconds, input.id));
    };
    this.attached.set(input, hear);
    input.addEventListener("midimessage", hear);
    // Unlike a handler property, a listener does not open the port.
    input.open().catch(() => this.options.onProblem?.(busy(input.name).problem));
  }

  private detach(input: MIDIInput): void {
    const hear = this.attached.get(input);
    if (hear) input.removeEventListener("midimessage", hear);
    this.attached.delete(input);
    this.pass(this.gatherer.letGo(now(), input.id));
  }

  private pass(events: readonly PlayedEvent[]): void {
    this.setTimer();
    for (const event of events) this.listener(event);
  }

  private setTimer(): void {
    clearTimeout(this.timer);
    const end = this.gatherer.closesAt();
    if (end === undefined) return;
    const wait = Math.max(0, 1000 * (end - now()));
    // Told the time it was set for, so that a timer that rounds down still completes the chord.
    this.timer = setTimeout(() => this.pass(this.gatherer.tick(end)), wait);
  }
}
