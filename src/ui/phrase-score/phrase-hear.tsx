import { useEffect } from "react";
import { headphoneCaution } from "../actions/caution.ts";
import { warmSound } from "../actions/hear.ts";
import { useSound } from "../actions/sound-state.ts";
import { LevelChoice } from "../parts/level-choice.tsx";
import { PickList } from "../parts/pick-list.tsx";
import { SectionSign } from "../parts/section-mark.tsx";
import { WarnSign } from "../parts/warn-sign.tsx";
import { usePhrase, type PhraseInView } from "../phrase/phrase-store.ts";
import { barCount, placeText } from "../../theory/index.ts";
import { HeardSheet } from "./heard-sheet.tsx";
import { hearOtherwise, playOrStop, playPhrase, stopPhrase } from "./phrase-sound.ts";
import { usePhraseSound, type LoopBars } from "./phrase-sound-state.ts";
import { Toggle } from "./toggle.tsx";
import { groupsOf, turned, type HeardGroup } from "./who-words.ts";
import "./phrase-score.css";

/** Plays the phrase: from where the user is, bars over and over, whoever is to be heard. */
export function PhraseHear() {
  const view = usePhrase((state) => state.view);
  const hasView = view !== null;
  useEffect(() => {
    if (hasView) warmSound();
  }, [hasView]);
  usePlayKeys();
  return (
    <div className="phrase-hear" role="group" aria-label="Hear the phrase">
      <PlayButtons view={view} />
      {view !== null && (
        <>
          <div className="phrase-hear-part" role="group" aria-label="Who is heard">
            {groupsOf(view).map((group) => (
              <SectionToggle key={group.section} group={group} />
            ))}
            <HeardSheet view={view} />
          </div>
          <div className="phrase-hear-part">
            <TimeChoice view={view} />
          </div>
          <div className="phrase-hear-part">
            <Level />
          </div>
        </>
      )}
      <StatusLine />
    </div>
  );
}

/** Space plays or stops where nothing else takes it; Escape stops. */
function usePlayKeys(): void {
  useEffect(() => {
    // Ahead of the page's own keys: here Space is the phrase's.
    const keyed = (event: KeyboardEvent) => {
      if (event.key === "Escape") stopPhrase();
      if (event.key !== " " || event.target !== document.body) return;
      event.preventDefault();
      event.stopPropagation();
      playOrStop();
    };
    addEventListener("keydown", keyed, true);
    return () => {
      removeEventListener("keydown", keyed, true);
      stopPhrase();
    };
  }, []);
}

function PlayButtons({ view }: { readonly view: PhraseInView | null }) {
  const isSilent = usePhraseSound((state) => state.phase === "silent");
  const isBlocked = usePhraseSound((state) => state.blocked !== null);
  const place = usePhrase((state) => state.place);
  const moment = view?.phrase.moments.find(({ moment: { id } }) => id === place?.momentId)?.moment;
  const isInside = moment !== undefined && moment.onset > 0;
  const where =
    view === null || !isInside ? "" : ` from ${placeText(view.phrase.melody, moment.onset)}`;
  return (
    <div className="row phrase-play">
      <button
        type="button"
        className={isBlocked ? "play play-blocked" : "play"}
        disabled={view === null}
        onClick={playOrStop}
      >
        <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
          {isSilent ? <path d="M2,1L15,8L2,15Z" /> : <path d="M2,2H14V14H2Z" />}
        </svg>
        {isSilent ? `Play${where}` : "Stop"}
      </button>
      {isInside && (
        <button type="button" className="link link-sound" onClick={() => playPhrase("start")}>
          From the start
        </button>
      )}
    </div>
  );
}

function SectionToggle({ group }: { readonly group: HeardGroup }) {
  const silentIds = usePhraseSound((state) => state.silentIds);
  const ids = group.players.map(({ id }) => id);
  const isHeard = ids.some((id) => !silentIds.includes(id));
  return (
    <Toggle
      isOn={isHeard}
      label={`Hear ${group.section === "rhythm" ? "the rhythm section" : `the ${group.section}`}`}
      onTurn={(isOn) => hearOtherwise({ silentIds: turned(silentIds, ids, !isOn) })}
    >
      <SectionSign section={group.section} />
      {group.name}
    </Toggle>
  );
}

/** Counting in, and bars over and over. */
function TimeChoice({ view }: { readonly view: PhraseInView }) {
  const { melody } = view.phrase;
  const isCounted = usePhraseSound((state) => state.isCounted);
  const isLooped = usePhraseSound((state) => state.isLooped);
  const chosen = usePhraseSound((state) => state.bars);
  const first = melody.pickup > 0 ? 0 : 1;
  const last = barCount(melody);
  const bars = { fromBar: chosen?.fromBar ?? first, toBar: Math.min(chosen?.toBar ?? last, last) };
  const choose = ({ fromBar, toBar }: LoopBars) =>
    hearOtherwise({ bars: fromBar === first && toBar === last ? null : { fromBar, toBar } });
  const rows = (from: number) =>
    Array.from({ length: last - from + 1 }, (_, n) => ({
      id: String(from + n),
      text: from + n === 0 ? "pickup" : String(from + n),
    }));
  return (
    <>
      <Toggle
        isOn={isCounted}
        meaning="Two bars of beats before the music, one where it is slow"
        onTurn={(isOn) => hearOtherwise({ isCounted: isOn })}
      >
        Count in
      </Toggle>
      <Toggle
        isOn={isLooped}
        meaning="The chosen bars over and over"
        onTurn={(isOn) => hearOtherwise({ isLooped: isOn })}
      >
        Loop
      </Toggle>
      <PickList
        label="Bars"
        rows={rows(first)}
        picked={String(bars.fromBar)}
        onPick={(id) => choose({ fromBar: Number(id), toBar: Math.max(Number(id), bars.toBar) })}
      />
      <PickList
        label="to"
        rows={rows(bars.fromBar)}
        picked={String(bars.toBar)}
        onPick={(id) => choose({ ...bars, toBar: Number(id) })}
      />
    </>
  );
}

function Level() {
  const isMatched = usePhraseSound((state) => state.isMatched);
  return (
    <LevelChoice
      isMatched={isMatched}
      onMatch={(isOn) => hearOtherwise({ isMatched: isOn })}
      what="answer"
    />
  );
}

function StatusLine() {
  const { phase, blocked, isCounting, isMatched, matchedBy } = usePhraseSound((state) => state);
  const isCautioned = useSound((state) => state.isCautioned);
  if (blocked !== null)
    return (
      <p className="row phrase-hear-blocked">
        <WarnSign /> {blocked}
      </p>
    );
  const words = [
    phase === "silent"
      ? isCautioned
        ? "Space plays"
        : headphoneCaution
      : isCounting
        ? "Counting in"
        : "Escape stops",
    isMatched && matchedBy !== null ? levelText(matchedBy) : "",
  ];
  return <p className="quiet">{words.filter((word) => word !== "").join(" · ")}</p>;
}

function levelText(db: number): string {
  const rounded = Math.round(10 * db) / 10;
  return `${rounded > 0 ? "+" : rounded < 0 ? "−" : ""}${Math.abs(rounded).toFixed(1)} LU`;
}
