// Covers src/files/score/midi-of-phrase.ts, src/files/midi/track-bytes.ts and leading-events.ts
import tonejs from "@tonejs/midi";
import fc from "fast-check";
import midiFile from "midi-file";
import { describe, expect, it } from "vitest";
import { midiOfPhrase, readMidi, type PhraseMidiOptions } from "../../../src/files/index.ts";
import {
  hornSwingRatio,
  performPhrase,
  rideSwingRatio,
  type ArticulationMark,
} from "../../../src/phrase/index.ts";
import { randomMelodies } from "../../phrase/support/random-melodies.ts";
import { voicedDemo, voicedMelody, type Voiced } from "../support/voiced-phrases.ts";

/** Track name, onset and duration in ticks, key, velocity. */
type Heard = readonly [track: string, onset: number, duration: number, key: number, loud: number];

const sorted = (notes: readonly Heard[]): readonly Heard[] =>
  [...notes].sort((a, b) => (a[0] < b[0] ? -1 : a[0] > b[0] ? 1 : a[1] - b[1] || a[3] - b[3]));

const midi = ({ phrase, performance }: Voiced, options: PhraseMidiOptions = {}): Uint8Array =>
  midiOfPhrase(phrase, performance, options);

/** Events as midi-file lists them, paired here. */
function byMidiFile(bytes: Uint8Array): readonly Heard[] {
  const heard: Heard[] = [];
  for (const track of midiFile.parseMidi(bytes).tracks) {
    const named = track.find(({ type }) => type === "trackName");
    const name = named?.type === "trackName" ? named.text : "";
    const begun = new Map<number, readonly [number, number]>();
    let ticks = 0;
    for (const event of track) {
      ticks += event.deltaTime;
      if (event.type === "noteOn") begun.set(event.noteNumber, [ticks, event.velocity]);
      if (event.type !== "noteOff") continue;
      const [onset, velocity] = begun.get(event.noteNumber)!;
      heard.push([name, onset, ticks - onset, event.noteNumber, velocity]);
    }
  }
  return sorted(heard);
}

function byTone(bytes: Uint8Array): readonly Heard[] {
  return sorted(
    new tonejs.Midi(bytes).tracks.flatMap(({ name, notes }) =>
      notes.map((note): Heard => [
        name,
        note.ticks,
        note.durationTicks,
        note.midi,
        Math.round(note.velocity * 127),
      ]),
    ),
  );
}

function byOurs(bytes: Uint8Array): readonly Heard[] {
  const read = readMidi(bytes);
  if (!read.ok) throw new Error(read.problem.message);
  return sorted(
    read.value.tracks.flatMap(({ name, notes }) =>
      notes.map(({ onsetTicks, durationTicks, key, velocity }): Heard => [
        name,
        onsetTicks,
        durationTicks,
        key,
        velocity,
      ]),
    ),
  );
}

const ticksOf = (bytes: Uint8Array): number => midiFile.parseMidi(bytes).header.ticksPerBeat!;

/** All three read one thing; it is what was placed, in quarters. */
function expectAllHear(one: Voiced): void {
  const written = midi(one, { timing: "written", rhythm: ["piano", "bass", "drums"] });
  const played = midi(one, { rhythm: ["piano", "bass", "drums"] });
  for (const bytes of [written, played]) {
    const heard = byMidiFile(bytes);
    expect(byTone(bytes)).toEqual(heard);
    expect(byOurs(bytes)).toEqual(heard);
  }
  const { performance, phrase } = one;
  const quarter = ticksOf(written);
  const { division, tempo } = phrase.melody;
  for (const { player, notes } of performance.parts) {
    const own = byMidiFile(written).filter(([name]) => name === player.name);
    expect(own.map(([, onset, duration, key]) => [onset, duration, key])).toEqual(
      notes.map(({ onset, duration, sounding }) => [
        (onset * quarter) / division,
        (duration * quarter) / division,
        sounding,
      ]),
    );
    const heard = byMidiFile(played).filter(([name]) => name === player.name);
    const asPlayed = performance.played.filter(({ playerId }) => playerId === player.id);
    expect(heard).toHaveLength(asPlayed.length);
    asPlayed.forEach(({ onset, duration, sounding }, index) => {
      const [, from, length, key] = heard[index]!;
      const seconds = (ticks: number): number => (ticks * 60) / (tempo * quarter);
      expect(key).toBe(sounding);
      // A tick is 2.5 ms at 50 quarters a minute.
      expect(Math.abs(seconds(from) - onset)).toBeLessThan(0.003);
      expect(Math.abs(seconds(length) - duration)).toBeLessThan(0.003);
    });
  }
}

