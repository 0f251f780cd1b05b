import type { Count } from "../base/index.ts";
import { far, type AssignmentNetwork } from "./assignment-network.ts";
import { AssignmentPrices } from "./assignment-prices.ts";

/**
 * Turns a cheapest assignment into the first in order among the equally cheap: player by player in
 * their order the highest note that some cheapest assignment gives, resting last. A player moves up
 * when a chain of moves that cost nothing at the settled prices leads back to the place left.
 */
export class FirstInOrder {
  private readonly network: AssignmentNetwork;
  private readonly prices: AssignmentPrices;
  private readonly isFixed: Uint8Array;
  /** Where a chain came from, by place, and the player who moved; −1: a count changed. */
  private readonly cameFrom: Int32Array;
  private readonly movedBy: Int32Array;
  private readonly isSeen: Uint8Array;
  private readonly waiting: Int32Array;
  private waits: Count = 0;

  /** @param network - who is where; changed by `settle` */
  constructor(network: AssignmentNetwork) {
    this.network = network;
    this.prices = new AssignmentPrices(network);
    const places = this.prices.price.length;
    this.isFixed = new Uint8Array(network.players);
    this.cameFrom = new Int32Array(places);
    this.movedBy = new Int32Array(places);
    this.isSeen = new Uint8Array(places);
    this.waiting = new Int32Array(places);
  }

  /** Rearranges the players of the network, whose assignment must be a cheapest one. */
  settle(): void {
    const { network, isFixed } = this;
    this.prices.settle();
    isFixed.fill(0);
    for (let p = 0; p < network.players; p++) {
      isFixed[p] = 1;
      if (network.place[p] !== 0 && network.heldTo[p]! < 0) this.moveUp(p);
    }
  }

  private moveUp(p: Count): void {
    const { network, prices, isSeen } = this;
    const { width, cost, place } = network;
    const { price, firstRest } = prices;
    const s = network.sectionOf[p]!;
    const a = place[p]!;
    const row = p * width;
    const left = a < 0 ? firstRest + s : s * width + a;
    const base = price[left]! - (a < 0 ? 0 : cost[row + a]!);
    const end = a < 0 ? width : a;
    let isFirstTry = true;
    for (let j = 0; j < end; j++) {
      const to = s * width + j;
      if (cost[row + j] === far || base + cost[row + j]! !== price[to]!) continue;
      if (isFirstTry) isSeen.fill(0);
      isFirstTry = false;
      if (isSeen[to] === 1 || !this.reaches(to, left)) continue;
      this.follow(to, left);
      place[p] = j;
      return;
    }
  }

  /** Looks for a chain of moves without cost; places seen in vain stay seen. */
  private reaches(from: Count, target: Count): boolean {
    const { network, prices, waiting, isSeen } = this;
    const { firstNote, firstRest, allResting, out } = prices;
    this.waits = 0;
    this.see(from, -1, -1);
    while (this.waits > 0 && isSeen[target] === 0) {
      const at = waiting[--this.waits]!;
      if (at < firstNote) this.goOnFromSection(at);
      else if (at < firstRest) this.goOnFromNote(at);
      else if (at < allResting) this.goOnFromRest(at);
      else if (at === allResting) this.goOnFromAllResting();
      else
        for (let j = 0; j < network.width; j++)
          if (network.onNote[j]! > 0) this.step(out, -network.noteDown[j]!, firstNote + j, -1);
    }
    return isSeen[target] === 1;
  }

  private see(place: Count, from: Count, player: Count): void {
    this.isSeen[place] = 1;
    this.cameFrom[place] = from;
    this.movedBy[place] = player;
    this.waiting[this.waits++] = place;
  }

  private step(from: Count, cost: Count, to: Count, player: Count): void {
    const { price } = this.prices;
    if (this.isSeen[to] === 0 && price[from]! + cost === price[to]!) this.see(to, from, player);
  }

  /** One player too many of a section on a note: the note takes it, or somebody leaves. */
  private goOnFromSection(at: Count): void {
    const { network, prices, isFixed } = this;
    const { width, cost, place, sectionOf, players } = network;
    const j = at % width;
    const s = (at - j) / width;
    this.step(at, network.sectionUp[at]!, prices.firstNote + j, -1);
    for (let p = 0; p < players; p++) {
      if (place[p] !== j || sectionOf[p] !== s || isFixed[p] === 1) continue;
      const back = -cost[p * width + j]!;
      for (let to = 0; to < width; to++) {
        const c = cost[p * width + to]!;
        if (c !== far && to !== j) this.step(at, back + c, s * width + to, p);
      }
      this.step(at, back, prices.firstRest + s, p);
    }
  }

  private goOnFromNote(at: Count): void {
    const { network, prices } = this;
    const j = at - prices.firstNote;
    for (let node = j, s = 0; s < network.sections; s++, node += network.width)
      if (network.inSection[node]! > 0) this.step(at, -network.sectionDown[node]!, node, -1);
    this.step(at, network.noteUp[j]!, prices.out, -1);
  }

  /** One player of a section too many at rest: somebody enters, or the section sounds with fewer. */
  private goOnFromRest(at: Count): void {
    const { network, prices, isFixed } = this;
    const { width, cost, place, sectionOf, players } = network;
    const s = at - prices.firstRest;
    if (network.mayShrink(s)) this.step(at, 0, prices.allResting, -1);
    for (let p = 0; p < players; p++) {
      if (place[p]! >= 0 || sectionOf[p] !== s || isFixed[p] === 1) continue;
      for (let to = 0; to < width; to++) {
        const c = cost[p * width + to]!;
        if (c !== far) this.step(at, c, s * width + to, p);
      }
    }
  }

  private goOnFromAllResting(): void {
    const { network, prices } = this;
    for (let s = 0; s < network.sections; s++) {
      const start = network.startCost(s);
      if (start !== far) this.step(prices.allResting, start, prices.firstRest + s, -1);
    }
  }

  /** Makes the moves of the chain that was found, from its end back to its start. */
  private follow(start: Count, target: Count): void {
    const { network, prices, cameFrom, movedBy } = this;
    const { firstNote, firstRest, allResting, out } = prices;
    const { width, place, sectionSize } = network;
    for (let to = target; to !== start; to = cameFrom[to]!) {
      const from = cameFrom[to]!;
      const p = movedBy[to]!;
      if (p >= 0) place[p] = to >= firstRest ? -1 : to % width;
      else if (to === allResting)
        sectionSize[from - firstRest] = sectionSize[from - firstRest]! - 1;
      else if (from === allResting) sectionSize[to - firstRest] = sectionSize[to - firstRest]! + 1;
      else if (from < firstNote) network.countInSection(Math.floor(from / width), from % width, 1);
      else if (to < firstNote) network.countInSection(Math.floor(to / width), to % width, -1);
      else if (to === out) network.countOnNote(from - firstNote, 1);
      else network.countOnNote(to - firstNote, -1);
    }
  }
}
