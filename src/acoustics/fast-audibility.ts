import type { Count, Db } from "../base/index.ts";
import { verdictOf, type Judgement } from "./audibility-verdict.ts";
import type { EarGrid } from "./ear-grid.ts";
import type { ExcitationPass } from "./excitation-pass.ts";
import type { PreparedNote } from "./prepared-note.ts";

/** How well one group of notes is heard in a voicing. */
export interface HeardGroup extends Judgement {
  /** Places of the group's notes in the list given. */
  readonly members: readonly Count[];
  /** Level above the masked threshold in the best channel of harmonics 1 to 8. */
  readonly margin: Db;
  /** Which entry of the answer covers this one most; -1 for a clear one or when alone. */
  readonly coveredBy: Count;
}

/** Judges the groups of the notes that a pass has just run. */
export type GroupJudge = (
  notes: readonly PreparedNote[],
  groups: ArrayLike<Count>,
) => readonly HeardGroup[];

type Members = readonly Count[];

interface Best {
  ratio: number;
  place: number;
}

/** Places of the notes of each group, groups in the order in which they first appear. */
function membersByGroup(groups: ArrayLike<Count>, count: Count): Members[] {
  const members: number[][] = [];
  const keys: Count[] = [];
  for (let index = 0; index < count; index += 1) {
    const at = keys.indexOf(groups[index]!);
    if (at >= 0) members[at]!.push(index);
    else {
      keys.push(groups[index]!);
      members.push([index]);
    }
  }
  return members;
}

/**
 * The group that excites a place most, each through the filters it has alone: near enough to name
 * it, and ready made.
 */
function covererAt(
  notes: readonly PreparedNote[],
  all: readonly Members[],
  own: Count,
  place: number,
): Count {
  let found = -1;
  let most = 0;
  for (let other = 0; other < all.length; other += 1) {
    if (other === own) continue;
    const members = all[other]!;
    let share = 0;
    for (let index = 0; index < members.length; index += 1)
      share += notes[members[index]!]!.alone[place]!;
    if (share > most) {
      most = share;
      found = other;
    }
  }
  return found;
}

/**
 * Makes the judge of a pass.
 * @param grid - places
 * @param pass - the pass whose last run is judged
 * @returns judge of groups; groups are numbered, notes with one number are one source
 * @source as {@link audibility}, read at the grid places nearest to the harmonics
 */
export function groupJudge(grid: EarGrid, pass: ExcitationPass): GroupJudge {
  const { detection } = grid;
  const threshold = Float64Array.from(grid.growth, (growth) => growth.threshold);

  const shareOf = (notes: readonly PreparedNote[], members: Members, place: number): number => {
    let sum = 0;
    for (let index = 0; index < members.length; index += 1)
      sum += pass.share(notes[members[index]!]!, place);
    return sum;
  };

  const bestOf = (notes: readonly PreparedNote[], members: Members): Best => {
    const best = { ratio: 0, place: 0 };
    for (let index = 0; index < members.length; index += 1) {
      const { channels } = notes[members[index]!]!;
      for (let at = 0; at < channels.length; at += 1) {
        const place = channels[at]!;
        const signal = shareOf(notes, members, place);
        const noise = Math.max(0, pass.excitation[place]! - signal);
        const ratio = signal / (detection[place]! * noise + threshold[place]!);
        if (ratio > best.ratio) {
          best.ratio = ratio;
          best.place = place;
        }
      }
    }
    return best;
  };

  return (notes, groups) => {
    const all = membersByGroup(groups, notes.length);
    return all.map((members, own) => {
      const { ratio, place } = bestOf(notes, members);
      const margin = (10 * Math.log10(ratio)) as Db;
      const { verdict, leaning } = verdictOf(margin);
      const coveredBy = verdict === "clear" ? -1 : covererAt(notes, all, own, place);
      return { members, margin, verdict, leaning, coveredBy };
    });
  };
}
