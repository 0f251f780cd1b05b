// Covers src/files/read-melody-file.ts and decode-text.ts
import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import {
  midiOf,
  readMelodyFile,
  scoreOfMelody,
  writeMusicXml,
  writeMxl,
} from "../../src/files/index.ts";
import { melodyOf } from "../phrase/support/phrases.ts";
import { wideF13 } from "./support/scores.ts";

const melody = melodyOf("C5:1@F6 D5:1/2 E5:1/2 F5:2 | G5:4@C7");
const xml = writeMusicXml(scoreOfMelody(melody));
const abc = 'X:1\nT:Über\nL:1/4\nK:C\n"F6"c d/e/ f2 | "C7"g4 |]\n';

const utf8 = strToU8;
const latin1 = (text: string): Uint8Array =>
  Uint8Array.from(text, (letter) => letter.charCodeAt(0) & 0xff);
const utf16 = (text: string, isBig: boolean): Uint8Array =>
  Uint8Array.from(
    [...text].flatMap((letter) => {
      const code = letter.charCodeAt(0);
      return isBig ? [code >> 8, code & 0xff] : [code & 0xff, code >> 8];
    }),
  );
const withMark = (bytes: Uint8Array, ...mark: number[]): Uint8Array =>
  Uint8Array.from([...mark, ...bytes]);

const named = (encoding: string): string =>
  xml.replace('encoding="UTF-8"', `encoding="${encoding}"`);

describe("a melody is read", () => {
  it.each([
    ["MusicXML in UTF-8", utf8(xml)],
    ["MusicXML in UTF-8 with a mark", withMark(utf8(xml), 0xef, 0xbb, 0xbf)],
    ["MusicXML in UTF-16, low byte first", withMark(utf16(named("UTF-16"), false), 0xff, 0xfe)],
    ["MusicXML in UTF-16, high byte first", withMark(utf16(named("UTF-16"), true), 0xfe, 0xff)],
    ["MusicXML in UTF-16 without a mark", utf16(named("UTF-16"), false)],
    ["MusicXML in UTF-16 without a mark, high byte first", utf16(named("UTF-16"), true)],
    ["MusicXML in Latin-1", latin1(named("ISO-8859-1"))],
    ["compressed MusicXML", writeMxl(xml)],
    ["ABC in UTF-8", utf8(abc)],
    ["ABC in Latin-1", latin1(abc)],
    ["ABC in UTF-16 with a mark", withMark(utf16(abc, false), 0xff, 0xfe)],
  ])("from %s", async (_, bytes) => {
    const read = await readMelodyFile(bytes);
    expect(read.ok && read.value.melody.notes.map(({ pitch }) => pitch.letter)).toEqual([
      ..."CDEFG",
    ]);
    expect(read.ok && read.value.melody.changes.map(({ text }) => text)).toEqual(["F6", "C7"]);
  });
});

const entities = Array.from(
  { length: 9 },
  (_, n) => `<!ENTITY e${n + 1} "${`&e${n};`.repeat(10)}">`,
).join("");
const bomb = `<?xml version="1.0"?><!DOCTYPE x [<!ENTITY e0 "boom">${entities}]><x>&e9;</x>`;
const outside =
  '<?xml version="1.0"?><!DOCTYPE x [<!ENTITY a SYSTEM "file:///etc/hosts">]><x>&a;</x>';
const container = '<container><rootfiles><rootfile full-path="a.xml"/></rootfiles></container>';
const zip = (files: Record<string, Uint8Array>): Uint8Array => zipSync(files);
const nested = "<a>".repeat(3_400_000);
const zeros = new Uint8Array(40_000_000).fill(0x20);

const bad: readonly (readonly [string, Uint8Array, string])[] = [
  ["nothing", new Uint8Array(0), "file-empty"],
  ["spaces", utf8(" \n\t "), "abc-empty"],
  ["a score cut off", utf8(xml.slice(0, Math.floor(xml.length / 2))), "xml-cut-off"],
  ["a compressed score cut off", writeMxl(xml).subarray(0, 700), "mxl-broken"],
  ["Latin-1 that says UTF-8", latin1(xml.replace("Test", "Über")), "xml-encoding"],
  ["an encoding that nobody knows", latin1(named("EBCDIC-42")), "xml-encoding"],
  ["10 MB of nesting", utf8(nested), "xml-too-deep"],
  ["entities that multiply", utf8(bomb), "xml-declares"],
  ["entities from elsewhere", utf8(outside), "xml-declares"],
  [
    "a zip that unpacks to 40 MB",
    zip({ "META-INF/container.xml": utf8(container), "a.xml": zeros }),
    "mxl-too-large",
  ],
  ["a zip without a score", zip({ "notes.txt": utf8("hello") }), "mxl-no-score"],
  ["a zip of nothing", zip({}), "mxl-no-score"],
  ["a web page", utf8("<!DOCTYPE html><html><p>c d e</p></html>"), "musicxml-root"],
  ["a MIDI file by another name", midiOf([wideF13]), "file-is-midi"],
  ["a picture", Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0]), "file-not-text"],
  ["2 MB of text", utf8("c".repeat(2_000_000)), "file-too-large"],
  ["a tune too long", utf8(`K:C\n${"c".repeat(20_000)}`), "abc-too-long"],
  ["macros that multiply", utf8("X:1\nm:a=bb\nm:b=aa\nK:C\na"), "abc-macro"],
  ["a score without a bar", utf8('<score-partwise version="4.0"/>'), "musicxml-empty"],
];

describe("a bad file is refused in one sentence", () => {
  it.each(bad)(
    "%s",
    async (_, bytes, code) => {
      const read = await readMelodyFile(bytes);
      expect(read.ok).toBe(false);
      if (read.ok) return;
      const [problem] = read.problems;
      expect(problem?.code).toBe(code);
      expect(problem?.message).toMatch(/^[A-Z“].{10,200}\.$/s);
      expect(problem?.message.split(/[.!?] [A-Z]/)).toHaveLength(1);
    },
    15_000,
  );

  it("whatever byte of a score is lost or changed", async () => {
    const whole = writeMxl(xml);
    for (let at = 0; at < whole.length; at += 97) {
      const changed = Uint8Array.from(whole);
      changed[at] = changed[at]! ^ 0x55;
      const read = await readMelodyFile(changed);
      const cut = await readMelodyFile(whole.subarray(0, at));
      expect(cut.ok).toBe(false);
      if (!read.ok) expect(read.problems[0]?.message).toMatch(/\.$/);
    }
  });
});
