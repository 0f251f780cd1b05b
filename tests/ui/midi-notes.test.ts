import { describe, expect, it } from "vitest";
import { planVoicing, type Manner, type SoundPlan } from "../../src/audio/index.ts";
import { quantity, type Seconds, type SoundingMidi } from "../../src/base/index.ts";
import { lineUps } from "../../src/band/index.ts";
import { midiMomentsOf, midiPlayersOf } from "../../src/ui/midi/midi-notes.ts";

const { players } = lineUps.find(({ id }) => id === "big-band")!;

/** Three players, low to high when rolled. */
function planOf(manner: Manner, soloPlayerIds: readonly string[] = []): SoundPlan {
  const chord = { bari: 41, tbn1: 57, tpt1: 74 };
  const placements = Object.entries(chord).map(([id, pitch]) => ({
    player: players.find((player) => player.id === id)!,
    sounding: quantity<SoundingMidi>(pitch),
  }));
  const seconds = quantity<Seconds>(3);
  return planVoicing({ placements }, { dynamic: "mf", manner, seconds, soloPlayerIds });
}

describe("a plan as MIDI notes", () => {
  // General MIDI System Level 1 sound set: 57 trumpet, 58 trombone, 68 baritone sax.
  it("gives every player the programme of the instrument", () => {
    const programmes = midiPlayersOf(planOf("sustained")).map(
      ({ channelKey, programme }) => `${channelKey} ${programme}`,
    );
    expect(programmes.sort()).toEqual(["bari 68", "tbn1 58", "tpt1 57"]);
  });

  it("strikes a held chord once and ends in silence", () => {
    const moments = midiMomentsOf(planOf("sustained"));
    expect(moments.map(({ notes }) => notes.length)).toEqual([3, 0]);
    expect(moments.at(-1)?.isFresh).toBe(true);
  });

  it("adds the notes of a rolled chord one by one without striking those that sound", () => {
    const moments = midiMomentsOf(planOf("rolled-from-bottom"));
    const rising = moments.slice(0, 3).map(({ notes }) => notes.map(({ midi }) => midi));
    expect(rising).toEqual([[41], [57], [74]]);
    expect(moments.slice(1, 3).map(({ isFresh }) => isFresh)).toEqual([false, false]);
  });

  it("strikes those who step back more softly", () => {
    const notes = midiMomentsOf(planOf("sustained", ["tpt1"]))[0]?.notes ?? [];
    const velocityOf = (id: string) => notes.find(({ channelKey }) => channelKey === id)?.velocity;
    expect(velocityOf("bari")).toBeLessThan(velocityOf("tpt1") ?? 0);
  });
});
