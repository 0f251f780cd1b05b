/**
 * Slide positions of a B-flat trombone: each of seven positions lowers the open tube by one more
 * semitone, and each gives the harmonics of its tube.
 * Source: Wikibooks, "Trombone", chapter Slide Positions (positions 1 to 7 with their notes; the F
 * attachment puts sixth and seventh position into first and second). The seventh harmonic is flat:
 * it is used with a raised slide in second to fourth position only (common practice).
 */
export const slideTable = Object.freeze({
  positions: 7,
  /** Open tube, first position: harmonics 2 to 10 as sounding MIDI notes; pedal note apart. */
  harmonics: Object.freeze([46, 53, 58, 62, 65, 68, 70, 72, 74]),
  /** The flat one, and where it is used. */
  flatHarmonic: 68,
  flatPositions: Object.freeze([2, 3, 4]),
  pedal: 34,
  /** Open tube with the F attachment: harmonics 2 to 4; one position is longer there. */
  attachment: Object.freeze([41, 48, 53]),
  attachmentPositions: 6,
});
