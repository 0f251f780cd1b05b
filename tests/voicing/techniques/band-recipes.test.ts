import { describe, expect, it } from "vitest";
import type { Player } from "../../../src/band/index.ts";
import { bandRecipes } from "../../../src/voicing/techniques/band-recipes.ts";
import type { SectionTask } from "../../../src/voicing/techniques/by-section-types.ts";
import { chordOf, pitch, pitches, plain, players } from "./questions.ts";

function task(symbol: string, lead: string, keep: (player: Player) => boolean): SectionTask {
  const chord = chordOf(symbol);
  const horns = players("big-band").filter(keep);
  const of = (section: string) => horns.filter((player) => player.section === section);
  const sections = { trumpets: of("trumpets"), trombones: of("trombones"), saxes: of("saxes") };
  return {
    chord,
    lead: pitch(lead),
    options: { ...plain(chord), dynamic: "f" },
    sections,
    sizes: {
      trumpets: sections.trumpets.length,
      trombones: sections.trombones.length,
      saxes: sections.saxes.length,
    },
  };
}

const build = (label: string, given: SectionTask) =>
  bandRecipes.find((recipe) => recipe.label === label)?.build(given);
const labels = (given: SectionTask) =>
  bandRecipes.filter((recipe) => recipe.build(given)).map(({ label }) => label);
const everyone = () => true;

describe("textbook voicings of the whole band", () => {
  it("are the tuttis where all three sections are there", () =>
    expect(labels(task("F13", "D5", everyone))).toEqual([
      "Tutti, octave copy",
      "Tutti, octave copy, saxes open",
      "Tutti, guide tones",
      "Tutti, wide",
      "Trumpets close over trombones spread",
    ]));

  it("put the lead alto at pitch where an octave lower is below the instrument", () => {
    expect(build("Tutti, octave copy", task("F13", "D5", everyone))?.saxes.at(-1)).toBe(62);
    expect(build("Tutti, octave copy", task("C6", "C4", everyone))?.saxes.at(-1)).toBe(60);
  });

  it("spread the trombones from the root", () =>
    expect(
      build("Trumpets close over trombones spread", task("F13", "D5", everyone))?.trombones,
    ).toEqual(pitches("F2 Eb3 A3 C4")));

  it("let saxes lead where there are no trumpets", () => {
    const noTrumpets = task("F13", "D5", ({ section }) => section !== "trumpets");
    expect(labels(noTrumpets)).toEqual(["Saxes close over trombones"]);
    const found = build("Saxes close over trombones", noTrumpets);
    expect(found?.saxes).toEqual(pitches("D4 Eb4 G4 A4 D5"));
    expect(found?.trombones).toEqual(pitches("Eb3 G3 A3 D4"));
  });

  it("voice thin brass as one section", () => {
    const thin = task(
      "F13",
      "D5",
      ({ section, chair, id }) => section === "saxes" || (chair < 2 && id !== "btbn"),
    );
    const found = build("Brass as one section", thin);
    expect([...(found?.trombones ?? []), ...(found?.trumpets ?? [])]).toEqual(
      pitches("Eb4 G4 A4 D5"),
    );
  });

  it("give one pitch to each player", () => {
    for (const symbol of ["F13", "C", "Cm9", "C7alt", "Cdim7"])
      for (const lead of ["C4", "D5", "Bb5"])
        for (const recipe of bandRecipes) {
          const given = task(symbol, lead, everyone);
          const found = recipe.build(given);
          if (!found) continue;
          for (const section of ["trumpets", "trombones", "saxes"] as const)
            expect(found[section]).toHaveLength(given.sizes[section]);
        }
  });
});
