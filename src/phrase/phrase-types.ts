import type { Count, Semitones, SoundingMidi } from "../base/index.ts";
import type { Dynamic, Player } from "../band/index.ts";
import type { Colour, Divisions, Melody, ReadChange } from "../theory/index.ts";
import type { Question, RuleSettings } from "../voicing/index.ts";
import type { Texture, TextureCurves } from "./curves.ts";
import type { Harmonised, NoteChoices } from "./harmony-types.ts";
import type { Moment } from "./moments.ts";
import type { Turn } from "./who-plays.ts";

/** A player held to a pitch or to silence at one moment. */
export interface NoteLock {
  readonly momentId: string;
  readonly playerId: string;
  readonly sounding: SoundingMidi | "rest";
}

/** A whole voicing held at one moment; players who are not named rest. */
export interface MomentLock {
  readonly momentId: string;
  readonly pitches: Readonly<Record<string, SoundingMidi>>;
}

/** What the user keeps while the rest is solved again. */
export interface PhraseLocks {
  readonly notes: readonly NoteLock[];
  readonly moments: readonly MomentLock[];
}

/** A dynamic from a time on. */
export interface DynamicMark {
  readonly at: Divisions;
  readonly dynamic: Dynamic;
}

/** A melody to be voiced, as plain data that can be saved, shared and undone. */
export interface PhraseQuestion {
  readonly melody: Melody;
  readonly players: readonly Player[];
  /** In order of time; before the first one holds mf. */
  readonly dynamics: readonly DynamicMark[];
  readonly colour: Colour;
  readonly bassSounds: boolean;
  readonly rules: RuleSettings;
  readonly strictLowIntervals: boolean;
  readonly clusterSetting: boolean;
  readonly homes: boolean;
  readonly choices: NoteChoices;
  readonly curves: TextureCurves;
  readonly turns: readonly Turn[];
  /** Let players rest for a breath where a stretch without one is too long. */
  readonly breaths: boolean;
  readonly locks: PhraseLocks;
  /** Who has the melody wherever the player reaches it; another may share it. */
  readonly leadPlayer?: string;
}

/** A moment with everything a voicing of it must respect. */
export interface AskedMoment {
  readonly moment: Moment;
  /** The question as the voicing search takes it, resting players locked. */
  readonly question: Question;
  readonly asked: Texture;
  /** Held voicing in the question's order of players, 0 for rest. */
  readonly held?: readonly number[];
}

/** Something the user should know about a place. */
export interface PhraseRemark {
  readonly momentId: string;
  readonly text: string;
}

/** A question found in order and worked out. */
export interface Phrase {
  /** Repeats written out. */
  readonly melody: Melody;
  readonly changes: readonly ReadChange[];
  readonly dynamics: readonly DynamicMark[];
  readonly players: readonly Player[];
  /** Players may breathe at the end of long notes. */
  readonly breaths: boolean;
  readonly harmonised: readonly Harmonised[];
  readonly moments: readonly AskedMoment[];
  readonly remarks: readonly PhraseRemark[];
}

/** What was found for one moment. */
export interface VoicedMoment {
  readonly moment: Moment;
  /** Sounding pitch of each player in the phrase's order, 0 for rest. */
  readonly pitches: readonly number[];
  /** Asked for. */
  readonly asked: Texture;
  /** Got. */
  readonly span: Semitones;
  readonly notes: Count;
  readonly density: Count;
  readonly players: Count;
  readonly cost: {
    /** Over the best voicing of its own cell. */
    readonly voicing: Count;
    /** Distance from the curves. */
    readonly texture: Count;
    /** A section's first chair overtaken by its own section. */
    readonly chairs: Count;
    /** All players' moves from the moment before; 0 at the first. */
    readonly lines: Count;
  };
  /** Voicings it was chosen from. */
  readonly candidates: Count;
}

/** A voiced phrase. */
export interface PhraseAnswer {
  readonly moments: readonly VoicedMoment[];
  /** The sum that no other choice among the candidates goes below. */
  readonly cost: Count;
  readonly remarks: readonly PhraseRemark[];
}

/** What the search reports while it runs. */
export interface PhraseProgress {
  readonly stage: "first" | "full";
  readonly momentsDone: Count;
  readonly moments: Count;
  /** Set when a whole answer is there: playable, and replaced by a better one later. */
  readonly answer?: PhraseAnswer;
}
