import type { Count, Quantity, Ratio, Semitones, SoundingMidi } from "../base/index.ts";
import type { LayerId } from "../voicing/index.ts";

/** What a lesson is about: one measure of a texture. */
export type Idea = "span" | "weight" | "density" | "interleaving";

/** Heaviness of all players together. */
export type BalanceUnits = Quantity<"balance units">;
/** How closely the notes lie. */
export type NotesPerOctave = Quantity<"notes per octave">;

/** A value of an idea in its own unit: semitones, balance units, notes per octave or a share. */
export type IdeaValue = Semitones | BalanceUnits | NotesPerOctave | Ratio;

/** One voicing of the atlas with what a lesson compares. */
export interface LessonTexture {
  readonly layer: LayerId;
  /** Pitch of each player in the question's order; 0 for rest. */
  readonly pitches: readonly number[];
  /** Distinct pitches, low to high. */
  readonly stack: readonly SoundingMidi[];
  readonly span: Semitones;
  readonly notes: Count;
  readonly players: Count;
  readonly weight: BalanceUnits;
  readonly density: NotesPerOctave;
  /** Null where it takes more sections to interlock. */
  readonly interleaving: Ratio | null;
}

/** Textures in a row that differ in one idea, and the two that the step starts from. */
export interface LessonStep {
  readonly kind: "step";
  readonly idea: Idea;
  /** From little to much of the idea; at least two. */
  readonly track: readonly LessonTexture[];
  /** Place in the track of the one that stays. */
  readonly left: Count;
  /** Place in the track of the one that the learner moves. */
  readonly right: Count;
}

/** An idea that this question has no pair for. */
export interface LessonGap {
  readonly kind: "gap";
  readonly idea: Idea;
  /** Why, and what to change, in one or two sentences. */
  readonly reason: string;
}

/** What a lesson has to say on one idea. */
export type LessonPart = LessonStep | LessonGap;
