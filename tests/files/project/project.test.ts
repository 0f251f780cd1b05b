import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lineUps, makePlayer } from "../../../src/band/index.ts";
import { createHistory, readInquiry } from "../../../src/explore/index.ts";
import { MODEL_VERSION } from "../../../src/files/project/model-version.ts";
import { rebuiltPlayer, savedPlayer } from "../../../src/files/project/player-request.ts";
import type { Project, ProjectReading } from "../../../src/files/project/project-types.ts";
import { readProject } from "../../../src/files/project/read-project.ts";
import { projectSteps, upgraded } from "../../../src/files/project/upgrade.ts";
import { projectFile, writeProject } from "../../../src/files/project/write-project.ts";
import { projects, richInquiry, sampleProject, stateOf } from "../support/projects.ts";

function read(text: string): ProjectReading {
  const project = readProject(text);
  if (!project.ok) throw new Error(project.problem.message);
  return project.value;
}

const withHistory = { withHistory: true };
const sample = new URL("../../golden/files/project-1.json", import.meta.url);

describe("a project file", () => {
  it("comes back with everything, undo and redo included", () => {
    expect(read(writeProject(sampleProject, withHistory))).toEqual({
      project: sampleProject,
      model: MODEL_VERSION,
      hasOtherModel: false,
    });
  });

  it("without history holds the present only", () => {
    const { present } = sampleProject.history;
    const { project } = read(writeProject(sampleProject));
    expect(project.history).toEqual(createHistory(present));
  });

  it("comes back exactly for random projects, whatever the line-up editor did", () => {
    fc.assert(
      fc.property(projects, (project) => {
        expect(read(writeProject(project, withHistory)).project).toEqual(project);
      }),
      { seed: 7, numRuns: 150 },
    );
  });

  it("keeps players and questions shared between steps one and the same object", () => {
    const { past, present, future } = read(writeProject(sampleProject, withHistory)).project
      .history;
    expect(past[0]!.inquiry).toBe(past[1]!.inquiry);
    expect(past[1]!.kept[0]).toBe(present.kept[0]);
    expect(present.kept[0]!.inquiry.players).toBe(future[0]!.inquiry.players);
  });

  it("has a ready line-up again as the very one that the page offers", () => {
    for (const { players } of lineUps) {
      const present = stateOf({ ...richInquiry, players });
      const { project } = read(writeProject({ ...sampleProject, history: createHistory(present) }));
      expect(project.history.present.inquiry.players).toBe(players);
    }
  });

  it("of a thousand steps stays small: what steps share is written once", () => {
    const { history } = sampleProject;
    const steps = Array.from({ length: 1000 }, (_, index) => ({
      ...history.past[1]!,
      place: { span: index % 60, notes: 5, players: 13 },
    }));
    const long: Project = { ...sampleProject, history: { ...history, past: steps, future: [] } };
    const text = writeProject(long, withHistory);
    expect(text.length).toBeLessThan(200_000);
    expect(read(text).project).toEqual(long);
  });

  it("can be asked again as it stands", () => {
    const { project } = read(writeProject(sampleProject, withHistory));
    expect(readInquiry(project.history.past[0]!.inquiry)).toMatchObject({ ok: true });
  });

  it("says when it was saved with another cost model, and keeps the notes", () => {
    const older = { ...projectFile(sampleProject), model: MODEL_VERSION + 1 };
    const { hasOtherModel, project } = read(JSON.stringify(older));
    expect(hasOtherModel).toBe(true);
    expect(project.history.present.kept).toEqual(sampleProject.history.present.kept);
  });
});

describe("format numbers", () => {
  it("the sample of format 1 is read as it was written", () => {
    expect(read(readFileSync(sample, "utf8")).project).toEqual(sampleProject);
  });

  it("there is a step for every format but the current one", () => {
    expect(projectFile(sampleProject).format).toBe(projectSteps.length + 1);
  });

  it("old data goes up step by step, each step once, newer data is refused", () => {
    const steps = [
      (data: Readonly<Record<string, unknown>>) => ({ ...data, title: data["name"] }),
      (data: Readonly<Record<string, unknown>>) => ({ ...data, titles: [data["title"]] }),
    ];
    expect(upgraded({ format: 1, name: "x" }, steps)).toEqual({
      ok: true,
      value: { format: 3, name: "x", title: "x", titles: ["x"] },
    });
    expect(upgraded({ format: 2, title: "y" }, steps)).toEqual({
      ok: true,
      value: { format: 3, title: "y", titles: ["y"] },
    });
    expect(upgraded({ format: 3, a: 1 }, steps)).toEqual({ ok: true, value: { format: 3, a: 1 } });
    expect(upgraded({ format: 4 }, steps)).toMatchObject({ problem: { code: "project-newer" } });
    for (const none of [null, 5, "x", [], {}, { format: "1" }, { format: 0 }])
      expect(upgraded(none, steps)).toMatchObject({ problem: { code: "project-format" } });
  });
});

