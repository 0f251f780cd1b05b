import { writeMidi } from "../midi/write-midi.ts";
import { writeMusicXml, type MusicXmlOptions } from "../musicxml/write-musicxml.ts";
import {
  scoreOfVoicings,
  type ScoredVoicing,
  type VoicingScoreOptions,
} from "./score-of-voicings.ts";

/**
 * Voicings as a MusicXML file, one bar each.
 * @param voicings - in the order of the bars
 * @param options - title, tempo, manner; transposed parts or concert
 * @returns the text of the file, UTF-8
 * @throws RangeError without a voicing
 */
export function musicXmlOf(
  voicings: readonly ScoredVoicing[],
  options: VoicingScoreOptions & MusicXmlOptions = {},
): string {
  return writeMusicXml(scoreOfVoicings(voicings, options), options);
}

/**
 * Voicings as a Standard MIDI File, one bar each, one track a player.
 * @param voicings - in the order of the bars
 * @param options - title, tempo, manner
 * @returns the bytes of the file
 * @throws RangeError without a voicing
 */
export function midiOf(
  voicings: readonly ScoredVoicing[],
  options: VoicingScoreOptions = {},
): Uint8Array {
  return writeMidi(scoreOfVoicings(voicings, options));
}
