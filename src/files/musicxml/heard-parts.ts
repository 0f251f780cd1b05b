import type { Count } from "../../base/index.ts";
import { spelledToMidi, type Divisions, type SpelledPitch } from "../../theory/index.ts";
import type { ArticulationMark, ScoreNote } from "../score/score-model.ts";
import { articulationTable } from "./articulation-table.ts";
import type { FileNote, FilePart } from "./reading-types.ts";

/** A note while ties are being joined. */
interface Joining {
  readonly onset: number;
  end: number;
  readonly pitch: SpelledPitch;
  readonly voice: string;
  readonly marks: Set<ArticulationMark>;
  isSlurredOn: boolean;
}

/**
 * The lines of a part: tied notes joined, each voice a line of its own, and what overlaps inside a
 * voice taken apart again.
 * @param part - the part, bar by bar
 * @param starts - onset of each bar
 * @returns at least one line, the first voice first; notes in order, low to high at one onset
 */
export function linesOf(
  part: FilePart,
  starts: readonly Count[],
): readonly (readonly ScoreNote[])[] {
  const joined = joinTies(part, starts);
  const voices = [...new Set(joined.map(({ voice }) => voice))].sort(byVoice);
  const lines = voices.flatMap((voice) => lanesOf(joined.filter((note) => note.voice === voice)));
  return lines.length === 0 ? [[]] : lines;
}

const byVoice = (a: string, b: string): number => Number(a) - Number(b) || (a < b ? -1 : 1);

function joinTies({ bars }: FilePart, starts: readonly Count[]): readonly Joining[] {
  const notes: Joining[] = [];
  const open = new Map<number, Joining[]>();
  bars.forEach((bar, index) => {
    for (const note of inOrder(bar.notes)) {
      const onset = starts[index]! + note.at;
      const key = spelledToMidi(note.pitch);
      const waiting = (open.get(key) ?? []).filter(({ end }) => end >= onset);
      const before = note.isTiedFrom ? waitingFor(waiting, onset, note.voice) : undefined;
      const current = before ?? begun(note, onset);
      if (before === undefined) notes.push(current);
      else {
        before.end = onset + note.length;
        for (const mark of note.marks) before.marks.add(mark);
        before.isSlurredOn = note.isSlurredOn;
      }
      open.set(key, [
        ...waiting.filter((each) => each !== current),
        ...(note.isTiedOn ? [current] : []),
      ]);
    }
  });
  return notes;
}

const inOrder = (notes: readonly FileNote[]): readonly FileNote[] =>
  [...notes].sort((a, b) => a.at - b.at);

const waitingFor = (
  waiting: readonly Joining[],
  onset: number,
  voice: string,
): Joining | undefined => {
  const fitting = waiting.filter(({ end }) => end === onset);
  return fitting.find((each) => each.voice === voice) ?? fitting[0];
};

const begun = (note: FileNote, onset: number): Joining => ({
  onset,
  end: onset + note.length,
  pitch: note.pitch,
  voice: note.voice,
  marks: new Set(note.marks),
  isSlurredOn: note.isSlurredOn,
});

/** Notes that overlap without beginning and ending together go to another lane. */
function lanesOf(notes: readonly Joining[]): readonly (readonly ScoreNote[])[] {
  const sorted = [...notes].sort(
    (a, b) => a.onset - b.onset || spelledToMidi(a.pitch) - spelledToMidi(b.pitch),
  );
  const lanes: Joining[][] = [];
  for (const note of sorted) {
    const lane = lanes.find((each) => fits(each.at(-1)!, note));
    if (lane === undefined) lanes.push([note]);
    else lane.push(note);
  }
  return lanes.map((lane) => lane.map(scoreNote));
}

function fits(last: Joining, note: Joining): boolean {
  const isChord = last.onset === note.onset && last.end === note.end;
  const isDoubled = isChord && spelledToMidi(last.pitch) === spelledToMidi(note.pitch);
  return (isChord && !isDoubled) || note.onset >= last.end;
}

function scoreNote({ onset, end, pitch, marks, isSlurredOn }: Joining): ScoreNote {
  const own = articulationTable.map(([mark]) => mark).filter((mark) => marks.has(mark));
  return {
    onset: onset as Divisions,
    duration: (end - onset) as Divisions,
    pitch,
    ...(own.length > 0 ? { marks: own } : {}),
    ...(isSlurredOn ? { isSlurredOn: true as const } : {}),
  };
}
