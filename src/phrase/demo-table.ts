import type { Dynamic } from "../band/index.ts";
import type { MelodyStyle, NoteLength } from "../theory/index.ts";
import type { TexturePresetId } from "./texture-preset-table.ts";

/**
 * [pitch, or "" for a rest; length in quarter notes; chord that begins here; "tie" into the next
 * note].
 */
export type DemoItem = readonly [
  pitch: string,
  length: NoteLength,
  chord?: string | undefined,
  tie?: "tie",
];

/** A phrase to start from. */
export interface DemoRow {
  readonly id: "shout" | "ballad";
  readonly title: string;
  /** Who needs it and for what, in one sentence. */
  readonly scenario: string;
  readonly tonic: string;
  readonly tempo: number;
  readonly style: MelodyStyle;
  readonly dynamic: Dynamic;
  readonly shape: TexturePresetId;
  readonly lineUp: string;
  readonly bars: readonly (readonly DemoItem[])[];
}

const eighth: NoteLength = [1, 2];
const quarter: NoteLength = [1, 1];
const dotted: NoteLength = [3, 2];
const half: NoteLength = [2, 1];
const long: NoteLength = [3, 1];

/**
 * Source: both phrases were written for this program and the scenario is invented; any likeness is
 * chance. Composer: the project itself, 2025; no words.
 */
export const demoTable: readonly DemoRow[] = Object.freeze<DemoRow[]>([
  {
    id: "shout",
    title: "Tidemill Shout",
    scenario:
      "The Tidemill Orchestra plays its harbour dance on Saturday and needs a shout chorus that opens up before the last head.",
    tonic: "F",
    tempo: 168,
    style: "swing",
    dynamic: "f",
    shape: "build",
    lineUp: "big-band",
    bars: [
      [
        ["A4", eighth, "F6"],
        ["C5", eighth],
      ],
      [
        ["D5", dotted, "F6"],
        ["C5", eighth],
        ["A4", eighth],
        ["B4", eighth],
        ["C5", quarter],
      ],
      [
        ["F5", eighth, "F7"],
        ["D5", eighth],
        ["", eighth],
        ["Eb5", dotted],
        ["", quarter],
      ],
      [
        ["D5", eighth, "Bb7"],
        ["F5", eighth],
        ["G5", quarter],
        ["F5", eighth],
        ["E5", eighth],
        ["D5", quarter],
      ],
      [
        ["Ab5", dotted, "Bdim7"],
        ["F5", eighth],
        ["D5", eighth],
        ["F5", eighth],
        ["", eighth],
        ["A5", eighth, undefined, "tie"],
      ],
      [
        ["A5", quarter, "F6/C"],
        ["G5", eighth],
        ["F5", eighth],
        ["", eighth],
        ["D5", eighth],
        ["F5", quarter],
      ],
      [
        ["C6", quarter, "D7(b9)"],
        ["A5", eighth],
        ["F#5", eighth],
        ["A5", eighth],
        ["G#5", eighth],
        ["A5", eighth],
        ["Bb5", eighth, undefined, "tie"],
      ],
      [
        ["Bb5", eighth, "Gm7"],
        ["G5", eighth],
        ["D5", eighth],
        ["F5", eighth],
        ["E5", eighth, "C7"],
        ["G5", eighth],
        ["Bb5", eighth],
        ["F#5", eighth],
      ],
      [
        ["F5", quarter, "F6"],
        ["", quarter],
        ["D5", eighth],
        ["F5", eighth],
        ["", quarter],
      ],
    ],
  },
  {
    id: "ballad",
    title: "Lamps on the Weir",
    scenario:
      "The same band closes the evening softly: a ballad phrase whose inner lines everyone should enjoy.",
    tonic: "Eb",
    tempo: 66,
    style: "ballad",
    dynamic: "mp",
    shape: "build",
    lineUp: "big-band",
    bars: [
      [
        ["G4", half, "Ebmaj9"],
        ["Bb4", quarter],
        ["C5", eighth],
        ["D5", eighth],
      ],
      [
        ["Eb5", long, "Cm9"],
        ["D5", eighth],
        ["C5", eighth],
      ],
      [
        ["C5", half, "Fm9"],
        ["Bb4", eighth],
        ["Ab4", eighth],
        ["G4", quarter],
      ],
      [
        ["G4", long, "Bb13"],
        ["", eighth],
        ["F4", eighth],
      ],
      [
        ["Bb4", half, "Ebmaj7"],
        ["D5", quarter],
        ["Eb5", eighth],
        ["F5", eighth],
      ],
      [
        ["G5", half, "Abmaj7"],
        ["F5", quarter, "Abm6"],
        ["Eb5", quarter],
      ],
      [
        ["C5", dotted, "Fm9"],
        ["Ab4", eighth],
        ["Cb5", quarter, "Bb13(b9)"],
        ["G4", quarter],
      ],
      [
        ["F4", quarter, "Eb69"],
        ["Bb4", long],
      ],
    ],
  },
]);
