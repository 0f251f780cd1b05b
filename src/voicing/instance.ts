import { fail, ok, pitchClass, quantity, type Result, type SoundingMidi } from "../base/index.ts";
import { roleOf, type Chord } from "../theory/index.ts";
import {
  canSound,
  costOfHome,
  costOfLevel,
  costOfRegister,
  dynamicClass,
  instrumentOf,
  type Player,
} from "../band/index.ts";
import type { Question } from "./voicing-types.ts";
import type { RoleCode } from "./stack-cost-table.ts";
import {
  bottomNote,
  doubleMinorNinth,
  lowIntervalCost,
  lowTension,
  octaveCopy,
  rootInside,
  tenorZone,
  toneUnderLead,
} from "./stack-cost-table.ts";
import { clusterFrom, gapCosts } from "./gap-cost-table.ts";
import { lowIntervalLimits, lowIntervalTolerance } from "./low-interval-table.ts";
import { marginalCost, sharedInSection, sharedNote } from "./sharing-cost-table.ts";
import { groupsUnderLead } from "./required-groups.ts";
import { addToSet, cannot, type Instance } from "./instance-types.ts";

/** Semitones over the lead that harmony may reach when the lead need not be on top. */
const reachAboveLead = 12;
/** Most players a question may have. */
const mostPlayers = 24;
/** Widest gap between neighbours, and of the lowest pair over a firm bottom. */
const widestGap = 12;
const widestLowestGap = 19;
/** Below this note only bass note, root and fifth may sound. */
const lowestColour = 50;
/** Cost of each semitone above a player's highest zone. */
const beyondZones = 4;

/** Everything about tones that costs and rules ask for, worked out once. */
export interface Harmony {
  readonly chord: Chord;
  readonly lead: number;
  /** Semitones above the root that may sound. */
  readonly ticked: ReadonlySet<number>;
  readonly groups: readonly (readonly number[])[];
  readonly leadIsGuide: boolean;
  readonly remarks: readonly string[];
  /** Semitones above the root of the assumed bass. */
  readonly bass: number;
  readonly role: (midi: number) => RoleCode;
  readonly aboveRoot: (midi: number) => number;
  /** Low-interval tolerance at this dynamic. */
  readonly tolerance: number;
}

/**
 * Works out which tones may sound under this lead and what each of them is.
 * @param question - the question
 * @returns ticked tones, groups, roles and remarks
 */
export function harmonyOf(question: Question): Harmony {
  const { chord } = question;
  const aboveRoot = (midi: number): number => pitchClass(midi - chord.rootPitchClass);
  const bass = pitchClass(chord.bassPitchClass - chord.rootPitchClass);
  const leadTone = aboveRoot(question.lead);
  const conflict = groupsUnderLead(chord, leadTone);
  const ticked = new Set(question.ticked);
  for (const tone of conflict.removed) ticked.delete(tone);
  for (const tone of conflict.added) ticked.add(tone);
  if (chord.hasSlashBass) ticked.add(bass);
  const remarks = [...conflict.remarks];
  const groups = conflict.groups.filter((group) => group.some((tone) => ticked.has(tone)));
  if (groups.length < conflict.groups.length)
    remarks.push("A tone that usually defines this chord is off, so it is not asked for.");
  const replacesThird = conflict.added.includes(5) && conflict.removed.includes(4);
  const replacesSeventh = conflict.added.includes(9) && conflict.removed.includes(11);
  const role = (midi: number): RoleCode => {
    const tone = aboveRoot(midi);
    if (replacesThird && tone === 5) return "3";
    if (replacesSeventh && tone === 9) return "7";
    const known = roleOf(tone, chord);
    if (known !== "X") return known;
    return chord.hasSlashBass && tone === bass ? "R" : ticked.has(tone) ? "T" : "X";
  };
  const tolerance = question.strictLowIntervals
    ? lowIntervalTolerance.strict
    : lowIntervalTolerance[dynamicClass(question.dynamic)];
  return {
    chord,
    lead: question.lead,
    ticked,
    groups,
    leadIsGuide: conflict.leadIsGuide,
    remarks,
    bass,
    role,
    aboveRoot,
    tolerance,
  };
}

/**
 * Semitones by which an interval lies under its low-interval limit.
 * @param lower - MIDI note of the lower note
 * @param interval - semitones
 * @returns 0 or more; 0 for unison, octave and anything wider than a tenth
 */
export function underLimit(lower: number, interval: number): number {
  const limit = lowIntervalLimits.limits[interval] ?? 0;
  return Math.max(0, limit - lower);
}

