import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { SoundingMidi } from "../../src/base/index.ts";
import { planChannels } from "../../src/playback/midi-channels.ts";
import { PortSender } from "../../src/playback/midi-sender.ts";
import type { MidiNote, MidiPlayer } from "../../src/playback/midi-types.ts";
import { StandInOutput } from "./midi-stand-ins.ts";

/** General MIDI Level 1 sound set: 57 trumpet, 58 trombone, 66 alto sax, 67 tenor sax. */
const players: readonly MidiPlayer[] = [
  { channelKey: "tpt1", programme: 57 },
  { channelKey: "tbn1", programme: 58 },
  { channelKey: "alto1", programme: 66 },
];
const many = (count: number, programme = (i: number) => 1 + (i % 128)): MidiPlayer[] =>
  Array.from({ length: count }, (_, i) => ({ channelKey: `p${i + 1}`, programme: programme(i) }));
const note = (channelKey: string, midi: number, velocity = 80): MidiNote => ({
  channelKey,
  midi: midi as SoundingMidi,
  velocity,
});

function openOn(line = players): { output: StandInOutput; sender: PortSender } {
  const output = new StandInOutput("module");
  return { output, sender: new PortSender(output as unknown as MIDIOutput, line) };
}

// General MIDI System Level 1: channel 10 is percussion.
describe("giving out channels", () => {
  it("follows the order of the players and skips 10", () => {
    expect([...planChannels(many(15)).channels.values()]).toEqual([
      1, 2, 3, 4, 5, 6, 7, 8, 9, 11, 12, 13, 14, 15, 16,
    ]);
  });

  it("lets players beyond the fifteenth share with their like", () => {
    const line = [...many(15), { channelKey: "late", programme: 4 }];
    expect(planChannels(line).channels.get("late")).toBe(4);
  });

  it("spreads those who share evenly", () => {
    const { channels, programmes } = planChannels(many(30, () => 57));
    for (const channel of programmes.keys())
      expect([...channels.values()].filter((each) => each === channel)).toHaveLength(2);
  });

  it("moves no one when players are added at the end", () => {
    const property = fc.property(fc.nat(40), fc.nat(40), (few, more) => {
      const [before, after] = [planChannels(many(few)), planChannels(many(few + more))];
      for (const [key, channel] of before.channels) expect(after.channels.get(key)).toBe(channel);
      for (const channel of after.channels.values()) {
        expect(channel).not.toBe(10);
        expect(channel >= 1 && channel <= 16).toBe(true);
      }
    });
    fc.assert(property, { seed: 7 });
  });

  it("refuses what no caller should ask", () => {
    expect(() => planChannels([{ channelKey: "x", programme: 0 }])).toThrow(/1 to 128, got 0/);
    expect(() => planChannels([...players, players[0]!])).toThrow(/tpt1 twice/);
  });
});

