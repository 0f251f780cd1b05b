import type { SoundingMidi } from "../base/index.ts";
import { groupsFor, harmonyOf, type Harmony } from "./harmony.ts";
import {
  isBadNinth,
  isBottomTooLow,
  isLowColour,
  isTooLowTogether,
  mayPlay,
  widestGapOver,
} from "./rules.ts";
import { assumedBassUnder } from "./stack-costs.ts";
import { isLine, withoutOctaveAbove } from "./explain.ts";
import { gapBetween, stackOf } from "./stack.ts";
import { intervalWord, nameIn } from "./words.ts";
import { degreeName } from "./degree-name.ts";
import type { BrokenRule, Question, RuleId, Voicing } from "./voicing-types.ts";

interface Look {
  readonly voicing: Voicing;
  readonly question: Question;
  readonly harmony: Harmony;
  readonly stack: readonly SoundingMidi[];
}

/**
 * Names every rule a voicing breaks, switched on or not in the question's settings: a rule that is
 * off is simply not looked at. Never throws, whatever the voicing.
 * @param voicing - who sounds what
 * @param question - chord, lead, players, rules
 * @returns broken rules in the order of their ids; empty when the voicing is clean
 */
export function brokenRules(voicing: Voicing, question: Question): readonly BrokenRule[] {
  const heard = withoutOctaveAbove(voicing, question);
  const harmony = harmonyOf(question);
  const look: Look = { voicing: heard, question, harmony, stack: stackOf(heard) };
  const checks: Readonly<Record<RuleId, (look: Look) => BrokenRule[]>> = {
    H1: leadOnTop,
    H2: onlyTicked,
    H3: insideRange,
    H4: requiredTones,
    H5: lowIntervals,
    H5b: bottomOverBass,
    H6: minorNinths,
    H7: semitoneUnderLead,
    H8: gaps,
    H9: lowColours,
  };
  const forLines: readonly RuleId[] = ["H1", "H3"];
  const line = heard.placements.length > 0 && isLine(heard, question.lead);
  return (Object.keys(checks) as RuleId[])
    .filter((id) => question.rules[id] && (!line || forLines.includes(id)))
    .flatMap((id) => checks[id](look));
}

function broken(
  rule: RuleId,
  text: string,
  notes: readonly SoundingMidi[],
  { voicing }: Look,
): BrokenRule {
  const playerIds = voicing.placements
    .filter(({ sounding }) => notes.includes(sounding))
    .map(({ player }) => player.id);
  return { rule, text, notes, playerIds };
}

function leadOnTop(look: Look): BrokenRule[] {
  const { stack, question } = look;
  const name = nameIn(question.lead, question.chord);
  if (!stack.includes(question.lead))
    return [broken("H1", `Nobody plays the melody, ${name}`, [], look)];
  const above = stack.filter((midi) => midi > question.lead);
  const names = above.map((midi) => nameIn(midi, question.chord)).join(", ");
  return above.length > 0 ? [broken("H1", `${names} lies above the melody`, above, look)] : [];
}

function onlyTicked(look: Look): BrokenRule[] {
  const { stack, harmony, question } = look;
  return stack
    .filter((midi) => midi !== question.lead && !harmony.ticked.has(harmony.aboveRoot(midi)))
    .map((midi) =>
      broken("H2", `${nameIn(midi, question.chord)} is not ticked for this chord`, [midi], look),
    );
}

function insideRange(look: Look): BrokenRule[] {
  return look.voicing.placements
    .filter(({ player, sounding }) => !mayPlay(player, sounding, look.question))
    .map(({ player, sounding }) => ({
      rule: "H3",
      text: `${nameIn(sounding, look.question.chord)} is out of range for ${player.name}`,
      notes: [sounding],
      playerIds: [player.id],
    }));
}

