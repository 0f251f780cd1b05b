import type { SoundingMidi } from "../base/index.ts";
import { degreeOf, spellPitch, type Chord, type SpelledPitch } from "../theory/index.ts";
import { instrumentOf } from "../band/index.ts";
import type { Placement, Voicing } from "../voicing/index.ts";
import { accidentalSigns } from "./accidental-signs.ts";
import { concertClef } from "./choose-clef.ts";
import { inScoreOrder, staffPlayerOf } from "./player-groups.ts";
import { makeStaffNotes } from "./staff-notes.ts";
import {
  asWhiteKey,
  concertReading,
  moveSpelled,
  readingOf,
  withoutDoubles,
} from "./transposed-spelling.ts";
import { symbolFor } from "./written-symbol.ts";
import type { Staff, StaffPitch } from "./staff-layout-types.ts";

/**
 * One staff a sounding player, in score order.
 * @param voicing - who sounds what
 * @param chord - gives spelling, degrees and the symbol
 * @param pitch - as it sounds, or as each player reads it
 * @returns staves top to bottom: saxes, trumpets, trombones, rhythm
 */
export function layoutByPlayer(
  voicing: Voicing,
  chord: Chord,
  pitch: StaffPitch,
): readonly Staff[] {
  return inScoreOrder(voicing.placements, (placement) => placement.player.section).map(
    (placement) => playerStaff(placement, chord, pitch),
  );
}

function playerStaff(placement: Placement, chord: Chord, pitch: StaffPitch): Staff {
  const { player, sounding } = placement;
  const { transposition, clef: partClef } = instrumentOf(player.instrument);
  const reading =
    pitch === "written" ? readingOf(chord, transposition) : concertReading(transposition);
  const spelled = readably(moveSpelled(spellPitch(sounding, chord), reading), sounding, chord);
  const clef = pitch === "written" ? partClef : concertClef(spelled, partClef, transposition);
  const staffPlayer = staffPlayerOf(player);
  const [sign = "none"] = accidentalSigns([spelled]);
  const seed = { sounding, spelled, sign, players: [staffPlayer] };
  return {
    id: player.id,
    player: staffPlayer,
    clef,
    chordSymbol: symbolFor(chord, reading),
    notes: makeStaffNotes([seed], clef, chord),
  };
}

/**
 * A player reads one note at a time: no double accidentals, and no E♯ or C♭ for a tension that the
 * line does not show the reason of. Root, third, fifth and seventh keep the chord's spelling.
 * @param spelled - the note as the chord spells it, on the player's staff
 * @param sounding - the key it sounds on
 * @param chord - the concert chord around it
 * @returns the note as the player is to read it
 */
export function readably(
  spelled: SpelledPitch,
  sounding: SoundingMidi,
  chord: Chord,
): SpelledPitch {
  const friendly = withoutDoubles(spelled);
  const isBasic = /^[b#]*[1357]$/.test(degreeOf(sounding, chord));
  return isBasic ? friendly : asWhiteKey(friendly);
}
