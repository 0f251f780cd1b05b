import { cannot, type Instance } from "./instance-types.ts";

/**
 * Cost and chair order in one whole number: cost · chairScale + chair cost. The chair cost
 * (chair · (12 − depth), summed) stays far below the scale for up to 24 players.
 */
export const chairScale = 4096;
const chairDepth = 12;
/** Reward that makes every needed unit of flow come first; larger than any real cost. */
const must = 1 << 24;
const far = 0x3fffffff;

/** What an assignment must respect beside costs. Positions count from the top of the stack. */
export interface AssignmentLimits {
  /** For each section the set of positions its players may take, bit = position. */
  readonly allowed: Int32Array | null;
  /** True: every allowed position of a section must have a player of that section. */
  readonly mustFillAllowed: boolean;
  /** Most players of each section. */
  readonly mostOfSection: Int32Array | null;
  /** For each section 1 when it must sound. */
  readonly sectionMustSound: Int32Array | null;
}

/** No limits: anyone anywhere. */
export const freeAssignment: AssignmentLimits = Object.freeze({
  allowed: null,
  mustFillAllowed: false,
  mostOfSection: null,
  sectionMustSound: null,
});

/** Gives players to the notes of a stack at least cost, for every number of players at once. */
export interface Assigner {
  /**
   * Solves one stack.
   * @param stack - candidate indices, highest note first
   * @param notes - how many of them count
   * @param limits - what else must hold
   * @param most - players to stop at
   * @returns nothing; read `values`
   */
  solve(stack: Int32Array, notes: number, limits: AssignmentLimits, most: number): void;
  /** Least cost · chairScale + chair cost for k players, index k; `cannot` where impossible. */
  readonly values: Int32Array;
  /**
   * Solves one stack and returns who plays what for exactly k players, the first in order among
   * equals: players in their order, higher notes first, resting last.
   * @returns position in the stack for each player, −1 for rest
   */
  placesFor(
    stack: Int32Array,
    notes: number,
    limits: AssignmentLimits,
    players: number,
  ): Int32Array;
}

/**
 * Makes an assigner for an instance. Successive shortest paths on
 * player → (section, note) → note → out, with rising costs on the last two steps: since these
 * costs rise (are convex) and sections are nested in the whole, the flow of k units is the
 * cheapest way for k players, for every k in one run.
 * @param instance - the question in numbers
 * @param costs - players × candidates
 * @returns the assigner; it reuses its memory, so read results before solving again
 * @source R. K. Ahuja, T. L. Magnanti, J. B. Orlin, Network Flows (1993), chapters 9 and 14
 */
