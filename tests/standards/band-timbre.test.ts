import { describe, expect, it } from "vitest";
import { soundingMidi } from "../../src/base/index.ts";
import {
  articulationOf,
  dynamics,
  instrumentOf,
  partialsOf,
  steadyLevelOf,
  type Dynamic,
  type InstrumentId,
  type MuteId,
  type Partial,
} from "../../src/band/index.ts";
import { brightnessHz, oddOverEvenDb } from "../band/spectrum.ts";

const note = (
  instrument: InstrumentId,
  midi: number,
  dynamic: Dynamic,
  mute: MuteId = "open",
): readonly Partial[] => partialsOf({ instrument, sounding: soundingMidi(midi), dynamic, mute });

const notes = (low: number, high: number): readonly number[] =>
  Array.from({ length: high - low + 1 }, (_none, index) => low + index);

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;

const medianBrightness = (
  instrument: InstrumentId,
  low: number,
  high: number,
  dynamic: Dynamic,
): number => median(notes(low, high).map((midi) => brightnessHz(note(instrument, midi, dynamic))));

const expectWithin = (value: number, published: number, share: number): void => {
  expect(value).toBeGreaterThan(published * (1 - share));
  expect(value).toBeLessThan(published * (1 + share));
};

// Amplitude-weighted centroids up to 10 kHz, medians of a register, measured in an open set of
// orchestral samples by dynamic (one player an instrument, ±15 %).
describe("brightness by dynamic", () => {
  it.each([
    ["pp", 690],
    ["mf", 1060],
    ["f", 1410],
    ["ff", 2130],
  ] as const)("of the trombone's middle register at %s is near %i Hz", (dynamic, published) => {
    expectWithin(medianBrightness("trombone", 53, 64, dynamic), published, 0.15);
  });

  it.each([
    ["pp", 590],
    ["mf", 1090],
    ["f", 1630],
    ["ff", 2300],
  ] as const)("of the trombone's low register at %s is near %i Hz", (dynamic, published) => {
    expectWithin(medianBrightness("trombone", 40, 52, dynamic), published, 0.15);
  });

  it.each([
    ["low", 50, 63, "pp", 700],
    ["low", 50, 63, "f", 1620],
    ["low", 50, 63, "ff", 1770],
    ["middle", 64, 76, "pp", 1050],
    ["middle", 64, 76, "f", 1920],
    ["middle", 64, 76, "ff", 1960],
  ] as const)("of the saxophone, %s register %i to %i at %s, is near %i Hz", (...row) => {
    const [, low, high, dynamic, published] = row;
    expectWithin(medianBrightness("alto-sax", low, high, dynamic), published, 0.15);
  });

  it.each([
    ["p", 390],
    ["mf", 430],
    ["ff", 810],
  ] as const)("of the horn's middle register at %s is near %i Hz", (dynamic, published) => {
    expectWithin(medianBrightness("horn", 49, 62, dynamic), published, 0.15);
  });

  it.each([
    [50, 65, "pp", 490],
    [50, 65, "p", 620],
    [50, 65, "f", 1360],
    [50, 65, "ff", 1670],
    [66, 77, "f", 1440],
    [66, 77, "ff", 1610],
  ] as const)(
    "of the clarinet from %i to %i at %s is near %i Hz",
    (low, high, dynamic, published) => {
      expectWithin(medianBrightness("clarinet", low, high, dynamic), published, 0.15);
    },
  );

  it.each([
    [60, 72, "pp", 510],
    [60, 72, "mf", 1010],
    [60, 72, "f", 1180],
    [73, 84, "pp", 1170],
    [73, 84, "mf", 1280],
    [73, 84, "f", 1340],
  ] as const)("of the flute from %i to %i at %s is near %i Hz", (low, high, dynamic, published) => {
    expectWithin(medianBrightness("flute", low, high, dynamic), published, 0.15);
  });

  // SHARC (G. Sandell), C trumpet, medians of the thirds of the compass, dynamic not stated.
  it.each([
    [54, 62, 1918],
    [63, 72, 1803],
    [73, 82, 1925],
  ])("of the trumpet at f from %i to %i is near SHARC's %i Hz", (low, high, published) => {
    expectWithin(medianBrightness("trumpet", low, high, "f"), published, 0.15);
  });

  // SHARC, tuba.
  it.each([
    [29, 40, 327],
    [41, 52, 403],
    [53, 61, 386],
  ])("of the tuba at f from %i to %i is near SHARC's %i Hz", (low, high, published) => {
    expectWithin(medianBrightness("tuba", low, high, "f"), published, 0.15);
  });

  it("grows about 3.5 times from pp to ff on the trombone and twice on the saxophone", () => {
    // Same sample set: median ratio of the same note, trombone 3.47, saxophone 2.0; the single
    // notes were not matched in level, so 20 %.
    const ratio = (instrument: InstrumentId, low: number, high: number): number =>
      median(
        notes(low, high).map(
          (midi) =>
            brightnessHz(note(instrument, midi, "ff")) / brightnessHz(note(instrument, midi, "pp")),
        ),
      );
    expectWithin(ratio("trombone", 40, 70), 3.47, 0.2);
    expectWithin(ratio("alto-sax", 50, 80), 2, 0.2);
  });
});

