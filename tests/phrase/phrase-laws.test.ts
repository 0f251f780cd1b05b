// Laws of every voiced phrase, over random melodies, line-ups, shapes, turns and locks. Covers
// src/phrase/search-phrase.ts, src/phrase/read-phrase.ts and src/phrase/parts.ts.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { quantity, type SoundingMidi } from "../../src/base/index.ts";
import { canSound } from "../../src/band/index.ts";
import { performPhrase } from "../../src/phrase/perform-phrase.ts";
import type { NoteLock, Phrase, PhraseAnswer } from "../../src/phrase/phrase-types.ts";
import { readPhrase } from "../../src/phrase/read-phrase.ts";
import { texturePlan } from "../../src/phrase/texture-presets.ts";
import { texturePresets } from "../../src/phrase/texture-preset-table.ts";
import { playsAt, type Turn } from "../../src/phrase/who-plays.ts";
import { spelledToMidi } from "../../src/theory/index.ts";
import { brokenRules, voicingOf } from "../../src/voicing/index.ts";
import { playersOf, questionOf, solved } from "./support/phrases.ts";
import { randomMelodies } from "./support/random-melodies.ts";

interface Draft {
  readonly phrase: Phrase;
  readonly turns: readonly Turn[];
  readonly locks: readonly NoteLock[];
}

const drafts = fc
  .record({
    melody: randomMelodies,
    lineUp: fc.constantFrom("three-horn", "four-horn", "six-horn"),
    shape: fc.constantFrom(...texturePresets.map(({ id }) => id)),
    colour: fc.constantFrom("plain", "tensions", "altered" as const),
    breaths: fc.boolean(),
    bassSounds: fc.boolean(),
    turn: fc.record({ who: fc.nat(5), from: fc.nat(9), length: fc.integer({ min: 1, max: 9 }) }),
    lock: fc.record({ who: fc.nat(5), moment: fc.nat(30), pitch: fc.integer({ min: -6, max: 6 }) }),
    leads: fc.boolean(),
  })
  .map(({ melody, lineUp, shape, turn, lock, leads, ...more }): Draft | undefined => {
    const players = playersOf(lineUp);
    const plan = texturePlan(shape, melody, players);
    const share = (tenths: number): Turn["from"] =>
      quantity(Math.floor((melody.length * tenths) / 10));
    const turns: readonly Turn[] = [
      ...plan.turns,
      {
        who: players[turn.who % players.length]!.id,
        from: share(turn.from),
        to: share(turn.from + turn.length),
        plays: false,
      },
    ];
    const asked = questionOf(melody, {
      players,
      curves: plan.curves,
      turns,
      colour: more.colour,
      breaths: more.breaths,
      bassSounds: more.bassSounds,
      ...(leads ? { leadPlayer: players[0]!.id } : {}),
    });
    const free = readPhrase(asked);
    if (!free.ok) return undefined;
    const { moments } = free.value;
    const { moment } = moments[lock.moment % moments.length]!;
    const player = players[lock.who % players.length]!;
    const tone = moment.chord.tones[0];
    const middle = Math.round((player.range.low + player.range.high) / 2) + lock.pitch;
    const sounding = tone
      ? quantity<SoundingMidi>(middle + ((tone.pitchClass - middle) % 12))
      : "rest";
    const isPlayable =
      sounding === "rest" || (canSound(player, sounding) && sounding < moment.lead);
    const locks: readonly NoteLock[] = [
      { momentId: moment.id, playerId: player.id, sounding: isPlayable ? sounding : "rest" },
    ];
    const read = readPhrase({ ...asked, locks: { notes: locks, moments: [] } });
    return read.ok ? { phrase: read.value, turns, locks } : undefined;
  });

const leavesNoRoom = ({ remarks }: PhraseAnswer, id: string): boolean =>
  remarks.some(({ momentId, text }) => momentId === id && text.startsWith("What is fixed here"));

const holding = (check: (draft: Draft, answer: PhraseAnswer) => void, numRuns: number): void => {
  let checked = 0;
  fc.assert(
    fc.property(drafts, (draft) => {
      if (draft === undefined) return;
      checked += 1;
      check(draft, solved(draft.phrase).answer);
    }),
    { seed: 7, numRuns },
  );
  // Most of what is drawn can be voiced.
  expect(checked).toBeGreaterThan(numRuns / 2);
};

describe("whatever is asked", () => {
  it("no player leaves the range, no rule that is on is broken, locks and turns hold", () => {
    holding(({ phrase, turns, locks }, answer) => {
      answer.moments.forEach(({ pitches, moment }, index) => {
        const { question } = phrase.moments[index]!;
        phrase.players.forEach((player, p) => {
          const pitch = pitches[p]!;
          if (pitch === 0) return;
          expect(canSound(player, quantity<SoundingMidi>(pitch))).toBe(true);
          const isLocked = locks.some(
            (lock) => lock.momentId === moment.id && lock.playerId === player.id,
          );
          const isCalledIn = answer.remarks.some(
            ({ momentId, text }) => momentId === moment.id && text.startsWith("Nobody whose turn"),
          );
          if (!isLocked && !isCalledIn) expect(playsAt(player, moment.onset, turns)).toBe(true);
        });
        for (const { momentId, playerId, sounding } of locks) {
          if (momentId !== moment.id) continue;
          const p = phrase.players.findIndex(({ id }) => id === playerId);
          expect(pitches[p]).toBe(sounding === "rest" ? 0 : sounding);
        }
        expect(Math.max(...pitches)).toBe(moment.lead);
        if (leavesNoRoom(answer, moment.id)) return;
        const cell = {
          key: { span: 0, notes: 0, players: 0 },
          cost: 0,
          chairCost: 0,
          pitches,
          family: "harmony",
        } as const;
        expect(brokenRules(voicingOf(question, cell), question)).toEqual([]);
      });
    }, 60);
  });

  it("every part is a line that can be read: one note at a time, in order, no double accidentals", () => {
    holding(({ phrase }, answer) => {
      const { parts, seconds, played } = performPhrase(phrase, answer);
      for (const { notes } of parts) {
        let free = 0;
        for (const { onset, duration, pitch, sounding } of notes) {
          // None of the melodies drawn has one.
          expect(Math.abs(pitch.alteration)).toBeLessThanOrEqual(1);
          expect(spelledToMidi(pitch)).toBe(sounding);
          expect(onset).toBeGreaterThanOrEqual(free);
          expect(duration).toBeGreaterThan(0);
          free = onset + duration;
        }
        expect(free).toBeLessThanOrEqual(phrase.melody.length);
      }
      for (const { onset, duration } of played) {
        expect(onset).toBeGreaterThanOrEqual(0);
        expect(duration).toBeGreaterThan(0);
        expect(onset + duration).toBeLessThanOrEqual(seconds + 0.15);
      }
    }, 30);
  });
});
