import { costOfRegister } from "../../band/index.ts";
import { voicingOfCell } from "../../explore/index.ts";
import { metrics } from "../../metrics/index.ts";
import {
  techniquesOf,
  type AtlasCell,
  type Question,
  type TechniqueId,
} from "../../voicing/index.ts";

/** What a texture of the map is like, beyond its place. */
export interface CellTraits {
  readonly techniques: readonly TechniqueId[];
  /** Players in a register that needs a reason at this dynamic. */
  readonly strained: number;
  /** How surely the ear gets the chord, 0 to 1; null where the measure has no value. */
  readonly clarity: number | null;
}

/** Which textures the user wants to see; null leaves a point open. */
export interface MapFilter {
  readonly technique: TechniqueId | null;
  /** At most so many players strained. */
  readonly strained: number | null;
  /** At least so clear. */
  readonly clarity: number | null;
}

/** Everything is seen. */
export const noFilter: MapFilter = Object.freeze({
  technique: null,
  strained: null,
  clarity: null,
});

/** Register cost from which a part is no longer at ease: "usually otherwise" in the seat table. */
const strainedFrom = 3;

/**
 * What a texture is like.
 * @param question - the question of the map
 * @param cell - the texture
 * @returns its traits
 */
export function traitsOf(question: Question, cell: AtlasCell): CellTraits {
  const voicing = voicingOfCell(question, cell);
  const { chord, lead, dynamic, bassSounds } = question;
  const clarity = metrics.find(({ id }) => id === "chord-clarity");
  return {
    techniques: techniquesOf(voicing, chord, lead),
    strained: voicing.placements.filter(
      ({ player, sounding }) => costOfRegister(player, sounding, dynamic) >= strainedFrom,
    ).length,
    clarity: clarity?.measure(voicing, { chord, lead, dynamic, bassSounds }).value ?? null,
  };
}

/**
 * Whether a filter asks for anything.
 * @param filter - the filter
 * @returns false when everything is seen
 */
export function isFiltering(filter: MapFilter): boolean {
  return filter.technique !== null || filter.strained !== null || filter.clarity !== null;
}

/**
 * Whether a texture is one of those the user wants to see.
 * @param filter - what is wanted
 * @param traits - what the texture is like
 * @returns true when it fits every point asked for
 */
export function fitsFilter(filter: MapFilter, traits: CellTraits): boolean {
  const { technique, strained, clarity } = filter;
  if (technique !== null && !traits.techniques.includes(technique)) return false;
  if (strained !== null && traits.strained > strained) return false;
  return clarity === null || (traits.clarity ?? 0) >= clarity;
}
