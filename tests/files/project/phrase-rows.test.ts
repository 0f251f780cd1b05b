// Covers src/files/project/phrase-rows.ts, phrase-of-rows.ts, phrase-schema.ts, schema-parts.ts,
// table.ts, fit-project.ts and path-text.ts.
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, expectTypeOf, it } from "vitest";
import { createHistory, type PhraseWork } from "../../../src/explore/index.ts";
import type { Project, ProjectState } from "../../../src/files/index.ts";
import { fitProject } from "../../../src/files/project/fit-project.ts";
import { readProject } from "../../../src/files/project/read-project.ts";
import { readShareLink, writeShareLink } from "../../../src/files/project/share-link.ts";
import { projectFile, writeProject } from "../../../src/files/project/write-project.ts";
import { readPhrase } from "../../../src/phrase/index.ts";
import type { Session } from "../../../src/ui/state/session.ts";
import { demoWork, phraseProject, phraseWorks, richPhrase } from "../support/phrases.ts";
import { richInquiry, sampleProject, stateOf } from "../support/projects.ts";

const withHistory = { withHistory: true };
const sample = new URL("../../golden/files/project-2.json", import.meta.url);

function read(text: string): Project {
  const project = readProject(text);
  if (!project.ok) throw new Error(project.problem.message);
  return project.value.project;
}

const projectOf = (states: readonly ProjectState[]): Project => ({
  name: "phrases",
  history: { ...createHistory(states.at(-1)!), past: states.slice(0, -1) },
  settings: {},
});

describe("phrases and chairs in a project", () => {
  it("a step of a project and a step of the page hold the same, so that nothing is lost between", () => {
    expectTypeOf<Session>().toEqualTypeOf<ProjectState>();
  });

  it("come back with every field", () => {
    expect(read(writeProject(phraseProject, withHistory))).toEqual(phraseProject);
  });

  it("come back exactly whatever was chosen, locked and drawn", () => {
    fc.assert(
      fc.property(fc.array(phraseWorks, { minLength: 1, maxLength: 3 }), (works) => {
        const project = projectOf(works.map((phrase) => stateOf(richInquiry, { phrase })));
        expect(read(writeProject(project, withHistory))).toEqual(project);
      }),
      { seed: 7, numRuns: 100 },
    );
  });

  it("travel in a share link", () => {
    const written = writeShareLink(phraseProject);
    const link = readShareLink(written.ok ? written.value : "");
    expect(link).toMatchObject({ ok: true });
    expect(link.ok && link.value.project.history.present).toEqual(phraseProject.history.present);
  });

  it("can be asked again as they stand", () => {
    const { past } = read(writeProject(phraseProject, withHistory)).history;
    expect(readPhrase(past[0]!.phrase!.question)).toMatchObject({ ok: true });
  });

  it("are written as the sample of format 2 has it, and the sample is read as it was written", async () => {
    const text = `${JSON.stringify(projectFile(phraseProject, withHistory), null, 1)}\n`;
    await expect(text).toMatchFileSnapshot("../../golden/files/project-2.json");
    expect(read(readFileSync(sample, "utf8"))).toEqual(phraseProject);
  });
});

describe("what steps share", () => {
  const steps = (count: number, change: (index: number) => Partial<PhraseWork>) =>
    Array.from({ length: count }, (_, index) =>
      stateOf(richInquiry, { phrase: { ...demoWork, ...change(index) }, step: "a step" }),
    );

  it("is written once: a phrase in a thousand steps costs little more than in one", () => {
    const { question } = demoWork;
    const states = steps(1000, (index) => ({
      question: {
        ...question,
        choices: { n1: { texture: "unison" } },
        turns: [
          {
            who: "saxes",
            from: question.melody.pickup,
            to: question.melody.length,
            plays: index % 2 === 0,
          },
        ],
      },
    }));
    const text = writeProject(projectOf(states), withHistory);
    expect(text.length).toBeLessThan(200_000);
    expect(read(text)).toEqual(projectOf(states));
  });

  it("is found again by what it holds: a melody that was read anew shares its notes", () => {
    const states = steps(300, (index) => ({
      typed: "the same",
      question: {
        ...demoWork.question,
        melody: { ...structuredClone(demoWork.question.melody), title: `take ${index % 7}` },
      },
    }));
    const file = projectFile(projectOf(states), withHistory);
    expect(file.notes).toHaveLength(demoWork.question.melody.notes.length);
    expect(file.melodies).toHaveLength(7);
    expect(file.lineUps).toHaveLength(2);
  });

  it("is one and the same object again after reading", () => {
    const { history } = read(writeProject(projectOf(steps(3, () => ({}))), withHistory));
    expect(history.past[0]!.phrase).toBe(history.present.phrase);
  });
});

