import { describe, expect, it } from "vitest";
import { counted, inWords, listed, ordinal, signed } from "../../src/ui/words/counts.ts";
import { spanSpoken, spanText } from "../../src/ui/words/interval-words.ts";
import { chordWithSigns, signOf, spoken, withSigns } from "../../src/ui/words/signs.ts";
import { wrapWords } from "../../src/ui/words/wrap-words.ts";

describe("signs", () => {
  it("replace ASCII accidentals of notes and degrees, and leave words alone", () => {
    expect(withSigns("Eb4")).toBe("E♭4");
    expect(withSigns("F#4 and Bbb3")).toBe("F♯4 and B♭♭3");
    expect(withSigns("b7 of the chord, #11")).toBe("♭7 of the chord, ♯11");
    expect(withSigns("Bb is above its easy register by 3")).toBe(
      "B♭ is above its easy register by 3",
    );
    expect(withSigns("Bbs about A")).toBe("Bbs about A");
  });

  it("replace every accidental of a chord symbol", () => {
    expect(chordWithSigns("C7(b9,#11)/Bb")).toBe("C7(♭9,♯11)/B♭");
  });

  it("are spoken in words", () => {
    expect(spoken("Eb4")).toBe("E flat 4");
    expect(spoken("#11")).toBe("sharp 11");
    expect(signOf("Eb4")).toBe("♭");
    expect(signOf("B4")).toBe("");
  });
});

describe("spans", () => {
  it("are written as octaves and an interval", () => {
    expect(spanText(33)).toBe("2 octaves + M6");
    expect(spanText(33, "brief")).toBe("2 oct + M6");
    expect(spanText(12)).toBe("1 octave");
    expect(spanText(5)).toBe("P4");
    expect(spanText(0)).toBe("unison");
  });

  it("are spoken in words", () => {
    expect(spanSpoken(26)).toBe("2 octaves and a major second");
    expect(spanSpoken(7)).toBe("a fifth");
  });
});

describe("counts", () => {
  it("agree with their nouns and write the minus as typesetters do", () => {
    expect(counted(1, "note")).toBe("1 note");
    expect(counted(6, "note")).toBe("6 notes");
    expect(signed(4)).toBe("+4");
    expect(signed(-1)).toBe("−1");
    expect(listed(["A", "B", "C"])).toBe("A, B and C");
    expect(inWords(2)).toBe("two");
    expect(inWords(40)).toBe("40");
    expect([1, 2, 3, 4].map(ordinal)).toEqual(["1st", "2nd", "3rd", "4th"]);
  });
});

describe("wrapped words", () => {
  it("fill lines up to the given length", () => {
    expect(wrapWords("Trumpets close over trombones spread", 20)).toEqual([
      "Trumpets close over",
      "trombones spread",
    ]);
  });
});
