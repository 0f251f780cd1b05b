import { useSound } from "../actions/sound-state.ts";
import { StillStaff } from "../parts/still-staff.tsx";
import { useMedia, useSize } from "../parts/use-size.ts";
import { counted } from "../words/counts.ts";
import { spanSpoken } from "../words/interval-words.ts";
import { namerOf, type Namer } from "../words/pitch-names.ts";
import { chordWithSigns, withSigns } from "../words/signs.ts";
import { Motion, type MotionSide } from "./motion.tsx";
import type { Step, StepSide } from "./next-chord-actions.ts";
import { stepText } from "./motion-plan.ts";

/** Both voicings joined by every player's step; the same on the staff and in words. */
export function StepView({ step }: { readonly step: Step }) {
  const { held, other, isAfter, continuation } = step;
  const [before, after] = isAfter ? [held, other] : [other, held];
  const [room, size] = useSize<HTMLDivElement>({ width: 700, height: 500 });
  // Where the page scrolls as a whole, the picture's height is its own.
  const isFitted = useMedia("(min-width: 1200px) and (min-height: 700px)");
  const sounding = useSound((state) => (state.phase === "sounding" ? state.turn : null));
  const steps = stepsOf(before, after);
  const side = (one: StepSide, turn: string): MotionSide => ({
    voicing: one.voicing,
    nameOf: namerOf(one.question.chord),
    lead: one.question.lead,
    isSounding: sounding === turn,
  });
  return (
    <>
      <div className="next-motion">
        <p className="next-titles">
          <b className="loud">{chordWithSigns(before.question.chord.display)}</b>
          <span className="quiet" data-testid="step-summary">
            {summary(steps)}
          </span>
          <b className="loud">{chordWithSigns(after.question.chord.display)}</b>
        </p>
        <div className="next-room" ref={room}>
          <Motion
            before={side(before, "first")}
            after={side(after, "second")}
            players={before.question.players}
            awkward={new Set(continuation.awkward.map(({ playerId }) => playerId))}
            width={size.width}
            room={isFitted ? size.height : 0}
            label={`Two ladders: ${summary(steps)}`}
          />
        </div>
      </div>
      <div className="next-aside">
        <div className="next-staves">
          <StillStaff voicing={before.voicing} chord={before.question.chord} width={140} />
          <StillStaff voicing={after.voicing} chord={after.question.chord} width={140} />
        </div>
        <Steps step={step} steps={steps} names={[before, after].map(nameOfSide)} />
      </div>
    </>
  );
}

const nameOfSide = ({ question }: StepSide): Namer => namerOf(question.chord);

interface PlayerStep {
  readonly id: string;
  readonly abbreviation: string;
  readonly from: number | null;
  readonly to: number | null;
}

function stepsOf(before: StepSide, after: StepSide): readonly PlayerStep[] {
  return before.question.players.flatMap(({ id, abbreviation }) => {
    const [from, to] = [before.pitches[id] ?? null, after.pitches[id] ?? null];
    return from === null && to === null ? [] : [{ id, abbreviation, from, to }];
  });
}

/** "9 move, 4 hold; the widest step is 3." */
function summary(steps: readonly PlayerStep[]): string {
  const sizes = steps.flatMap(({ from, to }) =>
    from === null || to === null ? [] : [Math.abs(to - from)],
  );
  const held = sizes.filter((size) => size === 0).length;
  const moved = sizes.length - held;
  const changed = steps.length - sizes.length;
  const widest = Math.max(0, ...sizes);
  const words = [
    `${counted(moved, "player moves", "players move")}, ${held} hold`,
    changed === 0 ? "" : `, ${changed} come or go`,
    widest === 0 ? "" : `; widest step ${widest}`,
  ];
  return `${words.join("")}.`;
}

/** Every step in words; what is awkward says why. */
function Steps(props: {
  readonly step: Step;
  readonly steps: readonly PlayerStep[];
  readonly names: readonly Namer[];
}) {
  const { step, steps, names } = props;
  const [nameFrom, nameTo] = names;
  const whyOf = (id: string) =>
    step.continuation.awkward.find(({ playerId }) => playerId === id)?.text;
  if (nameFrom === undefined || nameTo === undefined) return null;
  return (
    <table className="next-steps">
      <caption className="unseen">Every player’s step</caption>
      <thead>
        <tr>
          <th scope="col">Player</th>
          <th scope="col">Notes</th>
          <th scope="col">Step</th>
        </tr>
      </thead>
      <tbody>
        {steps.map(({ id, abbreviation, from, to }) => {
          const why = whyOf(id);
          return (
            <tr key={id} data-step={id}>
              <th scope="row">{abbreviation}</th>
              <td>
                {[from, to]
                  .map((pitch, index) => noteText(pitch, index === 0 ? nameFrom : nameTo))
                  .join(" → ")}
              </td>
              <td>
                {stepWords(from, to)}
                {why !== undefined && <b className="next-awkward">Awkward: {why}.</b>}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

function noteText(pitch: number | null, nameOf: Namer): string {
  return pitch === null ? "rest" : withSigns(nameOf(pitch).name);
}

/** "up 2, a major second" */
function stepWords(from: number | null, to: number | null): string {
  const text = stepText(from, to);
  if (from === null || to === null || from === to) return text;
  return `${text}, ${spanSpoken(Math.abs(to - from))}`;
}
