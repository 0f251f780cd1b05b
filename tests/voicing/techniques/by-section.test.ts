import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { canSound, makePlayer } from "../../../src/band/index.ts";
import { bySectionVoicings, stackOf, type Voicing } from "../../../src/voicing/index.ts";
import { chordOf, pitch, plain, players, someChord, someLead } from "./questions.ts";

const ask = (symbol: string, lead: string, lineUp: string) => {
  const chord = chordOf(symbol);
  const options = { ...plain(chord), dynamic: "f" as const };
  return bySectionVoicings(chord, pitch(lead), players(lineUp), options);
};
const text = ({ placements }: Voicing) =>
  placements.map(({ player, sounding }) => `${player.id}=${sounding}`).join(" ");
const lineUps = ["big-band", "school-band", "six-horn", "four-horn", "three-horn"];

describe("by-section voicings", () => {
  it("start with the octave copy for F13 under D5 (C. Israels, lesson 19, first choice)", () => {
    const [first] = ask("F13", "D5", "big-band");
    expect(first?.technique).toBe("tutti-octave-copy");
    expect(first && text(first.voicing)).toBe(
      "tpt1=74 tpt2=69 tpt3=67 tpt4=63 tbn1=62 tbn2=57 tbn3=55 btbn=51 " +
        "alto1=62 alto2=57 tenor1=55 tenor2=51 bari=50",
    );
    expect(first?.note).toContain("Alto 1 an octave under the lead.");
  });

  it("have each of the three tuttis, sections alone, and lines", () => {
    const found = ask("F13", "D5", "big-band");
    const techniques = found.map(({ technique }) => technique);
    for (const one of ["tutti-octave-copy", "tutti-guide-tones", "tutti-wide", "unison", "octaves"])
      expect(techniques).toContain(one);
    const labels = found.map(({ label }) => label);
    expect(labels).toContain("Saxes: double lead");
    expect(labels).toContain("Trumpets: close");
  });

  it("voice a small group as one section", () => {
    const labels = ask("F13", "D5", "four-horn").map(({ label }) => label);
    expect(labels.slice(0, 2)).toEqual(["All horns: close", "All horns: drop 2"]);
  });

  it("say what a player cannot play", () => {
    const low = ask("C", "C4", "big-band").find(({ label }) => label === "Tutti, octave copy");
    expect(low?.note).toContain("out of reach of the trumpets");
  });

  it("have lines only where there is no chord", () => {
    const techniques = ask("N.C.", "D5", "big-band").map(({ technique }) => technique);
    expect(techniques).toEqual(["unison", "octaves"]);
  });

  it("are empty where nobody reaches the melody, and without players", () => {
    expect(ask("F13", "C7", "big-band")).toEqual([]);
    const options = { ...plain(chordOf("F13")), dynamic: "f" as const };
    expect(bySectionVoicings(chordOf("F13"), pitch("D5"), [], options)).toEqual([]);
  });

  it("pass rhythm players over", () => {
    const options = { ...plain(chordOf("F13")), dynamic: "f" as const };
    const horns = [...players("four-horn"), makePlayer({ seat: "piano" })];
    const found = bySectionVoicings(chordOf("F13"), pitch("D5"), horns, options);
    const ids = found.flatMap(({ voicing }) => voicing.placements.map(({ player }) => player.id));
    expect(ids).toContain("tpt1");
    expect(ids).not.toContain("piano");
  });

  it("keep the lead on top, everyone inside the range, in line-up order, no voicing twice", () =>
    fc.assert(
      fc.property(
        someChord,
        someLead,
        fc.constantFrom(...lineUps),
        ({ chord, options }, lead, lineUp) => {
          const band = players(lineUp);
          const found = bySectionVoicings(chord, lead, band, { ...options, dynamic: "mf" });
          expect(new Set(found.map(({ voicing }) => text(voicing))).size).toBe(found.length);
          for (const { voicing } of found) {
            expect(stackOf(voicing).at(-1)).toBe(lead);
            const order = voicing.placements.map(({ player }) => band.indexOf(player));
            expect(order).toEqual([...order].sort((a, b) => a - b));
            for (const { player, sounding } of voicing.placements)
              expect(canSound(player, sounding)).toBe(true);
          }
        },
      ),
      { seed: 7, numRuns: 150 },
    ));
});
