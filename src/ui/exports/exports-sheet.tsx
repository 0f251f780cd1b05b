import { useEffect, useState, type ReactNode } from "react";
import { chooseWay, matchLevels } from "../actions/hear.ts";
import { forgetOutcome, saveSound, useSaving, useSavingOutcome } from "../actions/save-sound.ts";
import { useSound } from "../actions/sound-state.ts";
import { SavingLine } from "../hear/saving-line.tsx";
import { Choice, type ChoiceOption } from "../parts/choice.tsx";
import { LevelChoice } from "../parts/level-choice.tsx";
import { SheetFrame } from "../parts/sheet.tsx";
import { usePage } from "../store.ts";
import { listed } from "../words/counts.ts";
import { copyText, saveFile, type FileKind, type PictureStaves } from "./export-files.ts";
import { exportItems, nameWords, type ExportScope } from "./export-items.ts";
import "./exports.css";

/** Voicings as files and as text. */
export function ExportsSheet({ onClose }: { readonly onClose: () => void }) {
  return (
    <SheetFrame
      title="Save or copy"
      open={{
        isOpen: true,
        onChange: (isOpen) => {
          if (!isOpen) onClose();
        },
      }}
    >
      <Exports />
    </SheetFrame>
  );
}

function Exports() {
  const scopes = useScopes();
  const [wanted, setScope] = useState<ExportScope>("chosen");
  const scope = scopes.find(({ value }) => value === wanted)?.value ?? scopes[0]?.value ?? "view";
  const [pitch, setPitch] = useState<"written" | "concert">("written");
  const [staves, setStaves] = useState<PictureStaves>("grand");
  const [said, setSaid] = useState("");
  const save = (kind: FileKind) =>
    void saveFile(kind, exportItems(scope), { pitch, staves }).then(setSaid);
  const hear = () => setSaid("");
  return (
    <>
      <div className="exports-what">
        <Choice label="What" options={scopes} value={scope} onChange={setScope} />
      </div>
      <ul className="exports">
        <Way
          name="MusicXML"
          meaning="For notation programs: a part for each player, a bar for each voicing."
        >
          <Choice
            label="Pitch of the parts"
            options={[
              { value: "written", text: "Transposed" },
              { value: "concert", text: "Concert" },
            ]}
            value={pitch}
            onChange={setPitch}
          />
          <Save what="MusicXML" onPress={() => save("musicxml")} />
        </Way>
        <Way name="MIDI" meaning="For sequencers: a track for each player, a bar for each voicing.">
          <Save what="MIDI" onPress={() => save("mid")} />
        </Way>
        <SoundWay scope={scope} onBegin={hear} />
        <Way name="Picture" meaning="Staves with the players beside each note; fonts are drawn in.">
          <Choice
            label="Staves of the picture"
            options={pictures}
            value={staves}
            onChange={setStaves}
          />
          <Save what="SVG" onPress={() => save("svg")} text="Save SVG" />
          <Save what="PNG" onPress={() => save("png")} text="Save PNG" />
        </Way>
        <Way name="Text" meaning="Notes, players and measures, to be pasted anywhere.">
          <button
            type="button"
            className="act"
            onClick={() => void copyText(exportItems(scope)).then(setSaid)}
          >
            Copy as text
          </button>
        </Way>
      </ul>
      <Outcome said={said} />
    </>
  );
}

const pictures: readonly ChoiceOption<PictureStaves>[] = [
  { value: "grand", text: "Grand staff" },
  { value: "players-concert", text: "Players, concert" },
  { value: "players-written", text: "Players, written" },
];

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

/** What there is to save. */
function useScopes(): readonly ChoiceOption<ExportScope>[] {
  const kept = usePage((state) => state.history.present.kept);
  const compared = usePage((state) => state.history.present.compared);
  const hasView = usePage((state) => state.view !== null);
  const chosen = kept.map(({ letter }) => letter).filter((letter) => compared.includes(letter));
  const chosenText =
    chosen.length > 4 ? `The ${chosen.length} chosen` : `Chosen: ${listed(chosen)}`;
  return [
    ...(hasView ? [{ value: "view" as const, text: "In view" }] : []),
    ...(chosen.length > 0 ? [{ value: "chosen" as const, text: chosenText }] : []),
    ...(kept.length > 0 ? [{ value: "all" as const, text: `All ${kept.length} kept` }] : []),
  ];
}

function Way(props: {
  readonly name: string;
  readonly meaning: string;
  readonly children: ReactNode;
}) {
  return (
    <li className="export">
      <div>
        <h3>{props.name}</h3>
        <p className="quiet">{props.meaning}</p>
      </div>
      <div className="row export-acts">{props.children}</div>
    </li>
  );
}

function Save(props: {
  readonly what: string;
  readonly text?: string;
  readonly onPress: () => void;
}) {
  const { what, text = "Save", onPress } = props;
  return (
    <button type="button" className="act" aria-label={`Save as ${what}`} onClick={onPress}>
      {text}
    </button>
  );
}

const ways = [
  { value: "hit", text: "Hit" },
  { value: "sustained", text: "Sustained" },
  { value: "rolled-from-bottom", text: "Rolled" },
  { value: "section-by-section", text: "Sections" },
] as const;

/** A recording, the voicings in turn. */
function SoundWay(props: { readonly scope: ExportScope; readonly onBegin: () => void }) {
  const { scope, onBegin } = props;
  const saving = useSaving();
  const last = useSound((state) => state.last);
  const isMatched = useSound((state) => state.isMatched);
  const save = () => {
    onBegin();
    const items = exportItems(scope);
    const turns = items.map(({ letter, voicing, question }) => ({
      name: letter,
      voicing,
      question,
    }));
    void saveSound(turns, nameWords(items));
  };
  return (
    <Way name="Sound" meaning="A WAV recording at 48 kHz and 24 bits, one after the other.">
      <Choice label="Way to hear" options={ways} value={last} onChange={chooseWay} />
      <LevelChoice isMatched={isMatched} onMatch={matchLevels} />
      {saving === null ? <Save what="WAV" onPress={save} /> : <SavingLine saving={saving} />}
    </Way>
  );
}
