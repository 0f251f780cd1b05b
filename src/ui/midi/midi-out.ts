import type { SoundPlan } from "../../audio/index.ts";
import type { MidiSender } from "../../playback/index.ts";
import { midiMomentsOf, midiPlayersOf, type MidiMoment } from "./midi-notes.ts";
import { midi } from "./midi-state.ts";

let sender: MidiSender | null = null;

/**
 * Chooses where voicings are sent from now on.
 * @param next - an open output, or null for nowhere; the one before falls silent for good
 */
export function sendTo(next: MidiSender | null): void {
  sender?.dispose();
  sender = next;
}

/**
 * Sends every player of a plan on a channel while the plan sounds, where an output is chosen.
 * @param plan - what sounds when, starting now
 * @returns ends the sending; what sounds goes on until something else sounds or `silenceMidi`
 */
export function sendAlong(plan: SoundPlan): () => void {
  const to = sender;
  if (to === null) return () => undefined;
  to.setPlayers(midiPlayersOf(plan));
  const timers = midiMomentsOf(plan).map((moment) =>
    setTimeout(() => sendMoment(to, moment), moment.atMs),
  );
  return () => timers.forEach(clearTimeout);
}

function sendMoment(to: MidiSender, { isFresh, notes }: MidiMoment): void {
  if (to !== sender) return;
  const sent = isFresh ? to.sound(notes) : to.add(notes);
  if (!sent.ok) midi.setState({ problem: sent.problem.message });
}

/** Ends every note at the output. */
export function silenceMidi(): void {
  sender?.stop();
}
