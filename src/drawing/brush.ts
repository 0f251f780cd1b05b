import type { NoteLabels } from "./drawing-types.ts";
import type { MeasureText } from "./measure-text.ts";
import type { StaffTheme } from "./staff-theme.ts";

/** Everything the drawing steps share. */
export interface Brush {
  readonly width: number;
  readonly labels: NoteLabels;
  readonly theme: StaffTheme;
  readonly measure: MeasureText;
  readonly textSize: number;
}
