import { quantity, type SoundingMidi } from "../base/index.ts";
import { costOfHome, costOfLevel, instrumentOf, type Player } from "../band/index.ts";
import { harmonyOf, type Harmony } from "./harmony.ts";
import { registerCostOf } from "./rules.ts";
import {
  assumedBassUnder,
  bottomCostOf,
  copyCostOf,
  gapCost,
  lowTensionCost,
  rootInsideCost,
  sharedInSectionCostOf,
  sharedNoteCostOf,
  tenorZoneCost,
  toneUnderLeadCost,
  underLimit,
} from "./stack-costs.ts";
import { doubleMinorNinth, lowIntervalCost } from "./stack-cost-table.ts";
import { gapBetween, stackOf } from "./stack.ts";
import { countWord, intervalWord, nameIn, roleWord } from "./words.ts";
import type { Cost, CostTerm, Placement, Question, Voicing } from "./voicing-types.ts";

/** True when every pitch is an octave copy of the lead at or below it. */
export function isLine(voicing: Voicing, lead: SoundingMidi): boolean {
  return voicing.placements.every(
    ({ sounding }) => sounding <= lead && (lead - sounding) % 12 === 0,
  );
}

/**
 * What a voicing costs, term by term and in words. Works for anything, hand-made voicings
 * included; the total can be compared with voicings of the same cell only.
 * @param voicing - who sounds what
 * @param question - chord, lead, dynamic and settings
 * @returns the terms that are not 0, and their sum
 */
export function costOf(voicing: Voicing, question: Question): Cost {
  const heard = withoutOctaveAbove(voicing, question);
  const harmony = harmonyOf(question);
  const stack = stackOf(heard);
  const terms = isLine(heard, question.lead)
    ? heard.placements.flatMap((each) => playerTerms(each, question, false))
    : [
        ...stackTerms(stack, harmony, question),
        ...heard.placements.flatMap((each) => playerTerms(each, question, question.homes)),
        ...sharingTerms(heard, stack, harmony),
      ];
  const counted = terms.filter((term) => term.value !== 0);
  return { total: counted.reduce((sum, term) => sum + term.value, 0), terms: counted };
}

/** The stack a voicing is judged by: a player an octave above the lead stands beside it. */
export function withoutOctaveAbove(voicing: Voicing, question: Question): Voicing {
  if (question.octaveAbovePlayer === undefined) return voicing;
  return {
    placements: voicing.placements.filter(
      ({ player, sounding }) =>
        player.id !== question.octaveAbovePlayer || sounding !== question.lead + 12,
    ),
  };
}

function stackTerms(
  stack: readonly SoundingMidi[],
  harmony: Harmony,
  question: Question,
): CostTerm[] {
  const terms: CostTerm[] = [];
  const name = (midi: SoundingMidi): string => nameIn(midi, harmony.chord);
  stack.forEach((midi, index) => {
    const upper = stack[index + 1];
    if (upper !== undefined) terms.push(...pairTerms(midi, upper, name, question));
    terms.push(...noteTerms(midi, index === 0, harmony, name));
  });
  terms.push(...copyTerms(stack, harmony));
  return terms;
}

function pairTerms(
  lower: SoundingMidi,
  upper: SoundingMidi,
  name: (midi: SoundingMidi) => string,
  question: Question,
): CostTerm[] {
  const gap = gapBetween(lower, upper);
  const pair = `${name(lower)} and ${name(upper)}`;
  const under = underLimit(lower, gap);
  const atLead = upper === question.lead && gap === 2;
  return [
    {
      id: "S1",
      value: gapCost(lower, gap, question.clusterSetting),
      text: `${pair} lie ${intervalWord(gap)} apart, ${gap <= 2 ? "close" : "unusual"} for that register`,
    },
    {
      id: "S2",
      value: lowIntervalCost.perSemitone * under,
      text: `${pair} lie ${countWord(under, "semitone")} under the low-interval limit`,
    },
    {
      id: "S3",
      value: atLead ? toneUnderLeadCost(question.lead, question.shortNote) : 0,
      text: `${name(lower)} sits a whole tone under the lead`,
    },
  ];
}