// Bytes: MIDI 1.0 Detailed Specification (9n note on, 8n note off, Cn programme, Bn 123 all off).
describe("sending a voicing", () => {
  it("chooses the sounds, then starts each player's note on the player's channel", () => {
    const { output, sender } = openOn();
    expect(sender.sound([note("tpt1", 74, 100), note("alto1", 65, 90)]).ok).toBe(true);
    expect(output.sent).toEqual([
      [0xc0, 56],
      [0xc1, 57],
      [0xc2, 65],
      [0x90, 74, 100],
      [0x92, 65, 90],
    ]);
  });

  it("adds the next note of a rolled chord beside those that sound, and ends them all", () => {
    const { output, sender } = openOn();
    sender.sound([note("alto1", 65)]);
    output.sent.length = 0;
    sender.add([note("tpt1", 74, 96)]);
    expect(output.sent).toEqual([[0x90, 74, 96]]);
    sender.add([note("tpt1", 74, 96)]);
    expect(output.sent.slice(1)).toEqual([
      [0x80, 74, 64],
      [0x90, 74, 96],
    ]);
    output.sent.length = 0;
    sender.sound([]);
    expect(output.sent).toEqual([
      [0x82, 65, 64],
      [0x80, 74, 64],
    ]);
  });

  it("ends one voicing before the next and chooses sounds only once", () => {
    const { output, sender } = openOn();
    sender.sound([note("tpt1", 74), note("tbn1", 58)]);
    output.sent.length = 0;
    sender.sound([note("tpt1", 74)]);
    expect(output.sent).toEqual([
      [0x80, 74, 64],
      [0x81, 58, 64],
      [0x90, 74, 80],
    ]);
  });

  it("stops with an end for every note and for every channel", () => {
    const { output, sender } = openOn();
    sender.sound([note("tpt1", 74)]);
    output.sent.length = 0;
    sender.stop();
    expect(output.sent).toEqual([
      [0x80, 74, 64],
      [0xb0, 123, 0],
      [0xb1, 123, 0],
      [0xb2, 123, 0],
    ]);
  });

  it("stops what hangs elsewhere too, when nothing of ours sounds", () => {
    const { output, sender } = openOn();
    sender.stop();
    expect(output.sent).toHaveLength(3);
  });

  it("sends one note where two players share a channel and a pitch, the louder", () => {
    const { output, sender } = openOn(many(16, () => 57));
    sender.sound([note("p1", 60, 50), note("p16", 60, 70), note("p2", 60, 40)]);
    expect(output.sent.filter(([status = 0]) => status >> 4 === 9)).toEqual([
      [0x90, 60, 70],
      [0x91, 60, 40],
    ]);
  });

  it("chooses sounds anew for another line-up, where they differ, and is silent before", () => {
    const { output, sender } = openOn();
    sender.sound([note("tpt1", 74)]);
    sender.setPlayers([players[0]!, { channelKey: "tenor1", programme: 67 }]);
    expect(output.hanging()).toEqual([]);
    output.sent.length = 0;
    sender.sound([note("tenor1", 60)]);
    expect(output.sent).toEqual([
      [0xc1, 66],
      [0x91, 60, 80],
    ]);
    expect(sender.channelOf("tenor1")).toBe(2);
    expect(sender.channelOf("alto1")).toBeUndefined();
  });

  it("says that the device is gone, and chooses sounds anew when it is back", () => {
    const { output, sender } = openOn();
    sender.sound([note("tpt1", 74)]);
    output.state = "disconnected";
    output.dispatchEvent(new Event("statechange"));
    const result = sender.sound([note("tpt1", 74)]);
    expect(!result.ok && result.problem).toMatchObject({
      code: "midi-disconnected",
      message: expect.stringMatching(/^The MIDI device "module" is no longer connected; .*\.$/),
    });
    sender.stop();
    output.state = "connected";
    output.dispatchEvent(new Event("statechange"));
    output.sent.length = 0;
    sender.sound([note("tpt1", 74)]);
    expect(output.sent.map(([status]) => status)).toEqual([0xc0, 0xc1, 0xc2, 0x90]);
  });

  it("refuses an unknown player and an impossible note before anything is sent", () => {
    const { output, sender } = openOn();
    expect(() => sender.sound([note("tpt1", 60), note("tuba1", 40)])).toThrow(/tuba1/);
    expect(() => sender.sound([note("tpt1", 128)])).toThrow(RangeError);
    expect(() => sender.sound([note("tpt1", 60, 0)])).toThrow(/1 to 127, got 0/);
    expect(output.sent).toEqual([]);
  });

  it("is silent for good once disposed of", () => {
    const { output, sender } = openOn();
    sender.sound([note("tpt1", 74)]);
    sender.dispose();
    expect(output.hanging()).toEqual([]);
    const sent = output.sent.length;
    expect(sender.sound([note("tpt1", 74)]).ok).toBe(false);
    sender.stop();
    sender.dispose();
    expect(output.sent).toHaveLength(sent);
  });

  it("leaves no note hanging, whatever is sent and wherever the device fails for a while", () => {
    const line = many(20);
    const anyNote = fc.record({
      channelKey: fc.constantFrom(...line.map(({ channelKey }) => channelKey)),
      midi: fc.integer({ min: 58, max: 62 }).map((midi) => midi as SoundingMidi),
      velocity: fc.integer({ min: 1, max: 127 }),
    });
    const act = fc.oneof(fc.array(anyNote, { maxLength: 25 }), fc.constantFrom("stop", "players"));
    const property = fc.property(fc.array(act), fc.nat(120), (acts, failsAfter) => {
      const { output, sender } = openOn(line);
      output.failsAfter = failsAfter;
      for (const each of acts) {
        if (each === "stop") sender.stop();
        else if (each === "players") sender.setPlayers([...line].reverse());
        else if (typeof each !== "string") sender.sound(each);
      }
      output.failsAfter = Infinity;
      sender.dispose();
      expect(output.hanging()).toEqual([]);
    });
    fc.assert(property, { seed: 7, numRuns: 300 });
  });
});