const demos = (["shout", "ballad"] as const).map((id) => [id, voicedDemo(id)] as const);
const shout = demos[0]![1];

describe.each(demos)("the %s as a MIDI file", (_, one) => {
  it("is heard by readers of two other makers and our own as it was played and as written", () => {
    expectAllHear(one);
  });
});

it("any phrase is heard so", () => {
  fc.assert(
    fc.property(randomMelodies, (melody) => expectAllHear(voicedMelody(melody))),
    { seed: 7, numRuns: 40 },
  );
});

describe("a MIDI file of a phrase", () => {
  it("has one track a player in score order, and the rhythm section's where asked", () => {
    const names = (bytes: Uint8Array): readonly string[] => {
      const read = readMidi(bytes);
      return read.ok ? read.value.tracks.slice(1).map(({ name }) => name) : [];
    };
    const players = names(midi(shout));
    expect(players).toHaveLength(13);
    expect(players[0]).toBe("Alto 1");
    expect(names(midi(shout, { rhythm: ["piano", "bass", "drums"] })).slice(13)).toEqual([
      "Piano",
      "Bass",
      "Drums",
    ]);
    expect(names(midi(shout, { playerIds: ["tpt1", "bari"] }))).toHaveLength(2);
  });

  // General MIDI Level 1: channel 10 is percussion; key 51 ride cymbal 1, key 44 pedal hi-hat.
  it("puts the drums on the channel and keys of percussion, and nobody else there", () => {
    const read = readMidi(midi(shout, { rhythm: ["piano", "bass", "drums"] }));
    if (!read.ok) throw new Error(read.problem.message);
    for (const { name, notes } of read.value.tracks)
      for (const { channel, key } of notes) {
        expect(channel === 10).toBe(name === "Drums");
        if (name === "Drums") expect([51, 44]).toContain(key);
      }
    const channels = read.value.tracks.flatMap(({ notes }) => notes[0]?.channel ?? []);
    expect(new Set(channels).size).toBe(channels.length);
  });

  it("swings as the tempo lets it when played, and is even as written", () => {
    const ride = (options: PhraseMidiOptions): number => {
      const bytes = midi(shout, { rhythm: ["piano", "bass", "drums"], ...options });
      const quarter = ticksOf(bytes);
      const strokes = byOurs(bytes).filter(([name, , , key]) => name === "Drums" && key === 51);
      const parts = strokes.map(([, onset]) => (onset % quarter) / quarter);
      const upbeat = parts.find((part) => part > 0.3 && part < 0.9)!;
      return upbeat / (1 - upbeat);
    };
    const { tempo } = shout.phrase.melody;
    expect(ride({ timing: "played" })).toBeCloseTo(rideSwingRatio(tempo), 1);
    expect(ride({ timing: "written" })).toBe(1);
    expect(hornSwingRatio(tempo)).toBeLessThan(rideSwingRatio(tempo));
  });

  it("is as loud as the marks say: an accent is louder than the note beside it", () => {
    const { phrase, performance } = shout;
    const bytes = midiOfPhrase(phrase, performance, { playerIds: ["tpt1"], timing: "written" });
    const { notes } = performance.parts.find(({ player }) => player.id === "tpt1")!;
    const loud = byOurs(bytes).map(([, , , , velocity]) => velocity);
    const isAccented = notes.map(({ marks }) =>
      marks.some((m) => m === "accent" || m === "marcato"),
    );
    const plain = loud.filter((_, index) => !isAccented[index]);
    loud.forEach((velocity, index) => {
      if (isAccented[index]) expect(velocity).toBeGreaterThan(Math.max(...plain));
    });
    expect(isAccented).toContain(true);
  });

  it("follows the articulation that the user set", () => {
    const { phrase, answer } = shout;
    const all = (mark: ArticulationMark): Readonly<Record<string, readonly ArticulationMark[]>> =>
      Object.fromEntries(phrase.harmonised.map(({ note }) => [note.id, [mark]]));
    const length = (mark: ArticulationMark): number => {
      const performance = performPhrase(phrase, answer, { articulations: all(mark) });
      return byOurs(midiOfPhrase(phrase, performance))[0]![2];
    };
    expect(length("staccato")).toBeLessThan(length("tenuto"));
  });
});
