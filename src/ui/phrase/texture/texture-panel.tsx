import { useMemo } from "react";
import type { PhraseWork } from "../../../explore/index.ts";
import {
  texturePlan,
  texturePresets,
  type TextureCurves,
  type TexturePresetId,
} from "../../../phrase/index.ts";
import { withoutRepeats } from "../../../theory/index.ts";
import { PickList } from "../../parts/pick-list.tsx";
import { askPhrase } from "../phrase-actions.ts";
import { usePhrase } from "../phrase-store.ts";
import { CurveRowView, type Got } from "./curve-row.tsx";
import { curveRows } from "./curve-table.ts";
import { DynamicsRow } from "./dynamics-row.tsx";
import { WhoGrid } from "./who-grid.tsx";

/** How wide, how dense, how heavy, how loud and who, from bar to bar. */
export function TexturePanel({ work }: { readonly work: PhraseWork }) {
  const { question } = work;
  const melody = useMemo(() => withoutRepeats(question.melody), [question.melody]);
  const got = useGot();
  const here = usePhrase((state) => {
    const id = state.place?.momentId;
    return state.view?.phrase.moments.find(({ moment }) => moment.id === id)?.moment.onset ?? null;
  });
  const { players, breaths } = question;
  return (
    <section className="phrase-part" aria-labelledby="texture-head">
      <div className="row phrase-part-head">
        <h2 id="texture-head">Texture</h2>
        <PickList
          label="Shape"
          rows={texturePresets.map(({ id, label, meaning }) => ({
            id,
            text: label,
            detail: meaning,
          }))}
          picked=""
          onPick={(id) => {
            const plan = texturePlan(id as TexturePresetId, melody, players);
            askPhrase(plan, `shape ${id}`);
          }}
        >
          take one
        </PickList>
        <BreathSwitch isOn={breaths} />
        <span className="quiet push curve-key">
          <i className="key-asked" /> asked for <i className="key-got" /> got
        </span>
      </div>
      {curveRows.map((row) => (
        <CurveRowView
          key={row.id}
          row={row}
          curve={question.curves[row.id]}
          most={Math.max(2, players.length)}
          got={got[row.id]}
          melody={melody}
          here={here}
        />
      ))}
      <WhoGrid question={question} melody={melody} />
      <DynamicsRow question={question} melody={melody} />
      <p className="quiet staff-help">
        Drag a point, press beside the line for a new one. Keys on a point: ↑ ↓ its value, ← → its
        time, Insert another, Delete.
      </p>
    </section>
  );
}

function BreathSwitch({ isOn }: { readonly isOn: boolean }) {
  return (
    <button
      type="button"
      className="link"
      aria-pressed={isOn}
      title="Players rest for a breath where a stretch without one is too long"
      onClick={() => askPhrase({ breaths: !isOn }, `breaths ${isOn ? "off" : "on"}`)}
    >
      {isOn ? "With rests to breathe" : "Without rests to breathe"}
    </button>
  );
}

/** What the answer in view has of each curve. */
function useGot(): Readonly<Record<keyof TextureCurves, readonly Got[]>> {
  const answer = usePhrase((state) => state.view?.answer);
  return useMemo(() => {
    const moments = answer?.moments ?? [];
    const of = (value: (moment: (typeof moments)[number]) => number): readonly Got[] =>
      moments.map((one) => ({
        from: one.moment.onset,
        to: one.moment.onset + one.moment.duration,
        value: value(one),
      }));
    return {
      span: of(({ span }) => span),
      density: of(({ density }) => density),
      weight: of(({ players }) => players),
    };
  }, [answer]);
}
