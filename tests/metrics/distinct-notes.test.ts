import { describe, expect, it } from "vitest";
import { distinctNotes } from "../../src/metrics/distinct-notes.ts";
import { read, readSilence } from "./situations.ts";

describe("notes", () => {
  it("counts different pitches, and note names without octaves beside", () =>
    expect(read(distinctNotes, "tpt1=D5 tpt2=D5 alto1=D4 tbn1=A3")).toMatchObject({
      value: 3,
      text: "3",
      detail: "2 note names, octaves not counted.",
    }));

  it("is 0 in silence", () => expect(readSilence(distinctNotes).value).toBe(0));
});
