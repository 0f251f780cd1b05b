import { spellPitch, type Chord, type SpelledPitch } from "../theory/index.ts";
import { stackOf, type Voicing } from "../voicing/index.ts";
import { accidentalSigns } from "./accidental-signs.ts";
import { grandStaffClefs } from "./choose-clef.ts";
import { inNamingOrder, staffPlayerOf } from "./player-groups.ts";
import { makeStaffNotes, type NoteSeed } from "./staff-notes.ts";
import { withoutDoubles } from "./transposed-spelling.ts";
import type { Staff } from "./staff-layout-types.ts";

/**
 * Treble and bass staff with every sounding pitch once, at concert pitch.
 * @param voicing - who sounds what
 * @param chord - gives spelling and degrees
 * @returns two staves, treble first; either may be empty
 */
export function layoutGrand(voicing: Voicing, chord: Chord): readonly Staff[] {
  const pitches = stackOf(voicing);
  const spelled: readonly SpelledPitch[] = pitches.map((sounding) =>
    withoutDoubles(spellPitch(sounding, chord)),
  );
  const signs = accidentalSigns(spelled);
  const clefs = grandStaffClefs(spelled);
  const seeds = pitches.map((sounding, index): NoteSeed => ({
    sounding,
    spelled: spelled[index]!,
    sign: signs[index]!,
    players: inNamingOrder(
      voicing.placements
        .filter((placement) => placement.sounding === sounding)
        .map((placement) => staffPlayerOf(placement.player)),
    ),
  }));
  return (["treble", "bass"] as const).map((clef) => ({
    id: clef,
    clef,
    chordSymbol: chord.display,
    notes: makeStaffNotes(
      seeds.filter((_, index) => clefs[index] === clef),
      clef,
      chord,
    ),
  }));
}