describe("formants", () => {
  // Horn: Meyer, Acoustics and the Performance of Music, ch. 3. Trumpet, trombone, tuba: formant
  // table after Sengpiel. The strongest partial of low notes at f stands for the envelope's maximum;
  // its median over an octave evens out where partials happen to fall.
  it.each([
    ["horn", 35, 47, 340, 0.15],
    ["tuba", 29, 40, 230, 0.2],
    ["trombone", 40, 52, 520, 0.15],
    ["trumpet", 52, 63, 1200, 0.15],
  ] as const)(
    "of the %s from %i to %i lie near the published %i Hz",
    (id, low, high, hz, share) => {
      const strongest = notes(low, high).map((midi) => {
        const partials = note(id, midi, "f");
        return partials.reduce((best, each) => (each.dbSpl > best.dbSpl ? each : best)).hz;
      });
      expectWithin(median(strongest), hz, share);
    },
  );

  it("leave the horn's lowest fundamental some 25 dB under its strongest partial", () => {
    // Meyer ch. 3: B1, about 25 dB; 12 dB an octave below 340 Hz.
    const partials = note("horn", 35, "f");
    const top = Math.max(...partials.map(({ dbSpl }) => dbSpl));
    const under = top - (partials[0]?.dbSpl ?? NaN);
    expect(under).toBeGreaterThan(20);
    expect(under).toBeLessThan(32);
  });

  it("let the horn's fundamental lead from C4 up", () => {
    // Meyer ch. 3.
    for (const midi of notes(62, 77)) {
      const [first, ...rest] = note("horn", midi, "f").map(({ dbSpl }) => dbSpl);
      expect(first, `MIDI ${midi}`).toBeGreaterThan(Math.max(...rest));
    }
  });
});

describe("odd and even partials", () => {
  // Same sample set, partials 3, 5, 7 against 2, 4, 6, 8: clarinet low +12 to +19 dB, bass clarinet
  // low +19 to +24; saxophone and trombone -7 to 0.
  it("are ten decibels and more apart in the clarinet's low register at every dynamic", () => {
    for (const dynamic of dynamics)
      for (const midi of notes(50, 62))
        expect(oddOverEvenDb(note("clarinet", midi, dynamic))).toBeGreaterThanOrEqual(10);
  });

  it("are furthest apart in the bass clarinet's low register", () => {
    const values = notes(37, 51).map((midi) => oddOverEvenDb(note("bass-clarinet", midi, "mf")));
    expect(Math.min(...values)).toBeGreaterThan(10);
    expectWithin(median(values), 22, 0.2);
  });

  it("come together up the clarinet", () => {
    const at = (midi: number): number => oddOverEvenDb(note("clarinet", midi, "f"));
    expect(at(55)).toBeGreaterThan(at(72));
    expect(at(72)).toBeGreaterThan(at(85));
    expect(at(85)).toBeLessThan(0);
  });

  it.each([
    ["alto-sax", 50, 80],
    ["tenor-sax", 45, 75],
    ["baritone-sax", 36, 68],
    ["trombone", 40, 64],
    ["trumpet", 52, 72],
  ] as const)("are within 7 dB of each other on the %s from %i to %i", (id, low, high) => {
    for (const dynamic of ["mf", "f", "ff"] as const) {
      const values = notes(low, high).map((midi) => oddOverEvenDb(note(id, midi, dynamic)));
      expect(Math.abs(median(values))).toBeLessThan(7);
    }
  });
});

