import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { SoundingMidi } from "../../../src/base/index.ts";
import type { Chord } from "../../../src/theory/index.ts";
import {
  clusterVoicing,
  closeVoicing,
  doubleLead,
  dropTwoDoubleLead,
  dropVoices,
  fifthsPairs,
  octavesLine,
  quartalVoicing,
  quartalWithThirdOnTop,
  spreadsFromBass,
  spreadsFromLead,
  techniquesOf,
  techniquesOfStack,
  techniqueTexts,
  tuttiGuideTones,
  tuttiOctaveCopy,
  tuttiWide,
  unisonLine,
  upperStructures,
  type TechniqueId,
  type TechniqueOptions,
} from "../../../src/voicing/index.ts";
import {
  chordOf,
  onAnyone,
  pitch,
  pitches,
  players,
  someChord,
  someLead,
  voicingOf,
} from "./questions.ts";

type Built = readonly (readonly [TechniqueId, readonly SoundingMidi[] | undefined])[];

/** Every construction on pitches that this chord and melody allow. */
function everyConstruction(chord: Chord, lead: SoundingMidi, options: TechniqueOptions): Built {
  const close = closeVoicing(chord, lead, options);
  const four = close && close.length === 4 ? close : undefined;
  const named =
    (id: TechniqueId) =>
    (stack: readonly SoundingMidi[]): Built[number] => [id, stack];
  const root = (48 + chord.rootPitchClass) as SoundingMidi;
  return [
    ["close", close],
    ["drop-2", close && dropVoices(close, [2])],
    ["drop-3", four && dropVoices(four, [3])],
    ["drop-2-4", four && dropVoices(four, [2, 4])],
    ["double-lead", close && doubleLead(close)],
    ["drop-2-double-lead", close && dropTwoDoubleLead(close)],
    ...spreadsFromLead(chord, lead, 4, options).map(named("spread")),
    ...spreadsFromLead(chord, lead, 5, options).map(named("spread")),
    ...spreadsFromBass(chord, root, 4, options).map(named("spread")),
    ...spreadsFromBass(chord, root, 5, options).map(named("spread")),
    ...upperStructures(chord, lead, options).map((one) => named("upper-structure")(one.pitches)),
    ["quartal", quartalVoicing(chord, lead, 4, options)],
    ["quartal", quartalWithThirdOnTop(chord, lead, 5, options)],
    ...fifthsPairs(chord, lead, options).map(named("fifths-pair")),
    ["cluster", clusterVoicing(chord, lead, 4, options)],
  ];
}

describe("recognising techniques", () => {
  it("knows every construction again, over random chords and melodies", () => {
    const seen = new Set<TechniqueId>();
    fc.assert(
      fc.property(someChord, someLead, ({ chord, options }, lead) => {
        for (const [id, stack] of everyConstruction(chord, lead, options)) {
          if (!stack) continue;
          seen.add(id);
          expect(techniquesOfStack(stack, chord), `${id} ${chord.symbol} ${stack}`).toContain(id);
        }
      }),
      { seed: 7, numRuns: 1000 },
    );
    expect(seen.size).toBe(11);
  });

  it("knows every tutti again", () => {
    const seats = ["tpt1 tpt2 tpt3 tpt4", "tbn1 tbn2 tbn3 btbn", "alto1 alto2 tenor1 tenor2 bari"];
    const byId = new Map(players("big-band").map((player) => [player.id, player]));
    const give = (stack: readonly SoundingMidi[], ids = "") =>
      ids.split(" ").flatMap((id, index) => {
        const player = byId.get(id);
        const sounding = stack[stack.length - 1 - index];
        return player && sounding !== undefined ? [{ player, sounding }] : [];
      });
    const sizes = { trumpets: 4, trombones: 4, saxes: 5 };
    const builders = [
      ["tutti-octave-copy", tuttiOctaveCopy],
      ["tutti-guide-tones", tuttiGuideTones],
      ["tutti-wide", tuttiWide],
    ] as const;
    const seen = new Set<TechniqueId>();
    fc.assert(
      fc.property(someChord, someLead, ({ chord, options }, lead) => {
        for (const [id, build] of builders) {
          const tutti = build(chord, lead, sizes, options);
          if (!tutti) continue;
          seen.add(id);
          const placements = [
            ...give(tutti.trumpets, seats[0]),
            ...give(tutti.trombones, seats[1]),
            ...give(tutti.saxes, seats[2]),
          ];
          expect(techniquesOf({ placements }, chord, lead), chord.symbol).toContain(id);
        }
      }),
      { seed: 7, numRuns: 300 },
    );
    expect(seen.size).toBe(3);
  });

  it("knows lines again", () => {
    const chord = chordOf("F13");
    const band = players("big-band");
    expect(techniquesOf(unisonLine(band, pitch("D5")), chord, pitch("D5"))).toEqual(["unison"]);
    expect(techniquesOf(octavesLine(band, pitch("D5")), chord, pitch("D5"))).toEqual(["octaves"]);
  });

  it("names two techniques where both fit: drop 3 from the root is a spread", () =>
    expect(techniquesOfStack(pitches("C3 B3 E4 G4"), chordOf("Cmaj7"))).toEqual([
      "drop-3",
      "spread",
    ]));

  it("does not count doublings, nor a player an octave above the lead", () => {
    const chord = chordOf("Cmaj7");
    const doubled = voicingOf("tpt1=B4 tpt2=B4 alto1=E4 tbn1=C4 tenor1=G3");
    expect(techniquesOf(doubled, chord, pitch("B4"))).toEqual(["drop-2"]);
    const topped = voicingOf("fl1=B5 tpt2=B4 alto1=E4 tbn1=C4 tenor1=G3");
    expect(techniquesOf(topped, chord, pitch("B4"))).toEqual(["drop-2"]);
  });

  it("has no name for what fits nothing, and for silence", () => {
    const chord = chordOf("C7");
    expect(techniquesOf(onAnyone(pitches("D3 F#4 A5")), chord, pitch("A5"))).toEqual([]);
    expect(techniquesOf({ placements: [] }, chord, pitch("A5"))).toEqual([]);
  });

  it("names techniques in the order of the table", () => {
    const order = [...techniqueTexts.keys()];
    fc.assert(
      fc.property(someChord, someLead, ({ chord, options }, lead) => {
        for (const [, stack] of everyConstruction(chord, lead, options)) {
          const places = techniquesOfStack(stack ?? [], chord).map((id) => order.indexOf(id));
          expect(places).toEqual([...places].sort((a, b) => a - b));
        }
      }),
      { seed: 7 },
    );
  });
});
