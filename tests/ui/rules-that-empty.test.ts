import { describe, expect, it } from "vitest";
import { firstInquiry, readInquiry } from "../../src/explore/index.ts";
import { rulesThatEmpty } from "../../src/ui/state/rules-that-empty.ts";
import type { Question, RuleId } from "../../src/voicing/index.ts";

const reading = readInquiry(firstInquiry());
if (!reading.ok) throw new Error("the first inquiry can be read");
const { question } = reading;

/** A place that opens once all of some rules are off. */
const opensWithout =
  (...rules: readonly RuleId[]) =>
  (asked: Question) =>
    rules.every((rule) => !asked.rules[rule]);

describe("the rules that empty a place", () => {
  it("are one rule where one is enough", () => {
    expect(rulesThatEmpty(question, opensWithout("H8"))).toEqual(["H8"]);
  });

  it("are the smallest set that opens it, without rules that do not matter", () => {
    expect(rulesThatEmpty(question, opensWithout("H5b", "H9"))).toEqual(["H5b", "H9"]);
  });

  it("name a rule of good sound rather than one that says what is asked", () => {
    const either = (asked: Question) => !asked.rules.H1 || !asked.rules.H9;
    expect(rulesThatEmpty(question, either)).toEqual(["H9"]);
    expect(rulesThatEmpty(question, opensWithout("H2"))).toEqual(["H2"]);
  });

  it("are none where no rule is to blame", () => {
    expect(rulesThatEmpty(question, () => false)).toEqual([]);
  });
});
