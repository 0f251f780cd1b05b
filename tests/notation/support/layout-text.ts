import type { Staff, StaffLayout, StaffNote } from "../../../src/notation/index.ts";

function noteText(note: StaffNote): string {
  const names = note.players.map((player) => player.abbreviation).join(", ");
  const sign = note.sign === "none" ? "" : ` ${note.sign}`;
  const column = note.column > 0 ? ` column ${note.column}` : "";
  const ledger = note.ledgerLines > 0 ? ` ledger ${note.ledgerLines}` : "";
  const place = `step ${note.step}${ledger}${column}${sign}`;
  return `  ${note.name.padEnd(4)} ${note.degreeText.padEnd(4)} ${place.padEnd(32)} ${names}`;
}

function staffText(staff: Staff): string {
  const head = `${staff.player?.name ?? staff.id}: ${staff.clef} clef, ${staff.chordSymbol}`;
  return [head, ...[...staff.notes].reverse().map(noteText)].join("\n");
}

/** A layout as text for golden files: top note first. */
export function layoutText(layout: StaffLayout): string {
  const staves = layout.staves.map(staffText);
  return [layout.title, ...staves, layout.description, ""].join("\n").replace(/ +$/gm, "");
}
