import { describe, expect, it } from "vitest";
import { highestFirst } from "../../../src/voicing/techniques/chair-order.ts";
import { players } from "./questions.ts";

const ids = (lineUp: string, section: string) =>
  highestFirst(players(lineUp).filter((player) => player.section === section)).map(({ id }) => id);

describe("handing out from the top", () => {
  it("goes by instrument, then by chair", () => {
    expect(ids("big-band", "saxes")).toEqual(["alto1", "alto2", "tenor1", "tenor2", "bari"]);
    expect(ids("big-band", "trombones")).toEqual(["tbn1", "tbn2", "tbn3", "btbn"]);
    expect(ids("big-band", "trumpets")).toEqual(["tpt1", "tpt2", "tpt3", "tpt4"]);
  });

  it("does not depend on the order in which players are given", () => {
    const band = players("big-band");
    expect(highestFirst([...band].reverse())).toEqual(highestFirst(band));
  });
});
