import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { Problem, Result, SoundingMidi } from "../../src/base/index.ts";
import { openMidi } from "../../src/playback/index.ts";
import type { MidiPorts, PlayedEvent } from "../../src/playback/index.ts";
import { StandInAccess, StandInInput, StandInOutput, off, on } from "./midi-stand-ins.ts";

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

async function opened(): Promise<MidiPorts> {
  const result = await openMidi();
  if (!result.ok) throw new Error(result.problem.message);
  return result.value;
}

const trumpet = [{ channelKey: "tpt1", programme: 57 }];
const highD = [{ channelKey: "tpt1", midi: 74 as SoundingMidi, velocity: 80 }];

function expectSentence(result: Result<unknown>, code: string): void {
  expect(!result.ok && result.problem.code).toBe(code);
  expect(!result.ok && result.problem.message).toMatch(/^[A-Z][^.]+\.$/);
}

// W3C Web MIDI API, requestMIDIAccess: secure pages only; NotAllowedError, before 2024
// SecurityError, where it is denied; InvalidStateError where the system fails; AbortError,
// NotSupportedError. Headless Chromium answers NotAllowedError, and has no API on plain http.
describe("asking for MIDI", () => {
  it.each([{}, undefined])("says in one sentence that there is none: %o", async (navigator) => {
    vi.stubGlobal("navigator", navigator);
    expectSentence(await openMidi(), "midi-absent");
  });

  it.each([
    ["midi-refused", "NotAllowedError"],
    ["midi-refused", "SecurityError"],
    ["midi-failed", "InvalidStateError"],
    ["midi-failed", "AbortError"],
    ["midi-failed", "NotSupportedError"],
  ])("says in one sentence, code %s, what %s means", async (code, name) => {
    const requestMIDIAccess = () => Promise.reject(new DOMException("no", name));
    vi.stubGlobal("navigator", { requestMIDIAccess });
    expectSentence(await openMidi(), code);
  });

  it.each([[undefined], ["no"], [new TypeError("bad")]])(
    "never throws, even where the browser throws at once: %o",
    async (thrown) => {
      const requestMIDIAccess = () => {
        throw thrown;
      };
      vi.stubGlobal("navigator", { requestMIDIAccess });
      const result = await openMidi();
      expect(!result.ok && result.problem.code).toBe("midi-failed");
    },
  );

  it("never asks for more than notes", async () => {
    const requestMIDIAccess = vi.fn(() => Promise.resolve(new StandInAccess()));
    vi.stubGlobal("navigator", { requestMIDIAccess });
    await opened();
    expect(requestMIDIAccess).toHaveBeenCalledWith({ sysex: false });
  });
});

describe("the list of devices", () => {
  it("shows what is connected and tells of what comes and goes, once", async () => {
    const access = new StandInAccess().install();
    const keys = access.plugIn(new StandInInput("in-1", "Stage piano"));
    const ports = await opened();
    const listener = vi.fn();
    const forget = ports.onChange(listener);
    expect(ports.inputs()).toEqual([{ id: "in-1", name: "Stage piano" }]);

    const module = access.plugIn(new StandInOutput("out-1", null));
    expect(ports.outputs()).toEqual([{ id: "out-1", name: "Unnamed device" }]);
    expect(listener).toHaveBeenCalledTimes(1);
    // A port that opens or closes changes nothing in the lists.
    access.tell(module);
    expect(listener).toHaveBeenCalledTimes(1);
    // Some browsers keep what is unplugged among the ports.
    access.unplug(keys);
    expect(ports.inputs()).toEqual([]);
    expect(listener).toHaveBeenCalledTimes(2);

    forget();
    access.plugIn(keys);
    expect(listener).toHaveBeenCalledTimes(2);
  });
});

