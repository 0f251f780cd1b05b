import type { ScoreModel, ScoreNote } from "../../../src/files/index.ts";
import { placedBars } from "../../../src/files/score/score-times.ts";
import { formatPitch } from "../../../src/theory/index.ts";

/** A length in quarters, as a fraction where it is none. */
function quarters(length: number, division: number): string {
  const common = (a: number, b: number): number => (b === 0 ? a : common(b, a % b));
  const by = common(length, division);
  return division === by ? String(length / by) : `${length / by}/${division / by}`;
}

/**
 * A score to be read by people: one line a part, bar by bar, sounding pitches with their lengths in
 * quarters; "r" rests; a note stands in the bar it begins in.
 */
export function scoreText(score: ScoreModel): string {
  const { title, tempo, style = "", swing, division, harmonies, parts } = score;
  const bars = placedBars(score);
  const head = `${title}, ${style} ${tempo}${swing ? `, swing ${swing.first}:${swing.second}` : ""}`;
  const row = (name: string, cell: (start: number, end: number) => string): string =>
    `${name.padEnd(7)}| ${bars.map(({ start, end }) => cell(start, end)).join(" | ")} |`;
  const chords = row("chords", (start, end) =>
    harmonies
      .filter(({ onset }) => onset >= start && onset < end)
      .map(({ onset, symbol }) => `${symbol}@${quarters(onset - start, division)}`)
      .join(" "),
  );
  const lines = parts.map(({ id, notes, directions }) => {
    const dynamics = directions.flatMap((each) => ("dynamic" in each ? [each] : []));
    return row(id, (start, end) => {
      const own = notes.filter(({ onset }) => onset >= start && onset < end);
      const held = notes.filter(({ onset }) => onset < start).at(-1);
      let at = held === undefined ? start : Math.max(start, held.onset + held.duration);
      const words: string[] = [];
      const rest = (to: number): void => {
        if (to > at) words.push(`r:${quarters(to - at, division)}`);
      };
      for (const note of own) {
        rest(note.onset);
        const dynamic = dynamics.find(({ onset }) => onset === note.onset)?.dynamic;
        words.push((dynamic === undefined ? "" : `${dynamic} `) + noteText(note, division));
        at = note.onset + note.duration;
      }
      rest(end);
      return words.join(" ");
    });
  });
  return [head, chords, ...lines, ""].join("\n");
}

const noteText = ({ pitch, duration, marks = [] }: ScoreNote, division: number): string =>
  `${formatPitch(pitch)}:${quarters(duration, division)}${marks.map((mark) => `!${mark}`).join("")}`;
