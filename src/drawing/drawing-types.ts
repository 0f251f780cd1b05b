import type { SoundingMidi } from "../base/index.ts";
import type { StaffTheme } from "./staff-theme.ts";

/** What stands beside each note. */
export type NoteLabels = "players" | "degrees" | "none";

/** How to draw; everything but the width has a default. */
export interface DrawOptions {
  /** Width of the drawing in CSS pixels; the height follows from it. */
  readonly width: number;
  /** Degree and players, degree only, or nothing beside each note; "players" unless given. */
  readonly labels?: NoteLabels;
  /** Colours; CSS variables unless given. */
  readonly theme?: StaffTheme;
}

/** Where a note stands, so that the page can lead a thread to it. */
export interface DrawnNote {
  readonly staffId: string;
  readonly midi: SoundingMidi;
  readonly playerIds: readonly string[];
  /** Middle of the head, CSS pixels from the drawing's left and top edge. */
  readonly x: number;
  readonly y: number;
}

/** A finished drawing. */
export interface StaffDrawing {
  readonly svg: SVGSVGElement;
  readonly width: number;
  readonly height: number;
  readonly notes: readonly DrawnNote[];
}

/** Parts of a drawing before they are put together. */
export interface DrawnParts {
  readonly children: readonly SVGElement[];
  readonly height: number;
  readonly notes: readonly DrawnNote[];
}
