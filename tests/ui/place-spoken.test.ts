import { describe, expect, it } from "vitest";
import {
  firstInquiry,
  readInquiry,
  reportOn,
  searchSteps,
  voicingOfCell,
} from "../../src/explore/index.ts";
import { placeSpoken } from "../../src/ui/actions/place-spoken.ts";
import type { Answer, InView } from "../../src/ui/state/page-state.ts";
import { namerOf } from "../../src/ui/words/pitch-names.ts";
import type { AtlasCell } from "../../src/voicing/index.ts";

const reading = readInquiry(firstInquiry());
if (!reading.ok) throw new RangeError("the first question can be read");
const { question } = reading;

/** The first texture that the search finds; its neighbours are set by hand. */
function firstFound(): AtlasCell {
  const steps = searchSteps(question, "free");
  for (;;) {
    const step = steps.next();
    if (step.done === true) throw new RangeError("the first question has textures");
    const found = step.value.cells[0];
    if (found !== undefined) return found;
  }
}

const here = firstFound();
const { span, notes, players } = here.key;
const at = (more: { span?: number; notes?: number; players?: number }): AtlasCell => ({
  ...here,
  key: { span, notes, players, ...more },
});

function spokenAmong(cells: readonly AtlasCell[], shown: string): string {
  const voicing = voicingOfCell(question, here);
  const view = { report: reportOn(voicing, question) } as unknown as InView;
  const answer = { asked: { nameOf: namerOf(question.chord) }, map: { cells } };
  return placeSpoken(view, answer as unknown as Answer, shown);
}

describe("a place of the map in spoken words", () => {
  it("says which neighbours there are and how they differ", () => {
    const words = spokenAmong([here, at({ span: span + 2 }), at({ notes: notes + 1 })], "density");
    expect(words).toContain("Right: 2 semitones wider.");
    expect(words).toContain("Up: 1 note more.");
    expect(words).toContain("Left: none.");
    expect(words).toContain("Down: none.");
  });

  it("says both differences where a walk leaves its row", () => {
    const words = spokenAmong([here, at({ span: span + 1, notes: notes + 2 })], "density");
    expect(words).toContain("Right: 1 semitone wider, 2 notes more.");
  });

  it("leaves out places with another number of players", () => {
    const words = spokenAmong([here, at({ span: span + 1, players: players + 1 })], "density");
    expect(words).toContain("Right: none.");
  });

  it("speaks the measure that shades the map before the others, and each once", () => {
    const words = spokenAmong([here], "mud");
    expect(words.indexOf("Mud")).toBeGreaterThan(0);
    expect(words.indexOf("Mud")).toBeLessThan(words.indexOf("Density"));
    expect(spokenAmong([here], "weight").match(/Weight/g)).toHaveLength(1);
  });
});
