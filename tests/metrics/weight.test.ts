import { describe, expect, it } from "vitest";
import { weight } from "../../src/metrics/weight.ts";
import { read, readSilence } from "./situations.ts";

describe("weight", () => {
  it("says how heavy and where it sits", () =>
    expect(read(weight, "tpt1=D5 tbn1=A4 bari=F2 btbn=F2")).toMatchObject({
      value: 15,
      text: "15",
      detail: "Low third 47 %, middle 0 %, high 53 %.",
    }));

  it("falls with the dynamic for brass (Rimsky-Korsakov: at p all winds are equal)", () => {
    const at = (dynamic: "p" | "mf" | "f") => read(weight, "tpt1=D5 fl1=D5", dynamic).value ?? 0;
    expect(at("p")).toBe(2);
    expect(at("mf")).toBeGreaterThan(at("p"));
    expect(at("f")).toBe(5);
  });

  it("is not defined in silence", () => {
    expect(read(weight, "tpt1=D5 tpt2=D5").detail).toBe("All on one pitch.");
    expect(readSilence(weight).value).toBeNull();
  });
});
