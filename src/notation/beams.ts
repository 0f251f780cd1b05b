import type { Count } from "../base/index.ts";
import type { BarShape } from "./bar-shape-types.ts";
import { groupLength } from "./metre-grid.ts";
import type { WrittenValue } from "./note-values.ts";

/** What one beam does at a note. Source: W3C MusicXML 4.0, beam-value. */
export type BeamPart = "begin" | "continue" | "end" | "forward hook" | "backward hook";

/** Beams of one value: the eighth's beam first. */
export type Beams = readonly BeamPart[];

/** What beaming goes by; `from` counts from the start of the bar. */
export type BeamedValue = Pick<
  WrittenValue,
  "from" | "value" | "dots" | "tuplet" | "beginsTuplet"
> & { readonly isRest: boolean };

/** Beams by note value. */
const beamCounts: Readonly<Record<string, Count>> = Object.freeze({
  eighth: 1,
  "16th": 2,
  "32nd": 3,
  "64th": 4,
  "128th": 5,
});

/**
 * Which notes of a bar are joined by beams: those of one beat, two beats of plain eighths in a bar
 * of quarters that stay on one side of its middle; a rest ends a beam.
 * @param values - the bar's values in order
 * @param shape - metre, division, where the bar begins
 * @returns beams of each value, none for what stands alone
 * @source grouping by beats: common practice, no single source
 */
export function beamsOf(values: readonly BeamedValue[], shape: BarShape): readonly Beams[] {
  const groups = beamGroups(values, shape);
  const beams: Beams[] = values.map(() => []);
  for (let from = 0; from < values.length;) {
    let to = from;
    while (to + 1 < values.length && groups[to + 1] === groups[from]) to += 1;
    const counts = values.slice(from, to + 1).map(countOf);
    if (groups[from] !== undefined && counts.length > 1)
      counts.forEach((_, index) => (beams[from + index] = beamsAt(counts, index)));
    from = to + 1;
  }
  return beams;
}

const countOf = ({ isRest, value }: BeamedValue): Count => (isRest ? 0 : (beamCounts[value] ?? 0));

/** A name for the group that each value belongs to; undefined for what takes no beam. */
function beamGroups(
  values: readonly BeamedValue[],
  shape: BarShape,
): readonly (string | undefined)[] {
  const beat = beatOf(shape);
  const beatAt = ({ from }: BeamedValue): Count => Math.floor((from + shape.offset) / beat);
  const isPlain = (value: BeamedValue): boolean =>
    countOf(value) === 1 && value.dots === 0 && value.tuplet === undefined;
  const isAllPlain = (pair: Count): boolean => {
    const inside = values.filter((value) => Math.floor(beatAt(value) / 2) === pair);
    return inside.every(isPlain) && inside.length > 2;
  };
  const mayPair = shape.metre.beatType === 4 && shape.metre.beats % 2 === 0;
  let part = 0;
  let tuplet = "";
  return values.map((value) => {
    if (value.beginsTuplet) tuplet = `tuplet ${value.from}`;
    const inTuplet = value.tuplet === undefined ? undefined : tuplet;
    if (countOf(value) === 0) {
      part += 1;
      return undefined;
    }
    const pair = Math.floor(beatAt(value) / 2);
    const place =
      inTuplet ?? (mayPair && isAllPlain(pair) ? `pair ${pair}` : `beat ${beatAt(value)}`);
    return `${place}, part ${part}`;
  });
}

/** A beat that carries a beam: bars of eighths that have no threes go whole when short. */
function beatOf(shape: BarShape): Count {
  const { metre, division } = shape;
  const beat = groupLength(shape);
  if (beat >= division) return beat;
  const isShort = metre.beats <= 3;
  return (isShort ? metre.beats : 2) * beat;
}

function beamsAt(counts: readonly Count[], index: Count): Beams {
  const own = counts[index] ?? 0;
  return Array.from({ length: own }, (_, level) => {
    const before = (counts[index - 1] ?? 0) > level;
    const after = (counts[index + 1] ?? 0) > level;
    if (before && after) return "continue";
    if (before) return "end";
    if (after) return "begin";
    return index === 0 ? "forward hook" : "backward hook";
  });
}
