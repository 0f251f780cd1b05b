import { describe, expect, it } from "vitest";
import { firstInquiry, readInquiry, reportOn } from "../../src/explore/index.ts";
import { differenceWords } from "../../src/ui/kept/difference.ts";
import { voicingOf } from "../../src/ui/state/view-of.ts";

const reading = readInquiry(firstInquiry());
if (!reading.ok) throw new Error("the first inquiry can be read");
const { question } = reading;

const all = {
  tpt1: 74,
  tpt2: 74,
  tpt3: 67,
  tpt4: 60,
  tbn1: 63,
  tbn2: 60,
  tbn3: 57,
  btbn: 41,
  alto1: 74,
  alto2: 63,
  tenor1: 67,
  tenor2: 57,
  bari: 41,
};
const report = (pitches: Readonly<Record<string, number>>) =>
  reportOn(voicingOf(pitches, question), question);

describe("the difference of two voicings", () => {
  it("is told in words, players on other notes counted", () => {
    const narrower = { ...all, btbn: 53, bari: 53 };
    expect(differenceWords(report(narrower), report(all))).toMatch(
      /^12 semitones narrower, two players on other notes/,
    );
  });

  it("says so when nothing moved", () => {
    const words = differenceWords(report(all), report(all));
    expect(words).toContain("same span");
    expect(words).toContain("everybody on the same notes");
    expect(words).toContain("same weight");
  });

  it("counts players who stopped", () => {
    const upper = Object.fromEntries(
      Object.entries(all).filter(([player]) => !["bari", "btbn"].includes(player)),
    );
    const words = differenceWords(report(upper), report(all));
    expect(words).toContain("16 semitones narrower");
    expect(words).toContain("one note fewer");
    expect(words).toContain("two players fewer");
    expect(words).toContain("lighter");
  });
});
