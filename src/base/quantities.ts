/**
 * Units as types. One generic makes every brand, so two units can never share one by accident.
 */
declare const unit: unique symbol;

/** A number that carries its unit in its type; plain at run time. */
export type Quantity<U extends string> = number & { readonly [unit]: U };

/** MIDI note number as the ear hears it, 0 to 127, middle C (C4) = 60. The core uses only this pitch. */
export type SoundingMidi = Quantity<"MIDI note number, sounding">;
/** MIDI note number as the player reads it. Only transposition, notation and files use it. */
export type WrittenMidi = Quantity<"MIDI note number, written">;
/** Pitch class, 0 to 11, C = 0. */
export type PitchClass = Quantity<"pitch class">;
/** Distance in equal-tempered semitones. */
export type Semitones = Quantity<"semitones">;
/** Hundredths of an equal-tempered semitone. */
export type Cents = Quantity<"cents">;
/** Cycles a second. */
export type Hertz = Quantity<"hertz">;
/** Sound pressure level, dB re 20 µPa (rms), at a stated distance. */
export type DbSpl = Quantity<"dB SPL">;
/** A difference of two levels, in decibels. */
export type Db = Quantity<"dB">;
/** Level re digital full scale. */
export type DbFs = Quantity<"dB FS">;
/** Linear amplitude factor. */
export type Gain = Quantity<"linear gain">;
/** Heard loudness. 1 sone is the loudness of a 1 kHz tone at 40 dB SPL. */
export type Sone = Quantity<"sone">;
/** Loudness level: dB SPL of an equally loud 1 kHz tone. */
export type Phon = Quantity<"phon">;
/** Position on the ERB-number scale (Cam). */
export type ErbNumber = Quantity<"Cam">;
/** Critical-band rate, 0 to 24. */
export type Bark = Quantity<"Bark">;
/** Time in seconds. */
export type Seconds = Quantity<"seconds">;
/** A share or factor without a unit. */
export type Ratio = number;
/** How many; a whole number from 0 up. */
export type Count = number;

/**
 * Gives a plain number its unit. Use it only where the number is known to be in that unit.
 * @param value - the number
 * @returns the same number, branded
 */
export function quantity<Q extends Quantity<string>>(value: number): Q {
  return value as Q;
}

/**
 * Checks and brands a sounding MIDI note number.
 * @param value - whole number, 0 to 127
 * @returns the note number
 * @throws RangeError when it is not a whole number from 0 to 127
 */
export function soundingMidi(value: number): SoundingMidi {
  if (!Number.isInteger(value) || value < 0 || value > 127)
    throw new RangeError(`sounding MIDI note must be a whole number from 0 to 127, got ${value}`);
  return value as SoundingMidi;
}

/**
 * Pitch class of a number of semitones above any C, negative ones included.
 * @param semitones - whole number
 * @returns 0 to 11
 * @example pitchClass(62) // 2
 */
export function pitchClass(semitones: number): PitchClass {
  return (((semitones % 12) + 12) % 12) as PitchClass;
}
