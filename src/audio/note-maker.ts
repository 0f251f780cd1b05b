import { midiToHz } from "../base/index.ts";
import type { Cents, Count, Hertz, Ratio, Seconds } from "../base/index.ts";
import type { Articulation, InstrumentId } from "../band/index.ts";
import type { Frames } from "./audio-units.ts";
import { BlownVoice } from "./blown-voice.ts";
import { cymbalMaterial } from "./cymbal-material.ts";
import { CYMBALS } from "./cymbal-table.ts";
import { dynamicAt } from "./dynamic-steps.ts";
import { NoteCache } from "./note-cache.ts";
import { NOISE_COLOURS } from "./noise-colour-table.ts";
import type { NoiseColour } from "./noise-colour-table.ts";
import { noiseLoop } from "./noise-loop.ts";
import { dynamicOnCurve, noteKey } from "./note-spec.ts";
import type { NoteSpec } from "./note-spec.ts";
import type { NoteVoice } from "./note-voice.ts";
import { pitchScatter } from "./player-scatter.ts";
import type { CymbalId, PitchedSound } from "./sound-plan-types.ts";
import { stringMaterial } from "./string-material.ts";
import { StruckVoice } from "./struck-voice.ts";
import { bandTimbre } from "./timbre.ts";
import type { Timbre } from "./timbre.ts";
import { wavetableOf } from "./wavetable.ts";
import type { Wavetable } from "./wavetable.ts";

/** Sampling rate of everything live, and of files unless asked otherwise. */
const USUAL_SAMPLE_RATE = 48000 as Hertz;
const NOISE_SEED = 4711;
/** Voices round their length up to whole steps of at most this many frames. */
const LONGEST_STEP_FRAMES = 64;
/** How much sooner than the fundamental the upper partials of a string die away. */
const DAMPING: Readonly<Partial<Record<InstrumentId, Ratio>>> = Object.freeze({
  piano: 0.15,
  "double-bass": 0.35,
});
const USUAL_DAMPING = 0.2;
/** Strings are tuned before the concert: they keep this share of a wind player's scatter. */
const STRING_SCATTER = 0.3;

/** Makes dry notes, and keeps what it made within one budget of bytes. */
export class NoteMaker {
  /** What is kept: notes, tables and noise. */
  readonly cache: NoteCache;

  /** Sampling rate of the notes. */
  readonly sampleRate: Hertz;
  private readonly timbre: Timbre;

  /**
   * @param options - `sampleRate` 48 kHz unless given; `timbre` the band's unless given;
   * `budgetBytes` the most it may keep, 96 MB unless given
   */
  constructor(
    options: {
      readonly sampleRate?: Hertz;
      readonly timbre?: Timbre;
      readonly budgetBytes?: Count;
    } = {},
  ) {
    this.sampleRate = options.sampleRate ?? USUAL_SAMPLE_RATE;
    this.timbre = options.timbre ?? bandTimbre;
    this.cache = new NoteCache(options.budgetBytes);
  }

  /**
   * A dry note, from the cache where it is still there.
   * @param spec - the note
   * @returns a voice that renders it, possibly rendered already
   */
  note(spec: NoteSpec): NoteVoice {
    return this.cache.take(
      `note ${noteKey(spec)}`,
      () => this.make(spec),
      (voice) => voice.samples.byteLength,
    );
  }

  /**
   * How long a note takes to fall silent, without making it.
   * @param spec - the note
   * @returns frames, an upper bound good to a few milliseconds
   */
  framesOf(spec: NoteSpec): Frames {
    const { sound } = spec;
    const seconds =
      sound.kind === "cymbal"
        ? CYMBALS[sound.cymbal].length
        : spec.duration + this.articulation(spec, sound).releaseSeconds;
    return Math.ceil(seconds * this.sampleRate) + LONGEST_STEP_FRAMES;
  }

  private articulation(spec: NoteSpec, { instrument, sounding }: PitchedSound): Articulation {
    return this.timbre.articulationOf(instrument, sounding, spec.curve[0]!.dynamic);
  }

  private make(spec: NoteSpec): NoteVoice {
    const { sound } = spec;
    if (sound.kind === "cymbal") return this.cymbal(spec, sound.cymbal);
    const isBlown = this.articulation(spec, sound).decaySeconds === Infinity;
    return isBlown ? this.blown({ ...spec, sound }) : this.string({ ...spec, sound });
  }

  private cymbal(spec: NoteSpec, id: CymbalId): NoteVoice {
    const row = CYMBALS[id];
    const noise = this.noise(row.noise);
    const material = cymbalMaterial(row, dynamicOnCurve(spec.curve, 0 as Seconds), noise);
    return new StruckVoice(material, spec.seed, this.sampleRate);
  }

  private string(spec: NoteSpec & { readonly sound: PitchedSound }): NoteVoice {
    const { instrument } = spec.sound;
    const dynamic = spec.curve[0]!.dynamic;
    const material = stringMaterial(spec, this.timbre.partialsOf({ ...spec.sound, dynamic }), {
      damping: DAMPING[instrument] ?? USUAL_DAMPING,
      articulation: this.articulation(spec, spec.sound),
      noise: this.noise(NOISE_COLOURS[instrument]),
      mistuning: (STRING_SCATTER * pitchScatter(spec.seed)) as Cents,
    });
    return new StruckVoice(material, spec.seed, this.sampleRate);
  }

  private blown(spec: NoteSpec & { readonly sound: PitchedSound }): NoteVoice {
    const { instrument, sounding } = spec.sound;
    const tables: Wavetable[] = [];
    const material = {
      fundamental: midiToHz(sounding),
      articulation: this.articulation(spec, spec.sound),
      tableAt: (step: Count) => (tables[step] ??= this.table(spec.sound, step)),
      noise: this.noise(NOISE_COLOURS[instrument]),
    };
    return new BlownVoice(spec, material, this.sampleRate);
  }

  private table(sound: PitchedSound, step: Count): Wavetable {
    const { instrument, sounding, mute } = sound;
    return this.cache.take(
      `table ${instrument} ${sounding} ${mute} ${step}`,
      () => {
        const partials = this.timbre.partialsOf({
          instrument,
          sounding,
          mute,
          dynamic: dynamicAt(step),
        });
        return wavetableOf(partials, midiToHz(sounding), (this.sampleRate / 2) as Hertz);
      },
      ({ period }) => period.byteLength,
    );
  }

  private noise(colour: NoiseColour): Float32Array {
    return this.cache.take(
      `noise ${colour.low} ${colour.high}`,
      () => noiseLoop(colour, this.sampleRate, NOISE_SEED),
      (loop) => loop.byteLength,
    );
  }
}
