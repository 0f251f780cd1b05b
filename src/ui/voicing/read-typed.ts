import { fail, ok, type Result, type SoundingMidi } from "../../base/index.ts";
import type { Player } from "../../band/index.ts";
import { readPitch } from "../../theory/index.ts";
import type { Pitches } from "../state/session.ts";

/** A voicing as typed: who sounds what, or notes that are still to be handed out. */
export type Typed =
  | {
      readonly kind: "players";
      readonly pitches: Pitches;
      /** Players the text says nothing of; they rest. */
      readonly unnamed: readonly Player[];
    }
  | { readonly kind: "notes"; readonly notes: readonly SoundingMidi[] };

interface Word {
  readonly text: string;
  /** Index into what was typed. */
  readonly at: number;
}

/** What a run of words says. */
type Said =
  | { readonly kind: "player"; readonly player: Player; readonly at: number }
  | { readonly kind: "pitch"; readonly sounding: SoundingMidi; readonly at: number }
  | { readonly kind: "rest"; readonly at: number };

const restWords = new Set(["rest", "rests", "-", "–", "tacet"]);
/** Most words that make one player's name: "bass trombone", "b. tbn 1". */
const longestName = 3;
const plain = (text: string) => text.toLowerCase().replace(/[\s.]/g, "");

/**
 * Reads a voicing as players write one down: "tpt1 D5, alto 1 B4", "D5: tpt1 tpt2", or notes alone,
 * "F2 A3 C4". Commas, equals signs, colons and new lines part as well as blanks do; a note without
 * an octave takes the next one above the note before it.
 * @param text - what was typed
 * @param players - the line-up, whose ids, abbreviations and names are understood
 * @returns who sounds what, or the notes; else a problem with its place: "voicing-empty",
 *   "player-unknown", "player-twice", "note-alone", "player-alone", or as readPitch has it
 */
export function readTyped(text: string, players: readonly Player[]): Result<Typed> {
  const words = wordsOf(text);
  if (words.length === 0)
    return fail(
      "voicing-empty",
      "Type players with their notes, such as tpt1 D5, alto1 B4; or notes alone, such as F2 A3 C4.",
      { position: 0 },
    );
  const said = readWords(words, players);
  if (!said.ok) return said;
  if (!said.value.some((each) => each.kind === "player"))
    return ok({
      kind: "notes",
      notes: said.value.flatMap((each) => (each.kind === "pitch" ? [each.sounding] : [])),
    });
  return said.value[0]?.kind === "player"
    ? playersFirst(said.value, players)
    : notesFirst(said.value, players);
}

function wordsOf(text: string): readonly Word[] {
  return [...text.matchAll(/[^\s,;=:|/()]+/g)].map((match) => ({
    text: match[0],
    at: match.index,
  }));
}

function readWords(words: readonly Word[], players: readonly Player[]): Result<readonly Said[]> {
  const names = namesOf(players);
  const said: Said[] = [];
  let before: SoundingMidi | undefined;
  for (let index = 0; index < words.length;) {
    const word = words[index] as Word;
    const named = playerAt(words, index, names);
    if (named !== undefined) {
      said.push({ kind: "player", player: named.player, at: word.at });
      index += named.length;
      continue;
    }
    index += 1;
    if (restWords.has(word.text.toLowerCase())) {
      said.push({ kind: "rest", at: word.at });
      continue;
    }
    const pitch = pitchOf(word, before, players);
    if (!pitch.ok) return pitch;
    before = pitch.value;
    said.push({ kind: "pitch", sounding: pitch.value, at: word.at });
  }
  return ok(said);
}

/** Everything a player may be called, without blanks and dots. */
function namesOf(players: readonly Player[]): ReadonlyMap<string, Player> {
  const names = new Map<string, Player>();
  for (const player of players)
    for (const name of [player.id, player.abbreviation, player.name])
      names.set(plain(name), player);
  return names;
}

/** The player whose name starts at a word; the longest name wins: "Alto 1" before "Alto". */
function playerAt(
  words: readonly Word[],
  from: number,
  names: ReadonlyMap<string, Player>,
): { readonly player: Player; readonly length: number } | undefined {
  for (let length = Math.min(longestName, words.length - from); length >= 1; length -= 1) {
    const name = plain(
      words
        .slice(from, from + length)
        .map((word) => word.text)
        .join(""),
    );
    const player = names.get(name);
    if (player !== undefined) return { player, length };
  }
  return undefined;
}

