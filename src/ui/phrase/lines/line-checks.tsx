import { useMemo } from "react";
import { checkLines, type LineCheck } from "../../../phrase/index.ts";
import { placeText } from "../../../theory/index.ts";
import { SectionSign } from "../../parts/section-mark.tsx";
import { plainName } from "../../words/pitch-names.ts";
import { withSigns } from "../../words/signs.ts";
import { goTo } from "../phrase-actions.ts";
import type { PhraseInView } from "../phrase-store.ts";

/** Range, longest stretch and awkward places of every player's line. */
export function LineChecks({ view }: { readonly view: PhraseInView }) {
  const { phrase, answer, performance } = view;
  const checks = useMemo(
    () => checkLines(phrase, answer, performance.parts),
    [phrase, answer, performance],
  );
  return (
    <div className="line-checks">
      <table>
        <caption className="unseen">What each player would say of the line</caption>
        <thead>
          <tr>
            <th scope="col">Player</th>
            <th scope="col">Range</th>
            <th scope="col">Longest without a breath</th>
            <th scope="col">To look at</th>
          </tr>
        </thead>
        <tbody>
          {checks.map((check) => (
            <CheckRow key={check.player.id} check={check} view={view} />
          ))}
        </tbody>
      </table>
      <p className="quiet">
        Judgement of the model: tiring registers and long stretches cost chops; ask the players.
      </p>
    </div>
  );
}

function CheckRow({ check, view }: { readonly check: LineCheck; readonly view: PhraseInView }) {
  const { player, range, longestStretch, remarks } = check;
  const { melody, moments } = view.phrase;
  const name = (midi: number) => withSigns(plainName(midi));
  const visit = (onset: number) => {
    const at = moments.filter(({ moment }) => moment.onset <= onset).at(-1) ?? moments[0];
    if (at !== undefined) goTo({ momentId: at.moment.id, playerId: player.id });
  };
  return (
    <tr>
      <th scope="row">
        <SectionSign section={player.section} /> {player.name}
      </th>
      <td>{range === undefined ? "rests" : `${name(range.low)} to ${name(range.high)}`}</td>
      <td>
        {range === undefined
          ? ""
          : `${longestStretch.seconds.toFixed(1)} s, from ${placeText(melody, longestStretch.onset)}`}
      </td>
      <td>
        {remarks.length === 0 ? (
          <span className="quiet">nothing</span>
        ) : (
          <ul>
            {remarks.map(({ text, onset }) => (
              <li key={text}>
                <button type="button" className="check-remark" onClick={() => visit(onset)}>
                  {withSigns(text)}
                </button>
              </li>
            ))}
          </ul>
        )}
      </td>
    </tr>
  );
}
