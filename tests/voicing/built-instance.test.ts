import { describe, expect, it } from "vitest";
import { builtInstance } from "../../src/voicing/built-instance.ts";
import { buildInstance } from "../../src/voicing/instance.ts";
import { phraseOf, questionOf, melodyOf } from "../phrase/support/phrases.ts";

const question = phraseOf(questionOf(melodyOf("C5:4@F6"))).moments[0]!.question;

describe("the built instance of a question", () => {
  it("is what building gives, and the same one when the question is asked again", () => {
    expect(builtInstance(question)).toEqual(buildInstance(question));
    expect(builtInstance(question)).toBe(builtInstance(question));
  });

  it("is another one for another question, problems among them", () => {
    const nobody = { ...question, players: [] };
    expect(builtInstance(nobody).ok).toBe(false);
    expect(builtInstance({ ...question })).not.toBe(builtInstance(question));
  });
});
