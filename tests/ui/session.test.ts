import { describe, expect, it } from "vitest";
import { firstInquiry } from "../../src/explore/index.ts";
import {
  firstSession,
  isCleared,
  nextLetter,
  withCompared,
  withInquiry,
  withKept,
  withMove,
  withoutKept,
} from "../../src/ui/state/session.ts";

const start = firstSession(firstInquiry());
const pitches = { tpt1: 74, tbn1: 63, bari: 41 };

describe("a session", () => {
  it("remembers what was moved by hand and where it came from", () => {
    const once = withMove(start, pitches, "tbn1", 67, "Tbn 1 to G4");
    const twice = withMove(once, once.made?.pitches ?? {}, "bari", null, "Bari rests");
    expect(twice.made?.pitches).toEqual({ tpt1: 74, tbn1: 67 });
    expect(twice.made?.moved).toEqual(["tbn1", "bari"]);
    expect(twice.made?.from).toEqual(pitches);
  });

  it("lets a hand-made voicing go with another chord, not with another dynamic", () => {
    const made = withMove(start, pitches, "tbn1", 67, "Tbn 1 to G4");
    const { inquiry } = made;
    expect(withInquiry(made, { ...inquiry, dynamic: "p" }, "dynamic p").made).not.toBeNull();
    expect(withInquiry(made, { ...inquiry, chordText: "Cm9" }, "chord Cm9").made).toBeNull();
  });

  it("gives kept voicings letters that are never used twice, and compares the last two", () => {
    const one = withKept(start, pitches, "one");
    const two = withKept(one, pitches, "two");
    const three = withKept(two, pitches, "three");
    expect(three.kept.map((kept) => kept.letter)).toEqual(["A", "B", "C"]);
    expect(three.compared).toEqual(["B", "C"]);
    expect(withCompared(three, "A").compared).toEqual(["C", "A"]);
    const without = withoutKept(three, "B");
    expect(without.compared).toEqual(["C"]);
    expect(nextLetter(without.kept)).toBe("B");
    const all = Array.from({ length: 26 }).reduce<typeof start>(
      (session) => withKept(session, pitches, "more"),
      start,
    );
    expect(nextLetter(all.kept)).toBe("A2");
  });

  it("knows a cleared question", () => {
    expect(isCleared(start.inquiry)).toBe(false);
    expect(isCleared({ ...start.inquiry, chordText: " ", melodyText: "" })).toBe(true);
  });
});
