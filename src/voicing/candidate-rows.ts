import type { Count } from "../base/index.ts";
import type { Candidates } from "./candidate-types.ts";
import type { Instance } from "./instance-types.ts";
import type { Question } from "./voicing-types.ts";

const firstCapacity = 256;

/** Collects voicings as rows of plain numbers. */
export class CandidateRows {
  count: Count = 0;
  private readonly width: Count;
  private readonly instance: Instance;
  /** Index of the player an octave above the lead, or −1, and that pitch. */
  private readonly above: Count;
  private readonly abovePitch: Count;
  private pitches: Uint8Array;
  private over: Int32Array;
  private texture: Int32Array;

  /**
   * @param question - gives the players of a row
   * @param instance - the same in numbers
   */
  constructor(question: Question, instance: Instance) {
    this.width = question.players.length;
    this.instance = instance;
    this.above = question.players.findIndex(({ id }) => id === question.octaveAbovePlayer);
    this.abovePitch = question.lead + 12;
    this.pitches = new Uint8Array(firstCapacity * this.width);
    this.over = new Int32Array(firstCapacity);
    this.texture = new Int32Array(firstCapacity);
  }

  /**
   * Adds a row.
   * @param stack - candidate indices, highest note first
   * @param places - position in the stack by player of the instance, −1 for rest
   * @param over - cost over the best of its cell
   * @param texture - distance from the texture wanted
   */
  add(stack: Int32Array, places: Int32Array, over: Count, texture: Count): void {
    if (this.count === this.over.length) this.grow();
    const row = this.count * this.width;
    const { questionIndex, candidates } = this.instance;
    for (let p = 0; p < places.length; p++)
      if (places[p]! >= 0) this.pitches[row + questionIndex[p]!] = candidates[stack[places[p]!]!]!;
    if (this.above >= 0) this.pitches[row + this.above] = this.abovePitch;
    this.over[this.count] = over;
    this.texture[this.count] = texture;
    this.count++;
  }

  /** @returns the rows so far, without room to spare */
  finish(): Candidates {
    const { count, width } = this;
    return {
      players: width,
      count,
      pitches: this.pitches.slice(0, count * width),
      over: this.over.slice(0, count),
      texture: this.texture.slice(0, count),
    };
  }

  private grow(): void {
    const size = 2 * this.over.length;
    const pitches = new Uint8Array(size * this.width);
    pitches.set(this.pitches);
    this.pitches = pitches;
    this.over = longer(this.over, size);
    this.texture = longer(this.texture, size);
  }
}

function longer(values: Int32Array, length: number): Int32Array {
  const grown = new Int32Array(length);
  grown.set(values);
  return grown;
}