/** S1 for neighbours. */
export function gapCost(lower: number, gap: number, clusterSetting: boolean): number {
  if (clusterSetting && gap === 1 && lower >= clusterFrom) return 0;
  const row = gapCosts.find((each) => lower >= each.low && lower <= each.high);
  return row?.costs[Math.min(gap, row.costs.length - 1)] ?? 0;
}

/** S3 for the pair at the top. */
export function toneUnderLeadCost(lead: number, shortNote: boolean): number {
  if (shortNote) return 0;
  const steps = Math.floor((lead - toneUnderLead.from) / toneUnderLead.semitonesPerStep);
  return toneUnderLead.base + Math.max(0, steps);
}

/** S6 for a tension; 0 for every other tone. */
export function lowTensionCost(midi: number, role: RoleCode): number {
  if ((role !== "T" && role !== "A") || midi >= lowTension.below) return 0;
  return Math.ceil((lowTension.below - midi) / lowTension.semitonesPerStep);
}

/** S5 for an inner note. */
export function tenorZoneCost(midi: number, role: RoleCode): number {
  return midi >= tenorZone.low && midi <= tenorZone.high ? tenorZone.byRole[role] : 0;
}

/** S7 for an inner note. */
export function rootInsideCost(midi: number, harmony: Harmony): number {
  const isRoot = harmony.role(midi) === "R";
  return isRoot && midi >= rootInside.from && harmony.role(harmony.lead) !== "R"
    ? rootInside.cost
    : 0;
}

/** Highest note of the assumed bass's pitch class below a note. */
export function assumedBassUnder(midi: number, harmony: Harmony): number {
  const down = pitchClass(harmony.aboveRoot(midi) - harmony.bass);
  return midi - (down === 0 ? 12 : down);
}

/** S8: what it costs to have this note at the bottom. */
export function bottomCostOf(midi: number, harmony: Harmony): number {
  const tone = harmony.aboveRoot(midi);
  if (tone === harmony.bass) return bottomNote.bass;
  const role = harmony.role(midi);
  const assumed = assumedBassUnder(midi, harmony);
  const under = bottomNote.perSemitoneUnderLimit * underLimit(assumed, midi - assumed);
  return under + bottomBase(midi, role);
}

function bottomBase(midi: number, role: RoleCode): number {
  if (role === "5") return bottomNote.fifth;
  if (role === "3" || role === "7") return bottomNote.guide;
  if (role === "R") return bottomNote.rootUnderSlash;
  return midi >= bottomNote.highFrom ? bottomNote.highTension : bottomNote.tension;
}

/** S4: cost of each further pitch of this tone's class. */
export function copyCostOf(midi: number, harmony: Harmony): number {
  const role = harmony.role(midi);
  if (pitchClass(midi - harmony.lead) === 0)
    return role === "A" || role === "X" ? octaveCopy.leadClassForeign : octaveCopy.leadClass;
  const isSlashThird =
    harmony.chord.hasSlashBass && role === "3" && harmony.aboveRoot(midi) === harmony.bass;
  return isSlashThird ? octaveCopy.slashThird : octaveCopy.byRole[role];
}

/** N1: cost of one more player on a note. */
export function sharedNoteCostOf(midi: number, already: number, harmony: Harmony): number {
  const role = harmony.role(midi);
  if (already === 0) return 0;
  if (midi === harmony.lead)
    return marginalCost(sharedNote.lead, already) + (role === "X" ? sharedNote.foreignLead : 0);
  if (midi < sharedNote.lowBelow) return marginalCost(sharedNote.low, already);
  const more = role === "R" || role === "A" ? sharedNote.rootOrAltered : 0;
  return marginalCost(sharedNote.other, already) + more;
}

/** N2: the same within one section. */
export function sharedInSectionCostOf(midi: number, already: number, lead: number): number {
  return marginalCost(midi === lead ? sharedInSection.lead : sharedInSection.other, already);
}

/** H6: two notes a minor ninth apart, root under flat ninth on a dominant excepted. */
export function isBadNinth(lower: number, upper: number, harmony: Harmony): boolean {
  if (upper - lower !== 13) return false;
  const isDominant = ["dominant", "altered-dominant", "dominant-suspended"].includes(
    harmony.chord.family,
  );
  return !(isDominant && harmony.aboveRoot(lower) === 0);
}

/** H9: a note that is too low for anything but bass note, root and fifth. */
export function isLowColour(midi: number, harmony: Harmony): boolean {
  if (midi >= lowestColour) return false;
  const role = harmony.role(midi);
  return role !== "R" && role !== "5" && harmony.aboveRoot(midi) !== harmony.bass;
}

