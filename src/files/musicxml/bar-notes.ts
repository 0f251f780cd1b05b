import type { Count } from "../../base/index.ts";
import type { Divisions } from "../../theory/index.ts";
import { fullLength, type PlacedBar } from "../score/score-times.ts";
import type { ScoreNote, ScorePart } from "../score/score-model.ts";
import { stretchesOf, writtenValues, type WrittenValue } from "../../notation/index.ts";

/** What sounds together: one note, or several that begin and end as one. */
export interface NoteGroup {
  readonly onset: Divisions;
  readonly end: Divisions;
  /** Low to high. */
  readonly notes: readonly ScoreNote[];
  /** A slur begins here, or ends here. */
  readonly beginsSlur: boolean;
  readonly endsSlur: boolean;
}

/** A written value with what it stands for; no group for a rest. */
export interface PlacedValue extends Omit<WrittenValue, "stretch" | "from"> {
  readonly onset: Divisions;
  readonly group?: NoteGroup;
  readonly isTiedFrom: boolean;
  readonly isTiedOn: boolean;
}

/**
 * What sounds together in a part.
 * @param part - the part
 * @returns groups in order
 */
export function noteGroups(part: Pick<ScorePart, "notes">): readonly NoteGroup[] {
  const groups: { onset: Divisions; end: Divisions; notes: ScoreNote[] }[] = [];
  for (const note of part.notes) {
    const last = groups.at(-1);
    if (last?.onset === note.onset) last.notes.push(note);
    else
      groups.push({
        onset: note.onset,
        end: (note.onset + note.duration) as Divisions,
        notes: [note],
      });
  }
  const isOn = (index: Count): boolean =>
    groups[index]?.notes.some((note) => note.isSlurredOn) === true && index + 1 < groups.length;
  return groups.map((group, index) => ({
    ...group,
    beginsSlur: isOn(index) && !isOn(index - 1),
    endsSlur: isOn(index - 1) && !isOn(index),
  }));
}

/**
 * The written values of one bar of one part.
 * @param groups - the part's groups
 * @param placed - the bar
 * @param division - parts of a quarter note
 * @returns values in order; empty where the part rests for the whole bar
 */
export function barValues(
  groups: readonly NoteGroup[],
  placed: PlacedBar,
  division: Count,
): readonly PlacedValue[] {
  const { start, end, bar } = placed;
  const inside = groups.filter((group) => group.onset < end && group.end > start);
  if (inside.length === 0) return [];
  const stretches = stretchesOf(
    inside.map((group) => ({
      from: Math.max(0, group.onset - start),
      to: Math.min(bar.length, group.end - start),
    })),
    bar.length,
  );
  const sounding = inside.values();
  const owners = stretches.map(({ isRest }) => (isRest ? undefined : sounding.next().value));
  const offset = bar.isPickup ? fullLength(bar, division) - bar.length : 0;
  return writtenValues(stretches, { metre: bar.metre, division, offset }).map((value) =>
    placedValue(value, owners[value.stretch], start),
  );
}

function placedValue(
  { from, stretch: _, ...value }: WrittenValue,
  group: NoteGroup | undefined,
  start: Divisions,
): PlacedValue {
  const onset = (start + from) as Divisions;
  const base = { ...value, onset };
  if (group === undefined) return { ...base, isTiedFrom: false, isTiedOn: false };
  const isTiedOn = onset + value.length < group.end;
  return { ...base, group, isTiedFrom: onset > group.onset, isTiedOn };
}
