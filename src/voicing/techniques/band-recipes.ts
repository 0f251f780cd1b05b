import type { SoundingMidi } from "../../base/index.ts";
import { canSound } from "../../band/index.ts";
import type { BandRecipe, SectionTask } from "./by-section-types.ts";
import { closeVoicing } from "./close.ts";
import { highestFirst } from "./chair-order.ts";
import { dropTwoDoubleLead } from "./double-lead.ts";
import { dropVoices } from "./drop.ts";
import { sizedFor } from "./section-size.ts";
import { spreadsFromBass } from "./spread.ts";
import {
  tuttiGuideTones,
  tuttiOctaveCopy,
  tuttiWide,
  type HornSection,
  type SectionPitches,
} from "./tutti.ts";

/** Whether somebody of a section reaches the lead. */
function canLead(task: SectionTask, section: HornSection): boolean {
  return task.sections[section].some((player) => canSound(player, task.lead));
}

/** A tutti has brass in both sections, three or more a section, with a trumpet on the lead. */
function hasFullBrass(task: SectionTask): boolean {
  return task.sizes.trumpets >= 3 && task.sizes.trombones >= 3 && canLead(task, "trumpets");
}

/** Where the lead alto doubles the lead: an octave lower, or at pitch where that is too low. */
function saxLead(task: SectionTask): SoundingMidi {
  const [first] = highestFirst(task.sections.saxes);
  const octaves = [12, 0, 24].map((down) => (task.lead - down) as SoundingMidi);
  return octaves.find((pitch) => first && canSound(first, pitch)) ?? task.lead;
}

/** The same brass with saxes close from where the lead alto doubles the lead. */
function withSaxesInReach(task: SectionTask, tutti: SectionPitches): SectionPitches {
  const close = closeVoicing(task.chord, saxLead(task), task.options);
  if (!close || task.sizes.saxes === 0) return tutti;
  return { ...tutti, saxes: sizedFor(task.chord, close, task.sizes.saxes) };
}

function octaveCopy(task: SectionTask): SectionPitches | undefined {
  const { chord, lead, sizes, options } = task;
  const tutti = hasFullBrass(task) ? tuttiOctaveCopy(chord, lead, sizes, options) : undefined;
  return tutti && withSaxesInReach(task, tutti);
}

/** Saxes on a chord of their own, the lead alto in unison with the lead trumpet. */
function octaveCopyWithOpenSaxes(task: SectionTask): SectionPitches | undefined {
  const { chord, lead, sizes, options } = task;
  const copy = octaveCopy(task);
  const close = closeVoicing(chord, lead, options);
  if (!copy || !close || sizes.saxes < 3 || !canLead(task, "saxes")) return undefined;
  const open = sizes.saxes >= 5 ? dropTwoDoubleLead(close) : dropVoices(close, [2]);
  return { ...copy, saxes: sizedFor(chord, open, sizes.saxes) };
}

function guideTones(task: SectionTask): SectionPitches | undefined {
  const { chord, lead, sizes, options } = task;
  const tutti = hasFullBrass(task) ? tuttiGuideTones(chord, lead, sizes, options) : undefined;
  return tutti && withSaxesInReach(task, tutti);
}

function wide(task: SectionTask): SectionPitches | undefined {
  const { chord, lead, sizes, options } = task;
  const hasBottom = hasFullBrass(task) && sizes.saxes >= 1;
  return hasBottom ? tuttiWide(chord, lead, sizes, options) : undefined;
}

/** The root from F2 up to E3, where a trombone section carries it. */
function tromboneRoot(task: SectionTask): SoundingMidi {
  const fromF = (task.chord.rootPitchClass - 5 + 12) % 12;
  return (41 + fromF) as SoundingMidi;
}

/** Trumpets close, trombones spread from the root, saxes close. */
function closeOverSpread(task: SectionTask): SectionPitches | undefined {
  const { chord, lead, sizes, options } = task;
  const copy = octaveCopy(task);
  const root = tromboneRoot(task);
  const spread = spreadsFromBass(chord, root, 4, options).find(
    (stack) => (stack.at(-1) ?? lead) < lead,
  );
  if (!copy || !spread || sizes.trombones < 4) return undefined;
  return { ...copy, trombones: sizedFor(chord, spread, sizes.trombones) };
}

/** Saxes on top where there are no trumpets to lead: close, trombones the same an octave lower. */
function saxesOverTrombones(task: SectionTask): SectionPitches | undefined {
  const { chord, lead, sizes, options } = task;
  if (sizes.saxes < 3 || sizes.trombones < 3 || sizes.trumpets >= 3) return undefined;
  const copy = canLead(task, "saxes") ? tuttiOctaveCopy(chord, lead, sizes, options) : undefined;
  const close = closeVoicing(chord, lead, options);
  return copy && close ? { ...copy, saxes: sizedFor(chord, close, sizes.saxes) } : undefined;
}

/** Brass too few for two sections, voiced as one; saxes close. */
function brassAsOne(task: SectionTask): SectionPitches | undefined {
  const { chord, lead, sizes, options } = task;
  const brass = sizes.trumpets + sizes.trombones;
  const close = closeVoicing(chord, lead, options);
  const isLed = canLead(task, "trumpets") || canLead(task, "trombones");
  if (!close || hasFullBrass(task) || brass < 2 || !isLed) return undefined;
  const pitches = sizedFor(chord, close, brass);
  return withSaxesInReach(task, {
    trumpets: pitches.slice(sizes.trombones),
    trombones: pitches.slice(0, sizes.trombones),
    saxes: [],
  });
}

/** The textbook tuttis, in the order in which a writer tries them. */
export const bandRecipes: readonly BandRecipe[] = Object.freeze<BandRecipe[]>([
  {
    technique: "tutti-octave-copy",
    label: "Tutti, octave copy",
    note: "Trumpets close; trombones copy them an octave lower; saxes double them.",
    build: octaveCopy,
  },
  {
    technique: "tutti-octave-copy",
    label: "Tutti, octave copy, saxes open",
    note: "Trumpets close; trombones copy them an octave lower; saxes drop 2.",
    build: octaveCopyWithOpenSaxes,
  },
  {
    technique: "tutti-guide-tones",
    label: "Tutti, guide tones",
    note: "Trombones on third and seventh; trumpets on an upper-structure triad; saxes close.",
    build: guideTones,
  },
  {
    technique: "tutti-wide",
    label: "Tutti, wide",
    note: "Baritone on the root, a trombone a fifth above, two on third and seventh; trumpets drop 2; the other saxes close.",
    build: wide,
  },
  {
    technique: "spread",
    label: "Trumpets close over trombones spread",
    note: "Trumpets close; trombones spread from the root; saxes close.",
    build: closeOverSpread,
  },
  {
    technique: "close",
    label: "Saxes close over trombones",
    note: "Saxes close; trombones the same an octave lower.",
    build: saxesOverTrombones,
  },
  {
    technique: "close",
    label: "Brass as one section",
    note: "Brass close as one section; saxes close.",
    build: brassAsOne,
  },
]);
