import type { SoundingMidi } from "../../base/index.ts";
import type { Dynamic, Player, SectionId } from "../../band/index.ts";
import { lineUps } from "../../band/index.ts";
import type { Inquiry, ToneChoice } from "../../explore/index.ts";
import type { Colour } from "../../theory/index.ts";
import type { Lock, RuleId } from "../../voicing/index.ts";
import { withInquiry } from "../state/session.ts";
import { page, session } from "../store.ts";
import { plainName } from "../words/pitch-names.ts";
import { chordWithSigns, withSigns } from "../words/signs.ts";
import { take } from "./steps.ts";

/** Changes parts of the question as one step. */
function ask(change: Partial<Inquiry>, step: string, typing: string | null = null): void {
  const now = session();
  take(withInquiry(now, { ...now.inquiry, ...change }, step), typing);
}

/** Types into the chord field. */
export function askChord(chordText: string, isTyping = true): void {
  ask({ chordText }, `chord ${chordWithSigns(chordText)}`, isTyping ? "chord" : null);
}

/** Types into the melody field. */
export function askMelody(melodyText: string, isTyping = true): void {
  ask({ melodyText }, `melody ${withSigns(melodyText)}`, isTyping ? "melody" : null);
}

/** Picks a melody note on the staff or the keyboard. */
export function pickMelody(sounding: SoundingMidi): void {
  const { answer } = page.getState();
  askMelody(answer?.asked.nameOf(sounding).name ?? plainName(sounding), false);
}

/** Chord and melody at once, from one of the ready questions. */
export function askBoth(chordText: string, melodyText: string): void {
  const step = `${chordWithSigns(chordText)} under ${withSigns(melodyText)}`;
  ask({ chordText, melodyText, toneChoices: {} }, step);
}

export function askDynamic(dynamic: Dynamic): void {
  ask({ dynamic }, `dynamic ${dynamic}`);
}

/** Takes one of the ready line-ups; what was asked of players who are not in it falls away. */
export function askLineUp(id: string): void {
  const lineUp = lineUps.find((candidate) => candidate.id === id);
  if (lineUp !== undefined) askPlayers(lineUp.name, lineUp.players);
}

/** Takes an edited line-up. */
export function askPlayers(lineUpName: string, players: readonly Player[]): void {
  const now = session();
  const has = (id: string | undefined) => players.some((player) => player.id === id);
  const { leadPlayer, octaveBelowPlayer, octaveAbovePlayer, ...rest } = now.inquiry;
  const inquiry: Inquiry = {
    ...rest,
    lineUpName,
    players,
    locks: rest.locks.filter((lock) => has(lock.playerId)),
    ...(leadPlayer !== undefined && has(leadPlayer) ? { leadPlayer } : {}),
    ...(octaveBelowPlayer !== undefined && has(octaveBelowPlayer) ? { octaveBelowPlayer } : {}),
    ...(octaveAbovePlayer !== undefined && has(octaveAbovePlayer) ? { octaveAbovePlayer } : {}),
  };
  take(withInquiry(now, inquiry, `line-up ${lineUpName}`));
}

export function askColour(colour: Colour): void {
  ask({ colour, toneChoices: {} }, `${colour} tones`);
}

/** Sets one of the twelve tones. */
export function askTone(aboveRoot: number, choice: ToneChoice, name: string): void {
  const toneChoices = { ...session().inquiry.toneChoices, [aboveRoot]: choice };
  ask({ toneChoices }, `${withSigns(name)} ${choice}`);
}

/** Switches one rule. */
export function askRule(rule: RuleId, isOn: boolean, name: string): void {
  const rules = { ...session().inquiry.rules, [rule]: isOn };
  ask({ rules }, `${name} ${isOn ? "on" : "off"}`);
}

/** Lifts rules that empty a place. */
export function liftRules(lifted: readonly RuleId[]): void {
  const rules = { ...session().inquiry.rules };
  for (const rule of lifted) rules[rule] = false;
  ask({ rules }, lifted.length === 1 ? "lift a rule" : "lift rules");
}

/** Options of the question that are on or off. */
export type Option = "bassSounds" | "strictLowIntervals" | "clusterSetting" | "shortNote" | "homes";

export function askOption(option: Option, isOn: boolean, name: string): void {
  ask({ [option]: isOn }, `${name} ${isOn ? "on" : "off"}`);
}

/** Parts a single player may be given. */
export type RoleField = "leadPlayer" | "octaveBelowPlayer" | "octaveAbovePlayer";

/** Gives a part to a player, or to nobody in particular. */
export function askRole(field: RoleField, playerId: string | null, step: string): void {
  const now = session();
  const inquiry: Inquiry =
    playerId === null ? withoutRole(now.inquiry, field) : { ...now.inquiry, [field]: playerId };
  take(withInquiry(now, inquiry, step));
}

/** The question with a part given to nobody in particular. */
function withoutRole(inquiry: Inquiry, field: RoleField): Inquiry {
  return Object.fromEntries(
    Object.entries(inquiry).filter(([key]) => key !== field),
  ) as typeof inquiry;
}

/** Lets a section rest, or play again. */
export function restSection(section: SectionId, isResting: boolean): void {
  const { inquiry } = session();
  const members = new Set(
    inquiry.players.filter((player) => player.section === section).map((player) => player.id),
  );
  const others = inquiry.locks.filter((lock) => !members.has(lock.playerId));
  const rests = [...members].map((playerId): Lock => ({ playerId, sounding: "rest" }));
  ask(
    { locks: isResting ? [...others, ...rests] : others },
    `${section} ${isResting ? "rest" : "play"}`,
  );
}

/** Holds players where they are; everything else is found anew. */
export function fixPlayers(locks: readonly Lock[], step: string): void {
  const held = new Set(locks.map((lock) => lock.playerId));
  const others = session().inquiry.locks.filter((lock) => !held.has(lock.playerId));
  ask({ locks: [...others, ...locks] }, step);
}

/** Lets fixed players go; all of them unless named. */
export function freePlayers(playerIds: readonly string[] | "all", step: string): void {
  const { locks } = session().inquiry;
  ask(
    {
      locks: playerIds === "all" ? [] : locks.filter((lock) => !playerIds.includes(lock.playerId)),
    },
    step,
  );
}
