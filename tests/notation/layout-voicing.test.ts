import { describe, expect, it } from "vitest";
import { layoutVoicing, type StaffPitch, type StaffView } from "../../src/notation/index.ts";
import { readChord, type Chord } from "../../src/theory/index.ts";
import { layoutText } from "./support/layout-text.ts";
import { voicing, WIDE_F13 } from "./support/voicings.ts";

function read(symbol: string): Chord {
  const chord = readChord(symbol);
  if (!chord.ok) throw new Error(chord.problem.message);
  return chord.value;
}

const golden = (name: string) => `../golden/notation/${name}.txt`;

describe("layouts as text", () => {
  const crowded = voicing(
    "tpt1=Eb5 tpt2=Db5 tpt3=Bb4 tpt4=Ab4 tbn1=E4 tbn2=Bb3 tbn3=Ab3 btbn=C3 " +
      "alto1=Gb5 alto2=E5 tenor1=Eb4 tenor2=Db4 bari=C2",
  );
  const manySharps = voicing(
    "tpt1=B5 tpt2=F#5 tpt3=D#5 tpt4=A4 tbn1=D#4 tbn2=A3 tbn3=F#3 btbn=B1 " +
      "alto1=F#5 alto2=D#5 tenor1=A4 tenor2=F#4 bari=B2",
  );

  it.each<[string, string, ReturnType<typeof voicing>, StaffView, StaffPitch]>([
    ["wide-f13-grand", "F13", WIDE_F13, "grand", "concert"],
    ["wide-f13-concert", "F13", WIDE_F13, "by-player", "concert"],
    ["wide-f13-written", "F13", WIDE_F13, "by-player", "written"],
    ["crowded-c7alt-grand", "C7alt", crowded, "grand", "concert"],
    ["crowded-c7alt-written", "C7alt", crowded, "by-player", "written"],
    ["sharps-b7-written", "B7", manySharps, "by-player", "written"],
  ])("%s stays as it was judged", async (name, symbol, notes, view, pitch) => {
    const layout = layoutVoicing(notes, { chord: read(symbol), view, pitch });
    await expect(layoutText(layout)).toMatchFileSnapshot(golden(name));
  });
});

describe("published worked examples, by the note names their sources print", () => {
  it.each([
    // G. Lindsay, Jazz Arranging Techniques (2005), five-part spread on Cmaj7 under D.
    ["Cmaj7", "C3 B3 E4 G4 D5", "C3 B3 E4 G4 D5"],
    // F. Goodman, web page on voicings of two stacked fifths pairs: names given, octaves ours.
    ["Cm11", "C3 G3 D4 Eb4 Bb4 F5", "C3 G3 D4 E♭4 B♭4 F5"],
    ["Cmaj7#11", "C3 G3 D4 E4 B4 F#5", "C3 G3 D4 E4 B4 F♯5"],
    ["Gmaj7#11", "G2 D3 A3 B3 F#4 C#5", "G2 D3 A3 B3 F♯4 C♯5"],
    ["Fm11", "F2 C3 G3 Ab3 Eb4 Bb4", "F2 C3 G3 A♭3 E♭4 B♭4"],
  ])("%s: %s", (symbol, notes, expected) => {
    const ids = ["bari", "tenor2", "tenor1", "alto2", "alto1", "tpt1"];
    const text = notes.split(" ").map((note, index) => `${ids[index]}=${note}`);
    const layout = layoutVoicing(voicing(text.join(" ")), {
      chord: read(symbol),
      view: "grand",
      pitch: "concert",
    });
    const lowToHigh = [...layout.staves].reverse().flatMap((staff) => staff.notes);
    expect(lowToHigh.map((note) => note.name).join(" ")).toBe(expected);
  });
});

describe("a layout", () => {
  it("keeps a grand staff at concert pitch whatever was asked", () => {
    const layout = layoutVoicing(WIDE_F13, { chord: read("F13"), view: "grand", pitch: "written" });
    expect(layout.pitch).toBe("concert");
    expect(layout.staves.map((staff) => staff.id)).toEqual(["treble", "bass"]);
  });

  it("says in its title what it shows", () => {
    const layout = layoutVoicing(WIDE_F13, {
      chord: read("F13"),
      view: "by-player",
      pitch: "written",
    });
    expect(layout.title).toBe("F13, one staff a player, as written for each");
  });

  it("takes silence: two empty staves, or none", () => {
    const silence = { placements: [] };
    const grand = layoutVoicing(silence, { chord: read("F13"), view: "grand", pitch: "concert" });
    expect(grand.staves.map((staff) => staff.notes.length)).toEqual([0, 0]);
    expect(grand.description).toBe("F13: nobody sounds.");
    const players = layoutVoicing(silence, {
      chord: read("F13"),
      view: "by-player",
      pitch: "written",
    });
    expect(players.staves).toEqual([]);
  });
});
