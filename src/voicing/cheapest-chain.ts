import type { Count } from "../base/index.ts";
import { far, type AssignmentNetwork } from "./assignment-network.ts";

/**
 * Adds players one by one, each by the cheapest chain of moves: somebody who rests takes a note,
 * who was there makes room, and so on. Where sections have a least or a most, somebody may also go
 * to rest for another of the section to enter. Shortest paths by rounds over what was newly reached;
 * sets of notes are bits, so a stack may have up to 31 notes.
 * @source R. K. Ahuja, T. L. Magnanti, J. B. Orlin, Network Flows (1993), chapter 9 (successive
 *   shortest paths)
 */
export class CheapestChain {
  private readonly network: AssignmentNetwork;
  /** Least cost to bring one more player to (section, note), and who moves there; −1: the note. */
  private readonly toSection: Int32Array;
  private readonly fromSection: Int32Array;
  /** The same to the note, and the section it comes through. */
  private readonly toNote: Int32Array;
  private readonly fromNote: Int32Array;
  /** Least cost to have one more of a section at rest, and who goes there; −1: it starts so. */
  private readonly toRest: Int32Array;
  private readonly fromRest: Int32Array;
  /** Notes of each section reached in the last round and in this one. */
  private readonly fresh: Int32Array;
  private readonly next: Int32Array;

  /** @param network - who is where; changed by each added player */
  constructor(network: AssignmentNetwork) {
    const { players, sections } = network;
    const nodes = sections * Math.max(1, players);
    this.network = network;
    this.toSection = new Int32Array(nodes);
    this.fromSection = new Int32Array(nodes);
    this.toNote = new Int32Array(Math.max(1, players));
    this.fromNote = new Int32Array(Math.max(1, players));
    this.toRest = new Int32Array(sections);
    this.fromRest = new Int32Array(sections);
    this.fresh = new Int32Array(sections);
    this.next = new Int32Array(sections);
  }

  /**
   * Adds one player.
   * @returns what that costs, or `far` when nobody can be added
   */
  add(): Count {
    this.startFromRest();
    for (let goesOn = true; goesOn;) {
      const byPlayers = this.passOnByPlayers();
      const byRest = this.network.hasBoundSections && this.passOnByRest();
      const byNotes = this.passOnByNotes();
      goesOn = byPlayers || byRest || byNotes;
      this.turnRound();
    }
    const end = this.cheapestEnd();
    if (end < 0) return far;
    const cost = this.toNote[end]! + this.network.noteUp[end]!;
    this.move(end);
    return cost;
  }

  private startFromRest(): void {
    const { network, toSection, toNote, toRest, fromRest, fresh, next } = this;
    const { sections, width } = network;
    for (let node = 0; node < sections * width; node++) toSection[node] = far;
    for (let j = 0; j < width; j++) toNote[j] = far;
    for (let s = 0; s < sections; s++) {
      toRest[s] = network.startCost(s);
      fromRest[s] = -1;
      next[s] = 0;
    }
    for (let s = 0; s < sections; s++) if (toRest[s] !== far) this.enter(s);
    fresh.set(next);
    next.fill(0);
  }

  /** Those of a section who rest may take any note. */
  private enter(s: Count): void {
    const { network, toSection, fromSection, next } = this;
    const { players, width, cost, place, sectionOf } = network;
    const start = this.toRest[s]!;
    const at = s * width;
    let reached = next[s]!;
    for (let p = 0; p < players; p++) {
      if (place[p]! >= 0 || sectionOf[p] !== s) continue;
      const row = p * width;
      for (let j = 0; j < width; j++) {
        const c = cost[row + j]!;
        if (c === far || c + start >= toSection[at + j]!) continue;
        toSection[at + j] = c + start;
        fromSection[at + j] = p;
        reached |= 1 << j;
      }
    }
    next[s] = reached;
  }

  /** Whoever was newly reached may go to rest instead, for another of the section to enter. */
  private passOnByRest(): boolean {
    const { network, toSection, toRest, fromRest, fresh } = this;
    const { players, width, cost, place, sectionOf, sections } = network;
    let better = 0;
    for (let p = 0; p < players; p++) {
      const a = place[p]!;
      const s = sectionOf[p]!;
      if (a < 0 || ((fresh[s]! >> a) & 1) === 0) continue;
      const resting = toSection[s * width + a]! - cost[p * width + a]!;
      if (resting >= toRest[s]!) continue;
      toRest[s] = resting;
      fromRest[s] = p;
      better |= 1 << s;
    }
    for (let s = 0; s < sections; s++) if (((better >> s) & 1) === 1) this.enter(s);
    return better !== 0;
  }