function requiredTones(look: Look): BrokenRule[] {
  const { stack, question, harmony } = look;
  if (stack.length < 2) return [];
  const sounding = new Set(
    stack.filter((midi) => midi !== question.lead).map((midi) => harmony.aboveRoot(midi)),
  );
  const missing = groupsFor(question, harmony, stack.length)
    .filter((group) => !group.some((tone) => sounding.has(tone)))
    .map((group) => {
      const names = group.map((tone) => degreeName(tone, question.chord)).join(" or ");
      return broken("H4", `The chord's ${names} is missing`, [], look);
    });
  const bottom = stack[0];
  if (!question.bassSounds && bottom !== undefined && harmony.aboveRoot(bottom) !== harmony.bass)
    missing.push(
      broken("H4", "No bass plays, so the lowest horn needs the bass note", [bottom], look),
    );
  return missing;
}

function* pairsOf(
  stack: readonly SoundingMidi[],
): Generator<readonly [SoundingMidi, SoundingMidi]> {
  for (let low = 0; low < stack.length; low++)
    for (let high = low + 1; high < stack.length; high++)
      yield [stack[low] as SoundingMidi, stack[high] as SoundingMidi];
}

function lowIntervals(look: Look): BrokenRule[] {
  const { stack, question, harmony } = look;
  return [...pairsOf(stack)]
    .filter(([lower, upper]) => isTooLowTogether(lower, upper, harmony))
    .map(([lower, upper]) =>
      broken(
        "H5",
        `${nameIn(lower, question.chord)} and ${nameIn(upper, question.chord)}, ${intervalWord(gapBetween(lower, upper))}, lie under the low-interval limit`,
        [lower, upper],
        look,
      ),
    );
}

function bottomOverBass(look: Look): BrokenRule[] {
  const { stack, question, harmony } = look;
  const bottom = stack[0];
  if (bottom === undefined || !isBottomTooLow(bottom, harmony)) return [];
  const bass = assumedBassUnder(bottom, harmony);
  return [
    broken(
      "H5b",
      `${nameIn(bottom, question.chord)} lies too close over the bass on ${nameIn(bass, question.chord)}`,
      [bottom],
      look,
    ),
  ];
}

function minorNinths(look: Look): BrokenRule[] {
  const { stack, question, harmony } = look;
  return [...pairsOf(stack)]
    .filter(([lower, upper]) => isBadNinth(lower, upper, harmony))
    .map(([lower, upper]) =>
      broken(
        "H6",
        `${nameIn(lower, question.chord)} and ${nameIn(upper, question.chord)} make a minor ninth`,
        [lower, upper],
        look,
      ),
    );
}

function semitoneUnderLead(look: Look): BrokenRule[] {
  const under = look.stack.filter((midi) => midi === look.question.lead - 1);
  return under.map((midi) =>
    broken(
      "H7",
      `${nameIn(midi, look.question.chord)} lies a semitone under the melody`,
      [midi],
      look,
    ),
  );
}

function gaps(look: Look): BrokenRule[] {
  const { stack, question, harmony } = look;
  return stack.slice(1).flatMap((upper, index) => {
    const lower = stack[index] as SoundingMidi;
    const widest = widestGapOver(lower, index === 0, stack.length, harmony);
    if (upper - lower <= widest) return [];
    const names = `${nameIn(lower, question.chord)} and ${nameIn(upper, question.chord)}`;
    return [
      broken(
        "H8",
        `${names} lie ${upper - lower} semitones apart; ${widest} is the most here`,
        [lower, upper],
        look,
      ),
    ];
  });
}

function lowColours(look: Look): BrokenRule[] {
  const { stack, question, harmony } = look;
  return stack
    .filter((midi) => midi !== question.lead && isLowColour(midi, harmony))
    .map((midi) =>
      broken(
        "H9",
        `${nameIn(midi, question.chord)} lies below D3, where only bass note, root and fifth sound clear`,
        [midi],
        look,
      ),
    );
}
