import { midiToHz, soundingMidi } from "../base/index.ts";
import { audibility, mudBetween } from "../acoustics/index.ts";
import { partialsOf } from "../band/index.ts";
import { pitchName, readChord, readPitch, type Chord } from "../theory/index.ts";
import { readOwnVoicing, type Answered } from "./own-voicing.ts";
import type { SamplePair } from "./sample-table.ts";

/** Root, third, seventh and ninth, semitones over the root, from the bass trombone up. */
const NINTH = [0, 4, 10, 14];
const TROMBONES = ["btbn", "tbn3", "tbn2", "tbn1"];
const ROOTS = ["C", "Db", "D", "Eb", "E", "F", "Gb", "G", "Ab", "A", "Bb", "B"];
/** C2: under it four trombones cannot follow. */
const LOWEST_ROOT = 36;
/** Three trumpets in close position, semitones under the lead. */
const TRUMPETS = { tpt1: 0, tpt2: 3, tpt3: 7 };

/**
 * One dominant ninth for four trombones, low down and an octave higher, in the key where the low
 * one is muddiest.
 * @param pair - gives the dynamic
 * @returns the low one and the higher one
 */
export function lowAndHigherNinth(pair: SamplePair): readonly [Answered, Answered] {
  const keys = ROOTS.map((name, key) => ({ chord: `${name}9`, root: LOWEST_ROOT + key }))
    .map(({ chord, root }) => {
      const at = (octave: number) =>
        placed(
          pair,
          chord,
          TROMBONES.map((id, i) => [id, root + NINTH[i]! + 12 * octave]),
        );
      return { mud: worstMud(NINTH.map((step) => root + step)), low: at(0), high: at(1) };
    })
    .filter(({ low, high }) => low !== undefined && high !== undefined);
  const worst = keys.reduce((most, next) => (next.mud > most.mud ? next : most));
  return [worst.low!, worst.high!];
}

const worstMud = (keys: readonly number[]): number =>
  Math.max(
    ...keys
      .slice(1)
      .map((upper, i) =>
        mudBetween(midiToHz(soundingMidi(keys[i]!)), midiToHz(soundingMidi(upper))),
      ),
  );

/**
 * A flute with three trumpets that stay as they are: on the tone of the chord where it is heard
 * least, and on the one where it is heard best.
 * @param pair - chord, lead trumpet's note, dynamic
 * @returns the covered one and the heard one
 */
export function coveredAndHeardFlute(pair: SamplePair): readonly [Answered, Answered] {
  const { chord: symbol, melody, dynamic } = pair;
  const chord = readChord(symbol);
  const lead = readPitch(melody);
  if (!chord.ok || !lead.ok) throw new RangeError(`${symbol} under ${melody} cannot be read`);
  const top = lead.value.sounding;
  const trumpets = Object.entries(TRUMPETS).map(([id, under]) => [id, top - under] as const);
  const source = (id: string, instrument: "flute" | "trumpet", key: number) => ({
    id,
    spectrum: partialsOf({ instrument, sounding: soundingMidi(key), dynamic, mute: "open" }),
  });
  const margin = (key: number): number =>
    audibility([
      ...trumpets.map(([id, pitch]) => source(id, "trumpet", pitch)),
      source("fl1", "flute", key),
    ]).find(({ group }) => group === "fl1")!.margin;
  const tones = statedAbove(chord.value, top).sort((a, b) => margin(a) - margin(b));
  const [first, second] = [tones[0]!, tones.at(-1)!].map((key) =>
    placed(pair, symbol, [...trumpets, ["fl1", key]]),
  );
  if (first === undefined || second === undefined)
    throw new RangeError(`${symbol} under ${melody} cannot be played`);
  return [first, second];
}

/** The chord's own tones from a pitch up, two octaves wide. */
function statedAbove(chord: Chord, from: number): number[] {
  const stated = new Set(
    chord.tones
      .filter(({ kind }) => kind === "stated" || kind === "implied")
      .map(({ pitchClass }) => pitchClass as number),
  );
  return Array.from({ length: 25 }, (_, i) => from + i).filter((key) => stated.has(key % 12));
}

/** A voicing from players and keys; none where a player cannot sound the note. */
function placed(
  { dynamic }: SamplePair,
  chord: string,
  notes: readonly (readonly [id: string, key: number])[],
): Answered | undefined {
  const read = readChord(chord);
  if (!read.ok) throw new RangeError(read.problem.message);
  const own = readOwnVoicing({
    chord,
    dynamic,
    bass: "none",
    notes: notes.map(([id, key]) => `${id}=${pitchName(soundingMidi(key), read.value)}`),
  });
  return own.ok ? own.value : undefined;
}
