// Covers src/cli/export-command.ts and read-voicings.ts
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readMidi, readScoreFile } from "../../src/files/index.ts";
import { spelledToMidi } from "../../src/theory/index.ts";
import { answerTo, run } from "./run-main.ts";

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "export-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const at = (name: string): string => join(folder, name);
const own = ["--chord", "F13", "--notes", "tpt1=D5,alto1=A4,tenor1=Eb4,bari=F3"];
/** D5 74, A4 69, E flat 4 63, F3 53 (MIDI: C4 = 60). */
const midis = [74, 69, 63, 53];

function soundsIn(path: string): readonly number[] {
  const read = readScoreFile(readFileSync(path));
  if (!read.ok) throw new Error(read.problem.message);
  return read.value.score.parts
    .flatMap(({ notes }) => notes.map(({ pitch }) => spelledToMidi(pitch)))
    .sort((a, b) => b - a);
}

describe("export", () => {
  it.each(["f13.musicxml", "f13.mxl"])("writes a voicing of one's own as %s", async (name) => {
    const answer = await answerTo("export", ...own, "--out", at(name));
    expect(answer).toMatchObject({ out: at(name), bars: 1 });
    expect(soundsIn(at(name))).toEqual(midis);
  });

  it("writes concert pitch where asked", async () => {
    await answerTo("export", ...own, "--pitch", "concert", "--out", at("c.musicxml"));
    expect(readFileSync(at("c.musicxml"), "utf8")).toContain("<concert-score/>");
    expect(soundsIn(at("c.musicxml"))).toEqual(midis);
  });

  it("writes MIDI, a bar as long as was asked, rolled where asked", async () => {
    const words = ["--seconds", "4", "--manner", "rolled", "--out", at("f13.mid")];
    await answerTo("export", ...own, ...words);
    const read = readMidi(readFileSync(at("f13.mid")));
    if (!read.ok) throw new Error(read.problem.message);
    const notes = read.value.tracks.flatMap((track) => track.notes);
    expect(notes.map(({ key }) => key).sort((a, b) => b - a)).toEqual(midis);
    expect(new Set(notes.map(({ onsetTicks }) => onsetTicks)).size).toBe(4);
    // Four quarters in 4 s: a million microseconds each.
    expect(read.value.tempos[0]?.value).toBe(1_000_000);
  });

  it("writes the best voicing under a melody note, and several in turn a bar each", async () => {
    const asked = ["--chord", "F13", "--melody", "D5", "--band", "four-horn"];
    await answerTo("export", ...asked, "--out", at("best.mid"));
    const two = ["--chord", "F13", "--notes", "tpt1=D5,bari=F3;tpt1=D5,bari=A2"];
    expect(await answerTo("export", ...two, "--out", at("two.musicxml"))).toMatchObject({
      bars: 2,
    });
  });

  it("writes sound as render does", async () => {
    const out = ["--seconds", "0.5", "--out", at("f13.wav")];
    const answer = await answerTo("export", ...own, "--title", "Hit", ...out);
    expect(answer).toMatchObject({ out: at("f13.wav"), sampleRate: 48000 });
  });

  it("answers a batch", async () => {
    const line = JSON.stringify({
      chord: "F13",
      notes: { tpt1: "D5", bari: "F3" },
      out: at("b.mid"),
    });
    const { output } = await run(["export", "--batch"], `${line}\n${line.replace(".mid", ".doc")}`);
    const [first, second] = output.trim().split("\n");
    expect(first).toContain('"bars":1');
    expect(second).toContain("file-kind-unknown");
  });

  it.each([
    [[...own, "--out", "f13.pdf"], /f13\.pdf/],
    [[...own, "--out", "/no/such/folder/a.mid"], /could not be written/],
    [[...own, "--seconds", "90", "--out", "a.mid"], /--seconds is from 0\.6 to 60/],
    [["--chord", "F13", "--out", "a.mid"], /--melody .* --notes/],
  ])("refuses %j in one sentence", async (words, expected) => {
    const { code, errors } = await run(["export", ...words]);
    expect(code).toBe(2);
    expect(errors).toMatch(expected);
    expect(errors.trim().split("\n")).toHaveLength(1);
  });
});