function pitchOf(
  { text, at }: Word,
  before: SoundingMidi | undefined,
  players: readonly Player[],
): Result<SoundingMidi> {
  if (!/^[A-Ga-g]([#b♯♭♮xn♯]*)(-?\d*)$/u.test(text)) return unknownWord(text, at, players);
  const read = readPitch(text);
  if (read.ok) return ok(read.value.sounding);
  if (read.problem.code === "pitch-octave-missing" && before !== undefined) {
    const above = nextAbove(text, before);
    if (above !== undefined) return ok(above);
  }
  const { code, message, position = 0, ...more } = read.problem;
  return fail(code, message, { ...more, position: at + position });
}

/** The lowest pitch of that name above another. */
function nextAbove(name: string, before: SoundingMidi): SoundingMidi | undefined {
  for (let octave = Math.floor(before / 12) - 2; octave <= 9; octave += 1) {
    const read = readPitch(`${name}${octave}`);
    if (read.ok && read.value.sounding > before) return read.value.sounding;
  }
  return undefined;
}

function unknownWord(text: string, at: number, players: readonly Player[]): Result<never> {
  const first = plain(text).charAt(0);
  const near = players.filter((player) => plain(player.id).startsWith(first)).slice(0, 3);
  const ways = (near.length > 0 ? near : players.slice(0, 3)).map((player) => player.id);
  return fail(
    "player-unknown",
    `“${text}” is neither a note nor a player of this line-up; players are called ${ways.join(", ")} and so on.`,
    { position: at },
  );
}

/** "tpt1 tpt2 D5": players take the note after them. */
function playersFirst(said: readonly Said[], players: readonly Player[]): Result<Typed> {
  const taken = new Map<string, number | null>();
  let waiting: Extract<Said, { kind: "player" }>[] = [];
  for (const each of said) {
    if (each.kind === "player") {
      waiting.push(each);
      continue;
    }
    if (waiting.length === 0) return noteAlone(each.at);
    for (const { player, at } of waiting) {
      if (taken.has(player.id)) return twice(player, at);
      taken.set(player.id, each.kind === "rest" ? null : each.sounding);
    }
    waiting = [];
  }
  const [lonely] = waiting;
  if (lonely !== undefined)
    return fail(
      "player-alone",
      `${lonely.player.name} has no note; write one after the name, such as ${lonely.player.id} D5, or rest.`,
      { position: lonely.at },
    );
  return handed(taken, players);
}

/** "D5: tpt1 tpt2": players take the note before them. */
function notesFirst(said: readonly Said[], players: readonly Player[]): Result<Typed> {
  const taken = new Map<string, number | null>();
  let now: Extract<Said, { kind: "pitch" | "rest" }> | undefined;
  let isUsed = true;
  for (const each of said) {
    if (each.kind !== "player") {
      if (now !== undefined && !isUsed) return noteAlone(now.at);
      now = each;
      isUsed = false;
      continue;
    }
    if (now === undefined) continue;
    if (taken.has(each.player.id)) return twice(each.player, each.at);
    taken.set(each.player.id, now.kind === "rest" ? null : now.sounding);
    isUsed = true;
  }
  if (now !== undefined && !isUsed) return noteAlone(now.at);
  return handed(taken, players);
}

function noteAlone(at: number): Result<never> {
  return fail(
    "note-alone",
    "This note has no player; name one for every note, or type notes alone.",
    { position: at },
  );
}

function twice(player: Player, at: number): Result<never> {
  return fail("player-twice", `${player.name} is given two notes; give one.`, { position: at });
}

function handed(
  taken: ReadonlyMap<string, number | null>,
  players: readonly Player[],
): Result<Typed> {
  const sounding = [...taken].flatMap(([id, pitch]) => (pitch === null ? [] : [[id, pitch]]));
  if (sounding.length === 0)
    return fail("voicing-empty", "Everybody rests; give at least one player a note.", {
      position: 0,
    });
  return ok({
    kind: "players",
    pitches: Object.fromEntries(sounding) as Pitches,
    unnamed: players.filter((player) => !taken.has(player.id)),
  });
}
