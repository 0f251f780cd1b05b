import { describe, expect, it } from "vitest";
import { quantity, type SoundingMidi } from "../../src/base/index.ts";
import { canSound, lineUpById, lineUps } from "../../src/band/index.ts";
import {
  continuations,
  moveCost,
  readPhrase,
  stepQuestion,
  type PitchOrRest,
  type StepRequest,
} from "../../src/phrase/index.ts";
import { linesCost, stepBetween } from "../../src/phrase/search-phrase.ts";
import { readPitch, type SpelledPitch } from "../../src/theory/index.ts";
import { allRules } from "../../src/voicing/index.ts";

const band = lineUpById("big-band");
if (!band.ok) throw new Error("there is no big band");
const { players } = band.value;

function spelled(text: string): SpelledPitch {
  const read = readPitch(text);
  if (!read.ok) throw new Error(text);
  return read.value.spelled;
}

/** F13 under D5 in six notes, everybody: the page's first answer. */
const wide = {
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

function request(change: Partial<StepRequest> = {}): StepRequest {
  return {
    held: { chordText: "F13", lead: spelled("D5") },
    pitches: Object.fromEntries(
      Object.entries(wide).map(([id, pitch]) => [id, quantity<SoundingMidi>(pitch)]),
    ),
    other: { chordText: "Bbmaj9", lead: spelled("C5") },
    isOtherAfter: true,
    speed: "slow",
    players,
    dynamic: "f",
    colour: "tensions",
    bassSounds: true,
    rules: allRules,
    strictLowIntervals: false,
    clusterSetting: false,
    homes: true,
    resting: [],
    ...change,
  };
}

function found(change: Partial<StepRequest> = {}) {
  const phrase = readPhrase(stepQuestion(request(change)));
  if (!phrase.ok) throw new Error(phrase.problems.map(({ message }) => message).join(" "));
  return { phrase: phrase.value, all: continuations(phrase.value) };
}

describe("continuations of a voicing", () => {
  it("have the other melody note on top and everybody in range", () => {
    for (const { pitches } of found().all) {
      expect(Math.max(...pitches)).toBe(72);
      pitches.forEach((pitch, index) => {
        if (pitch > 0) expect(canSound(players[index]!, quantity<SoundingMidi>(pitch))).toBe(true);
      });
    }
  });

  it("begin with the smoothest: no other one moves with less cost", () => {
    const { phrase, all } = found();
    const [first, ...others] = all;
    expect(first?.id).toBe("smoothest");
    for (const other of others) expect(first!.cost.lines).toBeLessThanOrEqual(other.cost.lines);
    const [held, free] = phrase.moments;
    const step = stepBetween(held!, free!, phrase.melody);
    expect(linesCost(phrase, held!.held!, first!.pitches, step)).toBe(first!.cost.lines);
  });

  it("are as wide and as heavy as they say, and all different", () => {
    const { all } = found();
    const of = (id: string) => all.find((one) => one.id === id);
    const [wider, narrower, lighter] = [of("wider"), of("narrower"), of("lighter")];
    expect(wider!.span).toBeGreaterThan(narrower!.span);
    expect(narrower!.span).toBeLessThan(33);
    expect(lighter!.players).toBeLessThan(13);
    expect(new Set(all.map(({ pitches }) => pitches.join())).size).toBe(all.length);
  });

  it("go the other way round too: the held voicing comes last", () => {
    const { phrase, all } = found({ isOtherAfter: false });
    expect(phrase.moments.map(({ held }) => held !== undefined)).toEqual([false, true]);
    const [free, held] = phrase.moments;
    const step = stepBetween(free!, held!, phrase.melody);
    const [first] = all;
    expect(linesCost(phrase, first!.pitches, held!.held!, step)).toBe(first!.cost.lines);
  });

  it("leave those at rest who are to rest", () => {
    const { all } = found({ resting: ["bari", "btbn"] });
    const places = ["bari", "btbn"].map((id) => players.findIndex((player) => player.id === id));
    for (const { pitches } of all) for (const at of places) expect(pitches[at]).toBe(0);
  });

  it("name the moves that are awkward, and no others", () => {
    // The melody falls an octave within 0.18 seconds: somebody has to jump.
    const { all } = found({ speed: "fast", other: { chordText: "B13", lead: spelled("D#4") } });
    const at = { speed: "fast", isMelodyMoving: true, isAfterRest: false } as const;
    expect(all.flatMap(({ awkward }) => awkward).length).toBeGreaterThan(0);
    for (const { pitches, awkward } of all)
      players.forEach((player, index) => {
        const from = quantity<SoundingMidi>(wide[player.id as keyof typeof wide]);
        const cost = moveCost(player, from, (pitches[index] ?? 0) as PitchOrRest, at);
        // From 5 on a move is awkward: the limit of the line check.
        expect(awkward.some(({ playerId }) => playerId === player.id)).toBe(cost >= 5);
      });
  });

  it.each(["Bbmaj9", "C7(b9,b13)", "F#m7(b5)", "Adim7", "Dbsus", "E/G#", "N.C."])(
    "are found for %s and every line-up, with the melody on top",
    (chordText) => {
      for (const { id } of lineUps) {
        const chosen = lineUpById(id);
        if (!chosen.ok) throw new Error(id);
        const own = chosen.value.players;
        const lead = own.some((player) => canSound(player, quantity<SoundingMidi>(72)))
          ? "C5"
          : "C4";
        const held = own.find((player) => canSound(player, quantity<SoundingMidi>(67)));
        if (!held) throw new Error(`nobody in ${id} plays G4`);
        const phrase = readPhrase(
          stepQuestion(
            request({
              players: own,
              held: { chordText: "C13", lead: spelled("G4") },
              pitches: { [held.id]: quantity<SoundingMidi>(67) },
              other: { chordText, lead: spelled(lead) },
            }),
          ),
        );
        if (!phrase.ok) throw new Error(phrase.problems.map(({ message }) => message).join(" "));
        for (const { pitches } of continuations(phrase.value))
          expect(pitches).toContain(lead === "C5" ? 72 : 60);
      }
    },
  );

  it("are the same every time", () => {
    expect(found().all).toEqual(found().all);
  });

  it("are refused for a phrase that is no step", () => {
    const { phrase } = found();
    expect(() => continuations({ ...phrase, moments: phrase.moments.slice(0, 1) })).toThrow(
      RangeError,
    );
  });
});
