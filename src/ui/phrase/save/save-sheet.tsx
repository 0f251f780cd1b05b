import { useState } from "react";
import { announce } from "../../actions/announce.ts";
import { Choice } from "../../parts/choice.tsx";
import { PickList } from "../../parts/pick-list.tsx";
import { Sheet } from "../../parts/sheet.tsx";
import { usePhrase } from "../phrase-store.ts";
import { recordPhrase, stopRecording, useRecording } from "./save-phrase-sound.ts";
import { savePhrase, type PhraseFile, type PhraseLook } from "./save-phrase.ts";

const kinds: readonly { kind: PhraseFile; text: string; meaning: string }[] = [
  { kind: "musicxml", text: "MusicXML", meaning: "full score for any notation program" },
  { kind: "mxl", text: "MusicXML, compressed", meaning: "the same, small (.mxl)" },
  { kind: "mid", text: "MIDI file", meaning: "one track a player" },
  { kind: "abc", text: "ABC", meaning: "the melody with its chords, as text" },
];

/** Takes the phrase away in open formats, and as sound. */
export function SaveSheet() {
  const hasView = usePhrase((state) => state.view !== null);
  if (!hasView) return null;
  return (
    <Sheet title="Save the phrase" control="Save">
      <Files />
      <h3 className="sheet-part">Sound</h3>
      <Sound />
    </Sheet>
  );
}

function Files() {
  const [look, setLook] = useState<PhraseLook>({
    pitch: "written",
    timing: "played",
    hasRhythm: false,
  });
  const [outcome, setOutcome] = useState("");
  const save = (kind: PhraseFile) =>
    void savePhrase(kind, look).then((text) => {
      setOutcome(text);
      announce(text);
    });
  return (
    <>
      <div className="save-choices">
        <Choice
          label="Parts in the score"
          options={[
            { value: "written", text: "As players read" },
            { value: "concert", text: "Concert pitch" },
          ]}
          value={look.pitch}
          onChange={(pitch) => setLook({ ...look, pitch })}
        />
        <Choice
          label="Timing of the MIDI file"
          options={[
            { value: "played", text: "MIDI as heard", meaning: "Swung and articulated" },
            { value: "written", text: "MIDI even", meaning: "For a program that swings by itself" },
          ]}
          value={look.timing}
          onChange={(timing) => setLook({ ...look, timing })}
        />
        <Choice
          label="Who is in the files"
          options={[
            { value: "horns", text: "Horns" },
            { value: "all", text: "With rhythm section" },
          ]}
          value={look.hasRhythm ? "all" : "horns"}
          onChange={(value) => setLook({ ...look, hasRhythm: value === "all" })}
        />
      </div>
      <ul className="save-kinds">
        {kinds.map(({ kind, text, meaning }) => (
          <li key={kind}>
            <button type="button" className="act" onClick={() => save(kind)}>
              {text}
            </button>
            <span className="quiet">{meaning}</span>
          </li>
        ))}
      </ul>
      <p data-testid="saved">{outcome}</p>
    </>
  );
}

function Sound() {
  const { now, outcome } = useRecording();
  const players = usePhrase((state) => state.view?.phrase.players) ?? [];
  const [who, setWho] = useState("all");
  const rows = [
    { id: "all", text: "Everybody, with rhythm section" },
    { id: "horns", text: "The horns alone" },
    { id: "each", text: "Every player, a file each" },
    ...players.map(({ id, name }) => ({ id, text: name })),
  ];
  return (
    <div className="save-choices">
      <PickList label="Who" rows={rows} picked={who} onPick={setWho} />
      {now === null ? (
        <button type="button" className="act" onClick={() => void recordPhrase(who)}>
          Save as WAV
        </button>
      ) : (
        <>
          <progress value={now.share} max={1} aria-label={`Making ${now.fileName}`} />
          <button type="button" className="link" onClick={stopRecording}>
            Stop
          </button>
        </>
      )}
      <span>{now === null ? outcome : now.fileName}</span>
    </div>
  );
}