  /** Passes on what newly reached a player's note: that player moves over and makes room. */
  private passOnByPlayers(): boolean {
    const { toSection, fromSection, fresh, next } = this;
    const { players, width, cost, place, sectionOf } = this.network;
    let changed = false;
    for (let p = 0; p < players; p++) {
      const a = place[p]!;
      const s = sectionOf[p]!;
      if (a < 0 || ((fresh[s]! >> a) & 1) === 0) continue;
      const at = s * width;
      const row = p * width;
      const base = toSection[at + a]! - cost[row + a]!;
      for (let j = 0; j < width; j++) {
        const c = cost[row + j]!;
        if (c === far || base + c >= toSection[at + j]!) continue;
        toSection[at + j] = base + c;
        fromSection[at + j] = p;
        next[s] = next[s]! | (1 << j);
        changed = true;
      }
    }
    return changed;
  }

  /** Passes on what reached (section, note) to the note and to the other sections there. */
  private passOnByNotes(): boolean {
    const { toSection, toNote, fromNote, fresh, next } = this;
    const { sections, width, sectionUp, onNote } = this.network;
    let reached = 0;
    for (let s = 0; s < sections; s++) reached |= fresh[s]! | next[s]!;
    let changed = false;
    for (; reached !== 0; reached &= reached - 1) {
      const j = 31 - Math.clz32(reached & -reached);
      let best = toNote[j]!;
      let isBetter = false;
      for (let node = j, s = 0; s < sections; s++, node += width) {
        const here = toSection[node]!;
        if (here === far || here + sectionUp[node]! >= best) continue;
        best = here + sectionUp[node]!;
        fromNote[j] = s;
        isBetter = true;
      }
      if (!isBetter) continue;
      toNote[j] = best;
      if (onNote[j]! > 0 && this.passOnToSections(j, best)) changed = true;
    }
    return changed;
  }

  private passOnToSections(j: Count, reached: Count): boolean {
    const { toSection, fromSection, next } = this;
    const { sections, width, sectionDown, inSection } = this.network;
    let changed = false;
    for (let node = j, s = 0; s < sections; s++, node += width) {
      if (inSection[node] === 0) continue;
      const through = reached - sectionDown[node]!;
      if (through >= toSection[node]!) continue;
      toSection[node] = through;
      fromSection[node] = -1;
      next[s] = next[s]! | (1 << j);
      changed = true;
    }
    return changed;
  }

  /** Only what was reached in the last round is worth passing on. */
  private turnRound(): void {
    const { fresh, next } = this;
    for (let s = 0; s < fresh.length; s++) {
      fresh[s] = next[s]!;
      next[s] = 0;
    }
  }

  private cheapestEnd(): Count {
    const { toNote, network } = this;
    const { width, noteUp } = network;
    let best = far;
    let end = -1;
    for (let j = 0; j < width; j++) {
      if (toNote[j] === far || toNote[j]! + noteUp[j]! >= best) continue;
      best = toNote[j]! + noteUp[j]!;
      end = j;
    }
    return end;
  }

  /** Makes the moves of the chain that ends on a note, from there back to the one who rested. */
  private move(end: Count): void {
    const { network, fromSection, fromNote, fromRest } = this;
    const { place, width, sectionSize } = network;
    let j = end;
    let s = fromNote[j]!;
    network.countOnNote(j, 1);
    network.countInSection(s, j, 1);
    for (;;) {
      const p = fromSection[s * width + j]!;
      if (p < 0) {
        network.countInSection(s, j, -1);
        s = fromNote[j]!;
        network.countInSection(s, j, 1);
        continue;
      }
      const before = place[p]!;
      place[p] = j;
      if (before >= 0) {
        j = before;
        continue;
      }
      const leaving = fromRest[s]!;
      if (leaving < 0) {
        sectionSize[s] = sectionSize[s]! + 1;
        return;
      }
      j = place[leaving]!;
      place[leaving] = -1;
    }
  }
}
