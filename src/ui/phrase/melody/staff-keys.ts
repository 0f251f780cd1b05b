import type { KeyboardEvent } from "react";
import { entry, type Value } from "./entry-state.ts";
import {
  alter,
  chooseLength,
  cursorToEnd,
  enterLetter,
  enterRest,
  enterTie,
  removeNote,
  stepCursor,
  stepOctave,
  stepPitch,
} from "./entry-moves.ts";

/** Length keys: the figure is the share of a whole note; 6 stands for sixteenths. */
const lengths: Readonly<Record<string, Value>> = Object.freeze({
  "1": 1,
  "2": 2,
  "4": 4,
  "8": 8,
  "6": 16,
});

const plain: Readonly<Record<string, () => void>> = Object.freeze({
  ArrowLeft: () => stepCursor(-1),
  ArrowRight: () => stepCursor(1),
  ArrowUp: () => stepPitch(1),
  ArrowDown: () => stepPitch(-1),
  PageUp: () => stepOctave(1),
  PageDown: () => stepOctave(-1),
  Home: () => cursorToEnd(-1),
  End: () => cursorToEnd(1),
  Delete: () => removeNote(false),
  Backspace: () => removeNote(true),
  "+": () => alter(1),
  "#": () => alter(1),
  "-": () => alter(-1),
  "=": () => alter(0),
  ".": () => chooseLength({ isDotted: !entry.getState().isDotted }),
  "3": () => chooseLength({ isTriplet: !entry.getState().isTriplet, isDotted: false }),
  r: enterRest,
  t: enterTie,
  h: () => entry.setState(({ at }) => ({ chordAt: at })),
});

/**
 * Does what a key means on the staff.
 * @param event - the key pressed
 * @returns whether it meant something
 */
export function staffKey({ key, ctrlKey, metaKey, altKey, shiftKey }: KeyboardEvent): boolean {
  if (ctrlKey || metaKey || altKey) return false;
  const value = lengths[key];
  if (value !== undefined) return done(() => chooseLength({ value, isDotted: false }));
  if (shiftKey && key === "ArrowUp") return done(() => stepOctave(1));
  if (shiftKey && key === "ArrowDown") return done(() => stepOctave(-1));
  const small = key.length === 1 ? key.toLowerCase() : key;
  if (/^[a-g]$/.test(small)) return done(() => enterLetter(small.toUpperCase()));
  const action = plain[small];
  return action !== undefined && done(action);
}

function done(action: () => void): true {
  action();
  return true;
}
