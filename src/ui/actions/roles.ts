import { quantity, type SoundingMidi } from "../../base/index.ts";
import type { Lock } from "../../voicing/index.ts";
import { page, session } from "../store.ts";
import { withSigns } from "../words/signs.ts";
import { announce } from "./announce.ts";
import { fixPlayers, freePlayers } from "./ask.ts";

/** Where players are now, as locks. */
export function locksHere(playerIds: readonly string[]): readonly Lock[] {
  const { view } = page.getState();
  return playerIds.map((playerId) => {
    const pitch = view?.pitches[playerId];
    return { playerId, sounding: pitch === undefined ? "rest" : quantity<SoundingMidi>(pitch) };
  });
}

/** Fixes a player where he or she is, or lets a fixed one go. */
export function toggleFixed(playerId: string): void {
  const name = abbreviationOf(playerId);
  if (session().inquiry.locks.some((lock) => lock.playerId === playerId)) {
    freePlayers([playerId], `free ${name}`);
    return announce(`${name} is free.`);
  }
  const { view, answer } = page.getState();
  const pitch = view?.pitches[playerId];
  const where = pitch === undefined ? "rest" : withSigns(answer?.asked.nameOf(pitch).name ?? "");
  fixPlayers(locksHere([playerId]), `fix ${name} to ${where}`);
  announce(`${name} is fixed to ${where}; the rest is found anew.`);
}

/** Fixes the players moved by hand and has the rest found anew. */
export function fixMoved(): void {
  const { made } = session();
  if (made?.by !== "hand") return;
  fixPlayers(locksHere(made.moved), `fix ${made.moved.map(abbreviationOf).join(", ")}`);
  announce("Fixed; the rest is found anew.");
}

function abbreviationOf(playerId: string): string {
  const player = session().inquiry.players.find((candidate) => candidate.id === playerId);
  return player?.abbreviation ?? playerId;
}
