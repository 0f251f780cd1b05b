import { useEffect, useState } from "react";
import { forgetOutcome, useSaving, useSavingOutcome } from "../actions/save-sound.ts";
import { Save, Way } from "../exports/way.tsx";
import { SavingLine } from "../hear/saving-line.tsx";
import { Choice } from "../parts/choice.tsx";
import { PickList } from "../parts/pick-list.tsx";
import { SheetFrame } from "../parts/sheet.tsx";
import type { PhraseInView } from "../phrase/phrase-store.ts";
import {
  saveEachPlayer,
  savePhraseFile,
  savePhraseSound,
  type PhraseFileWish,
} from "./phrase-files.ts";
import "../exports/exports.css";

/** A voiced phrase as files for notation programs, sequencers and ears. */
export function PhraseFilesSheet(props: {
  readonly view: PhraseInView;
  readonly onClose: () => void;
}) {
  const { view, onClose } = props;
  return (
    <SheetFrame
      title="Save phrase"
      open={{
        isOpen: true,
        onChange: (isOpen) => {
          if (!isOpen) onClose();
        },
      }}
    >
      <PhraseFiles view={view} />
    </SheetFrame>
  );
}

const everybody = "everybody";

function PhraseFiles({ view }: { readonly view: PhraseInView }) {
  const [wish, setWish] = useState<PhraseFileWish>({
    only: null,
    hasRhythm: true,
    pitch: "written",
    timing: "played",
  });
  const [said, setSaid] = useState("");
  const change = (part: Partial<PhraseFileWish>) => setWish({ ...wish, ...part });
  const save = (kind: "musicxml" | "mxl" | "mid") => setSaid(savePhraseFile(kind, view, wish));
  return (
    <>
      <WhoChoice view={view} wish={wish} onChange={change} />
      <ul className="exports">
        <Way
          name="MusicXML"
          meaning="For notation programs: score with chords, dynamics, marks and tempo."
        >
          <Choice
            label="Pitch of the parts"
            options={[
              { value: "written", text: "Transposed" },
              { value: "concert", text: "Concert" },
            ]}
            value={wish.pitch}
            onChange={(pitch) => change({ pitch })}
          />
          <Save what="MusicXML" onPress={() => save("musicxml")} />
          <Save what="compressed MusicXML" text="Save compressed" onPress={() => save("mxl")} />
        </Way>
        <Way name="MIDI" meaning="For sequencers: a track for each player, changes as markers.">
          <Choice
            label="Timing"
            options={[
              { value: "played", text: "As played" },
              { value: "written", text: "Even eighths", meaning: "Full lengths, as written." },
            ]}
            value={wish.timing}
            onChange={(timing) => change({ timing })}
          />
          <Save what="MIDI" onPress={() => save("mid")} />
        </Way>
        <SoundWay view={view} wish={wish} onBegin={() => setSaid("")} />
      </ul>
      <Outcome said={said} />
    </>
  );
}

/** Everybody, with or without the rhythm section, or one player. */
function WhoChoice(props: {
  readonly view: PhraseInView;
  readonly wish: PhraseFileWish;
  readonly onChange: (part: Partial<PhraseFileWish>) => void;
}) {
  const { view, wish, onChange } = props;
  return (
    <div className="row exports-what">
      <PickList
        label="Who"
        rows={[
          { id: everybody, text: "Everybody" },
          ...view.phrase.players.map(({ id, name }) => ({ id, text: name })),
        ]}
        picked={wish.only ?? everybody}
        onPick={(id) => onChange({ only: id === everybody ? null : id })}
      />
      {wish.only === null && (
        <Choice
          label="Rhythm section"
          options={[
            { value: "with", text: "With rhythm section" },
            { value: "without", text: "Horns only" },
          ]}
          value={wish.hasRhythm ? "with" : "without"}
          onChange={(value) => onChange({ hasRhythm: value === "with" })}
        />
      )}
    </div>
  );
}

/** A recording of the whole, or one of each player. */
function SoundWay(props: {
  readonly view: PhraseInView;
  readonly wish: PhraseFileWish;
  readonly onBegin: () => void;
}) {
  const { view, wish, onBegin } = props;
  const saving = useSaving();
  const begin = (save: (view: PhraseInView, wish: PhraseFileWish) => void) => {
    onBegin();
    save(view, wish);
  };
  return (
    <Way name="Sound" meaning="WAV recordings at 48 kHz and 24 bits, all from the first beat.">
      {saving === null ? (
        <>
          <Save what="WAV" onPress={() => begin(savePhraseSound)} />
          {wish.only === null && (
            <Save
              what="WAV, a file for each player"
              text="Save each player"
              onPress={() => begin(saveEachPlayer)}
            />
          )}
        </>
      ) : (
        <SavingLine saving={saving} />
      )}
    </Way>
  );
}

/** What became of the last press, to be read and heard. */
function Outcome({ said }: { readonly said: string }) {
  const ofSound = useSavingOutcome();
  useEffect(() => forgetOutcome, []);
  return (
    <p role="status" className="exports-outcome" data-testid="outcome">
      {said === "" ? ofSound : said}
    </p>
  );
}
