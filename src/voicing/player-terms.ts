import type { Count, SoundingMidi } from "../base/index.ts";
import { costOfHome, costOfLevel, muteRow, type Player, type PlayerLevel } from "../band/index.ts";
import { registerCostOf } from "./rules.ts";
import { term } from "./term.ts";
import type { CostTerm, Placement, Question } from "./voicing-types.ts";
import { countWord, listWords, nameIn } from "./words.ts";

const levelWords: Readonly<Record<PlayerLevel, string>> = {
  school: "a school player",
  "semi-pro": "a semi-professional",
  pro: "a professional",
};

/**
 * What a note costs the one who plays it, in words: register and home in one sentence (C1), and
 * the player's level (C2).
 * @param placement - who plays what
 * @param question - its dynamic
 * @param homes - false: homes do not count
 * @returns both terms, those that cost nothing included
 */
export function playerTerms(
  placement: Placement,
  question: Question,
  homes: boolean,
): readonly CostTerm[] {
  const { player, sounding } = placement;
  const subject = `${player.name} on ${nameIn(sounding, question.chord)}`;
  const register = registerCostOf(player, sounding, question);
  const home = homes ? costOfHome(player, sounding) : 0;
  const level = costOfLevel(player, sounding);
  return [
    term(
      "C1",
      register + home,
      subject,
      ` is ${listWords(registerReasons(placement, question, home > 0))}`,
    ),
    term("C2", level, subject, ` is ${beyondLevel(player, sounding)}`),
  ];
}

/** Why a note costs its player: too high, too low, too loud for the dynamic, or the mute. */
function registerReasons(
  { player, sounding }: Placement,
  question: Question,
  isOutsideHome: boolean,
): readonly string[] {
  const open: Player = { ...player, mute: "open" };
  const plain = registerCostOf(open, sounding, question);
  const loud = registerCostOf(open, sounding, { ...question, dynamic: "f" });
  const muted = registerCostOf(player, sounding, question) - plain;
  const homeSide = sounding > player.home.high ? "above" : "below";
  const side = sideOf(player, sounding);
  const isOutsideEasy = loud > 0 && plain > 0;
  const easy = isOutsideEasy ? [`${side} its easy register`] : [];
  const home = isOutsideEasy && side === homeSide ? "its home range" : `${homeSide} its home range`;
  return [
    ...easy,
    ...(isOutsideHome ? [home] : []),
    ...(!isOutsideEasy && plain > 0 ? [`hard to hold down to ${question.dynamic}`] : []),
    ...(muted > 0 ? [`hampered by its mute (${muteRow(player.mute).name.toLowerCase()})`] : []),
  ];
}

function sideOf(player: Player, sounding: SoundingMidi): "above" | "below" {
  const easiest = player.zones.reduce((best, zone) => (zone.costAtF < best.costAtF ? zone : best));
  return sounding > easiest.top ? "above" : "below";
}

function beyondLevel(player: Player, sounding: SoundingMidi): string {
  const { low, high } = player.easyRange;
  const outside: Count = Math.max(low - sounding, sounding - high);
  return `${countWord(outside, "semitone")} beyond what is easy for ${levelWords[player.level]}`;
}
