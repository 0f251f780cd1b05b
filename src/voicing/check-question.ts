import { fail, ok, quantity, type Result, type SoundingMidi } from "../base/index.ts";
import type { Player } from "../band/index.ts";
import { mayPlay } from "./rules.ts";
import { nameIn } from "./words.ts";
import type { Question } from "./voicing-types.ts";

/** Most players a question may have. */
const mostPlayers = 24;

/**
 * Checks the players of a question.
 * @param question - the question
 * @returns the players, or the problem: nobody, too many, a range upside down
 */
export function checkPlayers(question: Question): Result<readonly Player[]> {
  const { players } = question;
  if (players.length === 0)
    return fail("line-up-empty", "Nobody is in the line-up: add at least one player.");
  if (players.length > mostPlayers)
    return fail(
      "line-up-too-large",
      `The line-up has ${players.length} players; at most ${mostPlayers} can be voiced at once. Take some out.`,
    );
  for (const player of players)
    if (player.range.low > player.range.high)
      return fail(
        "range-upside-down",
        `The range of ${player.name} is upside down: its lowest note lies above its highest.`,
      );
  return ok(players);
}

/**
 * Players' fixed pitches, from locks and the lead and doubling choices.
 * @param question - the question
 * @returns by player id; or the problem: unknown player, contradiction, out of range
 */
export function heldPitches(
  question: Question,
): Result<ReadonlyMap<string, SoundingMidi | "rest">> {
  const held = new Map<string, SoundingMidi | "rest">();
  const asks: { readonly id: string; readonly at: SoundingMidi | "rest"; readonly why: string }[] =
    question.locks.map((lock) => ({ id: lock.playerId, at: lock.sounding, why: "fixed" }));
  if (question.leadPlayer !== undefined)
    asks.push({ id: question.leadPlayer, at: question.lead, why: "asked to lead" });
  if (question.octaveBelowPlayer !== undefined)
    asks.push({
      id: question.octaveBelowPlayer,
      at: quantity(question.lead - 12),
      why: "asked to double the lead an octave below",
    });
  for (const ask of asks) {
    const player = question.players.find((each) => each.id === ask.id);
    if (!player)
      return fail("lock-unknown-player", `“${ask.id}” is fixed but is not in the line-up.`);
    const before = held.get(ask.id);
    if (before !== undefined && before !== ask.at)
      return fail(
        "locks-contradict",
        `${player.name} is asked to do two things at once: free one of them.`,
      );
    if (ask.at !== "rest" && !mayPlay(player, ask.at, question))
      return fail(
        "lock-out-of-range",
        `${player.name} is ${ask.why} on a note outside the player's range.`,
      );
    held.set(ask.id, ask.at);
  }
  return ok(held);
}

/**
 * The problem of a melody that nobody can play.
 * @param question - the question
 * @returns `melody-out-of-reach`
 */
export function outOfReach(question: Question): ReturnType<typeof fail> {
  return fail(
    "melody-out-of-reach",
    `Nobody in this line-up can play the melody note ${nameIn(question.lead, question.chord)}: move it, or change the players' ranges.`,
  );
}

/**
 * The problem of a player fixed to a note that cannot sound here.
 * @param question - the question
 * @param playerId - the player
 * @returns `lock-not-in-chord`
 */
export function notInChord(question: Question, playerId: string): ReturnType<typeof fail> {
  const name = question.players.find((each) => each.id === playerId)?.name ?? playerId;
  return fail(
    "lock-not-in-chord",
    `${name} is fixed to a note that is not ticked for this chord, or lies above the melody or where a rule forbids it.`,
  );
}