describe("hearing what is played", () => {
  const heard: PlayedEvent[] = [];
  const kinds = () => heard.map(({ kind }) => kind);
  beforeEach(() => void (heard.length = 0));

  it("completes a chord by itself when its time is up", async () => {
    const keys = new StandInAccess().install().plugIn(new StandInInput("in-1"));
    const ports = await opened();
    ports.hear((event) => heard.push(event));
    const start = performance.now();
    keys.play(on(60));
    await vi.advanceTimersByTimeAsync(30);
    keys.play(on(64));
    await vi.advanceTimersByTimeAsync(40);
    expect(heard).toEqual([]);
    await vi.advanceTimersByTimeAsync(15);
    expect(heard).toMatchObject([{ kind: "chord", at: start / 1000, held: [60, 64] }]);
    keys.play(off(60));
    expect(kinds()).toEqual(["chord", "release"]);
  });

  it("hears devices plugged in later, and lets go of the notes of one that is unplugged", async () => {
    const access = new StandInAccess().install();
    const ports = await opened();
    ports.hear((event) => heard.push(event));
    const keys = access.plugIn(new StandInInput("in-1"));
    keys.play(on(60));
    access.unplug(keys);
    expect(kinds()).toEqual(["note", "release"]);
    access.plugIn(keys);
    keys.play(on(62));
    await vi.advanceTimersByTimeAsync(100);
    expect(kinds()).toEqual(["note", "release", "note"]);
  });

  it("hears one device only where one is asked for", async () => {
    const access = new StandInAccess().install();
    const [first, second] = ["in-1", "in-2"].map((id) => access.plugIn(new StandInInput(id)));
    const ports = await opened();
    ports.hear((event) => heard.push(event), { inputId: "in-2" });
    first!.play(on(60));
    second!.play(on(62));
    await vi.advanceTimersByTimeAsync(100);
    expect(heard).toMatchObject([{ kind: "note", note: { midi: 62 } }]);
  });

  it("releases what is held as it stops, and is deaf afterwards", async () => {
    const keys = new StandInAccess().install().plugIn(new StandInInput("in-1"));
    const ports = await opened();
    const stop = ports.hear((event) => heard.push(event));
    keys.play(on(60));
    stop();
    expect(kinds()).toEqual(["note", "release"]);
    keys.play(on(62));
    await vi.advanceTimersByTimeAsync(1000);
    expect(heard).toHaveLength(2);
  });

  it("says which device another program keeps to itself", async () => {
    const keys = new StandInAccess().install().plugIn(new StandInInput("in-1", "Stage piano"));
    keys.isBusy = true;
    const problems: Problem[] = [];
    const ports = await opened();
    ports.hear(() => undefined, { onProblem: (problem) => problems.push(problem) });
    await vi.advanceTimersByTimeAsync(0);
    expect(problems).toMatchObject([
      { code: "midi-busy", message: expect.stringContaining("Stage piano") },
    ]);
  });
});

describe("opening an output", () => {
  it("sends to it, and hands over in silence when it is opened again", async () => {
    const module = new StandInAccess().install().plugIn(new StandInOutput("out-1"));
    const ports = await opened();
    const first = await ports.openSender("out-1", trumpet);
    if (first.ok) first.value.sound(highD);
    expect(module.hanging()).toEqual(["1 74"]);
    await ports.openSender("out-1", trumpet);
    expect(module.hanging()).toEqual([]);
    expect(first.ok && first.value.sound(highD).ok).toBe(false);
  });

  it("says that a device is gone or taken", async () => {
    const access = new StandInAccess().install();
    const module = access.plugIn(new StandInOutput("out-1"));
    module.isBusy = true;
    const ports = await opened();
    const code = async (id: string) => {
      const result = await ports.openSender(id, trumpet);
      return !result.ok && result.problem.code;
    };
    expect(await code("out-1")).toBe("midi-busy");
    expect(await code("out-2")).toBe("midi-disconnected");
    access.unplug(module);
    expect(await code("out-1")).toBe("midi-disconnected");
  });

  it("silences it when the page goes away", async () => {
    const page = new EventTarget();
    vi.stubGlobal("addEventListener", page.addEventListener.bind(page));
    vi.stubGlobal("removeEventListener", page.removeEventListener.bind(page));
    const module = new StandInAccess().install().plugIn(new StandInOutput("out-1"));
    const sender = await (await opened()).openSender("out-1", trumpet);
    if (sender.ok) sender.value.sound(highD);
    page.dispatchEvent(new Event("pagehide"));
    expect(module.sent.some(([status]) => status === 0x90)).toBe(true);
    expect(module.hanging()).toEqual([]);
  });

  it("silences and closes everything at the end, the last message before the closing", async () => {
    const access = new StandInAccess().install();
    const keys = access.plugIn(new StandInInput("in-1"));
    const module = access.plugIn(new StandInOutput("out-1"));
    const ports = await opened();
    const heard: string[] = [];
    ports.hear(({ kind }) => heard.push(kind));
    const sender = await ports.openSender("out-1", trumpet);
    if (sender.ok) sender.value.sound(highD);
    keys.play(on(60));
    ports.dispose();
    expect(heard).toEqual(["note", "release"]);
    expect(module.hanging()).toEqual([]);
    expect([keys.connection, module.connection]).toEqual(["open", "open"]);
    await vi.advanceTimersByTimeAsync(200);
    expect([keys.connection, module.connection]).toEqual(["closed", "closed"]);
    expect((await ports.openSender("out-1", trumpet)).ok).toBe(false);
  });
});
