import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { quantity, type SoundingMidi } from "../../src/base/index.ts";
import { lineUpById } from "../../src/band/index.ts";
import { readChord, tickedTones } from "../../src/theory/index.ts";
import {
  allRules,
  brokenRules,
  costOf,
  lineCandidates,
  searchAtlas,
  voicingCandidates,
  type Candidates,
  type CandidateWish,
  type Question,
  type Voicing,
} from "../../src/voicing/index.ts";

function question(
  symbol: string,
  lead: number,
  lineUp: string,
  changed: Partial<Question> = {},
): Question {
  const chord = readChord(symbol);
  const band = lineUpById(lineUp);
  if (!chord.ok || !band.ok) throw new Error("must be readable");
  return {
    chord: chord.value,
    lead: quantity<SoundingMidi>(lead),
    players: band.value.players,
    dynamic: "f",
    ticked: tickedTones(chord.value, "tensions"),
    required: [],
    bassSounds: true,
    rules: allRules,
    strictLowIntervals: false,
    clusterSetting: false,
    shortNote: false,
    homes: true,
    locks: [],
    ...changed,
  };
}

const everything: CandidateWish = {
  textureCost: () => 0,
  rows: Infinity,
  cells: Infinity,
  stacksInCell: 3,
  assignmentsOfStack: 4,
};

function candidates(asked: Question, wish: CandidateWish): Candidates {
  const found = voicingCandidates(asked, wish);
  if (!found.ok) throw new Error(found.problem.message);
  return found.value;
}

const rowsOf = ({ count, pitches, players }: Candidates) =>
  Array.from({ length: count }, (_, n) => [...pitches.subarray(n * players, (n + 1) * players)]);

const voicing = (asked: Question, row: readonly number[]): Voicing => ({
  placements: asked.players.flatMap((player, n) =>
    row[n]! > 0 ? [{ player, sounding: quantity<SoundingMidi>(row[n]!) }] : [],
  ),
});

function cellOf(row: readonly number[]): string {
  const sounding = row.filter((pitch) => pitch > 0);
  const stack = new Set(sounding);
  return `${Math.max(...stack) - Math.min(...stack)} ${stack.size} ${sounding.length}`;
}

/** Least cost of every cell with harmony, as the atlas proves it. */
function atlasCosts(asked: Question): ReadonlyMap<string, number> {
  const search = searchAtlas(asked);
  if (!search.ok) throw new Error(search.problem.message);
  for (let step = search.value.next(); ; step = search.value.next())
    if (step.done)
      return new Map(
        step.value.cells
          .filter(({ family }) => family === "harmony")
          .map(({ key, cost }) => [`${key.span} ${key.notes} ${key.players}`, cost]),
      );
}

describe("voicings near a texture", () => {
  const cases = [
    ["F13", 74, "six-horn"],
    ["F7", 77, "six-horn"],
    ["Cm9", 70, "four-horn"],
    ["Bdim7", 74, "six-horn"],
  ] as const;

  it.each(cases)(
    "open every cell of the atlas of %s under %i for %s when asked for all",
    (symbol, lead, lineUp) => {
      const asked = question(symbol, lead, lineUp);
      const cells = new Set(rowsOf(candidates(asked, everything)).map(cellOf));
      expect([...cells].sort()).toEqual([...atlasCosts(asked).keys()].sort());
    },
  );

  it.each(cases)(
    "cost over their cell's best exactly what their explanation says: %s under %i, %s",
    (symbol, lead, lineUp) => {
      const asked = question(symbol, lead, lineUp);
      const best = atlasCosts(asked);
      const found = candidates(asked, everything);
      rowsOf(found).forEach((row, n) =>
        expect(costOf(voicing(asked, row), asked).total - best.get(cellOf(row))!).toBe(
          found.over[n],
        ),
      );
    },
  );

  it("break no rule, whichever assignment", () => {
    const asked = question("G7(b9)", 77, "big-band");
    const found = candidates(asked, { ...everything, rows: 400, cells: 1 });
    for (const row of rowsOf(found)) expect(brokenRules(voicing(asked, row), asked)).toEqual([]);
  });

  it("are all different", () => {
    const rows = rowsOf(
      candidates(question("F13", 74, "big-band"), { ...everything, rows: 700, cells: 1 }),
    );
    expect(new Set(rows.map((row) => row.join())).size).toBe(rows.length);
    expect(rows.length).toBeGreaterThanOrEqual(700);
  });

  it("come from the nearest cells", () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 8, max: 34 }),
        fc.integer({ min: 2, max: 13 }),
        (span, players) => {
          const asked = question("F13", 74, "big-band");
          const textureCost = (a: number, _notes: number, k: number) =>
            Math.abs(a - span) + 3 * Math.abs(k - players);
          const found = candidates(asked, { ...everything, rows: 60, cells: 3, textureCost });
          const opened = Math.max(...found.texture);
          const nearer = [...atlasCosts(asked).keys()].filter((key) => {
            const [a, notes, k] = key.split(" ").map(Number) as [number, number, number];
            return textureCost(a, notes, k) < opened;
          });
          const cells = new Set(rowsOf(found).map(cellOf));
          for (const key of nearer) expect(cells.has(key), key).toBe(true);
        },
      ),
      { seed: 7, numRuns: 6 },
    ));

  it("keep locked players where they are, in every assignment", () => {
    const locks = [
      { playerId: "tbn1", sounding: quantity<SoundingMidi>(63) },
      { playerId: "bari", sounding: "rest" },
    ] as const;
    const asked = question("F13", 74, "big-band", { locks });
    const at = (id: string) => asked.players.findIndex((player) => player.id === id);
    for (const row of rowsOf(candidates(asked, { ...everything, rows: 200, cells: 1 }))) {
      expect(row[at("tbn1")]).toBe(63);
      expect(row[at("bari")]).toBe(0);
    }
  });

  it("have the player an octave above the lead in every row", () => {
    const asked = question("F13", 69, "big-band", { octaveAbovePlayer: "tpt1" });
    for (const row of rowsOf(candidates(asked, { ...everything, rows: 50, cells: 1 })))
      expect(row[0]).toBe(81);
  });

  it("pass the question's problems on", () => {
    const found = voicingCandidates(question("F13", 120, "big-band"), everything);
    expect(found).toMatchObject({ ok: false, problem: { code: "melody-out-of-reach" } });
  });
});

describe("lines near a texture", () => {
  it("hold nothing but octaves of the melody, in unison nothing but the melody", () => {
    const asked = question("F13", 67, "big-band");
    for (const kind of ["unison", "octaves"] as const) {
      const found = lineCandidates(asked, { ...everything, rows: 100, cells: 1 }, kind);
      if (!found.ok) throw new Error(found.problem.message);
      expect(found.value.count).toBeGreaterThan(0);
      for (const row of rowsOf(found.value))
        for (const pitch of row.filter((each) => each > 0))
          expect(kind === "unison" ? 67 - pitch : (67 - pitch) % 12).toBe(0);
    }
  });

  it("always have someone on the melody itself", () => {
    const found = lineCandidates(question("N.C.", 74, "six-horn"), everything, "octaves");
    if (!found.ok) throw new Error(found.problem.message);
    for (const row of rowsOf(found.value)) expect(row).toContain(74);
  });

  it("pass the question's problems on", () =>
    expect(lineCandidates(question("F13", 120, "big-band"), everything, "unison").ok).toBe(false));
});
