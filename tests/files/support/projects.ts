import fc from "fast-check";
import {
  dynamics,
  instruments,
  lineUps,
  makePlayer,
  seatIds,
  withInstrument,
  withLevel,
  withMute,
  withPersonalRange,
  type MuteId,
  type Player,
} from "../../../src/band/index.ts";
import { quantity, type Result } from "../../../src/base/index.ts";
import { createHistory, firstInquiry, record, type Inquiry } from "../../../src/explore/index.ts";
import type { Project, ProjectKept, ProjectState } from "../../../src/files/index.ts";
import { allRules, type RuleId } from "../../../src/voicing/index.ts";

/** A question that uses every field. */
export const richInquiry: Inquiry = {
  ...firstInquiry(),
  chordText: "  B♭7(♭9) ",
  melodyText: "not yet",
  dynamic: "mp",
  lineUpName: "my band",
  players: [
    makePlayer({ seat: "tpt1", mute: "cup" }),
    makePlayer({ seat: "tpt2", level: "semi-pro", personalRange: range(55, 81) }),
    makePlayer({ seat: "alto2", instrument: "flute" }),
    makePlayer({ seat: "flugel1", id: "flugel2" }),
  ],
  colour: "altered",
  toneChoices: { 1: "required", 7: "off" },
  bassSounds: false,
  rules: { ...allRules, H6: false, H5b: false },
  strictLowIntervals: true,
  clusterSetting: true,
  shortNote: true,
  homes: false,
  locks: [
    { playerId: "tpt1", sounding: quantity(74) },
    { playerId: "alto2", sounding: "rest" },
  ],
  leadPlayer: "tpt1",
  octaveBelowPlayer: "tpt2",
  octaveAbovePlayer: "flugel2",
};

function range(low: number, high: number) {
  return {
    low: quantity<Player["range"]["low"]>(low),
    high: quantity<Player["range"]["low"]>(high),
  };
}

/** A step of work with a kept voicing. */
export function stateOf(inquiry: Inquiry, more: Partial<ProjectState> = {}): ProjectState {
  return {
    inquiry,
    layer: "free",
    sections: null,
    place: { span: 33, notes: 6, players: 13 },
    made: null,
    kept: [],
    compared: [],
    seats: [],
    phrase: null,
    step: "start",
    ...more,
  };
}

const keptA: ProjectKept = {
  letter: "A",
  name: "wide, open top",
  note: "for the last chorus",
  pitches: { tpt1: 74, alto1: 69, bari: 41 },
  inquiry: firstInquiry(),
};

/** A project with steps to undo and redo. */
export const sampleProject: Project = (() => {
  const first = stateOf(keptA.inquiry);
  const second = stateOf(keptA.inquiry, { kept: [keptA], compared: ["A"], step: "keep A" });
  const third = stateOf(richInquiry, {
    kept: [keptA],
    layer: "crossed",
    sections: ["saxes", "trumpets"],
    made: {
      by: "hand",
      pitches: { tpt1: 74, tpt2: 70 },
      moved: ["tpt2"],
      from: { tpt1: 74, tpt2: 69 },
      title: "by hand",
    },
    step: "Tpt 2 to B♭4",
  });
  const history = record(record(createHistory(first), second), third);
  return {
    name: "Test project, act 2",
    history: { ...history, future: [second] },
    settings: { shade: "weight", large: true, zoom: 1.5 },
  };
})();

const orKeep = (player: Player, changed: Result<Player>): Player =>
  changed.ok ? changed.value : player;
const muteIds: readonly MuteId[] = ["open", "cup", "straight", "harmon", "plunger", "bucket"];

/** Players as the line-up editor can make them: doubles, mutes, levels, limits, one after another. */
const players: fc.Arbitrary<Player> = fc
  .tuple(
    fc.constantFrom(...seatIds),
    fc.array(
      fc.oneof(
        fc.constantFrom(...instruments).map(
          ({ id }) =>
            (p: Player) =>
              orKeep(p, withInstrument(p, id)),
        ),
        fc.constantFrom(...muteIds).map((mute) => (p: Player) => orKeep(p, withMute(p, mute))),
        fc
          .constantFrom("school", "semi-pro", "pro" as const)
          .map((level) => (p: Player) => orKeep(p, withLevel(p, level as Player["level"]))),
        fc.tuple(fc.integer({ min: 30, max: 60 }), fc.integer({ min: 61, max: 90 })).map(
          ([low, high]) =>
            (p: Player) =>
              orKeep(p, withPersonalRange(p, range(low, high))),
        ),
      ),
      { maxLength: 4 },
    ),
  )
  .map(([seat, edits]) => edits.reduce((player, edit) => edit(player), makePlayer({ seat })));

const inquiries: fc.Arbitrary<Inquiry> = fc
  .record({
    chordText: fc.string({ unit: "grapheme", maxLength: 20 }),
    melodyText: fc.string({ maxLength: 5 }),
    dynamic: fc.constantFrom(...dynamics),
    players: fc.oneof(
      fc.constantFrom(...lineUps).map((lineUp) => lineUp.players),
      fc.uniqueArray(players, { selector: ({ id }) => id, maxLength: 8 }),
    ),
    rulesOff: fc.subarray(Object.keys(allRules) as RuleId[]),
    homes: fc.boolean(),
    bassSounds: fc.boolean(),
  })
  .map(({ rulesOff, ...rest }) => ({
    ...firstInquiry(),
    ...rest,
    rules: { ...allRules, ...Object.fromEntries(rulesOff.map((rule) => [rule, false])) },
  }));

/** Projects of a few steps. */
export const projects: fc.Arbitrary<Project> = fc
  .record({
    name: fc.string({ unit: "grapheme", maxLength: 40 }),
    states: fc.array(
      fc.record({ inquiry: inquiries, place: fc.nat(40), kept: fc.boolean(), made: fc.boolean() }),
      { minLength: 1, maxLength: 4 },
    ),
    undone: fc.nat(3),
  })
  .map(({ name, states, undone }) => {
    const all = states.map(({ inquiry, place, kept, made }) => {
      const pitches = Object.fromEntries(inquiry.players.map(({ id, range: r }) => [id, r.low]));
      return stateOf(inquiry, {
        place: { span: place, notes: 3, players: 3 },
        kept: kept ? [{ letter: "A", name, pitches, inquiry }] : [],
        made: made ? { by: "book", pitches, moved: [], from: pitches, title: "A" } : null,
      });
    });
    const at = Math.max(0, all.length - 1 - undone);
    const history = {
      past: all.slice(0, at),
      present: all[at]!,
      future: all.slice(at + 1),
      limit: 1000,
    };
    return { name, history, settings: {} };
  });
