import { IXmlElement, MusicSheetReader } from "opensheetmusicdisplay";
import { parse } from "musicxml-io";

/** A note as another library reads it: part, onset and duration in quarters, MIDI number. */
export type HeardNote = readonly [part: string, onset: number, duration: number, midi: number];

const LETTERS: Readonly<Record<string, number>> = { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 };

/** Times are compared as whole 10,080ths of a quarter. */
const rounded = (quarters: number): number => Math.round(quarters * 10_080) / 10_080;

const sorted = (notes: readonly HeardNote[]): readonly HeardNote[] =>
  [...notes].sort((a, b) => (a[0] < b[0] ? -1 : a[0] > b[0] ? 1 : a[1] - b[1] || a[3] - b[3]));

/** Sounding notes as musicxml-io reads them; ties joined here by its tie marks. */
export function notesByMusicXmlIo(text: string): readonly HeardNote[] {
  const score = parse(text);
  const found: HeardNote[] = [];
  score.parts.forEach((part) => {
    let divisions = 1;
    let shift = 0;
    let start = 0;
    const open = new Map<number, number>();
    for (const measure of part.measures) {
      divisions = measure.attributes?.divisions ?? divisions;
      const transpose = measure.attributes?.transpose;
      if (transpose) shift = transpose.chromatic + 12 * (transpose.octaveChange ?? 0);
      let at = start;
      let end = start;
      let chordAt = start;
      for (const entry of measure.entries) {
        if (entry.type === "forward") at += entry.duration / divisions;
        if (entry.type === "backup") at -= entry.duration / divisions;
        if (entry.type !== "note") continue;
        const length = entry.duration / divisions;
        const from = entry.chord ? chordAt : at;
        if (!entry.chord) {
          chordAt = at;
          at += length;
        }
        end = Math.max(end, at);
        const { pitch } = entry;
        if (!pitch) continue;
        const midi = 12 * (pitch.octave + 1) + LETTERS[pitch.step]! + (pitch.alter ?? 0) + shift;
        const ties = entry.ties ?? (entry.tie ? [entry.tie] : []);
        const begun = ties.some(({ type }) => type === "stop") ? open.get(midi) : undefined;
        const onset = begun ?? from;
        if (ties.some(({ type }) => type === "start")) open.set(midi, onset);
        else {
          open.delete(midi);
          found.push([part.id, rounded(onset), rounded(from + length - onset), midi]);
        }
      }
      start = end;
    }
  });
  return sorted(found);
}

/**
 * Written notes as OpenSheetMusicDisplay reads them. It keeps written pitch; what a part adds comes
 * from the caller, by the order of the parts.
 */
export function notesByOsmd(
  text: string,
  parts: readonly { readonly id: string; readonly soundingMinusWritten: number }[],
): readonly HeardNote[] {
  const document = new DOMParser().parseFromString(text, "text/xml");
  const sheet = new MusicSheetReader().createMusicSheet(
    new IXmlElement(document.documentElement),
    "score",
  );
  const found: HeardNote[] = [];
  sheet.Instruments.forEach((instrument, index) => {
    const { id, soundingMinusWritten } = parts[index]!;
    const seen = new Set<object>();
    for (const voice of instrument.Voices)
      for (const entry of voice.VoiceEntries)
        for (const note of entry.Notes) {
          if (note.isRest() || seen.has(note)) continue;
          const tied = note.NoteTie?.Notes ?? [note];
          for (const each of tied) seen.add(each);
          const onset = tied[0]!.getAbsoluteTimestamp().RealValue * 4;
          const duration = tied.reduce((sum, each) => sum + each.Length.RealValue * 4, 0);
          const midi = note.Pitch.getHalfTone() + 12 + soundingMinusWritten;
          found.push([id, rounded(onset), rounded(duration), midi]);
        }
  });
  return sorted(found);
}
