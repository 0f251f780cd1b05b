import { quantity, type SoundingMidi } from "../../../base/index.ts";
import type { Player } from "../../../band/index.ts";
import { SectionSign } from "../../parts/section-mark.tsx";
import { usePage } from "../../store.ts";
import {
  freeLine,
  freeMoment,
  freeNote,
  goTo,
  lockLine,
  lockMoment,
  lockNote,
} from "../phrase-actions.ts";
import { usePhrase } from "../phrase-store.ts";
import type { MomentNow } from "./moment-now.ts";
import { spelled } from "./pitch-words.ts";

const noLocks = { notes: [], moments: [] };

/** Who sounds what at the moment; each can be fixed here, or with the whole line. */
export function MomentPlayers({ now }: { readonly now: MomentNow }) {
  const { view, voiced, asked } = now;
  const locks = usePage((state) => state.history.present.phrase?.question.locks) ?? noLocks;
  const chosen = usePhrase((state) => state.place?.playerId ?? null);
  const { id } = asked.moment;
  const isWhole = locks.moments.some(({ momentId }) => momentId === id);
  const isHeldHere = isWhole || locks.notes.some(({ momentId }) => momentId === id);
  const isHeld = (playerId: string) =>
    locks.notes.some((lock) => lock.momentId === id && lock.playerId === playerId);
  return (
    <>
      <div className="row moment-fix">
        <button
          type="button"
          className="link"
          aria-pressed={isWhole}
          onClick={() => (isWhole ? freeMoment(id) : lockMoment(id))}
        >
          {isWhole ? "Fixed as a whole: free it" : "Fix the whole moment"}
        </button>
        {isHeldHere && !isWhole && (
          <button type="button" className="link" onClick={() => freeMoment(id)}>
            Free everybody here
          </button>
        )}
      </div>
      <ul className="moment-players">
        {view.phrase.players.map((player, index) => (
          <PlayerRow
            key={player.id}
            player={player}
            now={now}
            pitch={voiced.pitches[index] ?? 0}
            isWhole={isWhole}
            isHeld={isHeld(player.id)}
            isHere={chosen === player.id}
          />
        ))}
      </ul>
    </>
  );
}

function PlayerRow(props: {
  readonly player: Player;
  readonly now: MomentNow;
  readonly pitch: number;
  readonly isWhole: boolean;
  readonly isHeld: boolean;
  readonly isHere: boolean;
}) {
  const { player, now, pitch, isWhole, isHeld, isHere } = props;
  const { id, chord } = now.asked.moment;
  const isFixed = isHeld || isWhole;
  const fix = () =>
    isHeld
      ? freeNote(id, player.id)
      : lockNote(id, player.id, pitch === 0 ? "rest" : quantity<SoundingMidi>(pitch));
  return (
    <li data-here={isHere}>
      <SectionSign section={player.section} />
      <button
        type="button"
        className="moment-player"
        onClick={() => goTo({ momentId: id, playerId: player.id })}
      >
        {player.abbreviation}
      </button>
      <span className={pitch === 0 ? "quiet" : "moment-pitch"}>
        {pitch === 0 ? "rests" : spelled(pitch, chord)}
      </span>
      <button
        type="button"
        className="link"
        disabled={isWhole}
        aria-pressed={isFixed}
        aria-label={`Fix ${player.name} here`}
        onClick={fix}
      >
        {isFixed ? "fixed" : "fix"}
      </button>
      <LineLock playerId={player.id} name={player.name} count={now.view.phrase.moments.length} />
    </li>
  );
}

/** Fixes the whole line of a player, or frees it. */
function LineLock(props: {
  readonly playerId: string;
  readonly name: string;
  readonly count: number;
}) {
  const { playerId, name, count } = props;
  const held = usePage(
    (state) =>
      state.history.present.phrase?.question.locks.notes.filter(
        (lock) => lock.playerId === playerId,
      ).length ?? 0,
  );
  const isWhole = held >= count;
  return (
    <button
      type="button"
      className="link"
      aria-pressed={isWhole}
      aria-label={`Fix the whole line of ${name}`}
      onClick={() => (isWhole ? freeLine(playerId) : lockLine(playerId))}
    >
      {isWhole ? "line fixed" : "line"}
    </button>
  );
}
