import { quantity, type Count, type SoundingMidi } from "../base/index.ts";
import type { Chord } from "../theory/index.ts";
import { gapCosts } from "./gap-cost-table.ts";
import type { Harmony } from "./harmony.ts";
import {
  assumedBassUnder,
  bottomCostOf,
  copyCostOf,
  doubleNinthCost,
  gapCost,
  lowTensionCost,
  rootInsideCost,
  tenorZoneCost,
  toneUnderLeadCost,
  underLimit,
} from "./stack-costs.ts";
import { lowIntervalCost } from "./stack-cost-table.ts";
import { gapBetween } from "./stack.ts";
import { term } from "./term.ts";
import type { CostTerm, Question } from "./voicing-types.ts";
import { countWord, intervalWord, nameIn, roleWord } from "./words.ts";

/** Registers as a gap is spoken of: below C3 "down there", from C4 "up there". */
const lowBelow = quantity<SoundingMidi>(48);
const highFrom = quantity<SoundingMidi>(60);

/**
 * What the notes of a stack cost, whoever plays them, in words.
 * @param stack - pitches, low to high
 * @param harmony - the tones of the question
 * @param question - its settings
 * @returns terms S1 to S9; those that cost nothing are among them
 */
export function stackTerms(
  stack: readonly SoundingMidi[],
  harmony: Harmony,
  question: Question,
): readonly CostTerm[] {
  const notes = stack.flatMap((midi, index) => {
    const upper = stack[index + 1];
    return [
      ...(upper === undefined ? [] : pairTerms(midi, upper, question)),
      ...noteTerms(midi, index === 0, harmony),
    ];
  });
  return [...notes, ...copyTerms(stack, harmony)];
}

function pairTerms(
  lower: SoundingMidi,
  upper: SoundingMidi,
  question: Question,
): readonly CostTerm[] {
  const { lead, chord, clusterSetting, shortNote } = question;
  const gap = gapBetween(lower, upper);
  const pair = `${nameIn(lower, chord)} and ${nameIn(upper, chord)}`;
  const under = underLimit(lower, gap);
  const atLead = upper === lead && gap === 2;
  return [
    term("S1", gapCost(lower, gap, clusterSetting), pair, gapWords(lower, gap)),
    term(
      "S2",
      lowIntervalCost.perSemitone * under,
      pair,
      ` lie ${countWord(under, "semitone")} under the low-interval limit`,
    ),
    term(
      "S3",
      atLead ? toneUnderLeadCost(lead, shortNote) : 0,
      nameIn(lower, chord),
      " crowds the lead, a whole tone above it",
    ),
  ];
}

/** Why a gap costs something where it lies: too close, too wide, or neither fifth nor octave. */
function gapWords(lower: SoundingMidi, gap: ReturnType<typeof gapBetween>): string {
  const row = gapCosts.find((each) => lower >= each.low && lower <= each.high);
  const free = (row?.costs ?? []).flatMap((cost, semitones) =>
    cost === 0 && semitones > 0 ? [semitones] : [],
  );
  const where = lower < lowBelow ? " down there" : lower >= highFrom ? " up there" : "";
  const interval = intervalWord(gap);
  if (gap < Math.min(...free)) return `, ${interval}, are close together${where}`;
  if (gap > Math.max(...free)) return `, ${interval}, are wide apart${where}`;
  return `, ${interval}, stand less firm${where} than a fifth or an octave`;
}

function noteTerms(midi: SoundingMidi, isBottom: boolean, harmony: Harmony): readonly CostTerm[] {
  if (midi === harmony.lead) return [];
  const { chord } = harmony;
  const role = harmony.role(midi);
  const name = nameIn(midi, chord);
  const tone = `${roleWord(midi, chord)} on ${name}`;
  const anywhere = [
    term("S6", lowTensionCost(midi, role), tone, " lies low for a tension"),
    term(
      "S9",
      doubleNinthCost(midi, harmony.lead),
      name,
      " lies two octaves and a semitone under the lead",
    ),
  ];
  if (isBottom) return [...anywhere, bottomTerm(midi, harmony)];
  return [
    ...anywhere,
    term(
      "S5",
      tenorZoneCost(midi, role),
      tone,
      " takes tenor room that the guide tones could have",
    ),
    term("S7", rootInsideCost(midi, harmony), tone, " sits high inside the chord"),
  ];
}

function bottomTerm(midi: SoundingMidi, harmony: Harmony): CostTerm {
  const { chord } = harmony;
  const assumed = assumedBassUnder(midi, harmony);
  const isLow = underLimit(assumed, gapBetween(assumed, midi)) > 0;
  const proper = chord.hasSlashBass ? `the bass note ${bassName(assumed, chord)}` : "the root";
  const low = isLow ? `, and lies low over the bass` : "";
  return term(
    "S8",
    bottomCostOf(midi, harmony),
    "the lowest note",
    `, ${nameIn(midi, chord)}, is ${roleWord(midi, chord)} instead of ${proper}${low}`,
  );
}

const bassName = (midi: SoundingMidi, chord: Chord): string =>
  nameIn(midi, chord).replace(/-?\d+$/, "");

function copyTerms(stack: readonly SoundingMidi[], harmony: Harmony): readonly CostTerm[] {
  const byClass = new Map<Count, SoundingMidi[]>();
  for (const midi of stack) byClass.set(midi % 12, [...(byClass.get(midi % 12) ?? []), midi]);
  return [...byClass.values()].flatMap((pitches) => {
    const [first] = pitches;
    if (first === undefined || pitches.length < 2) return [];
    return term(
      "S4",
      (pitches.length - 1) * copyCostOf(first, harmony),
      roleWord(first, harmony.chord),
      ` sounds in ${countWord(pitches.length, "octave")}`,
    );
  });
}
