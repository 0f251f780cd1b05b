import { describe, expect, it } from "vitest";
import { players } from "../../src/metrics/players.ts";
import { read, readSilence } from "./situations.ts";

describe("players", () => {
  it("counts who sounds, section by section", () =>
    expect(read(players, "tpt1=D5 tpt2=D5 alto1=D4 tbn1=A3")).toMatchObject({
      value: 4,
      detail: "2 trumpets, 1 trombone, 1 sax.",
      playerIds: ["tpt1", "tpt2", "alto1", "tbn1"],
    }));

  it("is 0 in silence", () =>
    expect(readSilence(players)).toMatchObject({ value: 0, detail: "Nobody sounds." }));
});
