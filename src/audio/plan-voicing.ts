import type { Db } from "../base/index.ts";
import type { Voicing } from "../voicing/index.ts";
import { bassEvents, drumEvents, pianoEvents } from "./accompaniment.ts";
import { curveOf, soundingTime, timedPlacements } from "./manners.ts";
import type { PlanOptions } from "./plan-options.ts";
import { seatProblem } from "./move-seat.ts";
import { usualSeats } from "./seating.ts";
import type { SoundEvent, SoundPlan, StageSeat } from "./sound-plan-types.ts";

/** Level of the players who are not to stand out. */
const OTHERS_DB = -12;

/**
 * Says what sounds when, to hear one voicing.
 * @param voicing - who sounds what
 * @param options - dynamic, manner, time, accompaniment, who stands out, seats
 * @returns a plan; without events when nobody sounds
 * @throws RangeError when the time is not above 0 or a seat given lies off the stage
 * @example planVoicing(voicing, { dynamic: "mf", manner: "sustained", seconds: 3 as Seconds })
 */
export function planVoicing(voicing: Voicing, options: PlanOptions): SoundPlan {
  if (!(options.seconds > 0))
    throw new RangeError(`a voicing must sound for more than 0 seconds, got ${options.seconds}`);
  const events = [...hornEvents(voicing, options), ...accompaniment(voicing, options)].sort(
    (a, b) => a.onset - b.onset,
  );
  return { events, seats: seatsOf(voicing, options, events), seed: options.seed ?? 1 };
}

function hornEvents(voicing: Voicing, options: PlanOptions): readonly SoundEvent[] {
  const { manner, dynamic, seconds } = options;
  return timedPlacements(voicing.placements, manner, seconds).flatMap(
    ({ placement: { player, sounding }, onset, duration }) => {
      const trim = trimOf(player.id, options);
      if (trim === "silent") return [];
      const { instrument, mute } = player;
      const curve = curveOf(manner, dynamic, duration);
      const sound = { kind: "pitched", instrument, sounding, mute } as const;
      return [{ playerId: player.id, sound, onset, duration, curve, trim }];
    },
  );
}

function trimOf(playerId: string, options: PlanOptions): Db | "silent" {
  const { soloPlayerIds = [], othersDb = OTHERS_DB as Db } = options;
  return soloPlayerIds.length === 0 || soloPlayerIds.includes(playerId) ? (0 as Db) : othersDb;
}

/** Bass, piano and drums step back with the others when somebody is to stand out. */
function accompaniment(voicing: Voicing, options: PlanOptions): readonly SoundEvent[] {
  const { chord, dynamic, manner } = options;
  const trim = trimOf("", options);
  if (trim === "silent" || voicing.placements.length === 0) return [];
  const how = { seconds: soundingTime(manner, options.seconds), dynamic, trim };
  return [
    ...(chord && options.withBass ? bassEvents(chord, how) : []),
    ...(chord && options.withPiano ? pianoEvents(chord, how) : []),
    ...(options.withDrums ? drumEvents(how) : []),
  ];
}

function seatsOf(
  voicing: Voicing,
  options: PlanOptions,
  events: readonly SoundEvent[],
): readonly StageSeat[] {
  const moved = new Map(options.seats?.map((seat) => [seat.playerId, onStage(seat)]));
  const sounding = new Set(events.map(({ playerId }) => playerId));
  return usualSeats(voicing.placements.map(({ player }) => player))
    .filter(({ playerId }) => sounding.has(playerId))
    .map((seat) => moved.get(seat.playerId) ?? seat);
}

function onStage(seat: StageSeat): StageSeat {
  const problem = seatProblem(seat);
  if (problem) throw new RangeError(`${seat.playerId}: ${problem.problem.message}`);
  return seat;
}
