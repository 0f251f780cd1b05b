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
  withNote,
  withPlaceInRow,
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
    expect(withCompared(three, "A").compared).toEqual(["B", "C", "A"]);
    expect(withCompared(three, "B").compared).toEqual(["C"]);
    const without = withoutKept(three, "B");
    expect(without.compared).toEqual(["C"]);
    expect(nextLetter(without.kept)).toBe("B");
    const all = Array.from({ length: 26 }).reduce<typeof start>(
      (session) => withKept(session, pitches, "more"),
      start,
    );
    expect(nextLetter(all.kept)).toBe("A2");
  });

  it("lets any number be chosen, and adds what is kept next to a choice of three", () => {
    const three = ["one", "two", "three"].reduce(
      (session, name) => withKept(session, pitches, name),
      start,
    );
    const chosen = withCompared(three, "A");
    expect(withKept(chosen, pitches, "four").compared).toEqual(["B", "C", "A", "D"]);
    expect(withKept(three, pitches, "four").compared).toEqual(["C", "D"]);
  });

  it("puts kept voicings in another order and writes notes beside them", () => {
    const three = ["one", "two", "three"].reduce(
      (session, name) => withKept(session, pitches, name),
      start,
    );
    const order = (session: typeof start) => session.kept.map(({ letter }) => letter).join("");
    expect(order(withPlaceInRow(three, "A", 1))).toBe("BAC");
    expect(order(withPlaceInRow(three, "A", 9))).toBe("BCA");
    expect(order(withPlaceInRow(three, "C", -1))).toBe("CAB");
    expect(withPlaceInRow(three, "B", 1)).toBe(three);
    const noted = withNote(three, "B", "for the last chorus");
    expect(noted.kept[1]?.note).toBe("for the last chorus");
    expect(noted.step).toBe("note beside B");
    expect(withNote(noted, "B", "").kept).toEqual(three.kept);
  });

  it("knows a cleared question", () => {
    expect(isCleared(start.inquiry)).toBe(false);
    expect(isCleared({ ...start.inquiry, chordText: " ", melodyText: "" })).toBe(true);
  });
});
