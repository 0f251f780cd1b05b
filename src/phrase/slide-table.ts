/**
 * Slide positions of a B-flat trombone: each of seven positions lowers the open tube by one more
 * semitone, and each gives the harmonics of its tube.
 * Source: Wikibooks, "Trombone", chapter Slide Positions (positions 1 to 7 with their notes; the F
 * attachment puts sixth and seventh position into first and second). The seventh harmonic is flat:
 * it is played with a raised slide from second position on and left out in first (common practice).
 */
export const slideTable = Object.freeze({
  positions: 7,
  /** Open tube, first position: harmonics 2 to 10 as sounding MIDI notes; pedal note apart. */
  harmonics: Object.freeze([46, 53, 58, 62, 65, 68, 70, 72, 74]),
  /** Not usable in first position. */
  flatHarmonic: 68,
  pedal: 34,
  /** Open tube with the F attachment: harmonics 2 to 4; one position is longer there. */
  attachment: Object.freeze([41, 48, 53]),
  attachmentPositions: 6,
});
