/**
 * The listening examples of the README. Source: our own synthesis of our own answers to one
 * question, F13 under D5 for a big band at f; nothing recorded, nothing by others.
 */
import type { Manner } from "../audio/index.ts";
import type { LayerId } from "../voicing/index.ts";

/** One listening example. */
export interface SampleRow {
  /** Name of the file without its ending. */
  readonly name: string;
  /** `by the book`: the first by-section construction; else the best of a layer. */
  readonly voicing: "by the book" | LayerId;
  /** Distinct notes, where the best of a layer is asked for. */
  readonly notes?: number;
  readonly manner: Manner;
  readonly seconds: number;
}

/** In the order in which they are best heard. */
export const sampleTable: readonly SampleRow[] = Object.freeze([
  { name: "f13-by-the-book", voicing: "by the book", manner: "sustained", seconds: 2 },
  { name: "f13-crossed", voicing: "crossed", notes: 7, manner: "sustained", seconds: 2 },
  { name: "f13-free-rolled", voicing: "free", notes: 6, manner: "rolled-from-bottom", seconds: 3 },
]);
