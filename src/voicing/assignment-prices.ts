import type { Count } from "../base/index.ts";
import { far, type AssignmentNetwork } from "./assignment-network.ts";

/**
 * Prices of the places of a solved assignment, at which no move gains: from each place to the next
 * a move costs at least the difference of their prices, and exactly that if it belongs to another,
 * equally cheap assignment. Places are numbered: (section, note) as in the network, then the notes,
 * the resting players of each section, all resting players, and out.
 * @source complementary slackness: R. K. Ahuja, T. L. Magnanti, J. B. Orlin, Network Flows (1993),
 *   chapter 9
 */
export class AssignmentPrices {
  /** Price by place. */
  readonly price: Int32Array;
  firstNote: Count = 0;
  firstRest: Count = 0;
  allResting: Count = 0;
  out: Count = 0;
  private readonly network: AssignmentNetwork;

  /** @param network - who is where */
  constructor(network: AssignmentNetwork) {
    const { players, sections } = network;
    const widest = Math.max(1, players);
    this.network = network;
    this.price = new Int32Array(sections * widest + widest + sections + 2);
  }

  /**
   * Prices the places of the network as it stands.
   * @throws RangeError when its assignment is not a cheapest one
   */
  settle(): void {
    const { sections, width } = this.network;
    this.firstNote = sections * width;
    this.firstRest = this.firstNote + width;
    this.allResting = this.firstRest + sections;
    this.out = this.allResting + 1;
    this.price.fill(0);
    for (let round = 0, goesOn = true; goesOn; round++) {
      if (round > this.price.length) throw new RangeError("the assignment is not the cheapest");
      const byPlayers = this.lowerByPlayers();
      const bySections = this.lowerBySections();
      const byNotes = this.lowerByNotes();
      goesOn = byPlayers || bySections || byNotes;
    }
  }

  private lower(place: Count, value: Count): boolean {
    if (value >= this.price[place]!) return false;
    this.price[place] = value;
    return true;
  }

  private lowerByPlayers(): boolean {
    const { price, network, firstRest } = this;
    const { players, width, cost, place, sectionOf } = network;
    let changed = false;
    for (let p = 0; p < players; p++) {
      const s = sectionOf[p]!;
      const a = place[p]!;
      const row = p * width;
      const base = a < 0 ? price[firstRest + s]! : price[s * width + a]! - cost[row + a]!;
      for (let j = 0; j < width; j++) {
        const c = cost[row + j]!;
        if (c !== far && j !== a && this.lower(s * width + j, base + c)) changed = true;
      }
      if (a >= 0 && this.lower(firstRest + s, base)) changed = true;
    }
    return changed;
  }

  private lowerBySections(): boolean {
    const { price, network, firstRest, allResting } = this;
    let changed = false;
    for (let s = 0; s < network.sections; s++) {
      const rest = firstRest + s;
      if (network.mayShrink(s) && this.lower(allResting, price[rest]!)) changed = true;
      const start = network.startCost(s);
      if (start !== far && this.lower(rest, price[allResting]! + start)) changed = true;
    }
    return changed;
  }

  private lowerByNotes(): boolean {
    const { price, network, firstNote, out } = this;
    const { sections, width, sectionUp, sectionDown, inSection, onNote } = network;
    let changed = false;
    for (let j = 0; j < width; j++) {
      const note = firstNote + j;
      for (let node = j, s = 0; s < sections; s++, node += width) {
        if (this.lower(note, price[node]! + sectionUp[node]!)) changed = true;
        if (inSection[node]! > 0 && this.lower(node, price[note]! - sectionDown[node]!))
          changed = true;
      }
      if (this.lower(out, price[note]! + network.noteUp[j]!)) changed = true;
      if (onNote[j]! > 0 && this.lower(note, price[out]! - network.noteDown[j]!)) changed = true;
    }
    return changed;
  }
}
