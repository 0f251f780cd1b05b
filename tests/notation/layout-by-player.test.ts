import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { quantity, soundingMidi, type WrittenMidi } from "../../src/base/index.ts";
import { toSounding } from "../../src/band/index.ts";
import { layoutByPlayer } from "../../src/notation/layout-by-player.ts";
import { midiOfSpelled } from "../../src/notation/staff-position.ts";
import { readChord } from "../../src/theory/index.ts";
import { chord, F13, player, voicing, WIDE_F13 } from "./support/voicings.ts";

describe("one staff a player", () => {
  // Metropole Orkest library, score and parts specifications: score order.
  it("goes down the score: saxes, trumpets, trombones", () => {
    expect(layoutByPlayer(WIDE_F13, F13, "written").map((staff) => staff.id)).toEqual(
      "alto1 alto2 tenor1 tenor2 bari tpt1 tpt2 tpt3 tpt4 tbn1 tbn2 tbn3 btbn".split(" "),
    );
  });

  // Part clefs: W3C MusicXML 4.0 examples and handbook table 1.1 (baritone sax reads treble).
  it("writes saxes and trumpets in treble, trombones in bass clef", () => {
    const clefs = new Map(
      layoutByPlayer(WIDE_F13, F13, "written").map((staff) => [staff.id, staff.clef]),
    );
    expect(clefs.get("bari")).toBe("treble");
    expect(clefs.get("alto1")).toBe("treble");
    expect(clefs.get("tpt1")).toBe("treble");
    expect(clefs.get("tbn1")).toBe("bass");
    expect(clefs.get("btbn")).toBe("bass");
  });

  it("takes the low baritone to bass clef at concert pitch", () => {
    const [bari] = layoutByPlayer(voicing("bari=F2"), F13, "concert");
    expect([bari?.clef, bari?.notes[0]?.name, bari?.chordSymbol]).toEqual(["bass", "F2", "F13"]);
  });

  it("gives each player the symbol of the part", () => {
    const staves = layoutByPlayer(voicing("alto1=D5 tpt1=D5 tbn1=A3"), F13, "written");
    expect(staves.map((staff) => staff.chordSymbol)).toEqual(["D13", "G13", "F13"]);
  });

  it("writes a sharp ninth that would be E♯ as F, but keeps the third of C♯7", () => {
    const alt = chord("C7(♯9)", "dominant", "C 1, D# #9, E 3, G 5, Bb b7");
    const [tension] = layoutByPlayer(voicing("tpt1=D#5"), alt, "written");
    expect(tension?.notes[0]?.name).toBe("F5");
    const B7 = chord("B7", "dominant", "B 1, D# 3, F# 5, A b7");
    const [third] = layoutByPlayer(voicing("tpt1=D#5"), B7, "written");
    expect([third?.chordSymbol, third?.notes[0]?.name]).toEqual(["C♯7", "E♯5"]);
  });

  it("sounds the pitch that was asked, for every chord, player and pitch", () => {
    const symbols = "F13 C7alt B7 F#7 Abm7 Ebm7b5 C#dim7 Gbmaj7#11 Cb6 D#7#9 N.C.".split(" ");
    const ids = ["tpt1", "flugel1", "tbn1", "btbn", "alto1", "tenor1", "bari", "bass"];
    fc.assert(
      fc.property(
        fc.constantFrom(...symbols),
        fc.constantFrom(...ids),
        fc.integer({ min: 30, max: 84 }),
        (symbol, id, midi) => {
          const read = readChord(symbol);
          if (!read.ok) throw new Error(read.problem.message);
          const one = player(id);
          const placements = [{ player: one, sounding: soundingMidi(midi) }];
          const [staff] = layoutByPlayer({ placements }, read.value, "written");
          const note = staff!.notes[0]!;
          const written = quantity<WrittenMidi>(midiOfSpelled(note.spelled));
          expect(toSounding(written, one.instrument)).toBe(midi);
          expect(Math.abs(note.spelled.alteration)).toBeLessThanOrEqual(1);
        },
      ),
      { seed: 7, numRuns: 300 },
    );
  });
});
