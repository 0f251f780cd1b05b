import { fail, ok, quantity, type Count, type Result } from "../../base/index.ts";
import type { StageSeat } from "../../audio/index.ts";
import { lineUps, type Player } from "../../band/index.ts";
import { historyLimit, type Inquiry, type PhraseWork } from "../../explore/index.ts";
import { allRules, type RuleSettings } from "../../voicing/index.ts";
import { MODEL_VERSION } from "./model-version.ts";
import { pathText } from "./path-text.ts";
import { phraseOf, phraseParts } from "./phrase-of-rows.ts";
import { rebuiltPlayer, type SavedPlayer } from "./player-request.ts";
import {
  projectSchema,
  type ProjectFile,
  type SavedInquiry,
  type SavedState,
} from "./project-schema.ts";
import type { ProjectKept, ProjectReading, ProjectState } from "./project-types.ts";
import { projectSteps, upgraded } from "./upgrade.ts";

/** Longest project that is read, in characters. */
export const MOST_PROJECT_CHARACTERS: Count = 8_000_000;

/**
 * Reads a project. Its form is checked throughout, players are made anew from the band's tables, and
 * nothing is mended: a damaged file is refused as a whole.
 * @param text - JSON of any format so far
 * @returns the project, or the problem: "project-too-large", "project-not-json", "project-format",
 *   "project-newer", "project-damaged", "project-player"
 */
export function readProject(text: string): Result<ProjectReading> {
  if (text.length > MOST_PROJECT_CHARACTERS)
    return fail(
      "project-too-large",
      `The project is larger than ${MOST_PROJECT_CHARACTERS / 1e6} MB.`,
    );
  const data = parsed(text);
  if (!data.ok) return data;
  const current = upgraded(data.value, projectSteps);
  if (!current.ok) return current;
  const checked = projectSchema.safeParse(current.value);
  if (checked.success) return fromFile(checked.data);
  return damaged(pathText(checked.error.issues[0]?.path ?? []));
}

function parsed(text: string): Result<unknown> {
  try {
    return ok(JSON.parse(text, withoutPrototype) as unknown);
  } catch (fault) {
    if (fault instanceof PrototypeKey) return damaged("__proto__");
    return fail(
      "project-not-json",
      "This file is not a project, or it was cut off: it is no readable JSON.",
    );
  }
}

/** No name of ours; checks pass over it, so it is refused beforehand. */
class PrototypeKey extends Error {}

function withoutPrototype(key: string, value: unknown): unknown {
  if (key === "__proto__") throw new PrototypeKey();
  return value;
}

const damaged = (where: string): Result<never> =>
  fail("project-damaged", `The project is damaged${where === "" ? "" : ` at ${where}`}.`);

function fromFile(file: ProjectFile): Result<ProjectReading> {
  const lineUps = allOf(file.lineUps.map(lineUpFrom));
  if (!lineUps.ok) return lineUps;
  const inquiries = allOf(
    file.inquiries.map((saved, index) => inquiryFrom(saved, lineUps.value, index)),
  );
  if (!inquiries.ok) return inquiries;
  const kept = allOf(file.kept.map((saved, index) => keptFrom(saved, inquiries.value, index)));
  if (!kept.ok) return kept;
  const phrases = phrasesFrom(file, lineUps.value);
  if (!phrases.ok) return phrases;
  const parts: StateParts = {
    inquiries: inquiries.value,
    kept: kept.value,
    seatings: file.seatings.map(seatingFrom),
    phrases: phrases.value,
  };
  const states = allOf(file.states.map((saved, index) => stateFrom(saved, parts, index)));
  if (!states.ok) return states;
  const present = states.value[file.present];
  if (present === undefined) return damaged("present");
  return ok({
    project: {
      name: file.name,
      history: {
        past: states.value.slice(0, file.present),
        present,
        future: states.value.slice(file.present + 1),
        limit: historyLimit,
      },
      settings: file.settings,
    },
    model: file.model,
    hasOtherModel: file.model !== MODEL_VERSION,
  });
}

/** All values, or the first problem. */
function allOf<T>(results: readonly Result<T>[]): Result<readonly T[]> {
  const values: T[] = [];
  for (const result of results) {
    if (!result.ok) return result;
    values.push(result.value);
  }
  return ok(values);
}

