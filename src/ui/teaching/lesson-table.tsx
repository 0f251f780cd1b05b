import { useMemo } from "react";
import { voicingOfTexture, type Idea, type LessonTexture } from "../../explore/index.ts";
import { measureAll, metrics, type Reading } from "../../metrics/index.ts";
import type { Asked } from "../state/page-state.ts";

const shown = ["span", "notes", "density", "players", "weight", "interleaving", "loudness", "mud"];

/** Measures worth comparing in a lesson, in the registry's order. */
const compared = metrics.filter((metric) => shown.includes(metric.id));

function readingsOf(texture: LessonTexture, asked: Asked): readonly Reading[] {
  return measureAll(voicingOfTexture(asked.question, texture), asked.question, compared);
}

/** Both voicings in figures; the idea's own row is heavy. */
export function LessonTable(props: {
  readonly asked: Asked;
  readonly idea: Idea;
  readonly left: LessonTexture;
  readonly right: LessonTexture;
  readonly names?: readonly [left: string, right: string];
}) {
  const { asked, idea, left, right, names = ["Left", "Right"] } = props;
  const [first, second] = useMemo(
    () => [readingsOf(left, asked), readingsOf(right, asked)],
    [left, right, asked],
  );
  return (
    <table className="lesson-table">
      <thead>
        <tr>
          <th scope="col">
            <span className="unseen">Measure</span>
          </th>
          <th scope="col">{names[0]}</th>
          <th scope="col">{names[1]}</th>
        </tr>
      </thead>
      <tbody>
        {compared.map((metric, index) => (
          <tr key={metric.id} className={metric.id === idea ? "lesson-idea" : ""}>
            <th scope="row" title={metric.meaning}>
              {metric.label}{" "}
              {metric.unit !== metric.label.toLowerCase() && (
                <span className="quiet">{metric.unit}</span>
              )}
            </th>
            <td>{first?.[index]?.measured.text}</td>
            <td>{second?.[index]?.measured.text}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