function noteTerms(
  midi: SoundingMidi,
  isBottom: boolean,
  harmony: Harmony,
  name: (midi: SoundingMidi) => string,
): CostTerm[] {
  if (midi === harmony.lead) return [];
  const role = harmony.role(midi);
  const word = roleWord(midi, harmony.chord);
  const terms: CostTerm[] = [
    {
      id: "S6",
      value: lowTensionCost(midi, role),
      text: `${name(midi)}, ${word}, lies low for a tension`,
    },
    {
      id: "S9",
      value: harmony.lead - midi === doubleMinorNinth.semitones ? doubleMinorNinth.cost : 0,
      text: `${name(midi)} lies two octaves and a semitone under the lead`,
    },
  ];
  if (isBottom) {
    const assumed = quantity<SoundingMidi>(assumedBassUnder(midi, harmony));
    const isLow = underLimit(assumed, gapBetween(assumed, midi)) > 0;
    const why = isLow ? ", low over the bass note below it" : "";
    terms.push({
      id: "S8",
      value: bottomCostOf(midi, harmony),
      text: `the lowest note, ${name(midi)}, is ${word}${why}`,
    });
    return terms;
  }
  terms.push(
    {
      id: "S5",
      value: tenorZoneCost(midi, role),
      text: `${name(midi)}, ${word}, takes room in the tenor zone`,
    },
    {
      id: "S7",
      value: rootInsideCost(midi, harmony),
      text: `${name(midi)}, the root, sits high inside the chord`,
    },
  );
  return terms;
}

function copyTerms(stack: readonly SoundingMidi[], harmony: Harmony): CostTerm[] {
  const byClass = new Map<number, SoundingMidi[]>();
  for (const midi of stack) byClass.set(midi % 12, [...(byClass.get(midi % 12) ?? []), midi]);
  return [...byClass.values()].map((pitches) => ({
    id: "S4",
    value: (pitches.length - 1) * copyCostOf(pitches[0] as SoundingMidi, harmony),
    text: `${roleWord(pitches[0] as SoundingMidi, harmony.chord)} sounds in ${countWord(pitches.length, "octave")}`,
  }));
}

function playerTerms(placement: Placement, question: Question, homes: boolean): CostTerm[] {
  const { player, sounding } = placement;
  const at = `${player.name} on ${nameIn(sounding, question.chord)}`;
  return [
    {
      id: "C1",
      value: registerCostOf(player, sounding, question),
      text: `${at} is ${registerPlace(player, sounding)}`,
    },
    {
      id: "C1 home",
      value: homes ? costOfHome(player, sounding) : 0,
      text: `${at} lies ${sounding > player.home.high ? "above" : "below"} where this chair is at home`,
    },
    {
      id: "C2",
      value: costOfLevel(player, sounding),
      text: `${at} is more than this player's level makes easy`,
    },
  ];
}

/** Where a pitch lies against the cheapest stretch of a player's zones. */
function registerPlace(player: Player, sounding: SoundingMidi): string {
  const easiest = player.zones.reduce((best, zone) => (zone.costAtF < best.costAtF ? zone : best));
  if (sounding > easiest.top) return "above its easy register";
  const register = instrumentOf(player.instrument).registers.find(
    (each) => sounding >= each.low && sounding <= each.high,
  );
  return register ? `in its ${register.label} register` : "below its easy register";
}

function sharingTerms(
  voicing: Voicing,
  stack: readonly SoundingMidi[],
  harmony: Harmony,
): CostTerm[] {
  return stack.flatMap((midi) => {
    const here = voicing.placements.filter(({ sounding }) => sounding === midi);
    const name = nameIn(midi, harmony.chord);
    let value = 0;
    for (let already = 1; already < here.length; already++)
      value += sharedNoteCostOf(midi, already, harmony);
    const sections = new Map<string, number>();
    const terms: CostTerm[] = [];
    for (const { player } of here)
      sections.set(player.section, (sections.get(player.section) ?? 0) + 1);
    terms.push({
      id: "N1",
      value,
      text:
        value < 0
          ? `${name}, the lead, is doubled`
          : `${name} is shared by ${countWord(here.length, "player")}`,
    });
    for (const [section, count] of sections) {
      let inSection = 0;
      for (let already = 1; already < count; already++)
        inSection += sharedInSectionCostOf(midi, already, harmony.lead);
      terms.push({
        id: "N2",
        value: inSection,
        text: `${name} has ${countWord(count, section.replace(/s$/, ""))}`,
      });
    }
    return terms;
  });
}
