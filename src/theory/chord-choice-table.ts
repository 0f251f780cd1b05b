/**
 * Readings chosen where the trade is split, one sentence each, as the user sees them.
 * Source: reasons are named in each row; rows without a name are common practice, no single source.
 */
export const CHOICE_SENTENCES = Object.freeze({
  // G. Lindsay's substitution lists (2005) have rows for sixths and sevenths, none for bare triads.
  "triad-stays": "A plain triad keeps to its own notes; 6 and 9 are offered but not ticked.",
  "minor-triad-stays": "A plain triad keeps to its own notes; 9 and 11 are offered but not ticked.",
  "diminished-triad": "Read as the triad alone; write °7 for the seventh most players add.",
  // Musicians print Δ for the major seventh; Brandt & Roemer (1976) print MA7.
  triangle: "A triangle without a number is read as a major seventh.",
  suspended: "“sus” without a number is read as a suspended fourth.",
  two: "2 is read as an added ninth: the third stays; write sus2 to leave it out.",
  "dash-five": "A dash before 5 lowers the fifth: ♭5.",
  "dash-flat":
    "A dash behind the seventh lowers the number after it: 7-9 is 7(♭9), not a minor ninth.",
  "plus-nine":
    "A plus behind the root raises the fifth: +9 is a ninth chord with ♯5; write 7(♯9) for the raised ninth.",
  "double-flat-root":
    "Two signs behind the letter belong to the root; put brackets round an altered number.",
  // G. Lindsay (2005): 6 may stand for the major seventh and the other way round.
  "sixth-for-seventh":
    "6 is offered beside the major seventh and takes its place where the root leads.",
  // Lindsay's list has no 13 for minor sevenths; dorian practice allows it.
  "minor-thirteenth-avoided":
    "13 is not offered on a minor seventh, since schools differ; tick it to use it.",
  "minor-thirteenth": "13 on a minor chord is the natural one, with 9 and 11 included.",
  // Lindsay accepts the natural ninth; strictly diatonic schools want the flat one.
  "half-diminished-ninth":
    "The ninth of a half-diminished chord is the natural one; schools differ, and ♭9 is the other.",
  "half-diminished-word": "ø without a number is read as the half-diminished seventh.",
  // MusicXML 4.0 counts the 11th into dominant-13th; players leave it out.
  "thirteen-without-eleventh": "The eleventh is left out, because it rubs against the third.",
  "thirteen-suspended": "A suspended 13 includes the ninth; the fourth stands for the third.",
  // MusicXML 4.0 keeps the third in dominant-11th; players sound a suspended ninth.
  eleven: "11 is read as a suspended ninth: the third is left out.",
  "major-eleven": "The third stays beside the eleventh; untick one of them if they rub.",
  altered:
    "Altered is read as ♭9 ♯9 ♯11 ♭13 with root, 3 and ♭7; natural 5, 9 and 13 are left out.",
  // Lindsay: with a printed ♭9 or ♯9 the fifth or its replacement is "per symbol".
  "thirteenth-open":
    "With an altered ninth neither 13 nor ♭13 is ticked: the symbol does not say which.",
  "two-ninths": "♭9 and ♯9 are both kept.",
  "two-fifths": "♭5 and ♯5 are both kept, and the natural fifth is left out.",
  // Lindsay: ♭13 instead of 5. Both oracle libraries in the tests leave the fifth out as well.
  "flat-thirteenth": "♭13 takes the place of the natural fifth.",
  "sharp-eleventh": "The natural fifth stays beside ♯11; untick it if they rub.",
  "one-note": "Two names of one note are printed; it is sounded once and named by the first.",
  respelled: "Notes that would need three accidentals are named by the next letter.",
});

/** One of the readings above. */
export type ChoiceId = keyof typeof CHOICE_SENTENCES;
