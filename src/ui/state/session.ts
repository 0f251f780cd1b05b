import type { StageSeat } from "../../audio/index.ts";
import type { SectionId } from "../../band/index.ts";
import type { Inquiry, PhraseWork } from "../../explore/index.ts";
import type { CellKey, LayerId } from "../../voicing/index.ts";

/** Player id → sounding MIDI note number; players who rest are not in it. */
export type Pitches = Readonly<Record<string, number>>;

/** Where a voicing that is not the map's own answer came from. */
export type MadeBy = "hand" | "book" | "next" | "kept";

/** A voicing shown instead of the map's best: built by hand, by the book, or called back. */
export interface Made {
  readonly by: MadeBy;
  readonly pitches: Pitches;
  /** Players moved by hand, the last one last; empty unless made by hand. */
  readonly moved: readonly string[];
  /** The voicing before the first move by hand; itself unless made by hand. */
  readonly from: Pitches;
  /** In words: "tutti, octave copy", "2nd best", "A". */
  readonly title: string;
}

/** A voicing put aside for comparing, with the question it answered. */
export interface Kept {
  /** Never changes: A, B, C … */
  readonly letter: string;
  readonly name: string;
  /** What the user wrote beside it. */
  readonly note?: string;
  readonly pitches: Pitches;
  readonly inquiry: Inquiry;
}

/** Everything the user can take back: one step of the undo history. */
export interface Session {
  readonly inquiry: Inquiry;
  readonly layer: LayerId;
  /** Sections that sound, each with a player; null when any may. */
  readonly sections: readonly SectionId[] | null;
  /** The place on the map the user went to. */
  readonly place: CellKey;
  readonly made: Made | null;
  readonly kept: readonly Kept[];
  /** Letters chosen for comparing and saving, in the order chosen. */
  readonly compared: readonly string[];
  /** Chairs that were moved from their usual places on the stage. */
  readonly seats: readonly StageSeat[];
  /** The phrase being worked on; null until one is begun. */
  readonly phrase: PhraseWork | null;
  /** What this step did, for the undo control: "Tbn 1 to E♭4". */
  readonly step: string;
}

/** The place a first visit opens at: wide, six notes, everybody. */
export const firstPlace: CellKey = Object.freeze({ span: 33, notes: 6, players: 13 });

/**
 * The session of a first visit.
 * @param inquiry - the worked question to open with
 * @returns a session with nothing kept and nothing made by hand
 */
export function firstSession(inquiry: Inquiry): Session {
  return {
    inquiry,
    layer: "free",
    sections: null,
    place: firstPlace,
    made: null,
    kept: [],
    compared: [],
    seats: [],
    phrase: null,
    step: "start",
  };
}

/**
 * Asks something else. What was made by hand stays on the page only while the chord, the lead and
 * the players it was made for stay; the undo history has it in any case.
 * @param session - where the user is
 * @param inquiry - what is asked now
 * @param step - in words, for the undo control
 * @returns the next session
 */
export function withInquiry(session: Session, inquiry: Inquiry, step: string): Session {
  const isOther =
    inquiry.chordText !== session.inquiry.chordText ||
    inquiry.melodyText !== session.inquiry.melodyText ||
    inquiry.players !== session.inquiry.players ||
    inquiry.locks !== session.inquiry.locks ||
    inquiry.leadPlayer !== session.inquiry.leadPlayer ||
    inquiry.octaveBelowPlayer !== session.inquiry.octaveBelowPlayer ||
    inquiry.octaveAbovePlayer !== session.inquiry.octaveAbovePlayer;
  return { ...session, inquiry, made: isOther ? null : session.made, step };
}

/**
 * Moves one player of the voicing in view; the result is hand-made.
 * @param session - where the user is
 * @param pitches - the voicing in view
 * @param playerId - who moves
 * @param to - sounding MIDI note number, or null to rest
 * @param step - in words
 * @returns the next session
 */
export function withMove(
  session: Session,
  pitches: Pitches,
  playerId: string,
  to: number | null,
  step: string,
): Session {
  const others = Object.entries(pitches).filter(([id]) => id !== playerId);
  const next = Object.fromEntries(to === null ? others : [...others, [playerId, to] as const]);
  return withPitches(session, pitches, next, [playerId], step);
}

/**
 * Puts several players elsewhere at once, as one step; the result is hand-made.
 * @param session - where the user is
 * @param pitches - the voicing in view
 * @param next - who sounds what afterwards
 * @param movedIds - players who were moved
 * @param step - in words
 * @param title - what the voicing is called
 * @returns the next session
 */
