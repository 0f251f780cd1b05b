import { quantity, type SoundingMidi } from "../../base/index.ts";
import { reportOn, voicingOfCell, type VoicingReport } from "../../explore/index.ts";
import type { AtlasCell, Question, Voicing } from "../../voicing/index.ts";
import type { Answer, InView } from "./page-state.ts";
import { cellAt, nearestCell } from "./places.ts";
import type { Pitches, Session } from "./session.ts";

/**
 * The voicing to show: under the finger, else made, else the map's best at the user's place.
 * @param answer - the question answered
 * @param session - where the user is
 * @param drag - pitches under the finger, or null
 * @param before - what was in view, kept in place while a search is still finding cells
 * @returns the voicing with its report, or null when there is none
 */
export function viewOf(
  answer: Answer,
  session: Session,
  drag: Pitches | null,
  before: InView | null,
): InView | null {
  const { question } = answer.asked;
  const made = drag ?? session.made?.pitches;
  if (made !== undefined)
    return inView(answer, voicingOf(made, question), drag === null ? session.made?.by : "hand");
  const cell = shownCell(answer, session, before);
  return cell === undefined ? null : inView(answer, voicingOfCell(question, cell), "map");
}

function inView(answer: Answer, voicing: Voicing, by: InView["by"] = "hand"): InView {
  const { question } = answer.asked;
  const report = reportOn(voicing, question);
  const bestCell = cellAt(answer.free.cells, report.cell);
  const best = bestCell === undefined ? null : reportOfCell(bestCell, question);
  return { by, pitches: pitchesOf(voicing), voicing, report, best };
}

/** Reports of map cells; a cell belongs to one question only. */
const cellReports = new WeakMap<AtlasCell, VoicingReport>();

function reportOfCell(cell: AtlasCell, question: Question): VoicingReport {
  const known = cellReports.get(cell);
  if (known !== undefined) return known;
  const report = reportOn(voicingOfCell(question, cell), question);
  cellReports.set(cell, report);
  return report;
}

function shownCell(answer: Answer, session: Session, before: InView | null): AtlasCell | undefined {
  const { cells, isWhole } = answer.map;
  const exact = cellAt(cells, session.place);
  if (exact !== undefined) return exact;
  const stay = isWhole || before === null ? undefined : cellAt(cells, before.report.cell);
  return stay ?? nearestCell(cells, session.place);
}

/**
 * A voicing as plain pitches.
 * @param voicing - who sounds what
 * @returns player id → MIDI note number
 */
export function pitchesOf(voicing: Voicing): Pitches {
  return Object.fromEntries(
    voicing.placements.map(({ player, sounding }) => [player.id, sounding]),
  );
}

/**
 * Plain pitches as a voicing of the question's players; pitches of players who are not in the
 * line-up are left out.
 * @param pitches - player id → MIDI note number
 * @param question - gives the players and their order
 * @returns who sounds what
 */
export function voicingOf(pitches: Pitches, question: Pick<Question, "players">): Voicing {
  return {
    placements: question.players.flatMap((player) => {
      const pitch = pitches[player.id];
      return pitch === undefined ? [] : [{ player, sounding: quantity<SoundingMidi>(pitch) }];
    }),
  };
}
