import { fifthsOf, type Melody } from "../../../theory/index.ts";
import type { PlannedBar, PlannedLine } from "./staff-plan-types.ts";
import { accidentals, figure, glyphs, keyPlaces } from "./staff-signs.ts";
import { yOfSteps } from "./staff-sizes.ts";

/** Staff lines, clef, key, metre and bar lines of a line. */
export function StaffFrame(props: {
  readonly line: PlannedLine;
  readonly melody: Melody;
  readonly isLast: boolean;
}) {
  const { line, melody, isLast } = props;
  return (
    <g>
      {[30, 32, 34, 36, 38].map((steps) => (
        <line
          key={steps}
          className="staff-line"
          x1={0}
          x2={line.endX}
          y1={yOfSteps(steps)}
          y2={yOfSteps(steps)}
        />
      ))}
      <text className="music" x={4} y={yOfSteps(32)}>
        {glyphs.clef}
      </text>
      <KeySigns fifths={fifthsOf(melody.key)} />
      {line.hasMetre && <MetreSigns melody={melody} x={line.startX - 22} />}
      {line.bars.map((bar, index) => (
        <BarSigns
          key={bar.number}
          bar={bar}
          isEnd={isLast && index === line.bars.length - 1}
          hasNumber={index === 0 && bar.number > 1}
        />
      ))}
    </g>
  );
}

function KeySigns({ fifths }: { readonly fifths: number }) {
  const places = (fifths > 0 ? keyPlaces.sharps : keyPlaces.flats).slice(0, Math.abs(fifths));
  const sign = accidentals[fifths > 0 ? "sharp" : "flat"];
  return places.map((steps, index) => (
    <text key={steps} className="music" x={30 + 9 * index} y={yOfSteps(steps)}>
      {sign}
    </text>
  ));
}

function MetreSigns({ melody, x }: { readonly melody: Melody; readonly x: number }) {
  const figures = (value: number) => [...String(value)].map(figure).join("");
  return (
    <>
      <text className="music" x={x} y={yOfSteps(36)}>
        {figures(melody.metre.beats)}
      </text>
      <text className="music" x={x} y={yOfSteps(32)}>
        {figures(melody.metre.beatType)}
      </text>
    </>
  );
}

function BarSigns(props: {
  readonly bar: PlannedBar;
  readonly isEnd: boolean;
  readonly hasNumber: boolean;
}) {
  const { bar, isEnd, hasNumber } = props;
  const top = yOfSteps(38);
  const bottom = yOfSteps(30);
  const { endX: x } = bar;
  return (
    <g>
      {hasNumber && (
        <text className="bar-number" x={0} y={top - 15}>
          {bar.number}
        </text>
      )}
      {bar.beginsRepeat && <RepeatDots x={bar.x + 6} />}
      {bar.beginsRepeat && (
        <line className="thick-bar" x1={bar.x + 1} x2={bar.x + 1} y1={top} y2={bottom} />
      )}
      {bar.ending !== null && (
        <>
          <path className="tie" d={`M${bar.x + 2},${top - 12}v-12H${bar.endX - 4}`} />
          <text className="bar-number" x={bar.x + 6} y={top - 14}>
            {bar.ending}
          </text>
        </>
      )}
      <line
        className="stem"
        x1={x - (isEnd ? 5 : 0.5)}
        x2={x - (isEnd ? 5 : 0.5)}
        y1={top}
        y2={bottom}
      />
      {(isEnd || bar.endsRepeat !== null) && (
        <line className="thick-bar" x1={x - 1.5} x2={x - 1.5} y1={top} y2={bottom} />
      )}
      {bar.endsRepeat !== null && <RepeatDots x={x - 10} />}
      {bar.endsRepeat !== null && bar.endsRepeat > 2 && (
        <text className="bar-number" x={x} y={top - 5} textAnchor="end">
          {bar.endsRepeat} times
        </text>
      )}
    </g>
  );
}

function RepeatDots({ x }: { readonly x: number }) {
  return [33, 35].map((steps) => (
    <circle key={steps} className="beam" cx={x} cy={yOfSteps(steps)} r={1.7} />
  ));
}