describe("strength", () => {
  const power = (id: InstrumentId, midi: number, dynamic: Dynamic): number =>
    steadyLevelOf({ instrument: id, sounding: soundingMidi(midi), dynamic, mute: "open" }) + 11;

  it.each([
    ["flute", 79, 91],
    ["clarinet", 69, 93],
    ["trumpet", 68, 101],
    ["trombone", 55, 101],
    ["tuba", 42, 104],
  ] as const)(
    "of the %s at f is the published sound power, MIDI note %i: %i dB",
    (id, midi, db) => {
      // Meyer 2009, forte sound powers re 1 pW, value from memory.
      expect(power(id, midi, "f")).toBeCloseTo(db, 6);
    },
  );

  it.each([
    ["flute", 67, 101],
    ["clarinet", 57, 106],
    ["horn", 65, 117],
    ["trumpet", 78, 111],
    ["trombone", 73, 113],
    ["tuba", 77, 112],
  ] as const)("of the %s stays inside the published limits of single notes", (id, low, high) => {
    // Meyer 2009, value from memory: softest pp and loudest ff of any note. The flute's lowest
    // fourth is left out: it is softer still here, by the trade's words on it.
    const { range } = instrumentOf(id);
    const bottom = id === "flute" ? 67 : Number(range.low);
    for (let midi = bottom; midi <= range.high; midi += 1) {
      expect(power(id, midi, "pp"), `MIDI ${midi}`).toBeGreaterThanOrEqual(
        low - (id === "flute" ? 1 : 2),
      );
      expect(power(id, midi, "ff"), `MIDI ${midi}`).toBeLessThanOrEqual(high);
    }
  });

  it.each(["trumpet", "trombone", "bass-trombone", "alto-sax", "tenor-sax", "clarinet"] as const)(
    "of the %s spans 25 to 30 dB from pp to ff in the middle register, give or take 1",
    (id) => {
      // Rindel 2014, data of Burghauser and Spelda.
      const { range } = instrumentOf(id);
      const middle = Math.round((range.low + range.high) / 2);
      const span = power(id, middle, "ff") - power(id, middle, "pp");
      expect(span).toBeGreaterThanOrEqual(24);
      expect(span).toBeLessThanOrEqual(31);
    },
  );

  it("of the flute rises about 6 dB an octave and is least in the low octave", () => {
    // Jazz arranging tutorial: C4 to B4 not heard without a microphone. The rise itself is judgement
    // after a study made for this project.
    expect(power("flute", 79, "mf") - power("flute", 67, "mf")).toBeCloseTo(6, 6);
    expect(power("flute", 91, "mf") - power("flute", 79, "mf")).toBeGreaterThan(5);
    for (const midi of notes(60, 71))
      expect(power("flute", midi, "f")).toBeLessThan(power("flute", midi + 12, "f") - 4);
    expectWithin(power("trumpet", 67, "mf") - power("flute", 67, "mf"), 14, 0.1);
  });

  it("of the trumpet is least in its low register and most at the top", () => {
    // University portfolio (register words).
    expect(power("trumpet", 54, "f")).toBeLessThan(power("trumpet", 67, "f") - 2);
    expect(power("trumpet", 82, "f")).toBeGreaterThan(power("trumpet", 67, "f"));
  });

  it("of a whole big band at f in a rehearsal room is what was measured there", () => {
    // Gopal et al. 2013: university jazz band rehearsals 95 to 105.8 dBA. Diffuse field
    // L = L_W - 10 lg V + 10 lg T + 14 with V = 400 m³, T = 0.7 s (Sabine); the A weighting of these
    // spectra is under 2 dB and left out.
    const home: readonly [InstrumentId, number][] = [
      ...[76, 72, 69, 65].map((midi): [InstrumentId, number] => ["trumpet", midi]),
      ...[64, 60, 57].map((midi): [InstrumentId, number] => ["trombone", midi]),
      ["bass-trombone", 43],
      ["alto-sax", 69],
      ["alto-sax", 65],
      ["tenor-sax", 62],
      ["tenor-sax", 58],
      ["baritone-sax", 48],
    ];
    const sum = home.reduce((total, [id, midi]) => total + 10 ** (power(id, midi, "f") / 10), 0);
    const level = 10 * Math.log10(sum) - 10 * Math.log10(400) + 10 * Math.log10(0.7) + 14;
    expect(level).toBeGreaterThan(95);
    expect(level).toBeLessThan(106);
  });
});

describe("mutes", () => {
  // Order of brightness read on a trumpet timbre page: Harmon without stem, straight, open, cup.
  it.each([
    ["trumpet", 62, 79],
    ["trombone", 46, 65],
  ] as const)(
    "on the %s from %i to %i go from dark to bright: cup, open, straight, Harmon",
    (id, low, high) => {
      for (const dynamic of ["p", "mf", "f", "ff"] as const) {
        const bright = (mute: MuteId): number =>
          median(notes(low, high).map((midi) => brightnessHz(note(id, midi, dynamic, mute))));
        expect(bright("cup")).toBeLessThan(bright("open"));
        expect(bright("open")).toBeLessThan(bright("straight"));
        expect(bright("straight")).toBeLessThan(bright("harmon"));
      }
    },
  );

  it("make a horn nearly twice as bright", () => {
    // SHARC, muted against open horn: centroid × 1.76 (the mute is not named); at its unstated,
    // moderate dynamic.
    const bright = (mute: MuteId): number =>
      median(notes(49, 62).map((midi) => brightnessHz(note("horn", midi, "mf", mute))));
    expectWithin(bright("straight") / bright("open"), 1.76, 0.15);
  });

  it("take 5 to 20 dB off, the Harmon most", () => {
    // Value from memory.
    const loss = (mute: MuteId): number =>
      steadyLevelOf({
        instrument: "trumpet",
        sounding: soundingMidi(70),
        dynamic: "f",
        mute: "open",
      }) - steadyLevelOf({ instrument: "trumpet", sounding: soundingMidi(70), dynamic: "f", mute });
    expect(loss("straight")).toBeGreaterThanOrEqual(5);
    expect(loss("straight")).toBeLessThanOrEqual(10);
    expect(loss("cup")).toBeGreaterThanOrEqual(8);
    expect(loss("cup")).toBeLessThanOrEqual(12);
    expect(loss("harmon")).toBeGreaterThanOrEqual(15);
    expect(loss("harmon")).toBeLessThanOrEqual(20);
  });
});

