import { fail, ok, quantity, type Count, type Result } from "../../base/index.ts";
import type { Player } from "../../band/index.ts";
import { historyLimit, type Inquiry } from "../../explore/index.ts";
import { allRules, type RuleSettings } from "../../voicing/index.ts";
import { MODEL_VERSION } from "./model-version.ts";
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
const MOST_PROJECT_CHARACTERS: Count = 8_000_000;

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

/** "inquiries[0].dynamic" */
function pathText(path: readonly PropertyKey[]): string {
  return path
    .map((part) => (typeof part === "number" ? `[${part}]` : `.${String(part).slice(0, 40)}`))
    .join("")
    .replace(/^\./, "");
}

function fromFile(file: ProjectFile): Result<ProjectReading> {
  const lineUps = allOf(file.lineUps.map(lineUpFrom));
  if (!lineUps.ok) return lineUps;
  const inquiries = allOf(
    file.inquiries.map((saved, index) => inquiryFrom(saved, lineUps.value, index)),
  );
  if (!inquiries.ok) return inquiries;
  const kept = allOf(file.kept.map((saved, index) => keptFrom(saved, inquiries.value, index)));
  if (!kept.ok) return kept;
  const states = allOf(
    file.states.map((saved, index) => stateFrom(saved, inquiries.value, kept.value, index)),
  );
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
  return players;
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

function stateFrom(
  saved: SavedState,
  inquiries: readonly Inquiry[],
  allKept: readonly ProjectKept[],
  index: Count,
): Result<ProjectState> {
  const inquiry = inquiries[saved.inquiry];
  if (inquiry === undefined) return damaged(`states[${index}].inquiry`);
  const kept = saved.kept.flatMap((at) => allKept[at] ?? []);
  if (kept.length < saved.kept.length) return damaged(`states[${index}].kept`);
  const [span, notes, players] = saved.place;
  return ok({
    inquiry,
    layer: saved.layer,
    sections: saved.sections ?? null,
    place: { span, notes, players },
    made: saved.made ?? null,
    kept,
    compared: saved.compared,
    step: saved.step,
  });
}