/** Whether the lowest pair may be wider than an octave over this bottom note. */
export function isFirmBottom(midi: number, harmony: Harmony): boolean {
  const role = harmony.role(midi);
  return role === "R" || role === "5" || harmony.aboveRoot(midi) === harmony.bass;
}

/** Widest gap allowed between neighbours (H8). */
export function widestGapOver(
  lower: number,
  isLowest: boolean,
  notes: number,
  harmony: Harmony,
): number {
  return isLowest && (notes === 3 || isFirmBottom(lower, harmony)) ? widestLowestGap : widestGap;
}

/** Whether a player may be given a pitch under the rules as they are set (H3). */
export function mayPlay(player: Player, midi: SoundingMidi, question: Question): boolean {
  if (question.rules.H3) return canSound(player, midi);
  const compass = instrumentOf(player.instrument).range;
  return (
    midi >= Math.min(compass.low, player.range.low) &&
    midi <= Math.max(compass.high, player.range.high)
  );
}

/** C1 without the home; above the highest zone, where only a lifted rule H3 leads, it goes on rising. */
export function registerCostOf(player: Player, midi: SoundingMidi, question: Question): number {
  const highest = player.zones[player.zones.length - 1]?.top ?? midi;
  if (midi <= highest) return costOfRegister(player, midi, question.dynamic);
  return costOfRegister(player, highest, question.dynamic) + beyondZones * (midi - highest);
}

function candidatesOf(question: Question, harmony: Harmony, players: readonly Player[]): number[] {
  const top = question.rules.H1 ? question.lead : question.lead + reachAboveLead;
  const found: number[] = [];
  for (let midi = Math.min(127, top); midi >= 0; midi--) {
    const pitch = quantity<SoundingMidi>(midi);
    const isTone = !question.rules.H2 || harmony.ticked.has(harmony.aboveRoot(midi));
    const isLow = question.rules.H9 && isLowColour(midi, harmony);
    const mayBeHere = midi === question.lead || (isTone && !isLow);
    const isUnderLead = question.rules.H7 && midi === question.lead - 1;
    if (mayBeHere && !isUnderLead && players.some((each) => mayPlay(each, pitch, question)))
      found.push(midi);
  }
  return found;
}

function checkPlayers(question: Question): Result<readonly Player[]> {
  const { players } = question;
  if (players.length === 0)
    return fail("line-up-empty", "Nobody is in the line-up: add at least one player.");
  if (players.length > mostPlayers)
    return fail(
      "line-up-too-large",
      `The line-up has ${players.length} players; at most ${mostPlayers} can be voiced at once. Take some out.`,
    );
  for (const player of players)
    if (player.range.low > player.range.high)
      return fail(
        "range-upside-down",
        `The range of ${player.name} is upside down: its lowest note lies above its highest.`,
      );
  return ok(players);
}

/** Players' fixed pitches, by id, from locks and the lead and doubling choices. */
function heldPitches(question: Question): Result<ReadonlyMap<string, number | "rest">> {
  const held = new Map<string, number | "rest">();
  const asks: { readonly id: string; readonly at: number | "rest"; readonly why: string }[] = [
    ...question.locks.map((lock) => ({ id: lock.playerId, at: lock.sounding, why: "fixed" })),
  ];
  if (question.leadPlayer !== undefined)
    asks.push({ id: question.leadPlayer, at: question.lead, why: "asked to lead" });
  if (question.octaveBelowPlayer !== undefined)
    asks.push({
      id: question.octaveBelowPlayer,
      at: question.lead - 12,
      why: "asked to double the lead an octave below",
    });
  for (const ask of asks) {
    const player = question.players.find((each) => each.id === ask.id);
    if (!player)
      return fail("lock-unknown-player", `“${ask.id}” is fixed but is not in the line-up.`);
    const before = held.get(ask.id);
    if (before !== undefined && before !== ask.at)
      return fail(
        "locks-contradict",
        `${player.name} is asked to do two things at once: free one of them.`,
      );
    if (ask.at !== "rest" && !mayPlay(player, quantity(ask.at), question))
      return fail(
        "lock-out-of-range",
        `${player.name} is ${ask.why} on a note outside the player's range.`,
      );
    held.set(ask.id, ask.at);
  }
  return ok(held);
}

/**
 * Turns a question into numbers.
 * @param question - chord, lead, players, rules and wishes
 * @returns the instance, or the problem: nobody in the line-up, too many players, a range upside
 *   down, contradicting locks, a melody nobody can play
 */