describe("attack from 10 to 90 %", () => {
  const ms = (id: InstrumentId, midi: number, dynamic: Dynamic): number =>
    1000 * articulationOf(id, soundingMidi(midi), dynamic).attackSeconds;

  // Same sample set, RMS on a 5 ms grid.
  it("of the trombone is 35 ± 12 ms at f and shortens from some 70 to 25 ms", () => {
    for (const midi of notes(45, 64))
      expect(Math.abs(ms("trombone", midi, "f") - 35)).toBeLessThan(12);
    expect(ms("trombone", 57, "pp")).toBeCloseTo(72, 6);
    expect(ms("trombone", 57, "ff")).toBeCloseTo(27, 6);
  });

  it("of saxophones at f is 20 ms at most in their middle octaves", () => {
    for (const midi of notes(54, 75)) expect(ms("alto-sax", midi, "f")).toBeLessThanOrEqual(20);
    for (const midi of notes(50, 70)) expect(ms("tenor-sax", midi, "f")).toBeLessThanOrEqual(20);
  });

  it("of the horn at mf is 150 ± 50 ms", () => {
    for (const midi of notes(49, 62))
      expect(Math.abs(ms("horn", midi, "mf") - 150)).toBeLessThan(50);
  });

  it.each([
    ["trumpet", 20, 40],
    ["flugelhorn", 30, 50],
    ["bass-trombone", 40, 80],
    ["tuba", 60, 130],
    ["piano", 3, 10],
    ["double-bass", 5, 15],
  ] as const)("of the %s lies between %i and %i ms in the middle register", (id, low, high) => {
    // Value from memory.
    const middles = {
      trumpet: 69,
      flugelhorn: 67,
      "bass-trombone": 48,
      tuba: 43,
      piano: 60,
      "double-bass": 40,
    };
    for (const dynamic of ["pp", "mf", "f", "ff"] as const) {
      expect(ms(id, middles[id], dynamic)).toBeGreaterThanOrEqual(low - 1e-9);
      expect(ms(id, middles[id], dynamic)).toBeLessThanOrEqual(high + 1e-9);
    }
  });
});

describe("vibrato", () => {
  it("of the trombone is 4.2 to 4.8 Hz and 19 to 29 cents to either side", () => {
    // Same sample set, ten notes tagged vibrato.
    const { vibratoHz, vibratoCents } = articulationOf("trombone", soundingMidi(58), "f");
    expect(vibratoHz).toBeGreaterThan(4.2);
    expect(vibratoHz).toBeLessThan(4.8);
    expect(vibratoCents).toBeGreaterThan(19);
    expect(vibratoCents).toBeLessThan(29);
  });

  it("of the flute is 5.5 to 7 Hz", () => {
    // Garrison, British Flute Society handout 2012, some thirty soloists.
    const { vibratoHz } = articulationOf("flute", soundingMidi(79), "mf");
    expect(vibratoHz).toBeGreaterThanOrEqual(5.5);
    expect(vibratoHz).toBeLessThanOrEqual(7);
  });

  it("of lead saxophones is 4.5 to 6 Hz, sets in after 300 to 600 ms; clarinet and horn have none", () => {
    // Value from memory.
    const alto = articulationOf("alto-sax", soundingMidi(69), "f");
    expect(alto.vibratoHz).toBeGreaterThanOrEqual(4.5);
    expect(alto.vibratoHz).toBeLessThanOrEqual(6);
    expect(alto.vibratoDelaySeconds).toBeGreaterThanOrEqual(0.3);
    expect(alto.vibratoDelaySeconds).toBeLessThanOrEqual(0.6);
    expect(articulationOf("clarinet", soundingMidi(69), "f").vibratoHz).toBe(0);
    expect(articulationOf("horn", soundingMidi(60), "f").vibratoHz).toBe(0);
  });
});
