import type { KeyboardEvent, PointerEvent } from "react";
import { soundingMidi } from "../../base/index.ts";
import { pickMelody } from "../actions/ask.ts";
import { usePage } from "../store.ts";
import { stepMelody, useMelody } from "./melody-now.ts";
import { spoken } from "../words/signs.ts";

const whites = [0, 2, 4, 5, 7, 9, 11];
const key = { width: 13, height: 84, blackHeight: 52, blackWidth: 8 };
const ends = { low: 48, high: 88 };

const isBlack = (pitch: number) => !whites.includes(pitch % 12);
const whitesBelow = (pitch: number) => {
  let count = 0;
  for (let each = ends.low; each < pitch; each += 1) if (!isBlack(each)) count += 1;
  return count;
};
const pitches = Array.from({ length: ends.high - ends.low + 1 }, (_, index) => ends.low + index);
const width = whitesBelow(ends.high + 1) * key.width;

function leftOf(pitch: number): number {
  const left = whitesBelow(pitch) * key.width;
  return isBlack(pitch) ? left - key.blackWidth / 2 : left;
}

/** The key at a point of the drawing: a black one where it covers a white one. */
function keyAt(x: number, y: number): number | undefined {
  const isOver = (pitch: number, wide: number) => x >= leftOf(pitch) && x < leftOf(pitch) + wide;
  const black = pitches.find(
    (pitch) => isBlack(pitch) && y < key.blackHeight && isOver(pitch, key.blackWidth),
  );
  return black ?? pitches.find((pitch) => !isBlack(pitch) && isOver(pitch, key.width));
}

const sideways = { ArrowRight: 1, ArrowLeft: -1 };

/** A small keyboard, C3 to E6; one tab stop, arrows step, page keys go an octave. */
export function KeyboardPicker() {
  const lead = useMelody();
  const nameOf = usePage((state) => state.answer?.asked.nameOf);
  const keyed = (event: KeyboardEvent) => {
    if (stepMelody(event.key, ends, sideways)) event.preventDefault();
  };
  const pressed = (event: PointerEvent<SVGSVGElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    const scale = width / box.width;
    const picked = keyAt((event.clientX - box.left) * scale, (event.clientY - box.top) * scale);
    if (picked !== undefined) pickMelody(soundingMidi(picked));
  };
  return (
    <svg
      className="keys"
      viewBox={`0 0 ${width} ${key.height + 16}`}
      width={width}
      height={key.height + 16}
      tabIndex={0}
      role="slider"
      aria-label="Melody note"
      aria-valuemin={ends.low}
      aria-valuemax={ends.high}
      aria-valuenow={lead ?? ends.low}
      aria-valuetext={lead === undefined ? "none" : spoken(nameOf?.(lead).name ?? "")}
      onKeyDown={keyed}
      onPointerDown={pressed}
    >
      <Keys lead={lead} />
    </svg>
  );
}

/** White keys first, black ones over them; every C is named. */
function Keys({ lead }: { readonly lead: number | undefined }) {
  const inOrder = [...pitches].sort((a, b) => Number(isBlack(a)) - Number(isBlack(b)));
  return (
    <>
      {inOrder.map((pitch) => (
        <rect
          key={pitch}
          className={`key ${isBlack(pitch) ? "key-black" : "key-white"}`}
          data-chosen={pitch === lead}
          x={leftOf(pitch)}
          y={0.5}
          width={isBlack(pitch) ? key.blackWidth : key.width}
          height={isBlack(pitch) ? key.blackHeight : key.height}
        />
      ))}
      {pitches
        .filter((pitch) => pitch % 12 === 0)
        .map((pitch) => (
          <text key={pitch} x={leftOf(pitch) + 1} y={key.height + 13}>
            C{pitch / 12 - 1}
          </text>
        ))}
    </>
  );
}
