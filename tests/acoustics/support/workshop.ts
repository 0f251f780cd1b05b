import { earGrid } from "../../../src/acoustics/ear-grid.ts";
import { excitationPass } from "../../../src/acoustics/excitation-pass.ts";
import { powerSteps } from "../../../src/acoustics/level-steps.ts";
import { prepareNote, type PreparedNote } from "../../../src/acoustics/prepared-note.ts";
import { slopeRows } from "../../../src/acoustics/slope-rows.ts";
import type { Spectrum } from "../../../src/acoustics/index.ts";

export const grid = earGrid();
const rows = slopeRows(grid);
const stepOf = powerSteps();

/** A fresh pass over the common grid. */
export const newPass = () => excitationPass(grid, rows, stepOf);

/** Prepares notes, each with a number and a pitch of its own. */
export const prepareAll = (spectra: readonly Spectrum[]): readonly PreparedNote[] =>
  spectra.map((spectrum, index) =>
    prepareNote({ grid, rows, stepOf, field: "free" }, spectrum, { index, pitch: index }),
  );
