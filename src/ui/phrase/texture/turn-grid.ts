import type { Player, SectionId } from "../../../band/index.ts";
import { quantity } from "../../../base/index.ts";
import { playsAt, type Turn } from "../../../phrase/index.ts";
import {
  barCount,
  barLength,
  barStart,
  type Divisions,
  type Melody,
} from "../../../theory/index.ts";

/** A bar of the phrase, the pickup being 0. */
export interface GridBar {
  readonly number: number;
  readonly from: Divisions;
  readonly to: Divisions;
}

/** Bars of a melody, repeats written out. */
export function gridBars(melody: Melody): readonly GridBar[] {
  const bars: GridBar[] = [];
  for (let number = melody.pickup > 0 ? 0 : 1; number <= barCount(melody); number += 1) {
    const from = barStart(melody, number);
    const to = number === 0 ? melody.pickup : quantity<Divisions>(from + barLength(melody));
    bars.push({ number, from, to });
  }
  return bars;
}

/**
 * Who plays when, with one more decision taken, written as the rests it comes to: a section at a
 * time where all of it rests, else player by player.
 * @param players - the band
 * @param turns - as it stands
 * @param bars - bars of the phrase
 * @param change - who plays or rests in which bar
 * @returns the turns
 */
export function withTurn(
  players: readonly Player[],
  turns: readonly Turn[],
  bars: readonly GridBar[],
  change: { readonly who: readonly string[]; readonly bar: number; readonly plays: boolean },
): readonly Turn[] {
  const rests = (player: Player, { number, from }: GridBar): boolean =>
    number === change.bar && change.who.includes(player.id)
      ? !change.plays
      : !playsAt(player, from, turns);
  const sections = [...new Set(players.map(({ section }) => section))];
  return sections.flatMap((section) => {
    const own = players.filter((player) => player.section === section);
    const whole = bars.map((bar) => own.every((player) => rests(player, bar)));
    return [
      ...restsOf(section, bars, (_, index) => whole[index] === true),
      ...own.flatMap((player) =>
        restsOf(player.id, bars, (bar, index) => whole[index] !== true && rests(player, bar)),
      ),
    ];
  });
}

/** Neighbouring bars of rest are one. */
function restsOf(
  who: string | SectionId,
  bars: readonly GridBar[],
  isRest: (bar: GridBar, index: number) => boolean,
): readonly Turn[] {
  const turns: Turn[] = [];
  bars.forEach((bar, index) => {
    if (!isRest(bar, index)) return;
    const last = turns.at(-1);
    if (last?.to === bar.from) turns[turns.length - 1] = { ...last, to: bar.to };
    else turns.push({ who, from: bar.from, to: bar.to, plays: false });
  });
  return turns;
}
