import { describe, expect, it } from "vitest";
import { readMelody } from "../../src/theory/melody-check.ts";
import { withoutRepeats } from "../../src/theory/melody-repeats.ts";
import { formatPitch } from "../../src/theory/spelled-pitch.ts";
import { melodyOf } from "../phrase/support/phrases.ts";

const played = (melody: ReturnType<typeof melodyOf>): string =>
  withoutRepeats(melody)
    .notes.map(({ pitch }) => formatPitch(pitch))
    .join(" ");

describe("repeats written out", () => {
  it("leaves a melody without repeats as it is", () => {
    const melody = melodyOf("C5:4");
    expect(withoutRepeats(melody)).toBe(melody);
  });

  it("plays the bars again, with names that tell the pass", () => {
    const melody = melodyOf("C5:4@C6 | D5:4 | E5:4", {
      repeats: [{ fromBar: 1, toBar: 2, times: 2 }],
    });
    expect(played(melody)).toBe("C5 D5 C5 D5 E5");
    expect(withoutRepeats(melody).notes.map(({ id }) => id)).toEqual([
      "n1",
      "n2",
      "n1~2",
      "n2~2",
      "n3",
    ]);
  });

  it("takes the first ending first and the second ending last", () => {
    const endings = [
      { fromBar: 2, toBar: 2, passes: [1] },
      { fromBar: 3, toBar: 3, passes: [2] },
    ];
    const melody = melodyOf("C5:4 | D5:4 | E5:4 | F5:4", {
      repeats: [{ fromBar: 1, toBar: 3, times: 2, endings }],
    });
    expect(played(melody)).toBe("C5 D5 C5 E5 F5");
  });

  it("keeps the pickup out of the repeat", () => {
    const melody = melodyOf("A4:1 | C5:4 | D5:4", {
      repeats: [{ fromBar: 1, toBar: 1, times: 3 }],
    });
    expect(played(melody)).toBe("A4 C5 C5 C5 D5");
  });

  it("gives a melody in order again, the chord that holds printed where a stretch begins", () => {
    const melody = melodyOf("C5:4@C6 | D5:4 | E5:4@Am7", {
      repeats: [{ fromBar: 2, toBar: 3, times: 2 }],
    });
    const found = readMelody(withoutRepeats(melody));
    if (!found.ok) throw new Error(found.problems[0]?.message);
    expect(found.value.changes.map(({ chord }) => chord.symbol)).toEqual([
      "C6",
      "C6",
      "Am7",
      "C6",
      "Am7",
    ]);
  });
});
