import type { SoundingMidi } from "../../base/index.ts";
import { canSound, type Player } from "../../band/index.ts";
import type { Chord } from "../../theory/index.ts";
import { stackOf } from "../stack.ts";
import type { Placement, Voicing } from "../voicing-types.ts";
import { assignPitches } from "./assign.ts";
import { bandRecipes } from "./band-recipes.ts";
import type {
  BandRecipe,
  BySectionOptions,
  BySectionVoicing,
  SectionTask,
} from "./by-section-types.ts";
import { groupStacks, type GroupStack } from "./group-recipes.ts";
import { octavesLine, unisonLine } from "./lines.ts";
import { cautionOf, remarksOn, restNote, saxLeadRemark } from "./by-section-remarks.ts";
import type { HornSection } from "./tutti.ts";

const hornSections: readonly HornSection[] = ["trumpets", "trombones", "saxes"];
const sectionNames: Readonly<Record<HornSection, string>> = {
  trumpets: "Trumpets",
  trombones: "Trombones",
  saxes: "Saxes",
};

/** Groups up to this size are voiced as one section. */
const mostInOneGroup = 6;
/** A section of this size can be voiced on its own. */
const fewestInSection = 3;
function taskOf(
  chord: Chord,
  lead: SoundingMidi,
  horns: readonly Player[],
  options: BySectionOptions,
): SectionTask {
  const of = (section: HornSection): readonly Player[] =>
    horns.filter((player) => player.section === section);
  const sections = { trumpets: of("trumpets"), trombones: of("trombones"), saxes: of("saxes") };
  const sizes = {
    trumpets: sections.trumpets.length,
    trombones: sections.trombones.length,
    saxes: sections.saxes.length,
  };
  return { chord, lead, options, sections, sizes };
}

function inOrderOf(players: readonly Player[], placements: readonly Placement[]): Voicing {
  const placeOf = new Map(players.map((player, index) => [player.id, index]));
  const place = ({ player }: Placement): number => placeOf.get(player.id) ?? 0;
  return { placements: [...placements].sort((a, b) => place(a) - place(b)) };
}

function fromBandRecipe(
  recipe: BandRecipe,
  task: SectionTask,
  players: readonly Player[],
): readonly BySectionVoicing[] {
  const pitches = recipe.build(task);
  if (!pitches) return [];
  const parts = hornSections
    .filter((section) => pitches[section].length > 0)
    .map((section) => ({
      section,
      assignment: assignPitches(pitches[section], task.sections[section], task.lead),
    }));
  const voicing = inOrderOf(
    players,
    parts.flatMap(({ assignment }) => assignment.placements),
  );
  const remarks = parts.flatMap(({ section, assignment }) =>
    remarksOn(assignment, section, task.chord),
  );
  const sentences = [
    recipe.note,
    ...saxLeadRemark(voicing, task.lead),
    ...remarks,
    ...cautionOf(voicing, task.options.dynamic),
  ];
  const { technique, label } = recipe;
  return [{ technique, label, voicing, note: sentences.join(" ") }];
}

/** Horns that are voiced as one. */
interface Group {
  readonly name: string;
  readonly players: readonly Player[];
  /** A spread needs horns that carry a low root. */
  readonly hasLowHorns: boolean;
  /** One section among several: what it cannot play as written is not shown. */
  readonly isOneOfMany: boolean;
}

const isSameStack = (a: readonly SoundingMidi[], b: readonly SoundingMidi[]): boolean =>
  a.length === b.length && a.every((pitch, index) => pitch === b[index]);

/** One group voiced as a whole; the others rest. */
function fromGroup(
  { technique, label, stack }: GroupStack,
  group: Group,
  task: SectionTask,
  players: readonly Player[],
): readonly BySectionVoicing[] {
  const assignment = assignPitches(stack, group.players, task.lead);
  const voicing = inOrderOf(players, assignment.placements);
  if (group.isOneOfMany && !isSameStack(stackOf(voicing), stack)) return [];
  const remarks = remarksOn(assignment, group.name.toLowerCase(), task.chord);
  const note = [...remarks, ...cautionOf(voicing, task.options.dynamic)].join(" ");
  return [{ technique, label: `${group.name}: ${label.toLowerCase()}`, voicing, note }];
}

/** All horns of a small band, else each section of three or more. */
function groupsOf(horns: readonly Player[], task: SectionTask): readonly Group[] {
  if (horns.length <= mostInOneGroup)
    return [{ name: "All horns", players: horns, hasLowHorns: true, isOneOfMany: false }];
  return hornSections
    .map((section) => ({
      name: sectionNames[section],
      players: task.sections[section],
      hasLowHorns: section !== "trumpets",
      isOneOfMany: true,
    }))
    .filter(({ players }) => players.length >= fewestInSection)
    .filter(({ players }) => players.some((player) => canSound(player, task.lead)));
}

/** Unison and octaves of everybody. */
function linesOf(horns: readonly Player[], task: SectionTask): readonly BySectionVoicing[] {
  const unison = unisonLine(horns, task.lead);
  const octaves = octavesLine(horns, task.lead);
  return [
    { technique: "unison", label: "Unison", voicing: unison, note: restNote(horns, unison) },
    { technique: "octaves", label: "Octaves", voicing: octaves, note: restNote(horns, octaves) },
  ];
}

const keyOf = ({ placements }: Voicing): string =>
  placements.map(({ player, sounding }) => `${player.id}=${sounding}`).join();

/** Keeps what has the lead on top and is not there already; octaves need two pitches. */
function worthShowing(
  found: readonly BySectionVoicing[],
  lead: SoundingMidi,
): readonly BySectionVoicing[] {
  const seen = new Set<string>();
  return found.filter(({ technique, voicing }) => {
    const stack = stackOf(voicing);
    const key = keyOf(voicing);
    if (stack.at(-1) !== lead || seen.has(key)) return false;
    seen.add(key);
    return technique !== "octaves" || stack.length > 1;
  });
}

/**
 * What a writer gets by voicing each section on its own by the textbook: tuttis (octave copy, guide
 * tones, wide, close over spread), each section alone, unison and octaves. A band of up to six
 * horns is voiced as one section. Nothing is filtered by rules of harmony; every player stays
 * inside the range, by another octave or another tone, or rests, and the note says so.
 * @param chord - the chord as read
 * @param lead - melody note, sounding
 * @param players - who may play; rhythm players are passed over
 * @param options - ticked tones and dynamic
 * @returns the voicings, tuttis first, each with its lead on top, players in the order given;
 *   empty when nobody reaches the lead
 * @source reference points of the map; constructions as in their own files
 */
export function bySectionVoicings(
  chord: Chord,
  lead: SoundingMidi,
  players: readonly Player[],
  options: BySectionOptions,
): readonly BySectionVoicing[] {
  const horns = players.filter((player) => player.section !== "rhythm");
  const task = taskOf(chord, lead, horns, options);
  const isSmall = horns.length <= mostInOneGroup;
  const recipes = isSmall ? [] : bandRecipes;
  const tuttis = recipes.flatMap((recipe) => fromBandRecipe(recipe, task, players));
  const groups = groupsOf(horns, task).flatMap((group) =>
    groupStacks(chord, lead, group.players.length, options)
      .filter(({ technique }) => technique !== "spread" || group.hasLowHorns)
      .flatMap((stack) => fromGroup(stack, group, task, players)),
  );
  return worthShowing([...tuttis, ...groups, ...linesOf(horns, task)], lead);
}