export function createAssigner(instance: Instance, costs: Int32Array): Assigner {
  const players = instance.players.length;
  const candidates = instance.candidates.length;
  const sections = Math.max(1, instance.sectionNames.length);
  const { sectionOf, chairs, heldTo, sharedNoteCost, sharedInSectionCost } = instance;
  const counts = players + 1;
  const size = Math.max(players, 1);
  const cost = new Int32Array(players * size);
  const noteStep = new Int32Array(size * counts);
  const sectionStep = new Int32Array(size * counts);
  const place = new Int32Array(players);
  const inSection = new Int32Array(sections * size);
  const onNote = new Int32Array(size);
  const sectionSize = new Int32Array(sections);
  const toSection = new Int32Array(sections * size);
  const fromSection = new Int32Array(sections * size);
  const toNote = new Int32Array(size);
  const fromNote = new Int32Array(size);
  const values = new Int32Array(players + 1);
  const isFixed = new Uint8Array(players);
  // Cost of one more, and refund of one fewer, kept up to date as players are added.
  const sectionUp = new Int32Array(sections * size);
  const sectionDown = new Int32Array(sections * size);
  const noteUp = new Int32Array(size);
  const isFresh = new Uint8Array(sections * size);
  const isNext = new Uint8Array(sections * size);
  // Nodes of the tie-break: (section, note), notes, the resting players of each section, the
  // resting players of all, out.
  const nodes = sections * size + size + sections + 2;
  const away = new Int32Array(nodes);
  const next = new Int32Array(nodes);
  const by = new Int32Array(nodes);
  const potential = new Int32Array(nodes);
  let notes = 0;
  let limits = freeAssignment;
  let needed = 0;

  function prepare(stack: Int32Array): boolean {
    needed = notes;
    for (let j = 0; j < notes; j++) {
      const c = stack[j]!;
      for (let m = 0; m < counts; m++) {
        noteStep[j * counts + m] = sharedNoteCost[c * counts + m]! * chairScale;
        sectionStep[j * counts + m] = sharedInSectionCost[c * counts + m]! * chairScale;
      }
      noteStep[j * counts] = noteStep[j * counts]! - must;
    }
    for (let p = 0; p < players; p++) {
      const held = heldTo[p]!;
      const allowed = limits.allowed ? limits.allowed[sectionOf[p]!]! : -1;
      let isPlaced = held < 0;
      if (held >= 0) needed++;
      for (let j = 0; j < notes; j++) {
        const c = stack[j]!;
        const plain = costs[p * candidates + c]!;
        const isOpen = plain !== cannot && (held < 0 || held === c) && ((allowed >> j) & 1) === 1;
        if (held === c && isOpen) isPlaced = true;
        const bonus = held >= 0 ? must : 0;
        cost[p * size + j] = isOpen
          ? plain * chairScale + chairs[p]! * (chairDepth - j) - bonus
          : far;
      }
      if (!isPlaced) return false;
    }
    if (limits.sectionMustSound)
      for (let s = 0; s < sections; s++) needed += limits.sectionMustSound[s]!;
    if (limits.mustFillAllowed && limits.allowed)
      for (let s = 0; s < sections; s++)
        for (let j = 0; j < notes; j++) needed += (limits.allowed[s]! >> j) & 1;
    return true;
  }

  function clear(): void {
    place.fill(-1);
    inSection.fill(0);
    onNote.fill(0);
    sectionSize.fill(0);
  }

  function beginSteps(): void {
    for (let j = 0; j < notes; j++) {
      noteUp[j] = noteStep[j * counts]!;
      for (let s = 0; s < sections; s++) {
        sectionUp[s * size + j] = sectionCost(s, j, 0);
        sectionDown[s * size + j] = 0;
      }
    }
  }

  /** Cost of one more player of a section on a note. */
  function sectionCost(s: number, j: number, already: number): number {
    const step = sectionStep[j * counts + already]!;
    const isNeeded =
      already === 0 &&
      limits.mustFillAllowed &&
      limits.allowed !== null &&
      ((limits.allowed[s]! >> j) & 1) === 1;
    return isNeeded ? step - must : step;
  }

  function startCost(s: number): number {
    if (limits.mostOfSection && sectionSize[s]! >= limits.mostOfSection[s]!) return far;
    const mustSound = limits.sectionMustSound !== null && limits.sectionMustSound[s] === 1;
    return mustSound && sectionSize[s] === 0 ? -must : 0;
  }

  function isLastNeeded(s: number): boolean {
    const mustSound = limits.sectionMustSound;
    return mustSound !== null && mustSound[s] === 1 && sectionSize[s] === 1;
  }

  function startFromRest(): void {
    for (let node = 0; node < sections * size; node++) {
      toSection[node] = far;
      isFresh[node] = 0;
      isNext[node] = 0;
    }
    for (let j = 0; j < notes; j++) toNote[j] = far;
    for (let p = 0; p < players; p++) {
      if (place[p]! >= 0) continue;
      const s = sectionOf[p]!;
      const start = startCost(s);
      if (start === far) continue;
      const row = p * size;
      const at = s * size;
      for (let j = 0; j < notes; j++) {
        const c = cost[row + j]!;
        if (c !== far && c + start < toSection[at + j]!) {
          toSection[at + j] = c + start;
          fromSection[at + j] = p;
          isFresh[at + j] = 1;
        }
      }
    }
  }

  /** Passes on what newly reached a player's note: that player moves over and makes room. */
  function relaxPlayers(): boolean {
    let changed = false;
    for (let p = 0; p < players; p++) {
      const a = place[p]!;
      if (a < 0) continue;
      const at = sectionOf[p]! * size;
      if (isFresh[at + a] === 0) continue;
      const row = p * size;
      const base = toSection[at + a]! - cost[row + a]!;
      for (let j = 0; j < notes; j++) {
        const c = cost[row + j]!;
        if (c !== far && base + c < toSection[at + j]!) {
          toSection[at + j] = base + c;
          fromSection[at + j] = p;
          isNext[at + j] = 1;
          changed = true;
        }
      }
    }
    return changed;
  }

  /** Passes on what reached (section, note) to the note and to the other sections there. */
  function relaxNotes(): boolean {
    let changed = false;
    for (let j = 0; j < notes; j++) {
      let best = toNote[j]!;
      let isBetter = false;
      for (let node = j, s = 0; s < sections; s++, node += size) {
        const reached = toSection[node]!;
        if (reached === far) continue;
        const through = reached + sectionUp[node]!;
        if (through < best) {
          best = through;
          fromNote[j] = s;
          isBetter = true;
        }
      }
      if (!isBetter) continue;
      toNote[j] = best;
      if (onNote[j] === 0) continue;
      for (let node = j, s = 0; s < sections; s++, node += size) {
        if (inSection[node] === 0) continue;
        const through = best - sectionDown[node]!;
        if (through < toSection[node]!) {
          toSection[node] = through;
          fromSection[node] = -1;
          isNext[node] = 1;
          changed = true;
        }
      }
    }
    return changed;
  }

  /** Only nodes reached in the last round are worth passing on from. */
  function turnRound(): void {
    for (let node = 0; node < sections * size; node++) {
      isFresh[node] = isNext[node]!;
      isNext[node] = 0;
    }
  }

  function countInSection(s: number, j: number, change: number): void {
    const node = s * size + j;
    const count = inSection[node]! + change;
    inSection[node] = count;
    sectionUp[node] = sectionCost(s, j, count);
    sectionDown[node] = count === 0 ? 0 : sectionCost(s, j, count - 1);
  }

  function countOnNote(j: number, change: number): void {
    onNote[j] = onNote[j]! + change;
    noteUp[j] = noteStep[j * counts + onNote[j]!]!;
  }

  /** Adds one player by the cheapest chain of moves; returns its cost or `far`. */
  function addPlayer(): number {
    startFromRest();
    for (;;) {
      const byPlayers = relaxPlayers();
      const byNotes = relaxNotes();
      if (!byPlayers && !byNotes) break;
      turnRound();
    }
    let best = far;
    let end = -1;
    for (let j = 0; j < notes; j++) {
      if (toNote[j] === far) continue;
      const through = toNote[j]! + noteUp[j]!;
      if (through < best) {
        best = through;
        end = j;
      }
    }
    if (end < 0) return far;
    countOnNote(end, 1);
    let j = end;
    let s = fromNote[j]!;
    countInSection(s, j, 1);
    for (;;) {
      const p = fromSection[s * size + j]!;
      if (p < 0) {
        countInSection(s, j, -1);
        s = fromNote[j]!;
        countInSection(s, j, 1);
        continue;
      }
      const before = place[p]!;
      place[p] = j;
      if (before < 0) {
        sectionSize[s] = sectionSize[s]! + 1;
        return best;
      }
      j = before;
    }
  }

  function run(stack: Int32Array, most: number): void {
    values.fill(cannot);
    clear();
    if (!prepare(stack)) return;
    beginSteps();
    let total = 0;
    for (let k = 1; k <= most; k++) {
      const step = addPlayer();
      if (step === far) return;
      total += step;
      const real = total + needed * must;
      if (k >= notes && real < must / 2) values[k] = real;
    }
  }

  const restNode = sections * size + size;
  const allRestNode = restNode + sections;
  const outNode = allRestNode + 1;

  function lower(node: number, value: number): boolean {
    if (value >= potential[node]!) return false;
    potential[node] = value;
    return true;
  }

  /** One round of shortest distances from everywhere; they price every move at 0 or more. */
  function relaxPotentials(): boolean {
    let changed = false;
    const noteNode = sections * size;
    for (let p = 0; p < players; p++) {
      const s = sectionOf[p]!;
      const a = place[p]!;
      const row = p * size;
      const from = a < 0 ? restNode + s : s * size + a;
      const base = potential[from]! - (a < 0 ? 0 : cost[row + a]!);
      for (let j = 0; j < notes; j++) {
        const c = cost[row + j]!;
        if (c !== far && j !== a && lower(s * size + j, base + c)) changed = true;
      }
      if (a >= 0 && lower(restNode + s, base)) changed = true;
    }
    for (let s = 0; s < sections; s++) {
      if (!isLastNeeded(s) && sectionSize[s]! > 0)
        if (lower(allRestNode, potential[restNode + s]!)) changed = true;
      const start = startCost(s);
      if (start !== far && lower(restNode + s, potential[allRestNode]! + start)) changed = true;
    }
    for (let j = 0; j < notes; j++) {
      const note = noteNode + j;
      for (let node = j, s = 0; s < sections; s++, node += size) {
        if (lower(note, potential[node]! + sectionUp[node]!)) changed = true;
        if (inSection[node]! > 0 && lower(node, potential[note]! - sectionDown[node]!))
          changed = true;
      }
      const here = onNote[j]!;
      if (lower(outNode, potential[note]! + noteUp[j]!)) changed = true;
      if (here > 0 && lower(note, potential[outNode]! - noteStep[j * counts + here - 1]!))
        changed = true;
    }
    return changed;
  }

  /** Whether a player has a move to a better note that costs nothing at these prices. */
  function mayMoveUp(p: number): boolean {
    const a = place[p]!;
    const at = sectionOf[p]! * size;
    const row = p * size;
    const from = a < 0 ? restNode + sectionOf[p]! : at + a;
    const base = potential[from]! - (a < 0 ? 0 : cost[row + a]!);
    const end = a < 0 ? notes : a;
    for (let j = 0; j < end; j++)
      if (cost[row + j] !== far && base + cost[row + j]! === potential[at + j]!) return true;
    return false;
  }

  function offer(node: number, length: number, to: number, player: number): boolean {
    if (length >= away[node]!) return false;
    away[node] = length;
    next[node] = to;
    by[node] = player;
    return true;
  }

  function relaxTowards(): boolean {
    let changed = false;
    const noteNode = sections * size;
    for (let p = 0; p < players; p++) {
      if (isFixed[p] === 1) continue;
      const s = sectionOf[p]!;
      const a = place[p]!;
      const row = p * size;
      const from = a < 0 ? restNode + s : s * size + a;
      const base = a < 0 ? 0 : -cost[row + a]!;
      for (let j = 0; j < notes; j++) {
        const c = cost[row + j]!;
        if (c === far || j === a) continue;
        const to = s * size + j;
        if (away[to] !== far && offer(from, base + c + away[to]!, to, p)) changed = true;
      }
      if (a >= 0 && away[restNode + s] !== far)
        if (offer(from, base + away[restNode + s]!, restNode + s, p)) changed = true;
    }
    for (let s = 0; s < sections; s++) {
      const rest = restNode + s;
      if (!isLastNeeded(s) && sectionSize[s]! > 0 && away[allRestNode] !== far)
        if (offer(rest, away[allRestNode]!, allRestNode, -1)) changed = true;
      const start = startCost(s);
      if (start !== far && away[rest] !== far)
        if (offer(allRestNode, away[rest]! + start, rest, -1)) changed = true;
    }
    for (let j = 0; j < notes; j++) {
      const note = noteNode + j;
      for (let node = j, s = 0; s < sections; s++, node += size) {
        if (away[note] !== far && offer(node, sectionUp[node]! + away[note]!, note, -1))
          changed = true;
        if (inSection[node]! > 0 && away[node] !== far)
          if (offer(note, away[node]! - sectionDown[node]!, node, -1)) changed = true;
      }
      const here = onNote[j]!;
      if (away[outNode] !== far)
        if (offer(note, noteUp[j]! + away[outNode]!, outNode, -1)) changed = true;
      if (here > 0 && away[note] !== far)
        if (offer(outNode, away[note]! - noteStep[j * counts + here - 1]!, note, -1))
          changed = true;
    }
    return changed;
  }

  /** Follows the chain of moves found by relaxTowards from (section, note) to the target. */
  function followMoves(from: number, target: number): void {
    const noteNode = sections * size;
    let node = from;
    while (node !== target) {
      const to = next[node]!;
      const p = by[node]!;
      if (p >= 0) place[p] = to >= restNode ? -1 : to % size;
      else if (to === allRestNode) sectionSize[node - restNode] = sectionSize[node - restNode]! - 1;
      else if (node === allRestNode) sectionSize[to - restNode] = sectionSize[to - restNode]! + 1;
      else if (node < noteNode) countInSection(Math.floor(node / size), node % size, 1);
      else if (to < noteNode) countInSection(Math.floor(to / size), to % size, -1);
      else if (to === outNode) countOnNote(node - noteNode, 1);
      else countOnNote(to - noteNode, -1);
      node = to;
    }
  }

  /** Among equally cheap assignments takes the first in order, one player after the other. */
  function takeFirstInOrder(): void {
    isFixed.fill(0);
    potential.fill(0);
    for (let round = 0; relaxPotentials(); round++)
      if (round > nodes) throw new RangeError("the assignment is not the cheapest");
    for (let p = 0; p < players; p++) {
      isFixed[p] = 1;
      const a = place[p]!;
      if (a === 0 || heldTo[p]! >= 0) continue;
      const s = sectionOf[p]!;
      if (!mayMoveUp(p)) continue;
      const target = a < 0 ? restNode + s : s * size + a;
      away.fill(far);
      away[target] = 0;
      let goesOn = true;
      while (goesOn) goesOn = relaxTowards();
      const base = a < 0 ? 0 : -cost[p * size + a]!;
      const end = a < 0 ? notes : a;
      for (let j = 0; j < end; j++) {
        const c = cost[p * size + j]!;
        const rest = away[s * size + j]!;
        if (c === far || rest === far || base + c + rest !== 0) continue;
        followMoves(s * size + j, target);
        place[p] = j;
        break;
      }
    }
  }

  return {
    values,
    solve(stack, count, within, most) {
      notes = count;
      limits = within;
      run(stack, most);
    },
    placesFor(stack, count, within, most) {
      notes = count;
      limits = within;
      run(stack, most);
      takeFirstInOrder();
      return place.slice();
    },
  };
}
