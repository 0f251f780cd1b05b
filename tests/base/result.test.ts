import { describe, expect, it } from "vitest";
import { fail, ok } from "../../src/base/index.ts";

describe("a result", () => {
  it("holds a value", () => expect(ok(3)).toEqual({ ok: true, value: 3 }));

  it("or a problem with its code, sentence, place and ways on", () => {
    const more = { position: 2, suggestions: ["C7"] };
    expect(fail("chord-unknown", "Not a chord.", more)).toEqual({
      ok: false,
      problem: { code: "chord-unknown", message: "Not a chord.", position: 2, suggestions: ["C7"] },
    });
  });
});
