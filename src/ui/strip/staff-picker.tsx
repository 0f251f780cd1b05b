import type { PointerEvent } from "react";
import { soundingMidi } from "../../base/index.ts";
import { pickMelody } from "../actions/ask.ts";
import { usePage } from "../store.ts";
import { plainName } from "../words/pitch-names.ts";
import { signOf } from "../words/signs.ts";
import { useMelody } from "./melody-now.ts";
import { letterSteps, pitchOfSteps } from "./staff-places.ts";

/** The E line at the bottom of the treble staff, letter steps above C0. */
const trebleBottom = 30;
const trebleClef =
  "M8,31c-3,-1 -3.7,-5 -.7,-6.4c4,-1.8 8,1.6 7.4,6c-.7,4.8 -6.8,6.8 -10.8,3.8c-4.8,-3.6 -4,-10 0,-14.4c3.4,-3.7 6.4,-6.8 6.4,-11.5c0,-3 -1,-5.4 -2.2,-5.4c-2.3,0 -3.6,4.8 -3.1,9.1l3.3,25.8c.6,4.5 -1,6.8 -3.6,6.5";
const wholeNote =
  "M-6.4,0a6.4,4 0 1,0 12.8,0a6.4,4 0 1,0 -12.8,0zM-2.8,-1.1a2.8,2.4 30 1,1 5.6,2.2a2.8,2.4 30 1,1 -5.6,-2.2z";
const bassClef = "M0,1.6c1.4,-8 13.6,-11.6 17,-2.6c3.4,9.6 -4.6,21 -17.6,26.6";

/** A treble staff with one note, as large as the strip allows; octave signs keep it inside. */
export function SmallStaff({ sounding }: { readonly sounding: number | undefined }) {
  const name = useName(sounding);
  const steps = name === null ? null : letterSteps(name);
  const shift = steps === null ? 0 : steps > 40 ? 7 : steps < 26 ? -7 : 0;
  const y = steps === null ? 0 : 37 - 3.5 * (steps - shift - trebleBottom);
  return (
    <svg width="58" height="46" viewBox="0 0 58 46" aria-hidden="true" className="small-staff">
      {[9, 16, 23, 30, 37].map((line) => (
        <line key={line} className="staff-line" x1="0" y1={line} x2="58" y2={line} />
      ))}
      <path className="clef" transform="translate(3 0)" d={trebleClef} />
      {steps !== null && name !== null && (
        <g transform={`translate(44 ${y})`}>
          <path className="head" transform="rotate(-14)" d={wholeNote} fillRule="evenodd" />
          <text className="head-sign" x="-10" y="5" textAnchor="end">
            {signOf(name)}
          </text>
          {shift !== 0 && (
            <text className="head-shift" x="0" y={shift > 0 ? -7 : 15} textAnchor="middle">
              {shift > 0 ? "8va" : "8vb"}
            </text>
          )}
        </g>
      )}
    </svg>
  );
}

function useName(sounding: number | undefined): string | null {
  const nameOf = usePage((state) => state.answer?.asked.nameOf);
  if (sounding === undefined) return null;
  return nameOf?.(sounding).name ?? plainName(sounding);
}

const space = 9;
const top = { steps: 44, y: 8 };
const height = 200;

/** Lines of the grand staff, letter steps: treble E4 to F5, bass G2 to A3. */
const lines = [30, 32, 34, 36, 38, 18, 20, 22, 24, 26];

function yOf(steps: number): number {
  return top.y + (top.steps - steps) * (space / 2);
}

/** A grand staff: a press on a line or space takes that letter as the chord spells it. */
export function StaffPicker() {
  const strip = usePage((state) => state.strip);
  const lead = useMelody();
  const name = useName(lead);
  const steps = name === null ? null : letterSteps(name);
  const pressed = (event: PointerEvent<SVGSVGElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    const y = ((event.clientY - box.top) / box.height) * height;
    const at = Math.round(top.steps - (y - top.y) / (space / 2));
    pickMelody(soundingMidi(pitchOfSteps(at, strip)));
  };
  return (
    <svg
      className="staff-picker"
      viewBox={`0 0 150 ${height}`}
      width="150"
      height={height}
      onPointerDown={pressed}
      role="img"
      aria-label={`Staff with ${name ?? "no note"}; press a line or space, or use the keyboard beside it`}
    >
      <rect width="150" height={height} fill="transparent" />
      {lines.map((line) => (
        <line key={line} className="staff-line" x1="4" x2="146" y1={yOf(line)} y2={yOf(line)} />
      ))}
      <path
        className="clef"
        transform={`translate(8 ${yOf(32) - 38}) scale(1.28)`}
        d={trebleClef}
      />
      <g transform={`translate(12 ${yOf(24)})`}>
        <path className="clef" d={bassClef} />
        <circle className="head" cx="1.4" cy=".4" r="3" />
        <circle className="head" cx="23" cy="-4.5" r="1.7" />
        <circle className="head" cx="23" cy="4.5" r="1.7" />
      </g>
      {steps !== null && name !== null && <PickedNote steps={steps} sign={signOf(name)} />}
    </svg>
  );
}

/** The picked note with its sign and ledger lines. */
function PickedNote({ steps, sign }: { readonly steps: number; readonly sign: string }) {
  const ledgers: number[] = [];
  for (let line = 40; line <= steps; line += 2) ledgers.push(line);
  for (let line = 16; line >= steps; line -= 2) ledgers.push(line);
  if (steps === 28) ledgers.push(28);
  return (
    <g>
      {ledgers.map((line) => (
        <line key={line} className="staff-line" x1="84" x2="112" y1={yOf(line)} y2={yOf(line)} />
      ))}
      <path
        className="head"
        transform={`translate(98 ${yOf(steps)}) rotate(-14)`}
        d={wholeNote}
        fillRule="evenodd"
      />
      <text className="head-sign" x="86" y={yOf(steps) + 5} textAnchor="end">
        {sign}
      </text>
    </g>
  );
}
