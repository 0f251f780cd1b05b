import { pitchClass, quantity, type Chance, type SoundingMidi } from "../base/index.ts";
import type { Chord, ChordTone, Divisions, Melody, ReadChange } from "../theory/index.ts";
import { rhythmRanges, styleRows, type StyleRow } from "./accompaniment-table.ts";
import type { RhythmNote } from "./accompaniment-types.ts";
import { chordAt, rhythmBars, type RhythmBar } from "./rhythm-bars.ts";

const { low, high } = rhythmRanges.piano;

/**
 * The pianist's chords: third, seventh (or sixth) and one colour, without the root, moved as little
 * as possible from chord to chord; rhythm drawn from the style's row. A hit on the last upbeat of a
 * bar takes the chord of the next. Common practice, no single source.
 * @param melody - metre, style, length
 * @param changes - its chords
 * @param chance - draws the rhythm of each bar
 * @returns notes in order of onset, low to high
 * @source accompaniment-table.ts
 */
export function comping(
  melody: Melody,
  changes: readonly ReadChange[],
  chance: Chance,
): readonly RhythmNote[] {
  const row = styleRows[melody.style];
  let before: readonly number[] = [];
  return rhythmBars(melody).flatMap((bar) =>
    hitsOf(bar, row, changes, chance).flatMap(({ onset, duration }): RhythmNote[] => {
      const isLastUpbeat = onset > bar.end - bar.beat;
      const at = isLastUpbeat && row.held !== "change" ? bar.end : onset;
      const chord = chordAt(changes, quantity<Divisions>(Math.min(at, melody.length - 1)));
      if (!chord) return [];
      before = nearestShape(chord, before);
      return before.map((pitch) => ({
        part: "piano",
        sound: { kind: "pitched", sounding: quantity<SoundingMidi>(pitch) },
        onset: quantity<Divisions>(onset),
        duration: quantity<Divisions>(duration),
      }));
    }),
  );
}

interface Hit {
  readonly onset: number;
  readonly duration: number;
}

function hitsOf(
  bar: RhythmBar,
  row: StyleRow,
  changes: readonly ReadChange[],
  chance: Chance,
): readonly Hit[] {
  const drawn = row.piano[Math.floor(chance() * row.piano.length)] ?? [0];
  const { start, beat, end } = bar;
  if (row.held === "change") return heldHits(bar, changes);
  const long = Math.max(1, Math.floor(row.held * beat));
  return drawn
    .map((half) => start + Math.round((half * beat) / 2))
    .filter((onset) => onset < end)
    .map((onset) => ({ onset, duration: Math.min(long, end - onset) }));
}

/** One chord at the start of the bar and at each change in it, held on. */
function heldHits({ start, end }: RhythmBar, changes: readonly ReadChange[]): readonly Hit[] {
  const inside = changes.filter(({ onset }) => onset > start && onset < end);
  const onsets: readonly number[] = [start, ...inside.map(({ onset }) => onset)];
  return onsets.map((onset, index) => ({ onset, duration: (onsets[index + 1] ?? end) - onset }));
}

/** Third or what stands for it, seventh or what stands for it, and one colour. */
function shellOf(chord: Chord): readonly ChordTone[] {
  const find = (kinds: readonly ChordTone["kind"][], ...roles: readonly ChordTone["role"][]) =>
    chord.tones.find(({ role, kind }) => roles.includes(role) && kinds.includes(kind));
  const own = ["stated", "implied"] as const;
  const third = find(own, "third", "suspended-fourth", "suspended-second");
  const seventh = find(own, "seventh", "sixth") ?? find(own, "fifth");
  const colour =
    find(own, "ninth", "thirteenth", "eleventh") ??
    chord.tones.find(({ isNaturalTension }) => isNaturalTension) ??
    find(own, "fifth");
  return [third, seventh, colour].filter((tone) => tone !== undefined);
}

/** Every way to stack the shell upwards within the piano's range, once each. */
function shapesOf(chord: Chord): readonly (readonly number[])[] {
  const classes = [...new Set(shellOf(chord).map((tone) => tone.pitchClass as number))];
  if (classes.length === 0) classes.push(chord.rootPitchClass);
  const shapes: (readonly number[])[] = [];
  for (let bottom = low; bottom <= high; bottom++) {
    if (!classes.includes(pitchClass(bottom))) continue;
    const above = classes
      .filter((each) => each !== pitchClass(bottom))
      .map((each) => bottom + pitchClass(each - bottom))
      .sort((a, b) => a - b);
    const shape = [bottom, ...above];
    if ((shape.at(-1) ?? bottom) <= high) shapes.push(shape);
  }
  return shapes;
}

/** The shape whose notes lie nearest to those before; in the middle of the range at first. */
function nearestShape(chord: Chord, before: readonly number[]): readonly number[] {
  const middle = (low + high) / 2;
  const distance = (shape: readonly number[]): number =>
    shape.reduce((sum, pitch, n) => sum + Math.abs(pitch - (before[n] ?? middle)), 0);
  return [...shapesOf(chord)].sort((a, b) => distance(a) - distance(b))[0] ?? [];
}
