import { join } from "node:path";
import highsLoader from "highs";
import { soundingMidi } from "../../src/base/index.ts";
import type { Question, SearchOptions } from "../../src/voicing/index.ts";
import { drawnProblem, judged } from "../voicing/support/solver-check.ts";
import { questionOf } from "./atlas-bench.ts";
import type { Bench } from "./bench.ts";

/**
 * The atlas against a general-purpose solver on many more cells of the full band than the tests
 * have time for: `npm run bench -- proof`.
 */
const questions = {
  "F13 under D5 at f": questionOf({}),
  "Cm9 under B♭4 at mf": questionOf({ chordText: "Cm9", melodyText: "Bb4", dynamic: "mf" }),
  "C7alt under B♭5 at f": questionOf({
    chordText: "C7alt",
    melodyText: "Bb5",
    colour: "altered",
  }),
  "Cmaj7 under F5 at mf": questionOf({ chordText: "Cmaj7", melodyText: "F5", dynamic: "mf" }),
  "C°7 under C5 at p": questionOf({ chordText: "C°7", melodyText: "C5", dynamic: "p" }),
  "C/E under C5 at f": questionOf({ chordText: "C/E", melodyText: "C5" }),
  "D7(♭9) under E♭5 without a bass": questionOf({
    chordText: "D7b9",
    melodyText: "Eb5",
    bassSounds: false,
  }),
  "G13 under E5, first trombone fixed on B3": questionOf({
    chordText: "G13",
    melodyText: "E5",
    locks: [{ playerId: "tbn1", sounding: soundingMidi(59) }],
    leadPlayer: "tpt1",
  }),
} satisfies Readonly<Record<string, Question>>;

const all = ["trumpets", "trombones", "saxes"] as const;

const parts: readonly (readonly [keyof typeof questions, string, SearchOptions, number])[] = [
  ["F13 under D5 at f", "free", {}, 40],
  ["F13 under D5 at f", "by section", { layer: "by-section" }, 20],
  ["F13 under D5 at f", "crossed", { layer: "crossed" }, 20],
  ["F13 under D5 at f", "trumpets and saxes", { sections: ["trumpets", "saxes"] }, 12],
  ["F13 under D5 at f", "brass", { sections: ["trumpets", "trombones"] }, 12],
  ["F13 under D5 at f", "all sections, crossed", { sections: all, layer: "crossed" }, 12],
  ["Cm9 under B♭4 at mf", "free", {}, 24],
  ["Cm9 under B♭4 at mf", "by section", { layer: "by-section" }, 12],
  ["Cm9 under B♭4 at mf", "crossed", { layer: "crossed" }, 12],
  ["C7alt under B♭5 at f", "free", {}, 16],
  ["C7alt under B♭5 at f", "crossed", { layer: "crossed" }, 6],
  ["Cmaj7 under F5 at mf", "free", {}, 16],
  ["Cmaj7 under F5 at mf", "all sections", { sections: all }, 12],
  ["C°7 under C5 at p", "free", {}, 12],
  ["C/E under C5 at f", "free", {}, 12],
  ["D7(♭9) under E♭5 without a bass", "free", {}, 12],
  ["G13 under E5, first trombone fixed on B3", "free", {}, 12],
];

/** Cells checked, by question and layer; throws where the solver disagrees. */
export const benches: readonly Bench[] = parts.map(([name, layer, options, count], index) => ({
  name: `proof: ${name}, ${layer}`,
  repeats: 1,
  isOnDemand: true,
  run: async () => {
    // The solver's code lies beside its script, which the bundle is not.
    const build = join(process.cwd(), "node_modules", "highs", "build");
    const highs = await highsLoader({ locateFile: (file: string) => join(build, file) });
    const verdict = judged(drawnProblem(questions[name], options, count, 100 + index), highs);
    if (verdict.disagreements.length > 0) throw new Error(JSON.stringify(verdict.disagreements));
    return `${verdict.cells} cells agree with the solver`;
  },
}));
