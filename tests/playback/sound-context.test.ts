import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { startContext } from "../../src/playback/sound-context.ts";

/** A context as browsers hold it back: resuming never settles without permission. */
function heldBack(mayStart: boolean): AudioContext {
  const context = {
    state: "suspended",
    resume: () => {
      if (!mayStart) return new Promise(() => undefined);
      context.state = "running";
      return Promise.resolve();
    },
  };
  return context as unknown as AudioContext;
}

beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal("navigator", { userActivation: { hasBeenActive: false } });
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

// HTML Standard, user activation; Web Audio API 1.1, autoplay policy of AudioContext.resume.
describe("starting the sound", () => {
  it("says in one sentence that the browser waits for a gesture", async () => {
    const started = startContext(heldBack(false));
    await vi.runAllTimersAsync();
    const result = await started;
    expect(!result.ok && result.problem.code).toBe("sound-blocked");
    expect(!result.ok && result.problem.message).toMatch(/click or press a key .* play again\.$/);
  });

  it("works as soon as it may", async () => {
    expect((await startContext(heldBack(true))).ok).toBe(true);
  });

  it("waits longer for a slow machine when there was a gesture", async () => {
    vi.stubGlobal("navigator", { userActivation: { hasBeenActive: true } });
    let settled = false;
    void startContext(heldBack(false)).then(() => (settled = true));
    await vi.advanceTimersByTimeAsync(500);
    expect(settled).toBe(false);
    await vi.advanceTimersByTimeAsync(600);
    expect(settled).toBe(true);
  });
});
