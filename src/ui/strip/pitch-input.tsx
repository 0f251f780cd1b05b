import { useState } from "react";
import type { SoundingMidi } from "../../base/index.ts";
import { readPitch } from "../../theory/index.ts";
import { plainName } from "../words/pitch-names.ts";

/** A small field for one sounding pitch; what cannot be read is put back. */
export function PitchInput(props: {
  readonly label: string;
  readonly pitch: SoundingMidi;
  /** Whether the pitch is the user's own limit rather than the instrument's. */
  readonly isSet: boolean;
  /** The pitch typed; null when the field was emptied. */
  readonly onPitch: (pitch: SoundingMidi | null) => void;
}) {
  const { label, pitch, isSet, onPitch } = props;
  const [text, setText] = useState<string | null>(null);
  const settle = () => {
    if (text === null) return;
    setText(null);
    if (text.trim() === "") return onPitch(null);
    const read = readPitch(text);
    if (read.ok && read.value.sounding !== pitch) onPitch(read.value.sounding);
  };
  return (
    <input
      className={isSet ? "pitch pitch-set" : "pitch"}
      aria-label={label}
      value={text ?? plainName(pitch)}
      maxLength={5}
      spellCheck={false}
      onChange={(event) => setText(event.target.value)}
      onBlur={settle}
      onKeyDown={(event) => {
        if (event.key === "Enter") settle();
      }}
    />
  );
}
