import type { MidiPortInfo } from "../../playback/index.ts";
import { PickList } from "../parts/pick-list.tsx";
import { Sheet } from "../parts/sheet.tsx";
import { WarnSign } from "../parts/warn-sign.tsx";
import { chooseInput, chooseOutput, connectMidi } from "./midi-link.ts";
import { useMidi } from "./midi-state.ts";

/** A MIDI keyboard to play voicings in, and an output to send them to. */
export function MidiSheet() {
  const phase = useMidi((state) => state.phase);
  const problem = useMidi((state) => state.problem);
  return (
    <Sheet title="MIDI keyboard and out" control="MIDI" controlLabel="MIDI keyboard and out">
      <p className="sheet-lead">
        Play one note and it is the melody; play three or more together and they stand on the
        ladder, given to the players from the top down. What you hear can go to a MIDI output as
        well, each player on a channel. Escape silences it.
      </p>
      {problem !== null && (
        <p className="row problem" role="alert">
          <WarnSign /> {problem}
        </p>
      )}
      {phase === "open" ? (
        <Ports />
      ) : (
        <button
          type="button"
          className="act"
          disabled={phase === "asking"}
          onClick={() => void connectMidi()}
        >
          {phase === "asking" ? "Waiting for the browser’s permission …" : "Connect MIDI"}
        </button>
      )}
    </Sheet>
  );
}

const none = "none";

function Ports() {
  const inputs = useMidi((state) => state.inputs);
  const outputs = useMidi((state) => state.outputs);
  const inputId = useMidi((state) => state.inputId);
  const outputId = useMidi((state) => state.outputId);
  const played = useMidi((state) => state.played);
  return (
    <div className="midi-ports">
      <PortPick
        label="Keyboard"
        noneText={inputs.length === 0 ? "no keyboard is plugged in" : "none"}
        ports={inputs}
        picked={inputId}
        onPick={chooseInput}
      />
      <PortPick
        label="Send to"
        noneText={outputs.length === 0 ? "no output is there" : "nowhere"}
        ports={outputs}
        picked={outputId}
        onPick={(id) => void chooseOutput(id)}
      />
      {inputId !== null && (
        <p data-testid="played" aria-live="off">
          {played ?? "Listening: play something."}
        </p>
      )}
    </div>
  );
}

function PortPick(props: {
  readonly label: string;
  readonly noneText: string;
  readonly ports: readonly MidiPortInfo[];
  readonly picked: string | null;
  readonly onPick: (id: string | null) => void;
}) {
  const { label, noneText, ports, picked, onPick } = props;
  const rows = [{ id: none, text: noneText }, ...ports.map(({ id, name }) => ({ id, text: name }))];
  return (
    <PickList
      label={label}
      rows={rows}
      picked={picked ?? none}
      onPick={(id) => onPick(id === none ? null : id)}
    />
  );
}
