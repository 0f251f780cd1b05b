import { openMoment } from "./open-moment.ts";
import { spelled } from "./pitch-words.ts";
import { HarmonyPick } from "./harmony-pick.tsx";
import { Marks } from "./marks.tsx";
import { MomentPlayers } from "./moment-players.tsx";
import { stepMoment, useMomentNow, type MomentNow } from "./moment-now.ts";
import { counted } from "../../words/counts.ts";
import { withSigns } from "../../words/signs.ts";

/** One note of the phrase: why it has its chord, who sounds what, what is fixed. */
export function MomentPanel() {
  const now = useMomentNow();
  return (
    <section className="aside-part" aria-labelledby="moment-head">
      <div className="row">
        <h2 id="moment-head">Moment</h2>
        <span className="row push">
          <button
            type="button"
            className="link"
            disabled={now === undefined}
            onClick={() => stepMoment(-1)}
          >
            Before
          </button>
          <button
            type="button"
            className="link"
            disabled={now === undefined}
            onClick={() => stepMoment(1)}
          >
            After
          </button>
        </span>
      </div>
      {now === undefined ? (
        <p className="quiet">Each note shows here as soon as the phrase is voiced.</p>
      ) : (
        <MomentBody now={now} />
      )}
    </section>
  );
}

function MomentBody({ now }: { readonly now: MomentNow }) {
  const { asked, voiced, harmonised, where, view } = now;
  const { chord, lead, id } = asked.moment;
  const remarks = view.answer.remarks.filter(({ momentId }) => momentId === id);
  return (
    <>
      <p className="moment-title" data-testid="moment">
        <b className="loud">
          {spelled(lead, chord)} over {chord.display}
        </b>{" "}
        <span className="quiet">{where}</span>
      </p>
      <p className="moment-reason">{withSigns(harmonised.reason)}</p>
      <HarmonyPick now={now} />
      {remarks.map(({ text }) => (
        <p key={text} className="moment-remark">
          {text}
        </p>
      ))}
      <p className="moment-texture">
        {counted(voiced.span, "semitone")} wide, {counted(voiced.notes, "note")},{" "}
        {counted(voiced.players, "player")}
        <span className="quiet">
          {" "}
          (asked: {Math.round(asked.asked.span)} wide, {Math.round(asked.asked.weight)} players)
        </span>
      </p>
      <button type="button" className="act" onClick={() => openMoment(now)}>
        Open on the one-chord page
      </button>
      <MomentPlayers now={now} />
      <Marks now={now} />
    </>
  );
}
