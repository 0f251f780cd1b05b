import type { Player } from "../../band/index.ts";
import { withPitches, type Pitches } from "../state/session.ts";
import { page, session } from "../store.ts";
import { withSigns } from "../words/signs.ts";
import { announce } from "./announce.ts";
import { take } from "./steps.ts";

/** Begins to swap a player: the next player chosen changes places with this one. */
export function beginSwap(playerId: string): void {
  const player = playerOf(playerId);
  if (player === undefined) return;
  page.setState({ swapping: playerId });
  announce(`Swap ${player.name} with whom? Go to another player and press S or Enter.`);
}

/** Gives up a swap that was begun. */
export function abandonSwap(): void {
  if (page.getState().swapping === null) return;
  page.setState({ swapping: null });
  announce("Nobody is swapped.");
}

/** Ends the swap that was begun with a player; with the same player it is given up. */
export function endSwap(playerId: string): void {
  const { swapping } = page.getState();
  if (swapping === null || swapping === playerId) return abandonSwap();
  page.setState({ swapping: null });
  swapPlayers(swapping, playerId);
}

/** Two players change places, as one step: each takes the other's note, or rests in turn. */
export function swapPlayers(one: string, other: string): void {
  const { view } = page.getState();
  const [first, second] = [playerOf(one), playerOf(other)];
  if (view === null || first === undefined || second === undefined || one === other) return;
  const names = `${first.abbreviation} and ${second.abbreviation}`;
  if (view.pitches[one] === view.pitches[other])
    return announce(`${names} have the same note: nothing changes.`);
  const next = swapped(view.pitches, one, other);
  take(withPitches(session(), view.pitches, next, [one, other], `swap ${names}`));
  const { view: after, answer } = page.getState();
  const nameOf = (id: string) => {
    const pitch = next[id];
    return pitch === undefined
      ? "rests"
      : `on ${withSigns(answer?.asked.nameOf(pitch).name ?? "")}`;
  };
  const broken = (after?.report.broken ?? []).filter((rule) =>
    rule.playerIds.some((id) => id === one || id === other),
  );
  announce(
    [
      `Swapped: ${first.abbreviation} ${nameOf(one)}, ${second.abbreviation} ${nameOf(other)}`,
      ...broken.map((rule) => rule.text),
    ].join(". "),
  );
}

function swapped(pitches: Pitches, one: string, other: string): Pitches {
  const rest = Object.entries(pitches).filter(([id]) => id !== one && id !== other);
  const to = (id: string, pitch: number | undefined) =>
    pitch === undefined ? [] : [[id, pitch] as const];
  return Object.fromEntries([...rest, ...to(one, pitches[other]), ...to(other, pitches[one])]);
}

function playerOf(playerId: string): Player | undefined {
  return session().inquiry.players.find((player) => player.id === playerId);
}
