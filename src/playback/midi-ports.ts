import { fail, ok } from "../base/index.ts";
import type { Result } from "../base/index.ts";
import { MidiEars } from "./midi-ears.ts";
import { PortSender, busy, gone } from "./midi-sender.ts";
import type {
  HearOptions,
  MidiPlayer,
  MidiPortInfo,
  MidiPorts,
  MidiSender,
  PlayedEvent,
} from "./midi-types.ts";

/** Closing a port may drop what is still on its way, so the last note-offs get this long. */
const LAST_WORDS_MS = 100;

/**
 * Asks for the MIDI devices. The browser may ask the user; that takes as long as it takes.
 * @returns the devices; or the problem "midi-absent" (this browser has no MIDI), "midi-refused"
 * (the user or a policy said no) or "midi-failed" (the system's MIDI does not start)
 * @source W3C Web MIDI API, Navigator.requestMIDIAccess
 */
export async function openMidi(): Promise<Result<MidiPorts>> {
  const { navigator } = globalThis as { readonly navigator?: Partial<Navigator> };
  if (typeof navigator?.requestMIDIAccess !== "function")
    return fail(
      "midi-absent",
      "MIDI is not available here: use a browser that has it, on a page served over https or from this computer.",
    );
  try {
    return ok(new Ports(await navigator.requestMIDIAccess({ sysex: false })));
  } catch (error) {
    return refusedOrFailed(error);
  }
}

function refusedOrFailed(error: unknown): ReturnType<typeof fail> {
  const name = (error as { readonly name?: unknown } | null | undefined)?.name;
  // Browsers before 2024 say SecurityError.
  if (name === "NotAllowedError" || name === "SecurityError")
    return fail(
      "midi-refused",
      "MIDI was not allowed: allow it for this page in the browser's site settings and try again.",
    );
  return fail(
    "midi-failed",
    "The MIDI system of this computer did not start: check that it is installed and running, and try again.",
  );
}

function connected(ports: ReadonlyMap<string, MIDIPort>): readonly MidiPortInfo[] {
  return [...ports.values()]
    .filter(({ state }) => state === "connected")
    .map(({ id, name }) => ({ id, name: name || "Unnamed device" }));
}

class Ports implements MidiPorts {
  private readonly listeners = new Set<() => void>();
  private readonly ears = new Set<MidiEars>();
  private readonly senders = new Map<string, PortSender>();
  private lists: string;
  private isDisposed = false;

  constructor(private readonly access: MIDIAccess) {
    this.lists = this.listed();
    access.addEventListener("statechange", this.follow);
    globalThis.addEventListener?.("pagehide", this.silence);
  }

  inputs(): readonly MidiPortInfo[] {
    return connected(this.access.inputs);
  }

  outputs(): readonly MidiPortInfo[] {
    return connected(this.access.outputs);
  }

  onChange(listener: () => void): () => void {
    const own = () => listener();
    this.listeners.add(own);
    return () => void this.listeners.delete(own);
  }

  hear(listener: (event: PlayedEvent) => void, options: HearOptions = {}): () => void {
    if (this.isDisposed) return () => undefined;
    const ears = new MidiEars(this.access, listener, options);
    this.ears.add(ears);
    return () => {
      this.ears.delete(ears);
      ears.dispose();
    };
  }

  async openSender(outputId: string, players: readonly MidiPlayer[]): Promise<Result<MidiSender>> {
    const port = this.access.outputs.get(outputId);
    if (this.isDisposed || port?.state !== "connected") return gone(port?.name ?? null);
    const sender = new PortSender(port, players);
    this.senders.get(outputId)?.dispose();
    this.senders.set(outputId, sender);
    try {
      await port.open();
      return ok(sender);
    } catch {
      sender.dispose();
      return busy(port.name);
    }
  }

  dispose(): void {
    if (this.isDisposed) return;
    this.isDisposed = true;
    this.access.removeEventListener("statechange", this.follow);
    globalThis.removeEventListener?.("pagehide", this.silence);
    this.listeners.clear();
    for (const ears of this.ears) ears.dispose();
    for (const sender of this.senders.values()) sender.dispose();
    const ports = [...this.access.inputs.values(), ...this.access.outputs.values()];
    setTimeout(() => {
      for (const port of ports) port.close().catch(() => undefined);
    }, LAST_WORDS_MS);
  }

  private readonly silence = (): void => {
    for (const sender of this.senders.values()) sender.stop();
  };

  /** Browsers also tell of ports that open and close; the page hears only of what comes and goes. */
  private readonly follow = (): void => {
    for (const ears of this.ears) ears.follow();
    const lists = this.listed();
    if (lists === this.lists) return;
    this.lists = lists;
    for (const listener of [...this.listeners]) listener();
  };

  private listed(): string {
    return JSON.stringify([this.inputs(), this.outputs()]);
  }
}
