import { describe, expect, it } from "vitest";
import { audibility } from "../../src/acoustics/audibility.ts";
import { groupJudge } from "../../src/acoustics/fast-audibility.ts";
import { randomNotes, randomVoicings } from "./support/sounds.ts";
import { grid, newPass, prepareAll } from "./support/workshop.ts";

const SPECTRA = randomNotes(60, 31);
const NOTES = prepareAll(SPECTRA);
const pass = newPass();
const judge = groupJudge(grid, pass);

const fast = (indices: readonly number[], groups: readonly number[]) => {
  const notes = indices.map((index) => NOTES[index]!);
  pass.run(notes);
  return judge(notes, groups);
};
const full = (indices: readonly number[], groups: readonly number[]) =>
  audibility(
    indices.map((index, at) => ({
      id: String(at),
      group: String(groups[at]),
      spectrum: SPECTRA[index]!,
    })),
  );

describe("the fast judge of who is heard", () => {
  it("agrees with the full method on thirteen random notes", () => {
    const singly = Array.from({ length: 13 }, (_none, index) => index);
    const misses: number[] = [];
    let [verdicts, culprits, judged, covered] = [0, 0, 0, 0];
    for (const indices of randomVoicings(SPECTRA.length, 25, 3)) {
      const slow = full(indices, singly);
      fast(indices, singly).forEach((quick, at) => {
        const exact = slow[at]!;
        judged += 1;
        if (Math.abs(exact.margin) < 12) misses.push(Math.abs(quick.margin - exact.margin));
        if (quick.verdict === exact.verdict) verdicts += 1;
        if (exact.coveredBy === null || quick.coveredBy === -1) return;
        covered += 1;
        if (String(quick.coveredBy) === exact.coveredBy.group) culprits += 1;
      });
    }
    misses.sort((a, b) => a - b);
    expect(misses[Math.floor(misses.length / 2)]).toBeLessThan(0.1);
    expect(misses[misses.length - 1]).toBeLessThan(2);
    expect(verdicts / judged).toBeGreaterThan(0.97);
    expect(culprits / covered).toBeGreaterThan(0.95);
  });

  it("judges groups as one, in the order in which they first appear", () => {
    const indices = [0, 1, 2, 3];
    const groups = [7, 3, 7, 5];
    const found = fast(indices, groups);
    expect(found.map(({ members }) => members)).toEqual([[0, 2], [1], [3]]);
    const slow = full(indices, groups);
    found.forEach(({ margin }, at) => expect(Math.abs(margin - slow[at]!.margin)).toBeLessThan(1));
  });

  it("finds a note alone clear and covered by nobody", () => {
    const [alone] = fast([4], [0]);
    expect(alone!.verdict).toBe("clear");
    expect(alone!.coveredBy).toBe(-1);
  });
});
