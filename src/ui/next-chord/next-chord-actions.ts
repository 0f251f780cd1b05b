import { quantity, type Seconds, type SoundingMidi } from "../../base/index.ts";
import { readInquiry, type Inquiry } from "../../explore/index.ts";
import type { Continuation, Speed, StepRequest } from "../../phrase/index.ts";
import { stepSeconds } from "../../phrase/index.ts";
import { readChord, readPitch } from "../../theory/index.ts";
import type { Question, Voicing } from "../../voicing/index.ts";
import { announce } from "../actions/announce.ts";
import { hearJoined, type HeardTurn } from "../actions/hear.ts";
import { sound } from "../actions/sound-state.ts";
import { take } from "../actions/steps.ts";
import type { Answer, InView } from "../state/page-state.ts";
import { withKept, type Pitches } from "../state/session.ts";
import { voicingOf } from "../state/view-of.ts";
import { page, session } from "../store.ts";
import { counted } from "../words/counts.ts";
import { chordWithSigns } from "../words/signs.ts";
import { nextChord } from "./next-chord-store.ts";
import type { NextReply, NextRequest } from "./next-chord-messages.ts";
import { chordSuggestions, melodySuggestions } from "./suggestions.ts";

let worker: Worker | null = null;
let lastId = 0;

/**
 * Begins with the voicing in view, and again when another one comes into view: under the same chord
 * what was typed stays, so that one texture after the other can be judged in the same motion.
 */
export function beginNext(): void {
  if (nextChord.getState().meantFor === meantNow()) ask();
  else suggestAnew();
}

/** What the other chord is meant for: it would make little sense beside another chord. */
function meantNow(): string {
  const { chordText, melodyText } = session().inquiry;
  return [chordText, melodyText, nextChord.getState().isAfter].join(" ");
}

/** Ends the work and lets go of its worker. */
export function leaveNext(): void {
  worker?.terminate();
  worker = null;
  nextChord.setState({ found: [], answered: null });
}

/** Turns round: into the chord after, or out of the chord before. */
export function turnRound(isAfter: boolean): void {
  nextChord.setState({ isAfter });
  suggestAnew();
}

/** A chord as typed or picked. */
export function typeNextChord(chordText: string): void {
  nextChord.setState({ chordText });
  const { melodyText } = nextChord.getState();
  if (melodyText.trim() === "") typeNextMelody(nearestMelody(chordText));
  else ask();
}

/** Picks a suggested chord, with the nearest melody note that belongs to it. */
export function pickNextChord(chordText: string): void {
  nextChord.setState({ chordText, melodyText: nearestMelody(chordText) });
  ask();
}

/** A melody note as typed or picked. */
export function typeNextMelody(melodyText: string): void {
  nextChord.setState({ melodyText });
  ask();
}

/** How much time the step has. */
export function paceStep(speed: Speed): void {
  nextChord.setState({ speed });
  ask();
}

/** Shows one of the continuations; what sounds becomes this one. */
export function pickContinuation(picked: Continuation["id"]): void {
  nextChord.setState({ picked });
  if (sound.getState().phase !== "silent") void hearStep();
}

/** The first suggestion for the voicing in view. */
function suggestAnew(): void {
  const { answer } = page.getState();
  if (answer === null) return;
  const { isAfter } = nextChord.getState();
  const [first] = chordSuggestions(answer.asked.question.chord, isAfter);
  if (first === undefined) return;
  nextChord.setState({ meantFor: meantNow() });
  pickNextChord(first.text);
}

function nearestMelody(chordText: string): string {
  const { answer } = page.getState();
  if (answer === null) return "";
  const { lead } = answer.asked.question;
  return melodySuggestions(chordText, lead)[0]?.text ?? nextChord.getState().melodyText;
}

/** Asks for continuations, or says why it cannot; what was found last stays. */
function ask(): void {
  const { view, answer } = page.getState();
  const { chordText, melodyText } = nextChord.getState();
  if (view === null || answer === null) return;
  const chord = readChord(chordText);
  const lead = readPitch(melodyText);
  const id = (lastId += 1);
  if (!chord.ok) return nextChord.setState({ problem: chord.problem.message });
  if (!lead.ok) return nextChord.setState({ problem: lead.problem.message });
  const held = readPitch(answer.asked.inquiry.melodyText);
  if (!held.ok) return nextChord.setState({ problem: held.problem.message });
  const message: NextRequest = {
    id,
    request: {
      ...situationOf(answer, view),
      held: { chordText: answer.asked.inquiry.chordText, lead: held.value.spelled },
      other: { chordText, lead: lead.value.spelled },
    },
  };
  theWorker().postMessage(message);
}

