import type { Count, SoundingMidi } from "../../base/index.ts";
import type { Chord } from "../../theory/index.ts";
import type { TechniqueId } from "../voicing-types.ts";
import type { TechniqueOptions } from "./categories.ts";
import { closeVoicing } from "./close.ts";
import { doubleLead, dropTwoDoubleLead } from "./double-lead.ts";
import { dropVoices } from "./drop.ts";
import { thinned } from "./section-size.ts";
import { spreadsFromLead } from "./spread.ts";

/** A textbook voicing for one group of horns: its name and its pitches, low to high. */
export interface GroupStack {
  readonly technique: TechniqueId;
  readonly label: string;
  readonly stack: readonly SoundingMidi[];
}

type Make = (close: readonly SoundingMidi[]) => readonly SoundingMidi[] | undefined;

const opened: readonly (readonly [TechniqueId, string, Make])[] = [
  ["close", "Close", (close) => close],
  ["drop-2", "Drop 2", (close) => dropVoices(close, [2])],
  ["drop-3", "Drop 3", (close) => (close.length > 3 ? dropVoices(close, [3]) : undefined)],
  [
    "drop-2-4",
    "Drop 2 and 4",
    (close) => (close.length > 3 ? dropVoices(close, [2, 4]) : undefined),
  ],
  ["double-lead", "Double lead", doubleLead],
  ["drop-2-double-lead", "Drop 2 with double lead", dropTwoDoubleLead],
];

/**
 * The textbook voicings for a group of horns that is voiced as one: close and its drops, double
 * lead, spread.
 * @param chord - the chord as read
 * @param lead - melody note, sounding
 * @param players - how many horns
 * @param options - ticked tones
 * @returns the constructions with as many notes as there are horns, or with the most there are
 *   (five); for two or three horns the least needed notes of the close voicing are left out; empty
 *   for one horn
 */
export function groupStacks(
  chord: Chord,
  lead: SoundingMidi,
  players: Count,
  options: TechniqueOptions,
): readonly GroupStack[] {
  const whole = closeVoicing(chord, lead, options);
  if (!whole || players < 2) return [];
  const close = thinned(chord, whole, Math.min(players, whole.length));
  const fromClose = opened
    .flatMap(([technique, label, make]) => {
      const stack = close.length > 2 || technique === "close" ? make(close) : undefined;
      return stack ? [{ technique, label, stack }] : [];
    })
    .filter(({ stack }) => stack.length <= players);
  const most = Math.max(...fromClose.map(({ stack }) => stack.length));
  const found = [...fromClose, ...spreadsFor(chord, lead, players, options)];
  return found.filter(({ stack }) => stack.length >= most && stack.length <= players);
}

function spreadsFor(
  chord: Chord,
  lead: SoundingMidi,
  players: Count,
  options: TechniqueOptions,
): readonly GroupStack[] {
  const parts = players >= 5 ? 5 : 4;
  const [best] = spreadsFromLead(chord, lead, parts, options);
  return best ? [{ technique: "spread", label: "Spread", stack: best }] : [];
}
