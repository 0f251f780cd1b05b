import { vi } from "vitest";

/** A device as browsers show it, after the W3C Web MIDI API; plugged and unplugged by hand. */
class StandInPort extends EventTarget {
  state: MIDIPortDeviceState = "connected";
  connection: MIDIPortConnectionState = "closed";
  isBusy = false;
  constructor(
    readonly id: string,
    readonly name: string | null = id,
  ) {
    super();
  }
  open(): Promise<this> {
    if (this.isBusy) return Promise.reject(new DOMException("taken", "InvalidAccessError"));
    this.connection = "open";
    return Promise.resolve(this);
  }
  close(): Promise<this> {
    this.connection = "closed";
    return Promise.resolve(this);
  }
}

/** A keyboard. */
export class StandInInput extends StandInPort {
  /** Sends a message, which is heard only while the port is open. */
  play(data: number[], timeStamp: number = performance.now()): void {
    if (this.connection !== "open" || this.state !== "connected") return;
    const event = new Event("midimessage");
    Object.defineProperties(event, {
      data: { value: Uint8Array.from(data) },
      timeStamp: { value: timeStamp },
    });
    this.dispatchEvent(event);
  }
}

/** A sound module that keeps what it is sent. */
export class StandInOutput extends StandInPort {
  readonly sent: number[][] = [];
  /** From this many messages on, sending fails. */
  failsAfter = Infinity;
  send(data: number[]): void {
    if (this.state === "disconnected" || this.sent.length >= this.failsAfter)
      throw new DOMException("gone", "InvalidStateError");
    this.sent.push([...data]);
  }
  /** Notes started and not ended, "channel note", read byte by byte as MIDI 1.0 has it. */
  hanging(): string[] {
    const on = new Set<string>();
    for (const [status = 0, note, velocity] of this.sent) {
      const key = `${(status & 0x0f) + 1} ${note}`;
      if (status >> 4 === 9 && velocity) on.add(key);
      else if (status >> 4 === 8 || status >> 4 === 9) on.delete(key);
    }
    return [...on];
  }
}

/** The devices of a computer. */
export class StandInAccess extends EventTarget {
  readonly inputs = new Map<string, StandInInput>();
  readonly outputs = new Map<string, StandInOutput>();

  plugIn<P extends StandInInput | StandInOutput>(port: P): P {
    if (port instanceof StandInInput) this.inputs.set(port.id, port);
    else this.outputs.set(port.id, port);
    port.state = "connected";
    this.tell(port);
    return port;
  }
  unplug(port: StandInInput | StandInOutput): void {
    port.state = "disconnected";
    port.connection = "closed";
    this.tell(port);
  }
  /** Browsers tell the port and the list of ports. */
  tell(port: StandInPort): void {
    port.dispatchEvent(new Event("statechange"));
    this.dispatchEvent(new Event("statechange"));
  }
  /** Makes these the devices that the page is given. */
  install(): this {
    vi.stubGlobal("navigator", { requestMIDIAccess: () => Promise.resolve(this) });
    return this;
  }
}

/** Bytes of a note on channel 1, started and ended. */
export const on = (midi: number, velocity = 64): number[] => [0x90, midi, velocity];
export const off = (midi: number): number[] => [0x80, midi, 0];
