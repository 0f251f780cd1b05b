import { describe, expect, it } from "vitest";
import { readChord } from "../../src/theory/index.ts";
import { groupsUnderLead } from "../../src/voicing/required-groups.ts";

function under(symbol: string, lead: number): ReturnType<typeof groupsUnderLead> {
  const chord = readChord(symbol);
  if (!chord.ok) throw new Error(chord.problem.message);
  return groupsUnderLead(chord.value, lead);
}

describe("required tones under a melody note", () => {
  it("are untouched by a melody note that clashes with none of them", () => {
    expect(under("C7", 7)).toEqual({
      groups: [[4], [10]],
      leadIsGuide: false,
      added: [],
      removed: [],
      remarks: [],
    });
  });

  it("leave out what the melody has, and know when that is a guide tone", () => {
    expect(under("C7", 4)).toMatchObject({ groups: [[10]], leadIsGuide: true });
    expect(under("C13", 9)).toMatchObject({ groups: [[4], [10]], leadIsGuide: false });
  });

  it("become the sixth under the root of a major seventh", () => {
    // G. Lindsay, Jazz Arranging Techniques (2005).
    expect(under("Cmaj7", 0)).toMatchObject({ groups: [[4], [9]], added: [9], removed: [11] });
  });

  it("become fourth, sixth or ninth under the fourth of a major chord", () => {
    // Common practice, no single source: voiced as a suspended chord.
    const clash = under("Cmaj7", 5);
    expect(clash).toMatchObject({ groups: [[9, 2]], added: [5, 9, 2], removed: [4, 11] });
    expect(clash.remarks).toHaveLength(1);
    // A dominant keeps its seventh.
    expect(under("C7", 5)).toMatchObject({ groups: [[10]], added: [5], removed: [4] });
  });

  it("give up any other tone a semitone under the melody, and say so", () => {
    expect(under("C7", 11)).toMatchObject({ groups: [[4]], added: [], removed: [10] });
    expect(under("Cm7", 4).removed).toEqual([3]);
    expect(under("Cm7", 4).remarks[0]).toMatch(/left out/);
  });

  it("keep a group while one of its tones is left: ♭9 or ♯9, under a natural ninth", () => {
    expect(under("C7alt", 2).groups).toContainEqual([1, 3]);
  });
});
