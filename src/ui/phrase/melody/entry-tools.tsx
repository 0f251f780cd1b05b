import { useEffect, type ReactNode } from "react";
import { Choice } from "../../parts/choice.tsx";
import { midi, useMidi } from "../../midi/midi-state.ts";
import { useEntry, values, entry, type Value } from "./entry-state.ts";
import {
  alter,
  chooseLength,
  enterMidi,
  enterRest,
  enterTie,
  removeNote,
  stepOctave,
} from "./entry-moves.ts";
import { accidentals, flags, glyphs } from "./staff-signs.ts";

const names: Readonly<Record<Value, string>> = Object.freeze({
  1: "Whole note",
  2: "Half note",
  4: "Quarter note",
  8: "Eighth note",
  16: "Sixteenth note",
});

/** What the next note is, and what can be done with the one at the cursor. */
export function EntryTools() {
  const value = useEntry((state) => state.value);
  const isDotted = useEntry((state) => state.isDotted);
  const isTriplet = useEntry((state) => state.isTriplet);
  return (
    <div className="entry-tools" role="group" aria-label="Note entry">
      <Choice
        label="Length of the note"
        className="choice entry-lengths"
        options={values.map((each) => ({
          value: String(each),
          text: <ValueSign value={each} />,
          meaning: `${names[each]}; key ${each === 16 ? 6 : each}`,
        }))}
        value={String(value)}
        onChange={(next) => chooseLength({ value: Number(next) as Value, isDotted: false })}
      />
      <Toggle
        name="Dotted"
        hint="."
        isOn={isDotted}
        onPress={() => chooseLength({ isDotted: !isDotted })}
      />
      <Toggle
        name="Triplet"
        hint="3"
        isOn={isTriplet}
        onPress={() => chooseLength({ isTriplet: !isTriplet, isDotted: false })}
      />
      <NoteTools />
      <Playing />
    </div>
  );
}

/** What can be done with the note at the cursor. */
function NoteTools() {
  return (
    <>
      <span className="entry-group">
        <Tool name="Sharper" hint="+" onPress={() => alter(1)}>
          <span className="music-text">{accidentals["sharp"]}</span>
        </Tool>
        <Tool name="Natural" hint="=" onPress={() => alter(0)}>
          <span className="music-text">{accidentals["natural"]}</span>
        </Tool>
        <Tool name="Flatter" hint="-" onPress={() => alter(-1)}>
          <span className="music-text">{accidentals["flat"]}</span>
        </Tool>
      </span>
      <span className="entry-group">
        <Tool name="Octave up" hint="Page up" onPress={() => stepOctave(1)}>
          8va
        </Tool>
        <Tool name="Octave down" hint="Page down" onPress={() => stepOctave(-1)}>
          8vb
        </Tool>
      </span>
      <span className="entry-group">
        <Tool name="Rest" hint="R" onPress={enterRest}>
          Rest
        </Tool>
        <Tool name="Tie" hint="T" onPress={enterTie}>
          Tie
        </Tool>
        <Tool name="Take away" hint="Delete" onPress={() => removeNote(false)}>
          Take away
        </Tool>
        <Tool name="Chord" hint="H" onPress={() => entry.setState(({ at }) => ({ chordAt: at }))}>
          Chord
        </Tool>
      </span>
    </>
  );
}

function ValueSign({ value }: { readonly value: Value }) {
  const head = value === 1 ? glyphs.headWhole : value === 2 ? glyphs.headHalf : glyphs.headBlack;
  const flag = flags[value]?.[0];
  return (
    <>
      <svg width="18" height="26" viewBox="0 0 18 26" aria-hidden="true">
        <text className="music small-music" x={2} y={22}>
          {head}
        </text>
        {value > 1 && <line className="stem" x1={8.4} x2={8.4} y1={22} y2={4} />}
        {flag !== undefined && (
          <text className="music small-music" x={8} y={4}>
            {flag}
          </text>
        )}
      </svg>
      <span className="unseen">{names[value]}</span>
    </>
  );
}

function Tool(props: {
  readonly name: string;
  readonly hint: string;
  readonly onPress: () => void;
  readonly children: ReactNode;
}) {
  const { name, hint, onPress, children } = props;
  return (
    <button
      type="button"
      className="entry-tool"
      aria-label={name}
      title={`${name}; key ${hint}`}
      onClick={onPress}
    >
      {children}
    </button>
  );
}

function Toggle(props: {
  readonly name: string;
  readonly hint: string;
  readonly isOn: boolean;
  readonly onPress: () => void;
}) {
  const { name, hint, isOn, onPress } = props;
  return (
    <button
      type="button"
      className="entry-tool"
      aria-pressed={isOn}
      title={`${name}; key ${hint}`}
      onClick={onPress}
    >
      {name}
    </button>
  );
}

/** With a MIDI keyboard connected, each key played goes on the staff. */
function Playing() {
  const inputId = useMidi((state) => state.inputId);
  useEffect(() => {
    midi.setState({ taker: enterMidi });
    return () => midi.setState({ taker: null });
  }, []);
  if (inputId === null) return null;
  return <span className="quiet">What you play goes on the staff.</span>;
}
