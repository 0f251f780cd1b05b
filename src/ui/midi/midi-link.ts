import type { MidiPorts } from "../../playback/index.ts";
import { announce } from "../actions/announce.ts";
import { midi } from "./midi-state.ts";
import { sendTo } from "./midi-out.ts";
import { takePlayed } from "./take-played.ts";

let ports: MidiPorts | null = null;
let stopHearing: () => void = () => undefined;

/** Asks the browser for the MIDI devices; call it when the user wants them, not before. */
export async function connectMidi(): Promise<void> {
  midi.setState({ phase: "asking", problem: null });
  const { openMidi } = await import("../../playback/index.ts");
  const opened = await openMidi();
  if (!opened.ok) {
    midi.setState({ phase: "off", problem: opened.problem.message });
    return announce(opened.problem.message);
  }
  ports = opened.value;
  ports.onChange(listPorts);
  midi.setState({ phase: "open" });
  listPorts();
  const { inputs, outputs } = midi.getState();
  announce(`MIDI is connected: ${inputs.length} in, ${outputs.length} out.`);
}

/** Devices come and go; one that was chosen and is gone is no longer chosen. */
function listPorts(): void {
  if (ports === null) return;
  const inputs = ports.inputs();
  const outputs = ports.outputs();
  midi.setState({ inputs, outputs });
  const { inputId, outputId } = midi.getState();
  if (inputId !== null && !inputs.some(({ id }) => id === inputId)) lose("input");
  if (outputId !== null && !outputs.some(({ id }) => id === outputId)) lose("output");
}

function lose(which: "input" | "output"): void {
  if (which === "input") chooseInput(null);
  else void chooseOutput(null);
  const problem = `The MIDI ${which} was unplugged; plug it in again and choose it.`;
  midi.setState({ problem });
  announce(problem);
}

/**
 * Plays in from one keyboard, or from none.
 * @param inputId - one of the inputs, or null
 */
export function chooseInput(inputId: string | null): void {
  stopHearing();
  stopHearing = () => undefined;
  midi.setState({ inputId, problem: null, played: null });
  if (ports === null || inputId === null) return;
  stopHearing = ports.hear(takePlayed, {
    inputId,
    onProblem: (problem) => midi.setState({ problem: problem.message }),
  });
}

/**
 * Sends voicings to one output, or to none.
 * @param outputId - one of the outputs, or null
 */
export async function chooseOutput(outputId: string | null): Promise<void> {
  sendTo(null);
  midi.setState({ outputId, problem: null });
  if (ports === null || outputId === null) return;
  const opened = await ports.openSender(outputId, []);
  if (midi.getState().outputId !== outputId) return;
  if (opened.ok) sendTo(opened.value);
  else midi.setState({ outputId: null, problem: opened.problem.message });
}
