import type { Count } from "../base/index.ts";
import type { MidiPlayer } from "./midi-types.ts";

const CHANNELS = 16;
/** What arrives here sounds as drums. */
const PERCUSSION = 10;

/** A channel, the sound it has and whoever plays on it. */
interface Channel {
  readonly number: Count;
  readonly programme: Count;
  readonly players: readonly string[];
}

/** Where each player is sent. */
export interface ChannelPlan {
  /** Channel of each player, 1 to 16 and never 10. */
  readonly channels: ReadonlyMap<string, Count>;
  /** Programme of each channel in use, 1 to 128. */
  readonly programmes: ReadonlyMap<Count, Count>;
}

/**
 * Gives out channels: one a player, in order, whoever plays at the moment. From the sixteenth
 * player on they are shared, with players of the same programme where there are any.
 * @param players - the whole line-up, in order
 * @returns channels and programmes
 * @throws RangeError for a programme outside 1 to 128, or a player named twice
 * @source General MIDI System Level 1 (channel 10 is percussion)
 */
export function planChannels(players: readonly MidiPlayer[]): ChannelPlan {
  const plan: Channel[] = [];
  const channels = new Map<string, Count>();
  for (const { channelKey, programme } of players) {
    if (!Number.isInteger(programme) || programme < 1 || programme > 128)
      throw new RangeError(`a programme must be a whole number from 1 to 128, got ${programme}`);
    if (channels.has(channelKey))
      throw new RangeError(`a player must be named once, got ${channelKey} twice`);
    const index = plan.length < CHANNELS - 1 ? plan.length : sharedIndex(plan, programme);
    const number = index + 1 < PERCUSSION ? index + 1 : index + 2;
    const before = plan[index] ?? { programme, players: [] };
    plan[index] = { ...before, number, players: [...before.players, channelKey] };
    channels.set(channelKey, number);
  }
  return { channels, programmes: new Map(plan.map((each) => [each.number, each.programme])) };
}

/** The channel with the fewest players among those of a programme, or among all. */
function sharedIndex(plan: readonly Channel[], programme: Count): Count {
  const alike = plan.filter((each) => each.programme === programme);
  const choice = alike.length > 0 ? alike : plan;
  const fewest = Math.min(...choice.map(({ players }) => players.length));
  return plan.findIndex((each) => choice.includes(each) && each.players.length === fewest);
}
