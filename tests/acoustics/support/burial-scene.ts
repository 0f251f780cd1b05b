import { audibility, type Audibility, type Spectrum } from "../../../src/acoustics/index.ts";

/** Gives the partials of a player's note; any timbre model will do. */
export type PlayedNote = (instrument: "flute" | "trumpet" | "trombone", midi: number) => Spectrum;

/** A flute against one trumpet: on its note, and an octave above it. */
export interface BurialScene {
  readonly trumpetMidi: number;
  readonly unison: Audibility;
  readonly octaveAbove: Audibility;
}

/** Puts a flute under a trumpet and an octave above it, at every pitch asked for. */
export function burialScene(
  played: PlayedNote,
  trumpetPitches: readonly number[],
): readonly BurialScene[] {
  const fluteAgainst = (trumpetMidi: number, fluteMidi: number): Audibility => {
    const heard = audibility([
      { id: "tpt1", spectrum: played("trumpet", trumpetMidi) },
      { id: "fl1", spectrum: played("flute", fluteMidi) },
    ]);
    return heard.find(({ group }) => group === "fl1")!;
  };
  return trumpetPitches.map((trumpetMidi) => ({
    trumpetMidi,
    unison: fluteAgainst(trumpetMidi, trumpetMidi),
    octaveAbove: fluteAgainst(trumpetMidi, trumpetMidi + 12),
  }));
}