describe("hostile or damaged files", () => {
  const file = projectFile(sampleProject, withHistory);
  const problemOf = (text: string) => {
    const project = readProject(text);
    if (project.ok) throw new Error("was read");
    return project.problem;
  };
  type Path = readonly (string | number)[];
  /** The file with one value exchanged. */
  const changed = (path: Path, value: unknown): string => {
    const replaced = (data: unknown, [key, ...rest]: Path): unknown => {
      if (key === undefined) return value;
      if (Array.isArray(data))
        return data.map((each, index) =>
          index === key ? replaced(each, rest) : (each as unknown),
        );
      const fields = data as Readonly<Record<string, unknown>>;
      return { ...fields, [key]: replaced(fields[key], rest) };
    };
    return JSON.stringify(replaced(file, path));
  };
  const firstPlayer: Path = ["lineUps", 0, 0];

  it("are refused in one sentence when they are no JSON, cut off or too large", () => {
    const text = writeProject(sampleProject);
    expect(problemOf("")).toMatchObject({ code: "project-not-json" });
    expect(problemOf(text.slice(0, -5))).toMatchObject({ code: "project-not-json" });
    expect(problemOf("[".repeat(1_000_000)).code).toMatch(/^project-(not-json|format)$/);
    expect(problemOf(" ".repeat(8_000_001)).code).toBe("project-too-large");
    expect(problemOf("{}").message).toMatch(/^[A-Z][^\n]*\.$/);
  });

  it.each<[string, string, Path, unknown]>([
    ["a field nobody knows", "project", ["extra"], 1],
    ["a dynamic that is none", "inquiries[0].dynamic", ["inquiries", 0, "dynamic"], "loud"],
    ["a note beyond MIDI", "kept[0].pitches.tpt1", ["kept", 0, "pitches", "tpt1"], 128],
    ["a broken reference", "kept[0].inquiry", ["kept", 0, "inquiry"], 99],
    ["a present that is not there", "present", ["present"], 99],
    ["no step at all", "states", ["states"], []],
    ["a name of a megabyte", "name", ["name"], "x".repeat(1e6)],
    [
      "25 players",
      "lineUps[0]",
      ["lineUps", 0],
      Array.from({ length: 25 }, () => ({ seat: "tpt1" })),
    ],
  ])("are refused for %s, naming the place", (_, where, path, value) => {
    const { code, message } = problemOf(changed(path, value));
    expect(code).toBe("project-damaged");
    expect(message).toContain(where);
  });

  it("cannot smuggle in a range the band would not give", () => {
    const withRange = (low: number, high: number) =>
      changed([...firstPlayer, "range"], [low, high]);
    expect(problemOf(withRange(0, 20)).code).toBe("project-player");
    const [player] = read(withRange(0, 127)).project.history.past[0]!.inquiry.players;
    expect(player!.range).toEqual(makePlayer({ seat: "tpt1" }).range);
    const easy = changed([...firstPlayer, "easyRange"], [0, 127]);
    expect(problemOf(easy).code).toBe("project-damaged");
  });

  it("cannot give a player a mute the instrument does not take, or one player twice", () => {
    const muted = changed(["lineUps", 0, 8, "mute"], "cup");
    expect(problemOf(muted).code).toBe("project-player");
    const twice = changed(["lineUps", 0, 1], { seat: "tpt1" });
    expect(problemOf(twice).code).toBe("project-player");
  });

  it("cannot reach the prototype of anything", () => {
    const text = writeProject(sampleProject).replace('"pitches":{', '"pitches":{"__proto__":60,');
    expect(problemOf(text).code).toBe("project-damaged");
    const proto = writeProject(sampleProject).replace('{"format"', '{"__proto__":{"x":1},"format"');
    expect(problemOf(proto).code).toBe("project-damaged");
    expect(({} as Record<string, unknown>)["x"]).toBeUndefined();
  });

  it("never make it throw, whatever one value is", () => {
    const paths: readonly Path[] = [
      ["name"],
      ["model"],
      ["lineUps"],
      ["inquiries", 0],
      ["states", 0, "place"],
      ["kept", 0, "letter"],
      ["settings"],
    ];
    fc.assert(
      fc.property(fc.constantFrom(...paths), fc.jsonValue(), (path, value) => {
        expect(typeof readProject(changed(path, value)).ok).toBe("boolean");
      }),
      { seed: 7, numRuns: 500 },
    );
  });
});

describe("a player in a file", () => {
  it("is a chair and what differs from it", () => {
    expect(savedPlayer(makePlayer({ seat: "tpt1" }))).toEqual({ seat: "tpt1" });
    expect(richInquiry.players.map(savedPlayer)).toEqual([
      { seat: "tpt1", mute: "cup" },
      { seat: "tpt2", level: "semi-pro", range: [55, 81] },
      { seat: "alto2", instrument: "flute" },
      { seat: "flugel1", id: "flugel2" },
    ]);
  });

  it("comes back the same", () => {
    for (const player of richInquiry.players)
      expect(rebuiltPlayer(savedPlayer(player))).toEqual({ ok: true, value: player });
  });

  it("must be one the band can make", () => {
    const player = { ...makePlayer({ seat: "tpt1" }), name: "Somebody" };
    expect(() => savedPlayer(player)).toThrow(RangeError);
    const state = stateOf({ ...richInquiry, players: [player] });
    const project = { ...sampleProject, history: createHistory(state) };
    expect(() => writeProject(project)).toThrow(RangeError);
  });
});