function lineUpFrom(saved: ProjectFile["lineUps"][number]): Result<readonly Player[]> {
  const players = allOf(saved.map((each) => rebuiltPlayer(each as SavedPlayer)));
  if (!players.ok) return players;
  const ids = new Set(players.value.map(({ id }) => id));
  if (ids.size < players.value.length)
    return fail("project-player", "The project holds the same player twice in one line-up.");
  return ok(readyLineUp(players.value) ?? players.value);
}

/** The ready line-up with these very players: the page knows it by being the same object. */
function readyLineUp(players: readonly Player[]): readonly Player[] | undefined {
  const text = JSON.stringify(players);
  return lineUps.find((ready) => JSON.stringify(ready.players) === text)?.players;
}

function inquiryFrom(
  saved: SavedInquiry,
  lineUps: readonly (readonly Player[])[],
  index: Count,
): Result<Inquiry> {
  const players = lineUps[saved.lineUp];
  if (players === undefined) return damaged(`inquiries[${index}].lineUp`);
  const { tones = {}, rulesOff = [], switches = [], locks = [] } = saved;
  const rules: RuleSettings = {
    ...allRules,
    ...Object.fromEntries(rulesOff.map((rule) => [rule, false])),
  };
  return ok({
    chordText: saved.chord,
    melodyText: saved.melody,
    dynamic: saved.dynamic,
    lineUpName: saved.band,
    players,
    colour: saved.colour,
    toneChoices: tones,
    bassSounds: saved.bassSounds,
    rules,
    strictLowIntervals: switches.includes("strictLowIntervals"),
    clusterSetting: switches.includes("clusterSetting"),
    shortNote: switches.includes("shortNote"),
    homes: !switches.includes("homesOff"),
    locks: locks.map(({ player, at }) => ({
      playerId: player,
      sounding: at === "rest" ? at : quantity(at),
    })),
    ...(saved.lead === undefined ? {} : { leadPlayer: saved.lead }),
    ...(saved.octaveBelow === undefined ? {} : { octaveBelowPlayer: saved.octaveBelow }),
    ...(saved.octaveAbove === undefined ? {} : { octaveAbovePlayer: saved.octaveAbove }),
  });
}

function keptFrom(
  saved: ProjectFile["kept"][number],
  inquiries: readonly Inquiry[],
  index: Count,
): Result<ProjectKept> {
  const inquiry = inquiries[saved.inquiry];
  if (inquiry === undefined) return damaged(`kept[${index}].inquiry`);
  const { letter, name, note, pitches } = saved;
  return ok({ letter, name, ...(note === undefined ? {} : { note }), pitches, inquiry });
}

/** What the steps share, made anew once each. */
interface StateParts {
  readonly inquiries: readonly Inquiry[];
  readonly kept: readonly ProjectKept[];
  readonly seatings: readonly (readonly StageSeat[])[];
  readonly phrases: readonly PhraseWork[];
}

function seatingFrom(saved: ProjectFile["seatings"][number]): readonly StageSeat[] {
  return saved.map(([playerId, pan, distanceM]) => ({ playerId, pan, distanceM }));
}

function phrasesFrom(
  file: ProjectFile,
  lineUps: readonly (readonly Player[])[],
): Result<readonly PhraseWork[]> {
  const parts = phraseParts(file);
  const lost = parts.melodies.findIndex((melody) => melody === undefined);
  if (lost >= 0) return damaged(`melodies[${lost}].notes`);
  return allOf(
    file.phrases.map((row, index) => {
      const work = phraseOf(row, parts, lineUps);
      return work ? ok(work) : damaged(`phrases[${index}]`);
    }),
  );
}

const noSeats: readonly StageSeat[] = Object.freeze([]);

function stateFrom(saved: SavedState, parts: StateParts, index: Count): Result<ProjectState> {
  const inquiry = parts.inquiries[saved.inquiry];
  if (inquiry === undefined) return damaged(`states[${index}].inquiry`);
  const kept = saved.kept.flatMap((at) => parts.kept[at] ?? []);
  if (kept.length < saved.kept.length) return damaged(`states[${index}].kept`);
  const seats = saved.seats === undefined ? noSeats : parts.seatings[saved.seats];
  if (seats === undefined) return damaged(`states[${index}].seats`);
  const phrase = saved.phrase === undefined ? null : parts.phrases[saved.phrase];
  if (phrase === undefined) return damaged(`states[${index}].phrase`);
  const [span, notes, players] = saved.place;
  return ok({
    inquiry,
    layer: saved.layer,
    sections: saved.sections ?? null,
    place: { span, notes, players },
    made: saved.made ?? null,
    kept,
    compared: saved.compared,
    seats,
    phrase,
    step: saved.step,
  });
}
