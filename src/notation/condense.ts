import { quantity } from "../base/index.ts";
import type { PlayerPart } from "../phrase/index.ts";
import { spelledToMidi, type Divisions } from "../theory/index.ts";
import type { StaffHead, StaffStretch } from "./phrase-staff.ts";

/**
 * Several parts as one row of notes and chords: cut wherever somebody begins or ends, so that
 * everything on the staff moves together; who holds on is tied.
 * @param parts - the parts of one staff
 * @returns stretches in order; players on one pitch share a head
 * @example two players in thirds // one stretch with two heads
 */
export function condensed(parts: readonly PlayerPart[]): readonly StaffStretch[] {
  const notes = parts.flatMap(({ player, notes: own }) =>
    own.map((note) => ({ note, playerId: player.id })),
  );
  const edges = [
    ...new Set(notes.flatMap(({ note }) => [note.onset, note.onset + note.duration] as number[])),
  ].sort((a, b) => a - b);
  return edges.flatMap((from, index): StaffStretch[] => {
    const to = edges[index + 1];
    if (to === undefined) return [];
    const sounding = notes.filter(
      ({ note }) => note.onset <= from && note.onset + note.duration >= to,
    );
    if (sounding.length === 0) return [];
    return [
      {
        from: quantity<Divisions>(from),
        to: quantity<Divisions>(to),
        heads: headsOf(sounding),
      },
    ];
  });
}

function headsOf(
  sounding: readonly { readonly note: StaffHead["note"]; readonly playerId: string }[],
): readonly StaffHead[] {
  const heads: StaffHead[] = [];
  for (const { note, playerId } of sounding) {
    const same = heads.findIndex(({ note: other }) => other.sounding === note.sounding);
    const shared = heads[same];
    if (shared) heads[same] = { ...shared, playerIds: [...shared.playerIds, playerId] };
    else heads.push({ note, playerIds: [playerId] });
  }
  return heads.sort((a, b) => spelledToMidi(a.note.pitch) - spelledToMidi(b.note.pitch));
}