export function withPitches(
  session: Session,
  pitches: Pitches,
  next: Pitches,
  movedIds: readonly string[],
  step: string,
  title = "by hand",
): Session {
  const before = session.made?.by === "hand" ? session.made : { moved: [], from: pitches };
  const moved = [...before.moved.filter((id) => !movedIds.includes(id)), ...movedIds];
  const made: Made = { by: "hand", pitches: next, moved, from: before.from, title };
  return { ...session, made, step };
}

/**
 * The next free letter for a kept voicing: A to Z, then A2, B2 …
 * @param kept - what is kept already
 * @returns a letter no kept voicing has
 */
export function nextLetter(kept: readonly Kept[]): string {
  const used = new Set(kept.map((one) => one.letter));
  for (let round = 1; ; round += 1)
    for (let index = 0; index < 26; index += 1) {
      const letter = String.fromCharCode(65 + index) + (round === 1 ? "" : String(round));
      if (!used.has(letter)) return letter;
    }
}

/**
 * Keeps a voicing.
 * @param session - where the user is
 * @param pitches - who sounds what
 * @param name - what to call it
 * @param inquiry - the question it answers; the one being typed may not be readable
 * @returns the next session; the new one is chosen beside the one before it, or beside all that are
 *   chosen where those are more than two
 */
export function withKept(
  session: Session,
  pitches: Pitches,
  name: string,
  inquiry: Inquiry = session.inquiry,
): Session {
  const letter = nextLetter(session.kept);
  const kept = [...session.kept, { letter, name, pitches, inquiry }];
  const beside = session.compared.length > 2 ? session.compared : session.compared.slice(-1);
  return { ...session, kept, compared: [...beside, letter], step: `keep ${letter}` };
}

/**
 * Chooses or unchooses a kept voicing for comparing.
 * @param session - where the user is
 * @param letter - which one
 * @returns the next session
 */
export function withCompared(session: Session, letter: string): Session {
  const compared = session.compared.includes(letter)
    ? session.compared.filter((other) => other !== letter)
    : [...session.compared, letter];
  return { ...session, compared };
}

/**
 * Lets a kept voicing go.
 * @param session - where the user is
 * @param letter - which one
 * @returns the next session
 */
export function withoutKept(session: Session, letter: string): Session {
  return {
    ...session,
    kept: session.kept.filter((one) => one.letter !== letter),
    compared: session.compared.filter((other) => other !== letter),
    step: `let ${letter} go`,
  };
}

/**
 * Names a kept voicing.
 * @param session - where the user is
 * @param letter - which one
 * @param name - its new name
 * @returns the next session
 */
export function withName(session: Session, letter: string, name: string): Session {
  return {
    ...session,
    kept: session.kept.map((one) => (one.letter === letter ? { ...one, name } : one)),
    step: `name ${letter}`,
  };
}

/**
 * Writes a note beside a kept voicing.
 * @param session - where the user is
 * @param letter - which one
 * @param note - what is written; nothing takes the note away
 * @returns the next session
 */
export function withNote(session: Session, letter: string, note: string): Session {
  return {
    ...session,
    kept: session.kept.map((one) => (one.letter === letter ? noted(one, note) : one)),
    step: `note beside ${letter}`,
  };
}

function noted({ letter, name, pitches, inquiry }: Kept, note: string): Kept {
  return { letter, name, ...(note === "" ? {} : { note }), pitches, inquiry };
}

/**
 * Puts a kept voicing at another place in the row.
 * @param session - where the user is
 * @param letter - which one
 * @param to - its new place, 0 and up; held inside the row
 * @returns the next session; the same one when nothing moves
 */
export function withPlaceInRow(session: Session, letter: string, to: number): Session {
  const from = session.kept.findIndex((one) => one.letter === letter);
  const one = session.kept[from];
  const at = Math.max(0, Math.min(session.kept.length - 1, to));
  if (one === undefined || at === from) return session;
  const others = session.kept.filter((other) => other !== one);
  const kept = [...others.slice(0, at), one, ...others.slice(at)];
  return { ...session, kept, step: `move ${letter}` };
}

/**
 * Whether the user has cleared the question.
 * @param inquiry - what is asked
 * @returns true when neither chord nor melody is typed
 */
export function isCleared(inquiry: Inquiry): boolean {
  return inquiry.chordText.trim() === "" && inquiry.melodyText.trim() === "";
}