export function buildInstance(question: Question): Result<Instance> {
  const checked = checkPlayers(question);
  if (!checked.ok) return checked;
  const held = heldPitches(question);
  if (!held.ok) return held;
  const harmony = harmonyOf(question);
  const taking = question.players
    .map((player, index) => ({ player, index }))
    .filter(
      ({ player }) =>
        held.value.get(player.id) !== "rest" && player.id !== question.octaveAbovePlayer,
    );
  const players = taking.map((each) => each.player);
  if (!players.some((player) => mayPlay(player, question.lead, question)))
    return fail(
      "melody-out-of-reach",
      "Nobody in this line-up can play the melody note: move it, or change the players' ranges.",
    );
  const candidates = candidatesOf(question, harmony, players);
  for (const [id, at] of held.value)
    if (at !== "rest" && !candidates.includes(at))
      return fail(
        "lock-not-in-chord",
        `${question.players.find((each) => each.id === id)?.name ?? id} is fixed to a note that is not ticked for this chord or lies above the melody.`,
      );
  return ok(compile(question, harmony, taking, candidates, held.value));
}

interface Taking {
  readonly player: Player;
  readonly index: number;
}

function compile(
  question: Question,
  harmony: Harmony,
  taking: readonly Taking[],
  candidates: readonly number[],
  held: ReadonlyMap<string, number | "rest">,
): Instance {
  const players = taking.map((each) => each.player);
  const sectionNames = [...new Set(players.map((player) => player.section))];
  const costs = playerCosts(question, players, candidates);
  return {
    candidates: Int32Array.from(candidates),
    leadIndex: candidates.indexOf(question.lead),
    leadOnTop: question.rules.H1,
    roles: candidates.map((midi) => harmony.role(midi)),
    players,
    questionIndex: taking.map((each) => each.index),
    sectionNames,
    sectionOf: Int32Array.from(players, (player) => sectionNames.indexOf(player.section)),
    chairs: Int32Array.from(players, (player) => player.chair),
    ...costs,
    heldTo: Int32Array.from(players, (player) => {
      const at = held.get(player.id);
      return typeof at === "number" ? candidates.indexOf(at) : -1;
    }),
    conflicts: conflictsOf(question, harmony, candidates),
    ...neighbours(question, harmony, candidates),
    innerCost: Int32Array.from(candidates, (midi) => innerCostOf(midi, harmony)),
    bottomCost: Int32Array.from(candidates, (midi) => bottomOrCannot(midi, question, harmony)),
    classOf: Int32Array.from(candidates, (midi) => pitchClass(midi)),
    copyCost: Int32Array.from(candidates, (midi) => copyCostOf(midi, harmony)),
    sharedNoteCost: byHowMany(candidates, players.length, (midi, already) =>
      sharedNoteCostOf(midi, already, harmony),
    ),
    sharedInSectionCost: byHowMany(candidates, players.length, (midi, already) =>
      sharedInSectionCostOf(midi, already, question.lead),
    ),
    groupsByNotes: groupSets(question, harmony, candidates, players.length),
    remarks: harmony.remarks,
  };
}

function playerCosts(
  question: Question,
  players: readonly Player[],
  candidates: readonly number[],
): { readonly playerCost: Int32Array; readonly lineCost: Int32Array } {
  const playerCost = new Int32Array(players.length * candidates.length);
  const lineCost = new Int32Array(playerCost.length);
  players.forEach((player, p) =>
    candidates.forEach((midi, c) => {
      const at = p * candidates.length + c;
      const pitch = quantity<SoundingMidi>(midi);
      const possible = mayPlay(player, pitch, question);
      const register = possible
        ? registerCostOf(player, pitch, question) + costOfLevel(player, pitch)
        : 0;
      lineCost[at] = possible ? register : cannot;
      playerCost[at] = possible
        ? register + (question.homes ? costOfHome(player, pitch) : 0)
        : cannot;
    }),
  );
  return { playerCost, lineCost };
}

function conflictsOf(
  question: Question,
  harmony: Harmony,
  candidates: readonly number[],
): Int32Array {
  const words = new Int32Array(2 * candidates.length);
  candidates.forEach((upper, u) =>
    candidates.forEach((lower, l) => {
      if (l <= u) return;
      const limit = lowIntervalLimits.limits[upper - lower] ?? 0;
      const tooLow = question.rules.H5 && lower < limit - harmony.tolerance;
      const ninth = question.rules.H6 && isBadNinth(lower, upper, harmony);
      if (!tooLow && !ninth) return;
      addToSet(words, 2 * u, l);
      addToSet(words, 2 * l, u);
    }),
  );
  return words;
}

