import { useId, useState } from "react";
import { dynamics, lineUps, type Dynamic } from "../../band/index.ts";
import { quantity } from "../../base/index.ts";
import type { PhraseWork } from "../../explore/index.ts";
import { keyText, type Melody, type MelodyStyle } from "../../theory/index.ts";
import { endTyping } from "../actions/steps.ts";
import { PickList } from "../parts/pick-list.tsx";
import { usePage } from "../store.ts";
import { Brand } from "../strip/question-strip.tsx";
import { StripTools } from "../strip/strip-tools.tsx";
import { counted } from "../words/counts.ts";
import { withSigns } from "../words/signs.ts";
import { askMelody, askPhrase } from "./phrase-actions.ts";
import { keyNamed, keyNames, minorKeyNames, withMetre } from "./melody-frame.ts";
import { PhraseRules } from "./phrase-rules.tsx";
import { playersTaken } from "./players.ts";

/** What holds for the whole phrase: title, tempo, style, metre, key, dynamic, band, rules. */
export function PhraseHead() {
  const work = usePage((state) => state.history.present.phrase);
  return (
    <header className="strip phrase-strip" aria-label="Phrase">
      <div className="strip-row">
        <div className="strip-part strip-ask">
          <Brand />
          {work !== null && <Title melody={work.question.melody} />}
        </div>
        <div className="strip-part strip-band">{work !== null && <Fields work={work} />}</div>
        <StripTools>{work !== null && <PhraseRules question={work.question} />}</StripTools>
      </div>
    </header>
  );
}

function Title({ melody }: { readonly melody: Melody }) {
  const id = useId();
  return (
    <>
      <div className="field field-title">
        <label htmlFor={id}>Title</label>
        <input
          id={id}
          className="loud"
          value={melody.title}
          maxLength={120}
          autoComplete="off"
          onChange={({ target }) =>
            askMelody({ ...melody, title: target.value }, "title", "phrase-title")
          }
          onBlur={endTyping}
        />
      </div>
      <Tempo melody={melody} />
    </>
  );
}

const tempoEnds = { low: 20, high: 400 };

/** Quarter notes a minute; half-typed numbers wait until they make sense. */
function Tempo({ melody }: { readonly melody: Melody }) {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const isWrong = typed !== null && !isTempo(typed);
  return (
    <div className={isWrong ? "field field-tempo field-bad" : "field field-tempo"}>
      <label htmlFor={id}>Tempo</label>
      <input
        id={id}
        inputMode="decimal"
        autoComplete="off"
        value={typed ?? String(melody.tempo)}
        aria-invalid={isWrong}
        title={`Quarter notes a minute, ${tempoEnds.low} to ${tempoEnds.high}`}
        onChange={({ target }) => {
          setTyped(target.value);
          if (isTempo(target.value))
            askMelody(
              { ...melody, tempo: quantity<Melody["tempo"]>(Number(target.value)) },
              `tempo ${target.value}`,
              "phrase-tempo",
            );
        }}
        onBlur={() => {
          setTyped(null);
          endTyping();
        }}
      />
    </div>
  );
}

function isTempo(text: string): boolean {
  const value = Number(text);
  return text.trim() !== "" && value >= tempoEnds.low && value <= tempoEnds.high;
}

const styles: readonly { id: MelodyStyle; text: string; detail: string }[] = [
  { id: "swing", text: "Swing", detail: "eighths swing as the tempo lets them" },
  { id: "straight", text: "Straight", detail: "even eighths" },
  { id: "ballad", text: "Ballad", detail: "slow, two beats in the bass" },
  { id: "latin", text: "Latin", detail: "even eighths over a bass of fifths" },
];

const metres = ["4/4", "3/4", "2/4", "5/4", "6/8", "12/8", "2/2", "7/8"];

function Fields({ work }: { readonly work: PhraseWork }) {
  const { melody } = work.question;
  const { beats, beatType } = melody.metre;
  const metre = `${beats}/${beatType}`;
  const own = metres.includes(metre) ? metres : [metre, ...metres];
  return (
    <>
      <PickList
        className="field field-style"
        label="Style"
        rows={styles}
        picked={melody.style}
        onPick={(id) => askMelody({ ...melody, style: id as MelodyStyle }, `style ${id}`)}
      />
      <PickList
        className="field field-metre"
        label="Metre"
        rows={own.map((id) => ({ id, text: id }))}
        picked={metre}
        onPick={(id) => {
          const [above = 4, below = 4] = id.split("/").map(Number);
          askMelody(withMetre(melody, { beats: above, beatType: below }), `metre ${id}`);
        }}
      />
      <KeyPick melody={melody} />
      <DynamicOfPhrase work={work} />
      <BandPick work={work} />
    </>
  );
}

function KeyPick({ melody }: { readonly melody: Melody }) {
  const names = [
    ...keyNames.map((name) => `${name} major`),
    ...minorKeyNames.map((name) => `${name} minor`),
  ];
  return (
    <PickList
      className="field field-key"
      label="Key"
      rows={names.map((id) => ({ id, text: withSigns(id) }))}
      picked={keyText(melody.key)}
      onPick={(id) => askMelody({ ...melody, key: keyNamed(id) }, `key ${withSigns(id)}`)}
    />
  );
}

/** The dynamic the phrase begins with; changes on the way stand in the texture. */
function DynamicOfPhrase({ work }: { readonly work: PhraseWork }) {
  const marks = work.question.dynamics;
  const first = marks[0]?.dynamic ?? "mf";
  return (
    <PickList
      className="field field-dynamic"
      label="Begins"
      rows={dynamics.map((id) => ({ id, text: id }))}
      picked={first}
      onPick={(id) => {
        const at = quantity<Melody["length"]>(0);
        const others = marks.filter((mark) => mark.at > 0);
        askPhrase({ dynamics: [{ at, dynamic: id as Dynamic }, ...others] }, `dynamic ${id}`);
      }}
    >
      <span className="dynamic-sign">{first}</span>
    </PickList>
  );
}

const fromPage = "from-page";

function BandPick({ work }: { readonly work: PhraseWork }) {
  const inquiry = usePage((state) => state.history.present.inquiry);
  const { players } = work.question;
  const ready = lineUps.find((each) => sameBand(each.players, players));
  const isOfPage = sameBand(inquiry.players, players);
  const rows = lineUps.map((each) => ({
    id: each.id,
    text: each.name,
    detail: counted(each.players.length, "horn"),
  }));
  const own = {
    id: fromPage,
    text: "As edited on the one-chord page",
    detail: `${inquiry.lineUpName}, ${counted(inquiry.players.length, "horn")}`,
  };
  const isEdited = !lineUps.some((each) => sameBand(each.players, inquiry.players));
  return (
    <PickList
      className="field field-line-up"
      label="Line-up"
      rows={isEdited ? [own, ...rows] : rows}
      picked={ready?.id ?? (isOfPage ? fromPage : "")}
      onPick={(id) => {
        const lineUp = lineUps.find((each) => each.id === id);
        const band = id === fromPage ? inquiry.players : lineUp?.players;
        if (band !== undefined)
          askPhrase(playersTaken(work.question, band), `line-up ${lineUp?.name ?? "as edited"}`);
      }}
    >
      <span className="line-up-words">
        <span className="loud">{ready?.name ?? (isOfPage ? inquiry.lineUpName : "Own band")}</span>
        <span className="quiet">{counted(players.length, "horn")}</span>
      </span>
    </PickList>
  );
}

type Band = PhraseWork["question"]["players"];

function sameBand(one: Band, other: Band): boolean {
  return one === other || JSON.stringify(one) === JSON.stringify(other);
}
