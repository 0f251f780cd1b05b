import { describe, expect, it } from "vitest";
import { midiToHz, soundingMidi } from "../../src/base/index.ts";
import type { Gain, Hertz, Seconds, SoundingMidi } from "../../src/base/index.ts";
import { articulationOf, instruments, mutesOf, partialsOf } from "../../src/band/index.ts";
import type { Dynamic, InstrumentId, MuteId } from "../../src/band/index.ts";
import { NoteMaker } from "../../src/audio/index.ts";
import { peakToDbSpl } from "../../src/audio/level-calibration.ts";
import type { NoteSpec } from "../../src/audio/note-spec.ts";
import { bandCentre, bandPower, powerToDb, spectrumOf } from "./support/fourier.ts";
import { RATE, renderedNote, threePitches } from "./support/rendered-note.ts";

// What is heard must be what the timbre table says: the table is the reference of this file.
const DYNAMICS: readonly Dynamic[] = ["pp", "mf", "ff"];
const TOLERANCE_DB = 1.5;
/** Partials this far under the strongest are compared; below them lies the breath. */
const DEPTH_DB = 35;

const blown = instruments
  .map(({ id }) => id)
  .filter((id) => articulationOf(id, soundingMidi(60), "mf").decaySeconds === Infinity);

/** Level of a partial in dB SPL, from what lies within a few cents and bins of it. */
function levelAt(spectrum: ReturnType<typeof spectrumOf>, hz: number): number {
  const reach = 5 * spectrum.binHz + hz * 0.006;
  const power = bandPower(spectrum, hz - reach, hz + reach);
  return peakToDbSpl(Math.sqrt(2 * power) as Gain);
}

function heardOf(
  instrument: InstrumentId,
  sounding: SoundingMidi,
  dynamic: Dynamic,
  mute: MuteId,
  depth = DEPTH_DB,
) {
  const partials = partialsOf({ instrument, sounding, dynamic, mute });
  const strongest = Math.max(...partials.map(({ dbSpl }) => dbSpl));
  return partials.filter(({ dbSpl }) => dbSpl > strongest - depth);
}

describe.each(blown)("a steady note of the %s", (instrument) => {
  it.each(DYNAMICS)("at %s has the partials of the timbre table within 1.5 dB", (dynamic) => {
    for (const sounding of threePitches(instrument)) {
      const samples = renderedNote(instrument, sounding, dynamic, { isStraight: true });
      const spectrum = spectrumOf(samples, RATE, Math.round(0.25 * RATE), 32768);
      for (const { hz, dbSpl } of heardOf(instrument, sounding, dynamic, "open"))
        expect(
          Math.abs(levelAt(spectrum, hz) - dbSpl),
          `${sounding} at ${hz.toFixed(0)} Hz`,
        ).toBeLessThan(TOLERANCE_DB);
    }
  });

  it("is in tune within 3 cents on average over thirteen players", () => {
    const sounding = threePitches(instrument)[1]!;
    const hz = midiToHz(sounding);
    const cents = Array.from({ length: 13 }, (_, n) => {
      const samples = renderedNote(instrument, sounding, "mf", { player: `player ${n}` });
      const spectrum = spectrumOf(samples, RATE, Math.round(0.25 * RATE), 32768);
      return 1200 * Math.log2(bandCentre(spectrum, hz * 0.94, hz * 1.06) / hz);
    });
    const mean = cents.reduce((sum, c) => sum + c, 0) / cents.length;
    expect(Math.abs(mean)).toBeLessThan(3);
    expect(Math.max(...cents.map(Math.abs))).toBeLessThan(12);
  });
});

describe("muted notes", () => {
  it.each(
    blown.flatMap((id) =>
      mutesOf(id)
        .slice(1)
        .map((mute) => [id, mute] as const),
    ),
  )("of the %s with the %s mute sound the mute's partials", (instrument, mute) => {
    const sounding = threePitches(instrument)[1]!;
    const samples = renderedNote(instrument, sounding, "mf", { mute, isStraight: true });
    const spectrum = spectrumOf(samples, RATE, Math.round(0.25 * RATE), 32768);
    for (const { hz, dbSpl } of heardOf(instrument, sounding, "mf", mute))
      expect(Math.abs(levelAt(spectrum, hz) - dbSpl)).toBeLessThan(TOLERANCE_DB);
  });
});

describe.each(["piano", "double-bass"] as const)("the first moment of the %s", (instrument) => {
  it.each(DYNAMICS)("at %s has the partials of the timbre table within 1.5 dB", (dynamic) => {
    for (const sounding of threePitches(instrument)) {
      const samples = renderedNote(instrument, sounding, dynamic, { seconds: 2 });
      const length = 16384;
      const late = 4096;
      const [first, second] = [0, late].map((from) =>
        spectrumOf(samples, RATE, Math.round(0.02 * RATE) + from, length),
      ) as [ReturnType<typeof spectrumOf>, ReturnType<typeof spectrumOf>];
      for (const { hz, dbSpl } of heardOf(instrument, sounding, dynamic, "open", 20)) {
        const reach = Math.min(5 * first.binHz, 0.45 * midiToHz(sounding));
        const [now, then] = [first, second].map((s) =>
          powerToDb(bandPower(s, hz - reach, hz + reach)),
        ) as [number, number];
        // The stroke lies before the middle of the window: follow the decay back to it.
        const back = ((now - then) * (0.02 * RATE + length / 2)) / late;
        const level = peakToDbSpl(Math.sqrt(2) as Gain) + now + back;
        expect(Math.abs(level - dbSpl), `${sounding} at ${hz.toFixed(0)} Hz`).toBeLessThan(
          TOLERANCE_DB,
        );
      }
    }
  });
});

describe("the note maker", () => {
  const spec: NoteSpec = {
    sound: { kind: "pitched", instrument: "trumpet", sounding: soundingMidi(69), mute: "open" },
    duration: 0.5 as Seconds,
    curve: [{ at: 0 as Seconds, dynamic: "mf" }],
    seed: 1,
  };

  it("makes a note once and gives the same one again", () => {
    const maker = new NoteMaker();
    expect(maker.note({ ...spec })).toBe(maker.note(spec));
  });

  it("knows how long a note is without making it", () => {
    const maker = new NoteMaker();
    for (const sound of [spec.sound, { kind: "cymbal", cymbal: "ride-cymbal" } as const]) {
      const { length } = maker.note({ ...spec, sound }).samples;
      expect(maker.framesOf({ ...spec, sound })).toBeGreaterThanOrEqual(length);
      expect(maker.framesOf({ ...spec, sound }) - length).toBeLessThan(200);
    }
  });

  it("stays within its budget however much it plays", () => {
    const budgetBytes = 2 * 1024 * 1024;
    const maker = new NoteMaker({ budgetBytes });
    for (let seed = 0; seed < 40; seed++) {
      maker.note({ ...spec, seed }).renderTo(48000);
      expect(maker.cache.bytes).toBeLessThanOrEqual(budgetBytes);
    }
  });

  it("sounds the same pitch at another sampling rate", () => {
    const maker = new NoteMaker({ sampleRate: 44100 as Hertz });
    const voice = maker.note({ ...spec, duration: 1 as Seconds });
    voice.renderTo(44100);
    const spectrum = spectrumOf(voice.samples, 44100, 11025, 16384);
    expect(1200 * Math.log2(bandCentre(spectrum, 410, 470) / 440)).toBeLessThan(10);
    expect(1200 * Math.log2(bandCentre(spectrum, 410, 470) / 440)).toBeGreaterThan(-10);
  });
});
