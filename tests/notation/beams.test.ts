import { describe, expect, it } from "vitest";
import { melodyOf } from "../phrase/support/phrases.ts";
import type { Metre } from "../../src/theory/index.ts";
import { scoreOfMelody, writeMusicXml } from "../../src/files/index.ts";

const short = { begin: "(", continue: "-", end: ")", "forward hook": ">", "backward hook": "<" };

/** Beams of each note of the first bar: first beam, second beam; "." where there is none. */
function beamsOf(text: string, metre: Metre): string {
  const xml = writeMusicXml(scoreOfMelody(melodyOf(text, { metre })));
  const bar = xml.split("<measure")[1]!;
  const notes = bar.split("<note>").slice(1);
  return notes
    .map((note) => {
      const parts = [...note.matchAll(/<beam number="\d">([^<]+)</g)].map(
        ([, part]) => short[part as keyof typeof short],
      );
      return parts.length === 0 ? "." : parts.join("");
    })
    .join(" ");
}

const four: Metre = { beats: 4, beatType: 4 };
const eighths = (count: number): string => Array.from({ length: count }, () => "C5:1/2").join(" ");

// Beams show the beats: common practice, no single source (E. Gould, Behind Bars, on beaming,
// value from memory).
describe("beams", () => {
  it.each([
    ["two halves of a bar of eighths", eighths(8), four, "( - - ) ( - - )"],
    ["a beat by itself beside a quarter", "C5:1 C5:1/2 C5:1/2 C5:2", four, ". ( ) ."],
    ["nothing over the middle", "C5:1/2 C5:1 C5:1/2 C5:1/2 C5:1 C5:1/2", four, ". . . . . ."],
    ["nothing over a rest", "r:1/2 C5:1/2 C5:1/2 C5:1/2 C5:2", four, ". . ( ) ."],
    [
      "a dotted eighth and its sixteenth",
      "C5:3/4 D5:1/4 C5:1/4 D5:1/4 C5:1/2 C5:2",
      four,
      "( )< (( -) ) .",
    ],
    ["sixteenths in twos", "C5:1/4 C5:1/4 C5:1/2 C5:1 C5:2", four, "(( -) ) . ."],
    ["each triplet", "C5:1/3 C5:1/3 C5:1/3 D5:1/3 D5:1/3 D5:1/3 C5:2", four, "( - ) ( - ) ."],
    ["dotted beats of six eighths", eighths(6), { beats: 6, beatType: 8 }, "( - ) ( - )"],
    ["each beat of three quarters", eighths(6), { beats: 3, beatType: 4 }, "( ) ( ) ( )"],
    ["a bar of three eighths", eighths(3), { beats: 3, beatType: 8 }, "( - )"],
  ] as const)("join %s", (_, text, metre, expected) => {
    expect(beamsOf(`${text} | C5:1`, metre)).toBe(expected);
  });
});
