import { quantity, type Count } from "../base/index.ts";
import { instrumentOf, type Clef, type SectionId } from "../band/index.ts";
import type { PartNote, Phrase, PhrasePerformance, PlayerPart } from "../phrase/index.ts";
import { barCount, barLength, barStart, fifthsOf } from "../theory/index.ts";
import type { Divisions, Melody } from "../theory/index.ts";
import { concertClef } from "./choose-clef.ts";
import { condensed } from "./condense.ts";
import { fifthsAdded, keyReading } from "./key-reading.ts";
import type {
  PhraseBar,
  PhraseLayout,
  PhraseStaff,
  PhraseStaffBar,
  PlacedSymbol,
} from "./phrase-layout-types.ts";
import { staffBars, type StaffStretch } from "./phrase-staff.ts";
import { inScoreOrder, staffPlayerOf } from "./player-groups.ts";
import type { StaffPitch } from "./staff-layout-types.ts";
import {
  CONCERT,
  concertReading,
  moveSpelled,
  strictReading,
  withoutDoubles,
  type Reading,
} from "./transposed-spelling.ts";
import { symbolFor } from "./written-symbol.ts";

/** Which staves are laid out, and how. */
export interface PhraseLayoutOptions {
  /** Concert pitch unless given. */
  readonly pitch?: StaffPitch;
  /** Only these players; all unless given. */
  readonly playerIds?: readonly string[];
  /** One staff a section (baritone and bass trombone with their section's low staff), concert. */
  readonly isCondensed?: boolean;
}

const styleWords: Readonly<Record<Melody["style"], string>> = Object.freeze({
  swing: "Swing",
  straight: "Straight",
  ballad: "Ballad",
  latin: "Latin",
});

/**
 * Lays a phrase out on staves: one a player, or one a section. Bars hold exactly what the parts
 * sound; swing eighths are written even; repeats are written out.
 * @param phrase - metre, key, changes, dynamics
 * @param playing - its parts, from performPhrase
 * @param options - pitch, players, condensed
 * @returns plain data
 */
export function layoutPhrase(
  phrase: Phrase,
  playing: Pick<PhrasePerformance, "parts">,
  options: PhraseLayoutOptions = {},
): PhraseLayout {
  const { melody } = phrase;
  const { pitch = "concert", playerIds, isCondensed = false } = options;
  const bars = barsOf(melody);
  const wanted = playing.parts.filter(({ player }) => playerIds?.includes(player.id) ?? true);
  const parts = inScoreOrder(wanted, ({ player }) => player.section);
  const staves = isCondensed
    ? condensedStaves(parts, bars, phrase)
    : parts.map((part) => playerStaff(part, bars, phrase, pitch));
  return {
    title: melody.title,
    pitch: isCondensed ? "concert" : pitch,
    style: styleWords[melody.style],
    tempo: melody.tempo,
    metre: melody.metre,
    division: melody.division,
    bars,
    staves,
  };
}

function barsOf(melody: Melody): readonly PhraseBar[] {
  const length = barLength(melody);
  const full = Array.from({ length: barCount(melody) }, (_, index): PhraseBar => {
    const onset = barStart(melody, index + 1);
    return { number: index + 1, onset, end: quantity<Divisions>(onset + length) };
  });
  if (melody.pickup === 0) return full;
  return [{ number: 0, onset: quantity<Divisions>(0), end: melody.pickup }, ...full];
}

/** How a player reads concert pitch, and in which key. */
function readingFor(
  { player }: PlayerPart,
  melody: Melody,
  pitch: StaffPitch,
): { readonly reading: Reading; readonly fifths: Count } {
  const { transposition } = instrumentOf(player.instrument);
  if (pitch === "concert" || transposition.chromatic === 0)
    return { reading: concertReading(transposition), fifths: fifthsOf(melody.key) };
  const reading = keyReading(strictReading(transposition), melody.key);
  return { reading, fifths: fifthsOf(melody.key) + fifthsAdded(reading) };
}

