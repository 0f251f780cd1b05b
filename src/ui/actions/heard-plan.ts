import type { Db, Seconds } from "../../base/index.ts";
import {
  planVoicing,
  plansInTurn,
  TURN_GAP_SECONDS,
  type SoundPlan,
  type StageSeat,
} from "../../audio/index.ts";
import type { Question, Voicing } from "../../voicing/index.ts";
import type { Backing, Way, Who } from "./sound-state.ts";

/** Length of each way of hearing, s: long enough to judge, short enough to compare. */
const lengths: Readonly<Record<Way, number>> = Object.freeze({
  hit: 1,
  sustained: 3,
  crescendo: 4,
  "rolled-from-bottom": 3.5,
  "rolled-from-top": 3.5,
  "section-by-section": 6,
});
/** Level-matching goes by the three-second sustained sound. */
const matchSeconds = 3 as Seconds;

/** What is heard: a voicing under its own question. */
export interface Heard {
  readonly voicing: Voicing;
  readonly question: Question;
  /** How long it sounds; as long as its way of hearing asks unless given. */
  readonly seconds?: Seconds;
}

/** How it is heard. */
export interface Hearing {
  readonly way: Way;
  readonly who: Who;
  readonly backing: Backing;
  /** Chairs that were moved. */
  readonly seats: readonly StageSeat[];
}

/** The sound of several voicings one after the other. */
export interface PlannedTurns {
  readonly plan: SoundPlan;
  /** When each begins, from the start of the plan. */
  readonly starts: readonly Seconds[];
}

/**
 * What sounds when, for one voicing.
 * @param heard - the voicing with its question
 * @param hearing - way, who, accompaniment and seats
 * @returns a plan; without events when none of the chosen players sounds
 */
export function planOf(heard: Heard, hearing: Hearing): SoundPlan {
  return planned(heard, hearing, heard.seconds ?? (lengths[hearing.way] as Seconds));
}

/**
 * The plan by whose loudness voicings are made equally loud.
 * @param heard - the voicing with its question
 * @param hearing - who, accompaniment and seats; the way does not matter
 * @returns a plan, sustained for three seconds
 */
export function matchPlanOf(heard: Heard, hearing: Hearing): SoundPlan {
  return planned(heard, { ...hearing, way: "sustained" }, matchSeconds);
}

function planned({ voicing, question }: Heard, hearing: Hearing, seconds: Seconds): SoundPlan {
  const { way, who, seats } = hearing;
  const { playerIds, others } = who;
  const isSolo = playerIds.length > 0 && others === "silent";
  const placements = isSolo
    ? voicing.placements.filter(({ player }) => playerIds.includes(player.id))
    : voicing.placements;
  // One player alone is alone.
  const backing = isSolo && playerIds.length === 1 ? "horns" : hearing.backing;
  return planVoicing(
    { placements },
    {
      dynamic: question.dynamic,
      manner: way,
      seconds,
      chord: question.chord,
      withBass: backing !== "horns",
      withPiano: backing === "bass-piano" || backing === "rhythm",
      withDrums: backing === "rhythm",
      seats,
      ...(isSolo ? {} : { soloPlayerIds: playerIds }),
    },
  );
}

/**
 * Plans one after the other, with a gap that parts them.
 * @param plans - in order
 * @param gains - level change of each, dB
 * @param gap - silence between them
 * @returns the whole as one plan, and when each begins
 */
export function inTurn(
  plans: readonly SoundPlan[],
  gains: readonly Db[],
  gap: Seconds = TURN_GAP_SECONDS,
): PlannedTurns {
  const starts: Seconds[] = [];
  let start = 0;
  for (const { events } of plans) {
    starts.push(start as Seconds);
    start += Math.max(0, ...events.map(({ onset, duration }) => onset + duration));
    start += gap;
  }
  const turns = plans.map((plan, index) => ({ plan, gain: gains[index] ?? (0 as Db) }));
  return { plan: plansInTurn(turns, gap), starts };
}
