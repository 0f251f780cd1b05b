import { describe, expect, it } from "vitest";
import {
  inNamingOrder,
  inScoreOrder,
  namesBySection,
  staffPlayerOf,
} from "../../src/notation/player-groups.ts";
import { player } from "./support/voicings.ts";

const players = (ids: string) => ids.split(" ").map((id) => staffPlayerOf(player(id)));
const names = (ids: string) =>
  namesBySection(inNamingOrder(players(ids))).map((each) => each.names.join("; "));

describe("players on a staff", () => {
  // Metropole Orkest library, score and parts specifications: saxes, trumpets, trombones, rhythm.
  it("stand in score order", () => {
    const band = players("tpt1 tpt2 tbn1 btbn alto1 bari bass");
    const ordered = inScoreOrder(band, (each) => each.section).map((each) => each.id);
    expect(ordered).toEqual(["alto1", "bari", "tpt1", "tpt2", "tbn1", "btbn", "bass"]);
  });

  it("keep their line-up order inside a section", () => {
    const saxes = inScoreOrder(players("tenor1 alto1"), (each) => each.section);
    expect(saxes.map((each) => each.id)).toEqual(["tenor1", "alto1"]);
  });

  it("are named brass first on a shared note", () => {
    expect(inNamingOrder(players("alto1 tbn1 tpt1")).map((each) => each.id)).toEqual([
      "tpt1",
      "tbn1",
      "alto1",
    ]);
  });
});

describe("short names", () => {
  it("run the chairs of one instrument together", () => {
    expect(names("tpt1 tpt2 tpt3 tpt4 tbn1 btbn alto1 alto2 tenor1 bari")).toEqual([
      "Tpt 1–4",
      "Tbn 1; B. Tbn",
      "Alto 1, 2; Ten 1; Bari",
    ]);
  });

  it("name a gap as a gap", () => {
    expect(names("tpt1 tpt2 tpt4")).toEqual(["Tpt 1, 2, 4"]);
    expect(names("tpt1 tpt3 tpt4 flugel1")).toEqual(["Tpt 1, 3, 4; Flg 1"]);
  });

  it("leave out sections that rest", () => {
    expect(names("bari")).toEqual(["Bari"]);
    expect(namesBySection([])).toEqual([]);
  });
});
