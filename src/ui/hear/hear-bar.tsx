import { memo, useEffect, useRef, useState, type KeyboardEvent } from "react";
import { headphoneCaution } from "../actions/caution.ts";
import { hearInTurn, hearView, matchLevels, stopSound } from "../actions/hear.ts";
import { forgetOutcome, useSaving, useSavingOutcome } from "../actions/save-sound.ts";
import { useSound, type Way } from "../actions/sound-state.ts";
import { stepOfKey } from "../parts/choice.tsx";
import { LevelChoice } from "../parts/level-choice.tsx";
import { WarnSign } from "../parts/warn-sign.tsx";
import { usePage } from "../store.ts";
import { MoreWays } from "./more-ways.tsx";
import { SavingLine } from "./saving-line.tsx";
import { WaySign } from "./way-signs.tsx";
import { backingTexts, whoWords } from "./who-words.ts";

const ways: readonly { way: Way; text: string; short?: string; meaning: string }[] = [
  { way: "hit", text: "Hit", meaning: "A short accented chord." },
  { way: "sustained", text: "Sustained", meaning: "The chord held for three seconds." },
  {
    way: "rolled-from-bottom",
    text: "Rolled",
    meaning: "Note after note from the bottom, then held.",
  },
  {
    way: "section-by-section",
    text: "Section by section",
    short: "Sections",
    meaning: "Saxes, trombones, trumpets alone, then everybody.",
  },
];

/** Ways to hear the voicing, always at the same place. */
export const HearBar = memo(function HearBar() {
  const blocked = useSound((state) => state.blocked);
  return (
    <div className="hear" role="group" aria-label="Hear">
      <Ways />
      <div className="hear-how">
        <div className="row">
          <Level />
          <MoreWays />
        </div>
        {blocked === null ? <HearLine /> : <Blocked text={blocked} />}
        <Setting />
      </div>
    </div>
  );
});

/** The four ways: one tab stop, arrows inside. */
function Ways() {
  const last = useSound((state) => state.last);
  const isSilent = useSound((state) => state.blocked !== null);
  const hasView = usePage((state) => state.view !== null);
  const [stop, setStop] = useState(0);
  const group = useRef<HTMLDivElement>(null);
  const keyed = (event: KeyboardEvent) => {
    const by = stepOfKey(event.key);
    if (by === 0) return;
    event.preventDefault();
    const at = (stop + by + ways.length) % ways.length;
    setStop(at);
    group.current?.querySelectorAll("button")[at]?.focus();
  };
  return (
    <div className="ways" role="toolbar" aria-label="Ways to hear" ref={group} onKeyDown={keyed}>
      {ways.map(({ way, text, short, meaning }, index) => (
        <button
          key={way}
          type="button"
          className={isSilent ? "way way-silent" : "way"}
          data-last={way === last}
          title={meaning}
          disabled={!hasView}
          tabIndex={index === stop ? 0 : -1}
          onFocus={() => setStop(index)}
          onClick={() => hearView(way)}
        >
          <WaySign way={way} />
          {short === undefined ? (
            text
          ) : (
            <>
              <span className="way-text-long">{text}</span>
              <span className="way-text-short">{short}</span>
            </>
          )}
        </button>
      ))}
    </div>
  );
}

function Level() {
  const isMatched = useSound((state) => state.isMatched);
  return <LevelChoice isMatched={isMatched} onMatch={matchLevels} />;
}

function levelText(db: number): string {
  const rounded = Math.round(10 * db) / 10;
  return `${rounded > 0 ? "+" : rounded < 0 ? "−" : ""}${Math.abs(rounded).toFixed(1)} LU`;
}

/** Who is heard and over what, where that is not simply everybody. */
function Setting() {
  const who = useSound((state) => state.who);
  const backing = useSound((state) => state.backing);
  const players = usePage((state) => state.history.present.inquiry.players);
  const words = [
    whoWords(players, who),
    backing === "horns" ? "" : backingTexts[backing].toLowerCase(),
  ].filter((part) => part !== "");
  if (words.length === 0) return null;
  const text = words.join(", ");
  return (
    <p className="hear-setting quiet" data-testid="setting">
      {text.charAt(0).toUpperCase() + text.slice(1)}.
    </p>
  );
}

/** The caution, shorter where there is less room. */
function cautionFor(compared: number): string {
  return compared > 0 ? "Mind the volume." : headphoneCaution;
}

/** "A, then B, then this", or how many where letters would not fit. */
function turnsText(compared: readonly string[]): string {
  const before = compared.length > 3 ? [`${compared.length} chosen`] : compared;
  return [...before, "this"].join(", then ");
}

/** What can be done now: stop, hear the kept ones in turn, again. */
function HearLine() {
  const phase = useSound((state) => state.phase);
  const turn = useSound((state) => state.turn);
  const isCautioned = useSound((state) => state.isCautioned);
  const compared = usePage((state) => state.history.present.compared);
  const saving = useSaving();
  const outcome = useSavingOutcome();
  const isSounding = phase !== "silent";
  useEffect(() => {
    if (isSounding) forgetOutcome();
  }, [isSounding]);
  if (phase !== "silent") return <SoundingLine turn={turn} isCautioned={isCautioned} />;
  if (saving !== null) return <SavingLine saving={saving} />;
  if (outcome !== "") return <p className="quiet">{outcome}</p>;
  return (
    <div className="row">
      {compared.length > 0 && (
        <button type="button" className="link link-sound" onClick={() => void hearInTurn()}>
          {turnsText(compared)}
        </button>
      )}
      <span className={isCautioned ? "quiet again" : "quiet"}>
        {isCautioned ? "Space: again" : cautionFor(compared.length)}
      </span>
      <MatchedBy />
    </div>
  );
}

function SoundingLine(props: { readonly turn: string | null; readonly isCautioned: boolean }) {
  const { turn, isCautioned } = props;
  const word = turn === null ? "Escape stops" : `Now ${turn}`;
  return (
    <div className="row">
      <button type="button" className="link link-sound" onClick={stopSound}>
        Stop
      </button>
      <span className="quiet">
        {isCautioned || turn !== null ? word : "Mind the headphone volume."}
      </span>
      <MatchedBy />
    </div>
  );
}

/** What level-matching does to the sound, in loudness units. */
function MatchedBy() {
  const isMatched = useSound((state) => state.isMatched);
  const matchedBy = useSound((state) => state.matchedBy);
  if (!isMatched || matchedBy === null) return null;
  return (
    <span className="quiet" title="What level-matching does to this sound, loudness units">
      {levelText(matchedBy)}
    </span>
  );
}

/** The browser holds the sound, or there is none: said in place, reading goes on. */
function Blocked({ text }: { readonly text: string }) {
  return (
    <p className="row hear-blocked">
      <WarnSign /> {text}
    </p>
  );
}
