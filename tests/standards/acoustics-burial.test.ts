import { describe, expect, it } from "vitest";
import {
  audibility,
  loudnessIso5322,
  soneToPhon5322,
  specificLoudnessPattern,
  spectralCentroid,
  type Spectrum,
} from "../../src/acoustics/index.ts";
import { hzToErbNumber } from "../../src/acoustics/index.ts";
import { soundingMidi, type Hertz } from "../../src/base/index.ts";
import { partialsOf, type Dynamic, type InstrumentId } from "../../src/band/index.ts";
import { burialScene } from "../acoustics/support/burial-scene.ts";
import { envelopeNote } from "../acoustics/support/measured-envelopes.ts";

const MIDDLE_REGISTER = [62, 63, 64, 65, 66, 67];
const C5 = 72;

const band = (instrument: InstrumentId, midi: number, dynamic: Dynamic): Spectrum =>
  partialsOf({ instrument, sounding: soundingMidi(midi), dynamic, mute: "open" });

// Levels of the feasibility study: trumpet 94 dB sound power, flute 80 dB at G4 rising 6 dB an
// octave, both at one metre; envelopes measured on an open set.
const ONE_METRE_DB = -11;
const studied = (instrument: "flute" | "trumpet" | "trombone", midi: number): Spectrum => {
  const power = instrument === "flute" ? 80 + (6 * (midi - 67)) / 12 : 94;
  return envelopeNote(instrument, midi, power + ONE_METRE_DB);
};

// The study's own figures: G4 unison -7.2, octave above +2.3; C5 -0.4 and +0.8.
describe("a flute with a trumpet at the levels of the study", () => {
  it("has the margins that the study found at G4 and C5", () => {
    const [g4, c5] = burialScene(studied, [67, C5]);
    expect(g4!.unison.margin).toBeCloseTo(-7.2, 1);
    expect(g4!.octaveAbove.margin).toBeCloseTo(2.3, 1);
    expect(c5!.unison.margin).toBeCloseTo(-0.4, 1);
    expect(c5!.octaveAbove.margin).toBeCloseTo(0.8, 1);
  });
});

// Power of a simple source at equal volume flow, rho omega^2 |U|^2 / (8 pi c): P. M. Morse and K. U.
// Ingard, Theoretical Acoustics, 1968. The flute's openings are such sources (N. H. Fletcher and T. D.
// Rossing, The Physics of Musical Instruments, 2nd ed. 1998), its flow about equal over the range.
describe("the strength of a flute over its range", () => {
  const AIR_DENSITY = 1.2;
  const SPEED_OF_SOUND = 343;
  const simpleSourceDb = (hertz: number, flow: number): number =>
    10 *
    Math.log10((AIR_DENSITY * (2 * Math.PI * hertz * flow) ** 2) / (8 * Math.PI * SPEED_OF_SOUND));
  const levelOf = (midi: number): number =>
    10 *
    Math.log10(band("flute", midi, "mf").reduce((sum, { dbSpl }) => sum + 10 ** (dbSpl / 10), 0));
  const hertzOf = (midi: number): number => 440 * 2 ** ((midi - 69) / 12);

  it.each([60, 64, 67, 72, 76])("rises from MIDI %i to the octave as simple sources do", (midi) => {
    const rise = simpleSourceDb(hertzOf(midi + 12), 1e-4) - simpleSourceDb(hertzOf(midi), 1e-4);
    expect(Math.abs(levelOf(midi + 12) - levelOf(midi) - rise)).toBeLessThan(1);
  });
});

