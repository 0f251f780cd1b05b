import fc from "fast-check";
import { quantity } from "../../../src/base/index.ts";
import {
  melodyFromBars,
  readPitch,
  type Melody,
  type MelodyStyle,
  type Metre,
  type NoteLength,
  type SpelledPitch,
  type WrittenItem,
} from "../../../src/theory/index.ts";

const metres: readonly Metre[] = [
  { beats: 4, beatType: 4 },
  { beats: 3, beatType: 4 },
  { beats: 6, beatType: 8 },
  { beats: 5, beatType: 4 },
];
const styles: readonly MelodyStyle[] = ["swing", "straight", "ballad", "latin"];
const symbols = ["F6", "Gm7", "C7", "Bbmaj7", "A7(b9)", "Dm7", "Eb13", "Abdim7", "Em7(b5)"];
const names = "C5 D5 E5 F5 G5 A5 Bb4 A4 G4 F#5 Eb5 Ab4 C#5 B4".split(" ");

/** Ways to fill a beat, by how many eighths it has: lengths in quarters. */
const fillings: Readonly<Record<number, readonly (readonly NoteLength[])[]>> = {
  2: [
    [[1, 1]],
    [
      [1, 2],
      [1, 2],
    ],
    [
      [1, 3],
      [1, 3],
      [1, 3],
    ],
    [
      [2, 3],
      [1, 3],
    ],
    [
      [1, 4],
      [1, 4],
      [1, 2],
    ],
    [
      [3, 4],
      [1, 4],
    ],
  ],
  3: [
    [[3, 2]],
    [
      [1, 2],
      [1, 2],
      [1, 2],
    ],
    [
      [1, 1],
      [1, 2],
    ],
    [
      [1, 2],
      [1, 1],
    ],
  ],
};

function pitchOf(name: string): SpelledPitch {
  const pitch = readPitch(name);
  if (!pitch.ok) throw new Error(name);
  return pitch.value.spelled;
}

interface Draft {
  readonly metre: Metre;
  readonly style: MelodyStyle;
  readonly tempo: number;
  readonly hasPickup: boolean;
  readonly bars: number;
  readonly draws: readonly number[];
}

/** Draws one after the other, around and around. */
function drawing(draws: readonly number[]): (most: number) => number {
  let at = 0;
  return (most) => Math.floor((draws[at++ % draws.length]! / 1000) * most);
}

function barOf(beats: number, eighths: number, draw: (most: number) => number): WrittenItem[] {
  const chord = symbols[draw(symbols.length)]!;
  const items = Array.from({ length: beats }, () => {
    const ways = fillings[eighths]!;
    return ways[draw(ways.length)]!;
  }).flat();
  return items.map((length, index) => {
    const begins = index === 0 || draw(6) === 0;
    const symbol = index === 0 ? chord : symbols[draw(symbols.length)]!;
    const isRest = draw(7) === 0;
    return {
      length,
      ...(isRest ? {} : { pitch: pitchOf(names[draw(names.length)]!) }),
      ...(begins ? { chord: symbol } : {}),
    };
  });
}

/** Ties some notes to the next by giving both one pitch. */
function tied(bars: readonly WrittenItem[][], draw: (most: number) => number): WrittenItem[][] {
  const flat = bars.flat();
  flat.forEach((item, index) => {
    const next = flat[index + 1];
    if (item.pitch === undefined || next?.pitch === undefined || draw(5) > 0) return;
    flat[index] = { ...item, isTied: true };
    flat[index + 1] = { ...next, pitch: item.pitch };
  });
  let at = 0;
  return bars.map((bar) => flat.slice(at, (at += bar.length)));
}

function melodyFrom({ metre, style, tempo, hasPickup, bars, draws }: Draft): Melody {
  const draw = drawing(draws);
  const isCompound = metre.beatType === 8;
  const [beats, eighths] = isCompound ? [metre.beats / 3, 3] : [metre.beats, 2];
  const full = Array.from({ length: bars }, () => barOf(beats, eighths, draw));
  const items = tied([...(hasPickup ? [barOf(1, eighths, draw)] : []), ...full], draw);
  // At least one note, and the last one is not tied to anything.
  items.push([{ length: [isCompound ? 3 : metre.beats, 1], pitch: pitchOf("F5"), chord: "F6" }]);
  const built = melodyFromBars(
    {
      title: "Random",
      metre,
      key: { tonic: { letter: "F", alteration: 0 }, mode: "major" },
      tempo: quantity(tempo),
      style,
    },
    items,
  );
  if (!built.ok) throw new Error(built.problems.map(({ message }) => message).join(" "));
  return built.value;
}

/** Melodies of a few bars: four metres, pickups, triplets, sixteenths, ties, rests, any changes. */
export const randomMelodies: fc.Arbitrary<Melody> = fc
  .record({
    metre: fc.constantFrom(...metres),
    style: fc.constantFrom(...styles),
    tempo: fc.integer({ min: 50, max: 320 }),
    hasPickup: fc.boolean(),
    bars: fc.integer({ min: 1, max: 3 }),
    draws: fc.array(fc.nat(999), { minLength: 30, maxLength: 60 }),
  })
  .map(melodyFrom);
