import type { Player } from "../../band/index.ts";

/** Width of a character against the type's size, about. */
const perCharacter = 0.51;
/** Room left and right inside a token, against the type's size. */
const inset = 0.5;

/**
 * What to write on the token of one or more players of a section: as much as fits.
 * @param players - who shares the note, at least one
 * @param width - the token's width, CSS pixels
 * @param type - size of the type, CSS pixels
 * @returns "Tpt 1, 2", "A1 T2", "1, 2", "× 4"
 */
export function tokenLabel(players: readonly Player[], width: number, type: number): string {
  const room = (width - inset * type) / (perCharacter * type);
  const choices = [
    fullLabel(players),
    briefLabel(players),
    chairsLabel(players),
    numberLabel(players),
  ];
  return choices.find((text) => text.length <= room) ?? `${players.length}`;
}

/** Abbreviations in full, chairs of one instrument gathered: "Tpt 1, 2", "Alto 1, Bari". */
function fullLabel(players: readonly Player[]): string {
  let before = "";
  return players
    .map((player) => {
      const [, name = player.abbreviation, chair = ""] =
        /^(.*?)\s*(\d*)$/.exec(player.abbreviation) ?? [];
      const text = name === before && chair !== "" ? chair : player.abbreviation;
      before = name;
      return text;
    })
    .join(", ");
}

/** Letter and chair: "A1 T2". */
function briefLabel(players: readonly Player[]): string {
  return players.map((player) => brief(player.abbreviation)).join(" ");
}

function brief(abbreviation: string): string {
  return abbreviation.charAt(0) + (/\d+$/.exec(abbreviation)?.[0] ?? "");
}

/** Chairs alone, where all play one instrument: "1, 2". */
function chairsLabel(players: readonly Player[]): string {
  const full = fullLabel(players);
  const chairs = players.map((player) => /\d+$/.exec(player.abbreviation)?.[0] ?? "").join(", ");
  // The label in full begins with letters once only if they all play the same.
  return (full.match(/[A-Za-z]+/g) ?? []).length === 1 ? chairs : full;
}

/** How many, where nothing else fits. */
function numberLabel(players: readonly Player[]): string {
  const first = players[0];
  return players.length === 1 && first !== undefined
    ? brief(first.abbreviation)
    : `× ${players.length}`;
}
