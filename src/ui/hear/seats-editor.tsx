import { useState } from "react";
import { SEAT_LIMITS, type StageSeat } from "../../audio/index.ts";
import type { Player, SectionId } from "../../band/index.ts";
import { moveChair, seatsOf, settleChair, usualChairs } from "../actions/seats.ts";
import { useSound } from "../actions/sound-state.ts";
import { PickList } from "../parts/pick-list.tsx";
import { SectionMark } from "../parts/section-mark.tsx";
import { usePage } from "../store.ts";
import { metresText, sideText } from "./seat-words.ts";
import { capital } from "./who-words.ts";

interface Seated extends StageSeat {
  readonly name: string;
  readonly short: string;
  readonly section: SectionId;
}

/** Everybody's place on the stage, as the listener in front hears it. */
export function SeatsEditor() {
  const players = usePage((state) => state.history.present.inquiry.players);
  const moved = usePage((state) => state.history.present.seats);
  const isAccompanied = useSound((state) => state.backing !== "horns");
  const seated = seatsOf(players, moved)
    .filter(({ playerId }) => isAccompanied || players.some(({ id }) => id === playerId))
    .map((seat) => namedSeat(seat, players));
  const [chosenId, setChosen] = useState<string | null>(null);
  const chosen = seated.find(({ playerId }) => playerId === chosenId) ?? seated[0];
  return (
    <section className="seats" aria-labelledby="seats-title">
      <h3 id="seats-title" className="sheet-part">
        Places on the stage
      </h3>
      <p className="quiet">As you hear them from the front: left, right, and how far away.</p>
      <StagePlan seated={seated} chosenId={chosen?.playerId} onChoose={setChosen} />
      {chosen !== undefined && (
        <div className="row seat-fields">
          <PickList
            label="Chair of"
            rows={seated.map(({ playerId, name }) => ({ id: playerId, text: name }))}
            picked={chosen.playerId}
            onPick={setChosen}
          />
          <SeatFields seat={chosen} />
          <button
            type="button"
            className="link"
            disabled={moved.length === 0}
            onClick={usualChairs}
          >
            Usual places
          </button>
        </div>
      )}
    </section>
  );
}

function namedSeat(seat: StageSeat, players: readonly Player[]): Seated {
  const player = players.find(({ id }) => id === seat.playerId);
  if (player !== undefined) {
    const { name, abbreviation, section } = player;
    return { ...seat, name, short: abbreviation, section };
  }
  const name = capital(seat.playerId);
  return { ...seat, name, short: name, section: "rhythm" };
}

function SeatFields({ seat }: { readonly seat: Seated }) {
  const { playerId, name, pan, distanceM } = seat;
  return (
    <>
      <SeatSlide
        label="Left to right"
        value={pan}
        limits={SEAT_LIMITS.pan}
        step={0.05}
        text={sideText(pan)}
        onValue={(value) => moveChair(playerId, name, { pan: value })}
      />
      <SeatSlide
        label="Distance"
        value={distanceM}
        limits={SEAT_LIMITS.distanceM}
        step={0.1}
        text={metresText(distanceM)}
        onValue={(value) => moveChair(playerId, name, { distanceM: value })}
      />
    </>
  );
}

function SeatSlide(props: {
  readonly label: string;
  readonly value: number;
  readonly limits: readonly [least: number, most: number];
  readonly step: number;
  readonly text: string;
  readonly onValue: (value: number) => void;
}) {
  const { label, value, limits, step, text, onValue } = props;
  return (
    <label className="seat-slide">
      <span>
        {label} <span className="quiet">{text}</span>
      </span>
      <input
        type="range"
        min={limits[0]}
        max={limits[1]}
        step={step}
        value={value}
        aria-label={label}
        aria-valuetext={text}
        onChange={(event) => onValue(Number(event.target.value))}
        onBlur={settleChair}
        onPointerUp={settleChair}
      />
    </label>
  );
}

const plan = { width: 660, height: 196, side: 40, foot: 26 };

/** The stage is drawn this deep unless somebody sits farther back, metres. */
const usualDepth = 4.5;

/** The stage from above, the listener at the foot; a picture of what the fields say. */
function StagePlan(props: {
  readonly seated: readonly Seated[];
  readonly chosenId: string | undefined;
  readonly onChoose: (playerId: string) => void;
}) {
  const { seated, chosenId, onChoose } = props;
  const [near] = SEAT_LIMITS.distanceM;
  const far = Math.max(usualDepth, ...seated.map(({ distanceM }) => distanceM));
  const xOf = (pan: number) => plan.side + ((pan + 1) / 2) * (plan.width - 2 * plan.side);
  const depth = plan.height - plan.foot - 42;
  const yOf = (metres: number) => 20 + ((far - metres) / (far - near)) * depth;
  return (
    <svg
      className="stage-plan"
      viewBox={`0 0 ${plan.width} ${plan.height}`}
      aria-hidden="true"
      data-testid="stage"
    >
      <path className="stage-edge" d={`M0,${plan.height - plan.foot}H${plan.width}`} />
      <text x={plan.width / 2} y={plan.height - 8} textAnchor="middle">
        you
      </text>
      {seated.map(({ playerId, pan, distanceM, section, short }) => (
        <g
          key={playerId}
          data-seat={playerId}
          className={playerId === chosenId ? "seat seat-chosen" : "seat"}
          onClick={() => onChoose(playerId)}
        >
          <rect
            className="seat-room"
            x={xOf(pan) - 20}
            y={yOf(distanceM) - (section === "rhythm" ? 20 : 10)}
            width="40"
            height="30"
          />
          <SectionMark section={section} x={xOf(pan)} y={yOf(distanceM)} r={6} />
          <text
            x={xOf(pan)}
            y={yOf(distanceM) + (section === "rhythm" ? -9 : 17)}
            textAnchor="middle"
          >
            {short}
          </text>
        </g>
      ))}
    </svg>
  );
}
