import { Inflate } from "fflate";
import type { Count } from "../base/index.ts";

/** Packed bytes taken at a time: one step gives at most about four million bytes. */
const STEP: Count = 4096;

/** What came out of packed bytes. */
export type Inflated =
  | { readonly ok: true; readonly bytes: Uint8Array }
  | { readonly ok: false; readonly why: "damaged" | "too-large" };

/**
 * Unpacks deflated bytes and stops as soon as more comes out than allowed.
 * @param packed - raw deflate data
 * @param most - most bytes that may come out
 * @returns the bytes, or why there are none
 * @source IETF RFC 1951, DEFLATE
 */
export function inflateBounded(packed: Uint8Array, most: Count): Inflated {
  const pieces: Uint8Array[] = [];
  let size = 0;
  let isDone = false;
  const stream = new Inflate((piece, isFinal) => {
    size += piece.length;
    if (size <= most) pieces.push(piece);
    isDone ||= isFinal;
  });
  try {
    for (let at = 0; at < packed.length && size <= most; at += STEP)
      stream.push(packed.subarray(at, at + STEP), at + STEP >= packed.length);
  } catch {
    return { ok: false, why: size > most ? "too-large" : "damaged" };
  }
  if (size > most) return { ok: false, why: "too-large" };
  return isDone ? { ok: true, bytes: joined(pieces, size) } : { ok: false, why: "damaged" };
}

function joined(pieces: readonly Uint8Array[], size: Count): Uint8Array {
  const whole = new Uint8Array(size);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
