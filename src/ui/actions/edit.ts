import type { AtlasCell } from "../../voicing/index.ts";
import { voicingOfCell, type ReferencePoint } from "../../explore/index.ts";
import { pitchesOf, viewOf } from "../state/view-of.ts";
import { withMove, type MadeBy, type Pitches } from "../state/session.ts";
import { page, session } from "../store.ts";
import { withSigns } from "../words/signs.ts";
import { announce } from "./announce.ts";
import { atlasLink } from "./atlas-link.ts";
import { take } from "./steps.ts";

/** Lowest and highest pitch a token can be taken to, MIDI. */
const reach = { low: 24, high: 96 };

/** What a step on the ladder means: the next ticked note, or a semitone. */
export type NudgeSize = "note" | "semitone";

/** Moves a player up or down; from rest, into the voicing. */
export function nudge(playerId: string, by: 1 | -1, size: NudgeSize): void {
  const { view, answer } = page.getState();
  if (view === null || answer === null) return;
  const now = view.pitches[playerId];
  const { question } = answer.asked;
  const start = now ?? (by > 0 ? Math.min(...view.report.stack) - 1 : question.lead + 1);
  if (!Number.isFinite(start)) return;
  const to = size === "semitone" ? start + by : nextTicked(start, by);
  if (to !== undefined && to >= reach.low && to <= reach.high) move(playerId, to);
}

/** The next pitch up or down whose tone is ticked. */
function nextTicked(from: number, by: 1 | -1): number | undefined {
  const { answer } = page.getState();
  if (answer === null) return undefined;
  const { chord, ticked, lead } = answer.asked.question;
  for (let pitch = from + by; Math.abs(pitch - from) <= 24; pitch += by) {
    const above = (((pitch - chord.rootPitchClass) % 12) + 12) % 12;
    if (ticked.includes(above) || pitch === lead) return pitch;
  }
  return undefined;
}

/** Puts a player on a pitch, or to rest (null), as one step. */
export function move(playerId: string, to: number | null): void {
  const { view } = page.getState();
  if (view === null || (view.pitches[playerId] ?? null) === to) return;
  take(withMove(session(), view.pitches, playerId, to, moveWords(playerId, to)));
  const broken = page
    .getState()
    .view?.report.broken.filter((rule) => rule.playerIds.includes(playerId));
  announce([moveWords(playerId, to), ...(broken ?? []).map((rule) => rule.text)].join(". "));
}

function moveWords(playerId: string, to: number | null): string {
  const { answer } = page.getState();
  const player = answer?.asked.question.players.find((candidate) => candidate.id === playerId);
  const name = player?.abbreviation ?? playerId;
  if (to === null || answer === null) return `${name} rests`;
  return `${name} to ${withSigns(answer.asked.nameOf(to).name)}`;
}

/** Takes a token along under the finger; becomes a step only when it is let go. */
export function dragTo(playerId: string, to: number): void {
  const { view, answer, drag } = page.getState();
  if (view === null || answer === null || view.pitches[playerId] === to) return;
  if (to < reach.low || to > reach.high) return;
  const start = drag?.start ?? view.pitches;
  const pitches: Pitches = { ...start, [playerId]: to };
  page.setState({ drag: { start, pitches }, view: viewOf(answer, session(), pitches, view) });
}

/** Lets a dragged token go. */
export function dropToken(playerId: string): void {
  const { drag } = page.getState();
  const to = drag?.pitches[playerId];
  if (drag === null || to === undefined) return;
  if (drag.start[playerId] === to) return abandonDrag();
  take(withMove(session(), drag.start, playerId, to, moveWords(playerId, to)));
}

/** Gives up a drag: the token goes back. */
export function abandonDrag(): void {
  const { drag, answer } = page.getState();
  if (drag === null || answer === null) return;
  page.setState({ drag: null, view: viewOf(answer, session(), null, null) });
}

function show(by: MadeBy, pitches: Pitches, title: string, step: string): void {
  take({ ...session(), made: { by, pitches, moved: [], from: pitches, title }, step });
}

/** Shows a textbook voicing. */
export function showReference(point: ReferencePoint): void {
  page.setState({ emptyPlace: null });
  const pitches = pitchesOf(point.report.voicing);
  show("book", pitches, point.label, `show ${point.letter}`);
}

/** Shows one of the best other voicings of the texture. */
export function showNext(cell: AtlasCell, title: string): void {
  const { answer } = page.getState();
  if (answer === null) return;
  const pitches = pitchesOf(voicingOfCell(answer.asked.question, cell));
  show("next", pitches, title, `show the ${title}`);
}

/** Shows the map's own answer again. */
export function showBest(): void {
  const { view } = page.getState();
  if (view === null) return;
  take({ ...session(), place: view.report.cell, made: null, step: "show the best here" });
}

/** Asks for the best other voicings of the texture in view. */
export function findNextFew(count = 6): void {
  const { answer, view } = page.getState();
  if (answer === null || view === null) return;
  const key = view.report.cell;
  void atlasLink()
    .nextFew(answer.asked.question, key, answer.map, count)
    .then((cells) => page.setState({ nextFew: { key, cells } }));
}

/** Names the player whose token is chosen. */
export function selectPlayer(playerId: string | null): void {
  page.setState({ selectedPlayer: playerId });
}
