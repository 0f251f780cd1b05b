import fc from "fast-check";
import { soundingMidi, type SoundingMidi } from "../../../src/base/index.ts";
import { lineUpById, makePlayer, type Player, type SeatId } from "../../../src/band/index.ts";
import { readChord, readPitch, tickedTones, type Chord } from "../../../src/theory/index.ts";
import type { TechniqueOptions, Voicing } from "../../../src/voicing/index.ts";

/** A chord that the tests know to be readable. */
export function chordOf(symbol: string): Chord {
  const read = readChord(symbol);
  if (!read.ok) throw new Error(read.problem.message);
  return read.value;
}

/** "D5" as a sounding pitch. */
export function pitch(name: string): SoundingMidi {
  const read = readPitch(name);
  if (!read.ok) throw new Error(read.problem.message);
  return read.value.sounding;
}

/** "G3 C4 E4 B4" as sounding pitches. */
export function pitches(names: string): readonly SoundingMidi[] {
  return names.split(" ").map(pitch);
}

/** The tones the symbol states or implies. */
export function plain(chord: Chord): TechniqueOptions {
  return { ticked: tickedTones(chord, "plain") };
}

/** All twelve tones, for constructions that reach into the scale. */
export const everyTone: TechniqueOptions = { ticked: [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11] };

export function players(lineUp: string): readonly Player[] {
  const found = lineUpById(lineUp);
  if (!found.ok) throw new Error(found.problem.message);
  return found.value.players;
}

/** "tpt1=D5 alto1=B4" as a voicing. */
export function voicingOf(text: string): Voicing {
  return {
    placements: text.split(" ").map((one) => {
      const [seat = "", name = ""] = one.split("=");
      return { player: makePlayer({ seat: seat as SeatId }), sounding: pitch(name) };
    }),
  };
}

/** One trumpet, alto and so on down for each pitch; who plays it does not matter to the test. */
export function onAnyone(stack: readonly SoundingMidi[]): Voicing {
  const seats: readonly SeatId[] = ["bari", "tenor1", "tbn1", "alto1", "tpt2", "tpt1"];
  return {
    placements: stack.map((sounding, index) => ({
      player: makePlayer({ seat: seats[index % seats.length] ?? "bari" }),
      sounding,
    })),
  };
}

/** Chords of every family, with what the symbols may print beside. */
const suffixes: readonly string[] = [
  "", "m", "dim", "+", "sus4", "sus2", "add9", "6", "69", "m6", "maj7", "maj9", "maj13", "maj7#11",
  "m(maj7)", "7", "9", "13", "7b9", "7#9", "7#11", "13#11", "7b5", "7#5", "7(b9,b13)", "7alt",
  "7sus4", "9sus4", "13sus4", "m7", "m9", "m11", "m7b5", "dim7",
]; // prettier-ignore
const roots: readonly string[] = "C Db D Eb E F F# G Ab A Bb B".split(" ");

/** A random chord with tones ticked by one of the presets. */
export const someChord: fc.Arbitrary<{ chord: Chord; options: TechniqueOptions }> = fc
  .tuple(
    fc.constantFrom(...roots),
    fc.constantFrom(...suffixes),
    fc.constantFrom("plain" as const, "tensions" as const, "altered" as const),
  )
  .map(([root, suffix, colour]) => {
    const chord = chordOf(root + suffix);
    return { chord, options: { ticked: tickedTones(chord, colour) } };
  });

/** A melody note that some horn reaches. */
export const someLead: fc.Arbitrary<SoundingMidi> = fc
  .integer({ min: 55, max: 86 })
  .map(soundingMidi);

/** A random voicing of the big band: some players, anywhere inside their ranges. */
export const someVoicing: fc.Arbitrary<Voicing> = fc
  .tuple(...players("big-band").map((player) => somePlacement(player)))
  .map((placements) => ({ placements: placements.filter((one) => one !== undefined) }))
  .filter(({ placements }) => placements.length > 0);

function somePlacement(player: Player) {
  const { low, high } = player.range;
  return fc.option(
    fc.integer({ min: low, max: high }).map((sounding) => ({
      player,
      sounding: soundingMidi(sounding),
    })),
    { nil: undefined },
  );
}
