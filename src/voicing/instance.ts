import { ok, pitchClass, type Count, type Result, type SoundingMidi } from "../base/index.ts";
import { costOfHome, costOfLevel, type Player } from "../band/index.ts";
import { candidateNotes, isHarmonyNote } from "./candidate-notes.ts";
import { checkPlayers, heldPitches, notInChord, outOfReach } from "./check-question.ts";
import { groupsFor, harmonyOf, type Harmony } from "./harmony.ts";
import { cannot, type Instance } from "./instance-types.ts";
import { addToSet } from "./stack-sets.ts";
import {
  isBadNinth,
  isBottomTooLow,
  isTooLowTogether,
  mayPlay,
  registerCostOf,
  widestGapOver,
} from "./rules.ts";
import { lowIntervalCost } from "./stack-cost-table.ts";
import {
  anywhereCostOf,
  bottomCostOf,
  copyCostOf,
  gapCost,
  rootInsideCost,
  sharedInSectionCostOf,
  sharedNoteCostOf,
  tenorZoneCost,
  toneUnderLeadCost,
  underLimit,
} from "./stack-costs.ts";
import { gapBetween } from "./stack.ts";
import type { Question } from "./voicing-types.ts";

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
    return outOfReach(question);
  const candidates = candidateNotes(question, harmony, players);
  for (const [id, at] of held.value)
    if (at !== "rest" && !candidates.includes(at)) return notInChord(question, id);
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
  candidates: readonly SoundingMidi[],
  held: ReadonlyMap<string, SoundingMidi | "rest">,
): Instance {
  const players = taking.map((each) => each.player);
  const sectionNames = [...new Set(players.map((player) => player.section))];
  const costs = playerCosts(question, harmony, players, candidates);
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
      return at === undefined || at === "rest" ? -1 : candidates.indexOf(at);
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
  harmony: Harmony,
  players: readonly Player[],
  candidates: readonly SoundingMidi[],
): { readonly playerCost: Int32Array; readonly lineCost: Int32Array } {
  const playerCost = new Int32Array(players.length * candidates.length);
  const lineCost = new Int32Array(playerCost.length);
  players.forEach((player, p) =>
    candidates.forEach((midi, c) => {
      const at = p * candidates.length + c;
      const isPossible = mayPlay(player, midi, question);
      const register = registerCostOf(player, midi, question) + costOfLevel(player, midi);
      const home = question.homes ? costOfHome(player, midi) : 0;
      lineCost[at] = isPossible ? register : cannot;
      playerCost[at] =
        isPossible && isHarmonyNote(midi, question, harmony) ? register + home : cannot;
    }),
  );
  return { playerCost, lineCost };
}

function conflictsOf(
  question: Question,
  harmony: Harmony,
  candidates: readonly SoundingMidi[],
): Int32Array {
  const words = new Int32Array(2 * candidates.length);
  candidates.forEach((upper, u) =>
    candidates.forEach((lower, l) => {
      if (l <= u) return;
      const tooLow = question.rules.H5 && isTooLowTogether(lower, upper, harmony);
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
  candidates: readonly SoundingMidi[],
): Pick<Instance, "neighbourCost" | "lowestNeighbourCost" | "lowestNeighbourCostOfThree"> {
  const size = candidates.length;
  const isHarmony = candidates.map((midi) => isHarmonyNote(midi, question, harmony));
  const table = (isLowest: boolean, notes: number): Int32Array => {
    const costs = new Int32Array(size * size).fill(cannot);
    candidates.forEach((upper, u) =>
      candidates.forEach((lower, l) => {
        if (l <= u || !isHarmony[u] || !isHarmony[l]) return;
        const gap = gapBetween(lower, upper);
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

function innerCostOf(midi: SoundingMidi, harmony: Harmony): number {
  if (midi === harmony.lead) return 0;
  return (
    anywhereCostOf(midi, harmony) +
    tenorZoneCost(midi, harmony.role(midi)) +
    rootInsideCost(midi, harmony)
  );
}

function bottomOrCannot(midi: SoundingMidi, question: Question, harmony: Harmony): number {
  if (!isHarmonyNote(midi, question, harmony)) return cannot;
  if (question.rules.H4 && !question.bassSounds && harmony.aboveRoot(midi) !== harmony.bass)
    return cannot;
  if (question.rules.H5b && isBottomTooLow(midi, harmony)) return cannot;
  return bottomCostOf(midi, harmony) + anywhereCostOf(midi, harmony);
}

function byHowMany(
  candidates: readonly SoundingMidi[],
  players: number,
  cost: (midi: SoundingMidi, already: Count) => Count,
): Int32Array {
  const table = new Int32Array(candidates.length * (players + 1));
  candidates.forEach((midi, c) => {
    for (let already = 0; already <= players; already++)
      table[c * (players + 1) + already] = cost(midi, already);
  });
  return table;
}

function groupSets(
  question: Question,
  harmony: Harmony,
  candidates: readonly SoundingMidi[],
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
