import type { Count } from "../base/index.ts";
import { bitsIn, type SetWord } from "./stack-sets.ts";
import type { LayerId } from "./voicing-types.ts";

/** Sections of this many sounding players want a run of several notes. */
const fullSection = 3;

/** In stacks of up to this many notes the run may be shorter. */
const smallStack = 4;

function isRun(set: SetWord): boolean {
  return (set & (set + (set & -set))) === 0;
}

function hasNoNeighbours(set: SetWord): boolean {
  return (set & (set << 1)) === 0;
}

/**
 * The sets of notes that one section may sound in a layer, as bits, bit 0 the highest note. Each
 * set comes after the same set without its lowest note.
 * @param layer - by section: unbroken runs; crossed: no two neighbours; free: all sets
 * @param notes - notes of the stack, at most 24
 * @param most - notes that a section can sound at most
 * @returns the sets, none of them empty
 */
export function setsOfSection(layer: LayerId, notes: Count, most: Count): Int32Array {
  const fits = layer === "by-section" ? isRun : layer === "crossed" ? hasNoNeighbours : () => true;
  const found: number[] = [];
  const grow = (set: SetWord, from: Count, room: Count): void => {
    for (let j = from; j < notes && room > 0; j++) {
      const next = set | (1 << j);
      if (!fits(next)) continue;
      found.push(next);
      grow(next, j + 1, room - 1);
    }
  };
  grow(0, 0, most);
  return Int32Array.from(found);
}

/**
 * How many players of one section may sound on a set of notes.
 * @param layer - by section, a section of three or more takes three notes or more (two in stacks
 *   of up to four)
 * @param set - the notes, as bits
 * @param notes - notes of the stack
 * @param size - players of the section
 * @returns at most this many of them
 */
export function mostOnSet(layer: LayerId, set: SetWord, notes: Count, size: Count): Count {
  if (layer !== "by-section") return size;
  const wanted = notes <= smallStack ? fullSection - 1 : fullSection;
  return bitsIn(set) >= wanted ? size : Math.min(size, fullSection - 1);
}
