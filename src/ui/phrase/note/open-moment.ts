import { lineUps } from "../../../band/index.ts";
import type { Inquiry } from "../../../explore/index.ts";
import { pitchName } from "../../../theory/index.ts";
import { borrow } from "../../actions/borrow.ts";
import type { MomentNow } from "./moment-now.ts";

/** Opens a moment on the one-chord page, with the voicing it has. */
export function openMoment({ view, asked, voiced, where }: MomentNow): void {
  const { question, moment } = asked;
  const { players, leadPlayer } = question;
  const band = lineUps.find((each) => JSON.stringify(each.players) === JSON.stringify(players));
  const inquiry: Inquiry = {
    chordText: moment.chord.symbol,
    melodyText: pitchName(moment.lead, moment.chord),
    dynamic: question.dynamic,
    lineUpName: band?.name ?? "Band of the phrase",
    players: band?.players ?? players,
    colour: view.work.question.colour,
    toneChoices: {},
    bassSounds: question.bassSounds,
    rules: question.rules,
    strictLowIntervals: question.strictLowIntervals,
    clusterSetting: question.clusterSetting,
    shortNote: question.shortNote,
    homes: question.homes,
    locks: question.locks,
    ...(leadPlayer === undefined ? {} : { leadPlayer }),
  };
  const pitches = Object.fromEntries(
    players.flatMap(({ id }, index) => {
      const pitch = voiced.pitches[index] ?? 0;
      return pitch === 0 ? [] : [[id, pitch]];
    }),
  );
  borrow({ momentId: moment.id, where, lead: moment.lead }, inquiry, pitches);
}