function neighbours(
  question: Question,
  harmony: Harmony,
  candidates: readonly number[],
): Pick<Instance, "neighbourCost" | "lowestNeighbourCost" | "lowestNeighbourCostOfThree"> {
  const size = candidates.length;
  const table = (isLowest: boolean, notes: number): Int32Array => {
    const costs = new Int32Array(size * size).fill(cannot);
    candidates.forEach((upper, u) =>
      candidates.forEach((lower, l) => {
        if (l <= u) return;
        const gap = upper - lower;
        if (question.rules.H8 && gap > widestGapOver(lower, isLowest, notes, harmony)) return;
        const atLead =
          upper === question.lead && gap === 2
            ? toneUnderLeadCost(question.lead, question.shortNote)
            : 0;
        const low = lowIntervalCost.perSemitone * underLimit(lower, gap);
        costs[u * size + l] = gapCost(lower, gap, question.clusterSetting) + low + atLead;
      }),
    );
    return costs;
  };
  return {
    neighbourCost: table(false, 0),
    lowestNeighbourCost: table(true, 0),
    lowestNeighbourCostOfThree: table(true, 3),
  };
}

/** Costs of a note that do not depend on where in the stack it is: S6, S9. */
export function anywhereCostOf(midi: number, harmony: Harmony): number {
  if (midi === harmony.lead) return 0;
  const ninth = harmony.lead - midi === doubleMinorNinth.semitones ? doubleMinorNinth.cost : 0;
  return lowTensionCost(midi, harmony.role(midi)) + ninth;
}

function innerCostOf(midi: number, harmony: Harmony): number {
  if (midi === harmony.lead) return 0;
  return (
    anywhereCostOf(midi, harmony) +
    tenorZoneCost(midi, harmony.role(midi)) +
    rootInsideCost(midi, harmony)
  );
}

/** H5b: the lowest note against the assumed bass below it. */
export function isBottomTooLow(midi: number, harmony: Harmony): boolean {
  const assumed = assumedBassUnder(midi, harmony);
  const limit = lowIntervalLimits.limits[midi - assumed] ?? 0;
  return midi - assumed !== 12 && assumed < limit - harmony.tolerance;
}

function bottomOrCannot(midi: number, question: Question, harmony: Harmony): number {
  if (question.rules.H4 && !question.bassSounds && harmony.aboveRoot(midi) !== harmony.bass)
    return cannot;
  if (question.rules.H5b && isBottomTooLow(midi, harmony)) return cannot;
  return bottomCostOf(midi, harmony) + anywhereCostOf(midi, harmony);
}

function byHowMany(
  candidates: readonly number[],
  players: number,
  cost: (midi: number, already: number) => number,
): Int32Array {
  const table = new Int32Array(candidates.length * (players + 1));
  candidates.forEach((midi, c) => {
    for (let already = 0; already <= players; already++)
      table[c * (players + 1) + already] = cost(midi, already);
  });
  return table;
}

/**
 * The sets of tones of which one must sound, for a number of notes (H4 and the user's own).
 * @param question - the question
 * @param harmony - its tones
 * @param notes - distinct notes, 2 or more
 * @returns sets of semitones above the root, the lead's own left out
 */
export function groupsFor(
  question: Question,
  harmony: Harmony,
  notes: number,
): readonly (readonly number[])[] {
  const leadTone = harmony.aboveRoot(question.lead);
  const wished = question.required.filter((tone) => tone !== leadTone).map((tone) => [tone]);
  if (!question.rules.H4) return wished;
  if (!question.bassSounds && harmony.bass !== leadTone) wished.push([harmony.bass]);
  if (notes > 2) return [...harmony.groups.slice(0, notes - 1), ...wished];
  if (harmony.leadIsGuide || harmony.groups.length === 0) return wished;
  return [harmony.groups.slice(0, 2).flat(), ...wished];
}

function groupSets(
  question: Question,
  harmony: Harmony,
  candidates: readonly number[],
  players: number,
): readonly Int32Array[] {
  return Array.from({ length: players + 1 }, (_, notes) => {
    const groups = notes < 2 ? [] : groupsFor(question, harmony, notes);
    const words = new Int32Array(2 * groups.length);
    groups.forEach((group, g) =>
      candidates.forEach((midi, c) => {
        if (c !== candidates.indexOf(question.lead) && group.includes(harmony.aboveRoot(midi)))
          addToSet(words, 2 * g, c);
      }),
    );
    return words;
  });
}
