import { describe, expect, it } from "vitest";
import { lineUps } from "../../src/band/index.ts";
import { readTyped } from "../../src/ui/voicing/read-typed.ts";

const players = lineUps.find((lineUp) => lineUp.id === "big-band")?.players ?? [];

function pitchesOf(text: string) {
  const read = readTyped(text, players);
  if (!read.ok) throw new Error(read.problem.message);
  return read.value.kind === "players" ? read.value.pitches : read.value.notes;
}

function problemOf(text: string) {
  const read = readTyped(text, players);
  return read.ok ? null : read.problem;
}

describe("a typed voicing", () => {
  it("gives each player the note after the name, by id, abbreviation or full name", () => {
    const wanted = { tpt1: 74, alto1: 71, btbn: 41 };
    expect(pitchesOf("tpt1 D5, alto1 B4, btbn F2")).toEqual(wanted);
    expect(pitchesOf("Tpt 1 = D5; Alto 1: b4\nB. Tbn F2")).toEqual(wanted);
    expect(pitchesOf("trumpet 1 d5 ALTO 1 B4 bass trombone F2")).toEqual(wanted);
  });

  it("gives several players one note, before or after their names", () => {
    expect(pitchesOf("tpt1 tpt2 D5")).toEqual({ tpt1: 74, tpt2: 74 });
    expect(pitchesOf("D5: tpt1, tpt2  Bb4: alto1")).toEqual({ tpt1: 74, tpt2: 74, alto1: 70 });
  });

  it("lets those rest who are told to, and names those it says nothing of", () => {
    const read = readTyped("tpt1 D5, tpt2 rest", players);
    expect(read.ok && read.value.kind === "players" && read.value.pitches).toEqual({ tpt1: 74 });
    const unnamed = read.ok && read.value.kind === "players" ? read.value.unnamed : [];
    expect(unnamed).toHaveLength(11);
  });

  it("reads notes alone, those without an octave above the note before", () => {
    expect(pitchesOf("F2 A3 C4 Eb4 G4 D5")).toEqual([41, 57, 60, 63, 67, 74]);
    expect(pitchesOf("F2 A3 C E♭ G D")).toEqual([41, 57, 60, 63, 67, 74]);
    expect(pitchesOf("B3 C")).toEqual([59, 60]);
  });

  it("names the place of what it cannot read", () => {
    expect(problemOf("tpt1 D5, vibes B4")).toMatchObject({ code: "player-unknown", position: 9 });
    expect(problemOf("tpt1 D5, alto1 H4")).toMatchObject({ position: 15 });
    expect(problemOf("F A C")).toMatchObject({ code: "pitch-octave-missing", position: 1 });
    expect(problemOf("tpt1 D5 B4")).toMatchObject({ code: "note-alone", position: 8 });
    expect(problemOf("tpt1 D5 tpt1 B4")).toMatchObject({ code: "player-twice", position: 8 });
    expect(problemOf("tpt1 D5, alto1")).toMatchObject({ code: "player-alone", position: 9 });
    expect(problemOf("  ")).toMatchObject({ code: "voicing-empty" });
    expect(problemOf("tpt1 rest")).toMatchObject({ code: "voicing-empty" });
  });
});
