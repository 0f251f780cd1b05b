import { degreeOf, spellPitch, type Chord } from "../theory/index.ts";
import { stackOf, type Voicing } from "../voicing/index.ts";
import { inNamingOrder, staffPlayerOf } from "./player-groups.ts";
import { degreeSpoken, pitchSpoken } from "./spoken.ts";
import { withoutDoubles } from "./transposed-spelling.ts";
import type { Staff, StaffPitch, StaffPlayer } from "./staff-layout-types.ts";

/** A name inside a sentence: "Trumpet 1" becomes "trumpet 1". */
function insideSentence(name: string): string {
  return name.charAt(0).toLowerCase() + name.slice(1);
}

function listed(items: readonly string[]): string {
  const last = items.at(-1) ?? "";
  return items.length < 2 ? last : `${items.slice(0, -1).join(", ")} and ${last}`;
}

function counted(count: number, one: string): string {
  return `${count} ${one}${count === 1 ? "" : "s"}`;
}

function namesOf(players: readonly StaffPlayer[]): string {
  return listed(players.map((player) => insideSentence(player.name)));
}

/**
 * A voicing in words, for those who listen to the page instead of seeing it.
 * @param voicing - who sounds what
 * @param chord - gives spelling and degrees
 * @returns one sentence from the top note down, pitches sounding
 * @example "F13, 2 notes, 3 players, from the top: D5, thirteenth, trumpet 1 and alto 1; …"
 */
export function describeVoicing(voicing: Voicing, chord: Chord): string {
  const pitches = [...stackOf(voicing)].reverse();
  if (pitches.length === 0) return `${chord.display}: nobody sounds.`;
  const notes = pitches.map((sounding) => {
    const players = voicing.placements
      .filter((placement) => placement.sounding === sounding)
      .map((placement) => staffPlayerOf(placement.player));
    const pitch = pitchSpoken(withoutDoubles(spellPitch(sounding, chord)));
    const degree = degreeSpoken(degreeOf(sounding, chord));
    return [pitch, degree, namesOf(inNamingOrder(players))].filter(Boolean).join(", ");
  });
  const counts = [
    counted(pitches.length, "note"),
    counted(voicing.placements.length, "player"),
  ].join(", ");
  return `${chord.display}, ${counts}, from the top: ${notes.join("; ")}.`;
}

/**
 * Staves one a player in words.
 * @param staves - in score order
 * @param chord - concert chord
 * @param pitch - what the staves show
 * @returns one sentence a staff: "Alto 1 reads B4, the thirteenth."
 */
export function describeStaves(staves: readonly Staff[], chord: Chord, pitch: StaffPitch): string {
  if (staves.length === 0) return `${chord.display}: nobody sounds.`;
  const verb = pitch === "written" ? "reads" : "sounds";
  return staves
    .flatMap((staff) => staff.notes.map((note) => ({ staff, note })))
    .map(({ staff, note }) => {
      const degree = degreeSpoken(note.degree);
      const role = degree ? `, the ${degree}` : "";
      return `${staff.player?.name ?? staff.id} ${verb} ${pitchSpoken(note.spelled)}${role}.`;
    })
    .join(" ");
}
