import type { AudibilityVerdict } from "../acoustics/index.ts";
import type { Player } from "../band/index.ts";
import { listenTo, type HeardPlayers } from "./listener.ts";
import type { Metric } from "./metric.ts";
import { notDefined } from "./stack-gaps.ts";

const words: Readonly<Record<AudibilityVerdict, string>> = {
  buried: "buried",
  uncertain: "perhaps buried",
  covered: "covered",
  clear: "clear",
};

const namesOf = (players: readonly Player[]): string =>
  players.map((player) => player.abbreviation).join(", ");

function sentence({ players, judgement, coveredBy }: HeardPlayers): string {
  const by = coveredBy.length > 0 ? ` by ${namesOf(coveredBy)}` : "";
  return `${namesOf(players)} ${words[judgement.verdict]}${by}`;
}

/** Most players that a sentence names. */
const named = 3;

function detailOf(doubtful: readonly HeardPlayers[], covered: number): string {
  const told = doubtful.slice(0, named).map(sentence);
  const others = doubtful.slice(named).reduce((sum, each) => sum + each.players.length, 0);
  if (others > 0) told.push(`${others} more perhaps`);
  if (told.length === 0) return covered === 0 ? "All are clear." : "Nobody is buried.";
  return `${told.join("; ")}.`;
}

/** How many players a listener can hear out of the whole. */
export const heardPlayers: Metric = {
  id: "heard",
  label: "Heard",
  unit: "players",
  meaning:
    "How many players are not buried in the whole; one model ear in front of average players.",
  source:
    "masked threshold after B. Moore, B. Glasberg and T. Baer 1997; verdicts: definition of this project",
  better: "higher",
  axis: [0, 13],
  isHeard: true,
  measure: (voicing, { dynamic }) => {
    if (voicing.placements.length === 0) return notDefined("No horn sounds.");
    const { sources } = listenTo(voicing, dynamic);
    const lost = sources.filter(({ judgement }) => judgement.verdict === "buried");
    const masked = sources
      .filter(({ judgement }) => judgement.verdict !== "clear")
      .sort((a, b) => a.judgement.margin - b.judgement.margin);
    const doubtful = masked.filter(({ judgement }) => judgement.verdict !== "covered");
    const all = voicing.placements.length;
    const heard = all - lost.reduce((sum, source) => sum + source.players.length, 0);
    return {
      value: heard,
      text: `${heard} of ${all}`,
      detail: detailOf(doubtful, masked.length - doubtful.length),
      notes: [...new Set(doubtful.map((source) => source.sounding))].sort((a, b) => a - b),
      playerIds: doubtful.flatMap((source) => source.playerIds),
    };
  },
};