function playerStaff(
  part: PlayerPart,
  bars: readonly PhraseBar[],
  phrase: Phrase,
  pitch: StaffPitch,
): PhraseStaff {
  const { player, notes } = part;
  const { reading, fifths } = readingFor(part, phrase.melody, pitch);
  const spell = (note: PartNote) => withoutDoubles(moveSpelled(note.pitch, reading));
  const stretches = notes.map((note): StaffStretch => ({
    from: note.onset,
    to: quantity<Divisions>(note.onset + note.duration),
    heads: [{ note, playerIds: [player.id] }],
  }));
  const values = staffBars(stretches, bars, phrase, { fifths, spell });
  const symbols = symbolsOf(bars, phrase, reading);
  const staffPlayer = staffPlayerOf(player);
  return {
    id: player.id,
    name: player.name,
    abbreviation: player.abbreviation,
    section: player.section,
    players: [staffPlayer],
    clef: clefOf(part, pitch, spell),
    fifths,
    bars: withSymbols(values, symbols),
  };
}

/** The part's own clef; at concert pitch the one that most of the line reads well in. */
function clefOf(
  { player, notes }: PlayerPart,
  pitch: StaffPitch,
  spell: (note: PartNote) => PartNote["pitch"],
): Clef {
  const { clef, transposition } = instrumentOf(player.instrument);
  if (pitch === "written") return clef;
  const low = notes.filter((note) => concertClef(spell(note), clef, transposition) === "bass");
  const time = (some: readonly PartNote[]): number =>
    some.reduce((sum, { duration }) => sum + duration, 0);
  return 2 * time(low) > time(notes) ? "bass" : "treble";
}

function symbolsOf(
  bars: readonly PhraseBar[],
  { changes }: Phrase,
  reading: Reading,
): readonly (readonly PlacedSymbol[])[] {
  let shown = "";
  return bars.map((bar) =>
    changes
      .filter(({ onset }) => onset >= bar.onset && onset < bar.end)
      .flatMap(({ onset, chord }) => {
        const text = symbolFor(chord, reading);
        if (text === shown) return [];
        shown = text;
        return [{ onset, text }];
      }),
  );
}

function withSymbols(
  values: readonly Pick<PhraseStaffBar, "values">[],
  symbols: readonly (readonly PlacedSymbol[])[],
): readonly PhraseStaffBar[] {
  return values.map((bar, index) => ({ ...bar, symbols: symbols[index] ?? [] }));
}

/** A staff of a condensed score. */
interface CondensedGroup {
  readonly id: string;
  readonly name: string;
  readonly abbreviation: string;
  readonly section: SectionId;
  readonly holds: (part: PlayerPart) => boolean;
}

const lowSax = (part: PlayerPart): boolean =>
  part.player.instrument === "baritone-sax" || part.player.instrument === "bass-clarinet";

/** Source: reduced scores with one staff a section: common practice, no single source. */
const condensedGroups: readonly CondensedGroup[] = Object.freeze([
  {
    id: "saxes",
    name: "Saxes",
    abbreviation: "Saxes",
    section: "saxes",
    holds: (part) => part.player.section === "saxes" && !lowSax(part),
  },
  { id: "low-sax", name: "Baritone", abbreviation: "Bari", section: "saxes", holds: lowSax },
  {
    id: "trumpets",
    name: "Trumpets",
    abbreviation: "Tpts",
    section: "trumpets",
    holds: (part) => part.player.section === "trumpets",
  },
  {
    id: "trombones",
    name: "Trombones",
    abbreviation: "Tbns",
    section: "trombones",
    holds: (part) => part.player.section === "trombones",
  },
]);

function condensedStaves(
  parts: readonly PlayerPart[],
  bars: readonly PhraseBar[],
  phrase: Phrase,
): readonly PhraseStaff[] {
  const fifths = fifthsOf(phrase.melody.key);
  const spell = (note: PartNote) => withoutDoubles(note.pitch);
  return condensedGroups.flatMap(({ holds, ...group }) => {
    const own = parts.filter(holds);
    if (own.length === 0) return [];
    const values = staffBars(condensed(own), bars, phrase, { fifths, spell });
    const isLow = group.section === "trombones" || group.id === "low-sax";
    return [
      {
        ...group,
        players: own.map(({ player }) => staffPlayerOf(player)),
        clef: isLow ? ("bass" as const) : ("treble" as const),
        fifths,
        bars: withSymbols(values, symbolsOf(bars, phrase, CONCERT)),
      },
    ];
  });
}
