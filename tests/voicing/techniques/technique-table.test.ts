import { describe, expect, it } from "vitest";
import { techniqueTexts } from "../../../src/voicing/index.ts";

describe("the table of techniques", () => {
  it.each([...techniqueTexts])("says what %s is, in one sentence, with its source", (id, text) => {
    expect(text.id).toBe(id);
    expect(text.label).toMatch(/^[A-Z]/);
    expect(text.meaning).toMatch(/^[A-Z][^.]*\.$/);
    expect(text.source.length).toBeGreaterThan(10);
  });

  it("has no label twice", () => {
    const labels = [...techniqueTexts.values()].map(({ label }) => label);
    expect(new Set(labels).size).toBe(labels.length);
  });
});
