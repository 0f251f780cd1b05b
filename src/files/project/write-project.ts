import type { StageSeat } from "../../audio/index.ts";
import type { Player } from "../../band/index.ts";
import type { Inquiry } from "../../explore/index.ts";
import { allRules, type RuleId } from "../../voicing/index.ts";
import { MODEL_VERSION } from "./model-version.ts";
import { PhraseTables } from "./phrase-rows.ts";
import { savedPlayer } from "./player-request.ts";
import type { ProjectFile, SavedInquiry, SavedState } from "./project-schema.ts";
import { Table } from "./table.ts";
import type { Project, ProjectKept, ProjectState } from "./project-types.ts";

/** What is written of a project. */
export interface WriteProjectOptions {
  /** Whether the steps that can be undone and redone go along; not unless given. */
  readonly withHistory?: boolean;
}

/**
 * Writes a project as text. What several steps share is written once.
 * @param project - the project
 * @param options - with or without the undo history
 * @returns JSON of the current format
 * @throws RangeError when a player is none that the band can make
 */
export function writeProject(project: Project, options: WriteProjectOptions = {}): string {
  return JSON.stringify(projectFile(project, options));
}

/**
 * A project as plain data of the current format.
 * @param project - the project
 * @param options - with or without the undo history
 * @returns the data that writeProject prints
 */
export function projectFile(project: Project, options: WriteProjectOptions = {}): ProjectFile {
  const { name, history, settings } = project;
  const { past, present, future } = history;
  const tables = new Tables();
  const { phrase } = tables;
  const states = options.withHistory === true ? [...past, present, ...future] : [present];
  const saved = states.map((state) => savedState(state, tables));
  return {
    format: 2,
    program: "hornweave",
    model: MODEL_VERSION,
    name,
    lineUps: tables.lineUps.rows,
    inquiries: tables.inquiries.rows,
    kept: tables.kept.rows,
    seatings: tables.seatings.rows,
    texts: phrase.texts.rows,
    notes: phrase.notes.rows,
    melodies: phrase.melodies.rows,
    curves: phrase.curves.rows,
    choices: phrase.choices.rows,
    locks: phrase.locks.rows,
    marks: phrase.marks.rows,
    phrases: phrase.phrases.rows,
    states: saved,
    present: options.withHistory === true ? past.length : 0,
    settings: { ...settings },
  };
}

class Tables {
  readonly lineUps = new Table((players: readonly Player[]) =>
    players.map((player) => mutable(savedPlayer(player))),
  );
  readonly inquiries = new Table((inquiry: Inquiry) => savedInquiry(inquiry, this));
  readonly kept = new Table((kept: ProjectKept) => savedKept(kept, this));
  readonly seatings = new Table((seats: readonly StageSeat[]) =>
    seats.map(({ playerId, pan, distanceM }): [string, number, number] => [
      playerId,
      pan,
      distanceM,
    ]),
  );
  readonly phrase = new PhraseTables((players) => this.lineUps.indexOf(players));
}

type Mutable<T> = { -readonly [K in keyof T]: T[K] };
const mutable = (saved: ReturnType<typeof savedPlayer>) => {
  const { range, ...rest } = saved as Mutable<typeof saved>;
  return range === undefined ? rest : { ...rest, range: [...range] as [number, number] };
};

function savedInquiry(inquiry: Inquiry, tables: Tables): SavedInquiry {
  const { toneChoices, rules, locks, leadPlayer, octaveBelowPlayer, octaveAbovePlayer } = inquiry;
  const off = (Object.keys(allRules) as RuleId[]).filter((rule) => !rules[rule]);
  const switches = [
    ...(inquiry.strictLowIntervals ? ["strictLowIntervals" as const] : []),
    ...(inquiry.clusterSetting ? ["clusterSetting" as const] : []),
    ...(inquiry.shortNote ? ["shortNote" as const] : []),
    ...(inquiry.homes ? [] : ["homesOff" as const]),
  ];
  const tones = Object.fromEntries(
    Object.entries(toneChoices).flatMap(([tone, choice]) => (choice ? [[tone, choice]] : [])),
  );
  return {
    chord: inquiry.chordText,
    melody: inquiry.melodyText,
    dynamic: inquiry.dynamic,
    band: inquiry.lineUpName,
    lineUp: tables.lineUps.indexOf(inquiry.players),
    colour: inquiry.colour,
    ...(Object.keys(tones).length > 0 ? { tones } : {}),
    bassSounds: inquiry.bassSounds,
    ...(off.length > 0 ? { rulesOff: off } : {}),
    ...(switches.length > 0 ? { switches } : {}),
    ...(locks.length > 0
      ? { locks: locks.map(({ playerId, sounding }) => ({ player: playerId, at: sounding })) }
      : {}),
    ...(leadPlayer === undefined ? {} : { lead: leadPlayer }),
    ...(octaveBelowPlayer === undefined ? {} : { octaveBelow: octaveBelowPlayer }),
    ...(octaveAbovePlayer === undefined ? {} : { octaveAbove: octaveAbovePlayer }),
  };
}

function savedKept(kept: ProjectKept, tables: Tables): ProjectFile["kept"][number] {
  const { letter, name, note, pitches, inquiry } = kept;
  return {
    letter,
    name,
    ...(note === undefined ? {} : { note }),
    pitches: { ...pitches },
    inquiry: tables.inquiries.indexOf(inquiry),
  };
}

function savedState(state: ProjectState, tables: Tables): SavedState {
  const { layer, sections, place, made, kept, compared, seats, phrase, step } = state;
  return {
    inquiry: tables.inquiries.indexOf(state.inquiry),
    layer,
    ...(sections === null ? {} : { sections: [...sections] }),
    place: [place.span, place.notes, place.players],
    ...(made === null
      ? {}
      : {
          made: {
            by: made.by,
            pitches: { ...made.pitches },
            moved: [...made.moved],
            from: { ...made.from },
            title: made.title,
          },
        }),
    kept: kept.map((each) => tables.kept.indexOf(each)),
    compared: [...compared],
    ...(seats.length > 0 ? { seats: tables.seatings.indexOf(seats) } : {}),
    ...(phrase === null ? {} : { phrase: tables.phrase.phrases.indexOf(phrase) }),
    step,
  };
}
