import type { Count, SoundingMidi } from "../base/index.ts";
import type { Chord } from "../theory/index.ts";
import type { Dynamic, Player } from "../band/index.ts";

/** One player on one pitch. */
export interface Placement {
  readonly player: Player;
  readonly sounding: SoundingMidi;
}

/** Who sounds what at one moment; players who rest are not in it. In line-up order. */
export interface Voicing {
  readonly placements: readonly Placement[];
}

/** Hard rules by their id; each can be switched off. */
export type RuleId = "H1" | "H2" | "H3" | "H4" | "H5" | "H5b" | "H6" | "H7" | "H8" | "H9";
/** For each rule whether it is on. */
export type RuleSettings = Readonly<Record<RuleId, boolean>>;

/** A player held to one pitch or to silence. */
export interface Lock {
  readonly playerId: string;
  readonly sounding: SoundingMidi | "rest";
}

/** Everything the search needs to know: chord, lead, players, loudness, tones, rules. */
export interface Question {
  readonly chord: Chord;
  readonly lead: SoundingMidi;
  readonly players: readonly Player[];
  readonly dynamic: Dynamic;
  /** Semitones above the root (0 to 11) that may sound. */
  readonly ticked: readonly number[];
  /** Semitones above the root that must sound, beside the required groups of the family. */
  readonly required: readonly number[];
  /** Whether a bass player sounds the root below (assumed bass), or the lowest horn must have it. */
  readonly bassSounds: boolean;
  readonly rules: RuleSettings;
  /** Low-interval limits taken as they stand (no softening by dynamic). */
  readonly strictLowIntervals: boolean;
  /** Semitone neighbours cost nothing from G3 up. */
  readonly clusterSetting: boolean;
  /** Seconds under a short lead cost nothing. */
  readonly shortNote: boolean;
  /** Off: anyone anywhere inside the range, chairs' homes ignored. */
  readonly homes: boolean;
  readonly locks: readonly Lock[];
  /** Who must have the lead; another may share it. */
  readonly leadPlayer?: string;
  /** Who must double the lead an octave below. */
  readonly octaveBelowPlayer?: string;
  /** Who plays the lead an octave above, beside the stack. */
  readonly octaveAbovePlayer?: string;
}

/** One named part of a voicing's cost. */
export interface CostTerm {
  /** Row of the cost tables: "S1" … "S9", "C1", "C2", "N1", "N2", "N1+N2" where both count. */
  readonly id: string;
  readonly value: number;
  /** In words: "Baritone on F2 is below its home range". */
  readonly text: string;
  /** What it is about, the beginning of `text`: "Baritone on F2". */
  readonly subject: string;
}

/** What a voicing costs, and of what that is made. */
export interface Cost {
  readonly total: number;
  readonly terms: readonly CostTerm[];
}

/** A rule that a voicing breaks, in words, with the players it concerns. */
export interface BrokenRule {
  readonly rule: RuleId;
  readonly text: string;
  readonly notes: readonly SoundingMidi[];
  readonly playerIds: readonly string[];
}

/** Named textures of the trade. Never named after a tune or a player. */
export type TechniqueId =
  | "unison"
  | "octaves"
  | "close"
  | "drop-2"
  | "drop-3"
  | "drop-2-4"
  | "double-lead"
  | "drop-2-double-lead"
  | "spread"
  | "upper-structure"
  | "quartal"
  | "fifths-pair"
  | "cluster"
  | "tutti-octave-copy"
  | "tutti-guide-tones"
  | "tutti-wide";

/** A cell: one texture. */
export interface CellKey {
  /** Highest minus lowest pitch of the stack, semitones. */
  readonly span: number;
  /** Distinct sounding pitches. */
  readonly notes: Count;
  /** Sounding players. */
  readonly players: Count;
}

/** Which voicings count: all, those whose sections are unbroken runs, those that interlock. */
export type LayerId = "free" | "by-section" | "crossed";

/** The best voicing of one cell. */
export interface AtlasCell {
  readonly key: CellKey;
  /** Least cost of the cell in the layer asked for. Comparable inside one cell only. */
  readonly cost: number;
  /** Second key of the total order: lower chairs lower. */
  readonly chairCost: number;
  /** Pitch of each player in the question's order; 0 for rest. */
  readonly pitches: readonly number[];
  /** "line" for unison and octaves, which have no harmony rules; "harmony" for all others. */
  readonly family: "harmony" | "line";
}

/** How much work an atlas took. */
export interface AtlasCounts {
  /** Legal stacks looked at. */
  readonly stacks: Count;
  /** Stacks set aside by a bound, without a full assignment. */
  readonly pruned: Count;
  /** Stacks whose players were assigned in full. */
  readonly solved: Count;
  readonly cells: Count;
}

/** The answer to a question: the best voicing of every texture within reach. */
export interface Atlas {
  readonly layer: LayerId;
  /** By span, then notes, then players. */
  readonly cells: readonly AtlasCell[];
  readonly counts: AtlasCounts;
  /** When there is no cell at all: the rules that, dropped one at a time, would give some. */
  readonly emptiedBy: readonly RuleId[];
}

/** What the search reports while it runs. */
export interface AtlasProgress {
  readonly groupsDone: Count;
  readonly groups: Count;
  /** Cells finished since the last report; final, never revised. */
  readonly cells: readonly AtlasCell[];
}
