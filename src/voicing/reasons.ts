import type { Cost, CostTerm } from "./voicing-types.ts";
import { listWords } from "./words.ts";

/**
 * Why a voicing costs what it does, for reading: against the best of its texture, or by itself.
 * What both have cancels out, also where another note or player pays the same for the same, and
 * terms that say the same of several notes or players become one sentence.
 * @param cost - cost of the voicing
 * @param best - cost of the best of the same texture; null to tell the whole cost
 * @returns terms that add up to the difference of the totals (or to the total), dearest first,
 *   what it saves last, with negative values
 */
export function reasonsFor(cost: Cost, best: Cost | null): readonly CostTerm[] {
  const parts = best === null ? cost.terms : differences(cost, best);
  return grouped(parts).sort((a, b) => b.value - a.value);
}

/** Terms of the one less those of the other; the same subject under the same row is netted. */
function differences(cost: Cost, best: Cost): readonly CostTerm[] {
  const nets = new Map<string, CostTerm>();
  const add = (part: CostTerm, sign: 1 | -1): void => {
    // A note may be shared by section in one voicing and not in the other: N1 and N1+N2 are one.
    const key = `${part.id.charAt(0) === "N" ? "N" : part.id} ${part.subject}`;
    const before = nets.get(key);
    const value = (before?.value ?? 0) + sign * part.value;
    const isSaid = before === undefined || value * sign > 0;
    nets.set(key, { ...(isSaid ? part : before), value });
  };
  for (const part of best.terms) add(part, -1);
  for (const part of cost.terms) add(part, 1);
  return withoutExchanges([...nets.values()].filter((part) => part.value !== 0));
}

const predicateOf = (part: CostTerm): string => part.text.slice(part.subject.length);

/** Drops pairs that only say that another note or player pays the same for the same. */
function withoutExchanges(parts: readonly CostTerm[]): readonly CostTerm[] {
  const left: CostTerm[] = [];
  for (const part of parts) {
    const exchanged = left.findIndex(
      (other) => other.value === -part.value && predicateOf(other) === predicateOf(part),
    );
    if (exchanged >= 0) left.splice(exchanged, 1);
    else left.push(part);
  }
  return left;
}

/** Verbs in the plural, with "each" where it belongs. */
const plurals: readonly (readonly [one: string, many: string])[] = [
  [" is ", " are each "],
  [" sounds ", " each sound "],
  [" lies ", " each lie "],
  [" takes ", " each take "],
];

function inPlural(predicate: string): string | null {
  const verb = plurals.find(([one]) => predicate.startsWith(one));
  return verb ? verb[1] + predicate.slice(verb[0].length) : null;
}

/** One sentence for terms that say the same of several subjects. */
function grouped(parts: readonly CostTerm[]): CostTerm[] {
  const groups = new Map<string, CostTerm[]>();
  for (const part of parts) {
    const plural = inPlural(predicateOf(part));
    const key = plural === null ? part.text : `${part.id} ${plural} ${Math.sign(part.value)}`;
    groups.set(key, [...(groups.get(key) ?? []), part]);
  }
  return [...groups.values()].map(together);
}

function together(parts: readonly CostTerm[]): CostTerm {
  const first = parts[0]!;
  if (parts.length === 1) return first;
  const subject = listWords(parts.map((part) => part.subject));
  const predicate = inPlural(predicateOf(first)) ?? "";
  const value = parts.reduce((sum, part) => sum + part.value, 0);
  return { id: first.id, value, subject, text: `${subject}${predicate}` };
}