function situationOf(answer: Answer, view: InView): Omit<StepRequest, "held" | "other"> {
  const { question, inquiry } = answer.asked;
  const { isAfter, speed } = nextChord.getState();
  return {
    pitches: Object.fromEntries(
      Object.entries(view.pitches).map(([id, at]) => [id, quantity<SoundingMidi>(at)]),
    ),
    isOtherAfter: isAfter,
    speed,
    players: question.players,
    dynamic: question.dynamic,
    colour: inquiry.colour,
    bassSounds: inquiry.bassSounds,
    rules: inquiry.rules,
    strictLowIntervals: inquiry.strictLowIntervals,
    clusterSetting: inquiry.clusterSetting,
    homes: inquiry.homes,
    resting: inquiry.locks
      .filter(({ sounding }) => sounding === "rest")
      .map(({ playerId }) => playerId),
    ...(inquiry.leadPlayer === undefined ? {} : { leadPlayer: inquiry.leadPlayer }),
  };
}

function theWorker(): Worker {
  if (worker !== null) return worker;
  worker = new Worker(new URL("./next-chord-worker.ts", import.meta.url), { type: "module" });
  worker.addEventListener("message", ({ data }: MessageEvent<NextReply>) => hear(data));
  return worker;
}

function hear(reply: NextReply): void {
  if (reply.id !== lastId) return;
  if (!reply.ok) return nextChord.setState({ problem: reply.message });
  const { chordText, melodyText, picked } = nextChord.getState();
  const { found } = reply;
  const isThere = found.some(({ id }) => id === picked);
  nextChord.setState({
    found,
    problem: "",
    answered: { chordText, melodyText },
    picked: isThere ? picked : "smoothest",
  });
  announce(`${counted(found.length, "continuation")} found.`);
  if (sound.getState().phase !== "silent") void hearStep();
}

/** A voicing of the step with what surrounds it. */
export interface StepSide {
  readonly voicing: Voicing;
  readonly question: Question;
  readonly inquiry: Inquiry;
  readonly pitches: Pitches;
}

/** Both voicings of the step, the one in view and the other. */
export interface Step {
  readonly held: StepSide;
  readonly other: StepSide;
  readonly continuation: Continuation;
  readonly isAfter: boolean;
}

/**
 * The step as it stands.
 * @returns null while nothing is found
 */
export function stepNow(): Step | null {
  const { view, answer } = page.getState();
  const { found, picked, answered, isAfter } = nextChord.getState();
  const continuation = found.find(({ id }) => id === picked);
  if (view === null || answer === null || continuation === undefined || answered === null)
    return null;
  const { question, inquiry } = answer.asked;
  const other = otherInquiry(inquiry, answered);
  const reading = readInquiry(other);
  if (!reading.ok) return null;
  const pitches = Object.fromEntries(
    question.players.flatMap(({ id }, index) => {
      const pitch = continuation.pitches[index] ?? 0;
      return pitch === 0 ? [] : [[id, pitch] as const];
    }),
  );
  return {
    held: { voicing: view.voicing, question, inquiry, pitches: view.pitches },
    other: {
      voicing: voicingOf(pitches, reading.question),
      question: reading.question,
      inquiry: other,
      pitches,
    },
    continuation,
    isAfter,
  };
}

/** What the other voicing answers: what was ticked or fixed for this chord stays with this chord. */
function otherInquiry(
  inquiry: Inquiry,
  { chordText, melodyText }: { readonly chordText: string; readonly melodyText: string },
): Inquiry {
  const doubled = ["octaveBelowPlayer", "octaveAbovePlayer"];
  const kept = Object.entries(inquiry).filter(([key]) => !doubled.includes(key));
  const rest = Object.fromEntries(kept) as unknown as Inquiry;
  return { ...rest, chordText, melodyText, toneChoices: {}, locks: [] };
}

/** Times that a looped step is played. */
const rounds = 16;
/** How long the second chord stays, seconds. */
const arrival = 1.6;

/** Sounds one voicing into the other, once or over and over. */
export async function hearStep(): Promise<void> {
  const step = stepNow();
  if (step === null) return;
  const { speed, isLooped } = nextChord.getState();
  const [first, second] = step.isAfter ? [step.held, step.other] : [step.other, step.held];
  const once: readonly HeardTurn[] = [
    { name: "first", ...sounding(first), seconds: stepSeconds[speed] as Seconds },
    { name: "second", ...sounding(second), seconds: arrival as Seconds },
  ];
  await hearJoined(isLooped ? Array.from({ length: rounds }, () => once).flat() : once);
}

function sounding({ voicing, question }: StepSide): Pick<HeardTurn, "voicing" | "question"> {
  return { voicing, question };
}

/** Plays over and over, or once, from now on; what sounds follows. */
export function loopStep(isLooped: boolean): void {
  nextChord.setState({ isLooped });
  if (sound.getState().phase !== "silent") void hearStep();
}

/** Keeps the other voicing, with the chord and melody note it answers. */
export function keepOther(): void {
  const step = stepNow();
  if (step === null) return;
  const { held, other, continuation, isAfter } = step;
  const name = `${continuation.label.split(",")[0] ?? ""} ${isAfter ? "from" : "into"} ${chordWithSigns(held.question.chord.display)}`;
  take(withKept(session(), other.pitches, name, other.inquiry));
  announce(`Kept as ${session().kept.at(-1)?.letter ?? ""}.`);
}
