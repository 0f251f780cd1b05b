import { quantity } from "../../base/index.ts";
import {
  barLength,
  type Divisions,
  type Key,
  type Melody,
  type Metre,
} from "../../theory/index.ts";

/**
 * A melody in another metre; its notes stay where they are in time.
 * @param melody - the melody
 * @param metre - the new metre
 * @returns the same notes in bars of the new metre, the last one filled up
 */
export function withMetre(melody: Melody, metre: Metre): Melody {
  const full = barLength({ ...melody, metre });
  const pickup = melody.pickup < full ? melody.pickup : quantity<Divisions>(0);
  return { ...melody, metre, pickup, length: wholeBars(melody.length, pickup, full), repeats: [] };
}

function wholeBars(length: number, pickup: number, full: number): Divisions {
  return quantity<Divisions>(pickup + Math.max(1, Math.ceil((length - pickup) / full)) * full);
}

/**
 * A melody with another pickup: everything moves along in time. Notes that no longer fit in front
 * of bar 1 are left out.
 * @param melody - the melody
 * @param pickup - its new length; shorter than a bar
 * @returns the melody, bar 1 and all after it unchanged on paper
 */
export function withPickup(melody: Melody, pickup: Divisions): Melody {
  const by = pickup - melody.pickup;
  const moved = <T extends { readonly onset: Divisions }>(all: readonly T[]): readonly T[] =>
    all
      .map((one) => ({ ...one, onset: quantity<Divisions>(one.onset + by) }))
      .filter(({ onset }) => onset >= 0);
  return {
    ...melody,
    pickup,
    length: quantity<Divisions>(melody.length + by),
    notes: moved(melody.notes),
    changes: moved(melody.changes),
    repeats: melody.repeats.map((repeat) =>
      pickup === 0 && repeat.fromBar === 0 ? { ...repeat, fromBar: 1 } : repeat,
    ),
  };
}

/**
 * A melody with so many bars; what lies behind the last one is left out.
 * @param melody - the melody
 * @param bars - full bars, 1 and up
 * @returns the melody
 */
export function withBars(melody: Melody, bars: number): Melody {
  const end = melody.pickup + bars * barLength(melody);
  const notes = melody.notes
    .filter(({ onset }) => onset < end)
    .map((note) => {
      const fits = note.onset + note.duration <= end;
      return fits ? note : { ...note, duration: quantity<Divisions>(end - note.onset) };
    });
  const last = notes.at(-1);
  return {
    ...melody,
    length: quantity<Divisions>(end),
    notes: last?.isTied === true ? [...notes.slice(0, -1), { ...last, isTied: false }] : notes,
    changes: melody.changes.filter(({ onset }) => onset < end),
    repeats: melody.repeats.filter(({ toBar }) => toBar <= bars),
  };
}

/** Keys that can be picked, by name. Source: the fifteen key signatures. */
export const keyNames: readonly string[] = Object.freeze([
  ..."C G D A E B F# C#".split(" "),
  ..."F Bb Eb Ab Db Gb Cb".split(" "),
]);
/** The same for minor keys. */
export const minorKeyNames: readonly string[] = Object.freeze([
  ..."A E B F# C# G# D#".split(" "),
  ..."D G C F Bb Eb Ab".split(" "),
]);

/**
 * A key by its name.
 * @param name - "Bb major", "F# minor"
 * @returns the key
 */
export function keyNamed(name: string): Key {
  const [tonic = "C", mode] = name.split(" ");
  const alteration = tonic.endsWith("#") ? 1 : tonic.endsWith("b") ? -1 : 0;
  return {
    tonic: { letter: tonic.charAt(0) as Key["tonic"]["letter"], alteration },
    mode: mode === "minor" ? "minor" : "major",
  };
}