describe("hostile phrases", () => {
  const file = projectFile(phraseProject, withHistory);
  const problemWith = (change: object): string => {
    const project = readProject(JSON.stringify({ ...file, ...change }));
    return project.ok ? "read" : `${project.problem.code}: ${project.problem.message}`;
  };
  const melody = file.melodies[0]!;
  const phrase = file.phrases[0]!;

  it("are the sample when nothing is changed", () => expect(problemWith({})).toBe("read"));

  it.each<[string, string, object]>([
    [
      "a melody of a billion empty bars",
      "melodies[0]",
      { melodies: [{ ...melody, division: 1, length: 1e9 }] },
    ],
    [
      "3000 notes in a melody",
      "melodies[0].notes",
      { melodies: [{ ...melody, notes: Array.from({ length: 3000 }, () => 0) }] },
    ],
    ["notes that are not there", "melodies[0].notes", { melodies: [{ ...melody, notes: [9999] }] }],
    ["a metre of nothing", "melodies[0].metre[1]", { melodies: [{ ...melody, metre: [4, 0] }] }],
    ["a pickup of a bar and more", "melodies[0]", { melodies: [{ ...melody, pickup: 1000 }] }],
    [
      "a bar that is not whole",
      "melodies[0]",
      { melodies: [{ ...melody, division: 1, metre: [1, 32] }] },
    ],
    ["a curve without a point", "curves[0].span", { curves: [{ ...file.curves[0]!, span: [] }] }],
    [
      "a curve to infinity",
      "curves[0].span[0][1]",
      { curves: [{ ...file.curves[0]!, span: [[0, 1e308]] }] },
    ],
    ["a melody that is not there", "phrases[0]", { phrases: [{ ...phrase, melody: 77 }] }],
    [
      "a technique nobody knows",
      "choices[0].n1.technique",
      { choices: [{ n1: { technique: "eval" } }] },
    ],
    [
      "a name that every object has",
      "choices[0]",
      { choices: [{ constructor: { role: "target" } }] },
    ],
    [
      "a player with such a name",
      "kept[0].pitches",
      { kept: [{ letter: "A", name: "", pitches: { constructor: 60 }, inquiry: 0 }] },
    ],
    ["a text of a megabyte", "texts[0]", { texts: ["x".repeat(1_000_000)] }],
    ["a chair out in the street", "seatings[0][0][2]", { seatings: [[["tpt1", 0, 1000]]] }],
    [
      "a note nobody can spell",
      "notes[0].letter",
      { notes: [{ id: "n1", at: 0, for: 1, letter: "H", octave: 4 }] },
    ],
  ])("are refused for %s, naming the place", (_, where, change) => {
    const problem = problemWith(change);
    expect(problem).toMatch(/^project-damaged/);
    expect(problem).toContain(where);
  });
});

describe("a project that is too large to be read again", () => {
  it("is written whole while it fits", () => {
    const fitted = fitProject(phraseProject);
    expect(fitted).toEqual({
      ok: true,
      value: { text: writeProject(phraseProject, withHistory), stepsLeftOut: 0 },
    });
  });

  it("loses its farthest steps, never the present, and says how many", () => {
    const states = Array.from({ length: 400 }, (_, index) =>
      stateOf(richInquiry, { phrase: { ...richPhrase, typed: `${index}${"x".repeat(49_000)}` } }),
    );
    const fitted = fitProject(projectOf(states));
    if (!fitted.ok) throw new Error(fitted.problem.message);
    const { history } = read(fitted.value.text);
    expect(history.present).toEqual(states.at(-1));
    expect(history.past.length).toBeGreaterThan(90);
    expect(history.past).toEqual(states.slice(0, -1).slice(-history.past.length));
    expect(fitted.value.stepsLeftOut).toBe(399 - history.past.length);
  });

  it("is refused when the present itself does not fit, naming the place", () => {
    const state = stateOf({ ...richInquiry, chordText: "x".repeat(5_000) });
    const { history } = sampleProject;
    const project: Project = { ...sampleProject, history: { ...history, present: state } };
    expect(fitProject(project)).toMatchObject({
      problem: { code: "project-unfit", message: expect.stringContaining("chord") as string },
    });
  });
});