// Common practice, no single source: a flute in unison with a trumpet is lost in the middle register
// and comes out an octave above; where it meets the trumpet's formant no model can tell.
describe.each([
  ["measured envelopes and the study's levels", studied],
  [
    "the band's timbre at mezzo-forte",
    (instrument: InstrumentId, midi: number) => band(instrument, midi, "mf"),
  ],
] as const)("a flute with a trumpet, %s", (_name, played) => {
  it.each(MIDDLE_REGISTER)("is buried in unison at MIDI %i and out an octave above", (midi) => {
    const [scene] = burialScene(played, [midi]);
    expect(scene!.unison.verdict).toBe("buried");
    expect(scene!.unison.coveredBy?.group).toBe("tpt1");
    expect(scene!.octaveAbove.leaning).not.toBe("buried");
    expect(scene!.octaveAbove.margin - scene!.unison.margin).toBeGreaterThan(6);
  });

  it("at C6 over the trumpet's C5 is said to be uncertain", () => {
    const [scene] = burialScene(played, [C5]);
    expect(scene!.octaveAbove.verdict).toBe("uncertain");
  });
});

// Common practice, no single source.
describe("players of the band among each other", () => {
  it("leave a bottom trumpet next to a strong lead trombone covered by it", () => {
    const [trumpet, trombone] = audibility([
      { id: "tpt4", spectrum: band("trumpet", 59, "ff") },
      { id: "tbn1", spectrum: band("trombone", 61, "ff") },
    ]);
    expect(trumpet!.verdict).toBe("covered");
    expect(trumpet!.coveredBy?.ids).toEqual(["tbn1"]);
    expect(trombone!.verdict).toBe("clear");
  });

  it("make four trumpets on a note heavier than one, by much less than four times", () => {
    const one = band("trumpet", 67, "f");
    const four = [one, one, one, one].flat();
    const ratio = loudnessIso5322(four) / loudnessIso5322(one);
    expect(ratio).toBeGreaterThan(1.25);
    expect(ratio).toBeLessThan(2);
  });

  it("are one source when four trumpets play one note, and not four buried ones", () => {
    const spectrum = band("trumpet", 67, "f");
    const players = ["tpt1", "tpt2", "tpt3", "tpt4"];
    const singly = audibility(players.map((id) => ({ id, spectrum })));
    const together = audibility(players.map((id) => ({ id, group: "trumpets 67", spectrum })));
    expect(singly.map(({ leaning }) => leaning)).toEqual(Array(4).fill("buried"));
    expect(together).toHaveLength(1);
    expect(together[0]!.verdict).toBe("clear");
    expect(together[0]!.ids).toEqual(players);
  });
});

const HIGH_FROM_CAM = hzToErbNumber(2000 as Hertz);
/** Loudness of the channels from 2 kHz up, one ear. */
function highLoudness(spectrum: Spectrum): number {
  const pattern = specificLoudnessPattern(spectrum);
  return pattern.reduce(
    (sum, value, index) => (1.8 + index / 10 >= HIGH_FROM_CAM ? sum + value * 0.1 : sum),
    0,
  );
}

// J. W. Beauchamp 1975 and N. H. Fletcher and A. Tarnopolsky 1999: upper partials of brass fall
// faster than the whole.
describe("the same notes played softer", () => {
  it.each([
    ["trumpet", 67],
    ["trombone", 58],
    ["alto-sax", 67],
  ] as const)("lose brightness faster than loudness: %s", (instrument, midi) => {
    const steps: readonly Dynamic[] = ["ff", "f", "mf", "p", "pp"];
    const heard = steps.map((dynamic) => band(instrument, midi, dynamic));
    heard.slice(1).forEach((softer, index) => {
      const louder = heard[index]!;
      const whole = loudnessIso5322(softer) / loudnessIso5322(louder);
      const high = highLoudness(softer) / highLoudness(louder);
      expect(high).toBeLessThan(whole);
      expect(spectralCentroid(softer, "amplitude")).toBeLessThan(
        spectralCentroid(louder, "amplitude"),
      );
      expect(soneToPhon5322(loudnessIso5322(softer))).toBeLessThan(
        soneToPhon5322(loudnessIso5322(louder)),
      );
    });
  });
});
