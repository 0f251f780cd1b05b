import type { Page } from "playwright-core";

declare global {
  interface Window {
    /** The stand-in MIDI system; put in place by `plugIn`. */
    standIn?: { readonly sent: number[][]; readonly play: (bytes: number[]) => void };
  }
}

/**
 * Gives the page a MIDI keyboard and a MIDI output that do not exist.
 * @param page - before it is opened or loaded again
 * @param answer - what the browser answers when asked for MIDI
 */
export async function plugIn(page: Page, answer: "yes" | "refused" | "absent"): Promise<void> {
  await page.addInitScript((how) => {
    const sent: number[][] = [];
    class Port extends EventTarget {
      readonly state = "connected";
      constructor(
        readonly id: string,
        readonly name: string,
      ) {
        super();
      }
      open = () => Promise.resolve(this);
      close = () => Promise.resolve(this);
      send = (bytes: Iterable<number>) => void sent.push([...bytes]);
    }
    const keyboard = new Port("in", "Test keyboard");
    const output = new Port("out", "Test output");
    const access = Object.assign(new EventTarget(), {
      inputs: new Map([["in", keyboard]]),
      outputs: new Map([["out", output]]),
    });
    const play = (bytes: number[]) => {
      const event = new Event("midimessage");
      Object.defineProperty(event, "data", { value: new Uint8Array(bytes) });
      keyboard.dispatchEvent(event);
    };
    window.standIn = { sent, play };
    const ask = () =>
      how === "refused"
        ? Promise.reject(new DOMException("no", "NotAllowedError"))
        : Promise.resolve(access);
    Object.defineProperty(navigator, "requestMIDIAccess", {
      value: how === "absent" ? undefined : ask,
    });
  }, answer);
}

/** Strikes keys together, then lets them go. */
export async function strike(page: Page, ...keys: number[]): Promise<void> {
  await page.evaluate((struck) => {
    for (const key of struck) window.standIn?.play([0x90, key, 90]);
  }, keys);
}

/** Lets keys go. */
export async function release(page: Page, ...keys: number[]): Promise<void> {
  await page.evaluate((struck) => {
    for (const key of struck) window.standIn?.play([0x80, key, 64]);
  }, keys);
}
