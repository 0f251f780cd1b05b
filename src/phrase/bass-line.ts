import { pitchClass, quantity, type Chance, type Count, type SoundingMidi } from "../base/index.ts";
import type { Chord, Divisions, Melody, ReadChange } from "../theory/index.ts";
import { rhythmRanges, styleRows } from "./accompaniment-table.ts";
import type { RhythmNote } from "./accompaniment-types.ts";
import { chordAt, rhythmBars, type RhythmBar } from "./rhythm-bars.ts";

const { low, high, start } = rhythmRanges.bass;

/** A time at which the bass plays, with its chord. */
interface Stroke {
  readonly onset: number;
  readonly duration: number;
  readonly chord: Chord;
  /** The chord begins here, or a bar does. */
  readonly isTarget: boolean;
  /** Plays the fifth rather than a tone of its own choice. */
  readonly isFifth: boolean;
}

/**
 * The bass: walking in swing (root where a chord or bar begins, a leading tone before the next root,
 * chord tones between), root and fifth in two for ballads and straight eighths, root and fifth with
 * an upbeat in latin. Silent where there is no chord.
 * @param melody - metre, style, length
 * @param changes - its chords
 * @param chance - draws among equally good notes
 * @returns notes in order of onset, within E1 to D3
 * @source accompaniment-table.ts
 */
export function bassLine(
  melody: Melody,
  changes: readonly ReadChange[],
  chance: Chance,
): readonly RhythmNote[] {
  const { bass } = styleRows[melody.style];
  const strokes = rhythmBars(melody).flatMap((bar) => strokesOf(bar, bass, changes));
  let before: number = start;
  let earlier: number = start;
  return strokes.map((stroke, index) => {
    const next = strokes[index + 1];
    const pitch = pitchOf(stroke, next, [before, earlier], bass === "walking", chance);
    earlier = before;
    before = pitch;
    return {
      part: "bass",
      sound: { kind: "pitched", sounding: quantity<SoundingMidi>(pitch) },
      onset: quantity<Divisions>(stroke.onset),
      duration: quantity<Divisions>(stroke.duration),
    };
  });
}

function strokesOf(
  bar: RhythmBar,
  kind: "walking" | "in-two" | "latin",
  changes: readonly ReadChange[],
): readonly Stroke[] {
  const onsets = onsetsOf(bar, kind, changes);
  return onsets.flatMap(({ onset, isFifth }, index): Stroke[] => {
    const chord = chordAt(changes, quantity<Divisions>(onset));
    if (!chord) return [];
    const isChange = changes.some((change) => change.onset === onset);
    const end = onsets[index + 1]?.onset ?? bar.end;
    const isTarget = isChange || (onset === bar.start && !isFifth);
    return [{ onset, duration: end - onset, chord, isTarget, isFifth: isFifth && !isChange }];
  });
}

interface Onset {
  readonly onset: number;
  readonly isFifth: boolean;
}

function onsetsOf(
  { start: from, beat, beats, end }: RhythmBar,
  kind: "walking" | "in-two" | "latin",
  changes: readonly ReadChange[],
): readonly Onset[] {
  const onBeats = Array.from({ length: beats }, (_, n) => ({ onset: from + n * beat, n }));
  if (kind === "walking") return onBeats.map(({ onset }) => ({ onset, isFifth: false }));
  const inTwo = onBeats
    .filter(({ n }) => n % 2 === 0)
    .map(({ onset, n }) => ({ onset, isFifth: n % 4 === 2 }));
  const upbeats =
    kind === "latin" && beat % 2 === 0
      ? inTwo
          .filter(({ onset }) => onset + 2 * beat <= end)
          .map(({ onset, isFifth }) => ({ onset: onset + 1.5 * beat, isFifth: !isFifth }))
      : [];
  const atChanges = changes
    .filter(({ onset }) => onset > from && onset < end)
    .map(({ onset }) => ({ onset: onset as number, isFifth: false }));
  const all = new Map([...inTwo, ...upbeats, ...atChanges].map((one) => [one.onset, one]));
  return [...all.values()].sort((a, b) => a.onset - b.onset);
}

function pitchOf(
  stroke: Stroke,
  next: Stroke | undefined,
  [before, earlier]: readonly [before: number, earlier: number],
  isWalking: boolean,
  chance: Chance,
): number {
  const { chord, isTarget, isFifth } = stroke;
  if (isTarget || !isWalking)
    return nearest(isFifth ? fifthOf(chord) : chord.bassPitchClass, before, isTarget ? before : -1);
  if (next?.isTarget) return leadingTone(next.chord.bassPitchClass, before, chance);
  return chordTone(chord, [before, earlier], next, chance);
}

const fifthOf = (chord: Chord): number =>
  chord.tones.find(({ role }) => role === "fifth")?.pitchClass ?? chord.rootPitchClass;

/** The octave of a pitch class that lies nearest to a pitch, within the range; lower among equals. */
function nearest(wanted: number, to: number, avoid: number): number {
  const octaves = inRange((pitch) => pitchClass(pitch) === wanted);
  const open = octaves.length > 1 ? octaves.filter((pitch) => pitch !== avoid) : octaves;
  return [...open].sort((a, b) => Math.abs(a - to) - Math.abs(b - to) || a - b)[0] ?? start;
}

function inRange(fits: (pitch: number) => boolean): readonly number[] {
  return Array.from({ length: high - low + 1 }, (_, n) => low + n).filter(fits);
}

function draw(from: readonly number[], chance: Chance): number {
  return from[Math.floor(chance() * from.length)] ?? start;
}

/** A semitone above or below the next root, or its own fifth; near, and no repeated note. */
function leadingTone(target: number, before: number, chance: Chance): number {
  const root = nearest(target, before, -1);
  const tones = [root - 1, root + 1, root + 7, root - 5].filter(
    (pitch) => pitch >= low && pitch <= high && pitch !== before && Math.abs(pitch - before) <= 7,
  );
  const close = tones.filter((pitch) => Math.abs(pitch - before) <= 4);
  return draw(close.length > 0 ? close : tones.length > 0 ? tones : [root], chance);
}

/** A tone of the chord a step or small leap away; towards the next root where there is a choice. */
function chordTone(
  chord: Chord,
  [before, earlier]: readonly [before: number, earlier: number],
  next: Stroke | undefined,
  chance: Chance,
): number {
  const own = new Set<number>(
    chord.tones
      .filter(({ kind, role }) => (kind === "stated" || kind === "implied") && role !== "bass")
      .map((tone) => tone.pitchClass),
  );
  const tones = inRange(
    (pitch) => own.has(pitchClass(pitch)) && pitch !== before && Math.abs(pitch - before) <= 5,
  );
  if (tones.length === 0) return nearest(chord.bassPitchClass, before, before);
  const goal = next ? nearest(next.chord.bassPitchClass, before, before) : before;
  const side: Count = Math.sign(goal - before);
  const fresh = tones.filter((pitch) => pitch !== earlier);
  const open = fresh.length > 0 ? fresh : tones;
  const towards = open.filter((pitch) => Math.sign(pitch - before) === side);
  return draw(towards.length > 0 ? towards : open, chance);
}
