import { describe, expect, it } from "vitest";
import { lowWeight } from "../../src/metrics/low-weight.ts";
import { read, readSilence } from "./situations.ts";

describe("weight below", () => {
  it("is the share of the lower third, and points at who makes it", () =>
    expect(read(lowWeight, "tpt1=D5 tbn1=A4 tbn2=F2 btbn=F2")).toMatchObject({
      value: 50,
      text: "50",
      detail: "8 of 16 units.",
      notes: [41],
      playerIds: ["tbn2", "btbn"],
    }));

  it("is not defined without two notes", () => {
    expect(read(lowWeight, "tpt1=D5 tpt2=D5").value).toBeNull();
    expect(readSilence(lowWeight).value).toBeNull();
  });
});
