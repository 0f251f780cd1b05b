import { ideaValue, notShared, type Idea, type LessonTexture } from "../../explore/index.ts";
import { numberText } from "../../metrics/index.ts";
import { counted, inWords, listed } from "../words/counts.ts";
import { spanText } from "../words/interval-words.ts";
import type { Namer } from "../words/pitch-names.ts";
import { withSigns } from "../words/signs.ts";

/** What one idea is called and how it is taught. */
export interface IdeaWords {
  readonly title: string;
  /** The idea in one sentence. */
  readonly sentence: string;
  /** What to listen for. */
  readonly listen: string;
  /** The control's two directions. */
  readonly less: string;
  readonly more: string;
  /** The whole track in words, for the control. */
  readonly track: string;
}

/** The four ideas in words. Source: the project's own design. */
export const ideaWords: Readonly<Record<Idea, IdeaWords>> = Object.freeze({
  span: {
    title: "Span",
    sentence: "From the lowest note to the highest.",
    listen:
      "Listen to the bottom. The melody stays where it is; how far below it does the chord reach?",
    less: "Narrower",
    more: "Wider",
    track: "from narrow to wide, in semitones",
  },
  weight: {
    title: "Weight",
    sentence: "How many play, and how much each of them counts.",
    listen:
      "Listen to the body of the sound. The notes stay the same; do few players sound them, or many?",
    less: "Lighter",
    more: "Heavier",
    track: "from light to heavy, in balance units",
  },
  density: {
    title: "Density",
    sentence: "How closely the notes lie together.",
    listen:
      "Listen to the middle. Top and bottom stay; is there air between the notes, or are they packed?",
    less: "Sparser",
    more: "Denser",
    track: "from sparse to dense, in notes per octave",
  },
  interleaving: {
    title: "Interleaving",
    sentence: "How far the sections interlock in pitch.",
    listen:
      "Listen for the joins. By section you hear three blocks, one above the other; interlocked, you hear one sound.",
    less: "Less interlocked",
    more: "More interlocked",
    track: "from apart to interlocked, 0 to 1",
  },
} satisfies Readonly<Record<Idea, IdeaWords>>);

/**
 * An idea's value as it stands large beside a voicing.
 * @param texture - the voicing
 * @param idea - the idea
 * @returns the figure, and one or two short lines that say what it counts
 */
export function ideaFigure(
  texture: LessonTexture,
  idea: Idea,
): { readonly figure: string; readonly lines: readonly string[] } {
  switch (idea) {
    case "span": {
      const [octaves = "", rest] = spanText(texture.span).split(" + ");
      return {
        figure: `${texture.span}`,
        lines: rest === undefined ? [octaves] : [octaves, `+ ${rest}`],
      };
    }
    case "weight":
      return {
        figure: numberText(texture.weight, 1),
        lines: ["balance units", counted(texture.players, "player")],
      };
    case "density":
      return {
        figure: texture.density.toFixed(1),
        lines: ["notes per", "octave"],
      };
    case "interleaving":
      return texture.interleaving === null
        ? { figure: "none", lines: ["one section"] }
        : { figure: texture.interleaving.toFixed(2), lines: ["of 1"] };
  }
}

/**
 * The value under a swatch of the track.
 * @param texture - the voicing
 * @param idea - the idea
 * @returns a short figure
 */
export function trackFigure(texture: LessonTexture, idea: Idea): string {
  return ideaFigure(texture, idea).figure;
}

/**
 * How the right voicing differs from the left one in the idea, in one sentence.
 * @param left - the one that stays
 * @param right - the one that moves
 * @param idea - the idea
 * @param nameOf - spells pitches for the question
 * @returns e.g. "12 semitones wider: F3 gives way to F2."
 */
export function changeWords(
  left: LessonTexture,
  right: LessonTexture,
  idea: Idea,
  nameOf: Namer,
): string {
  if (ideaValue(left, idea) === ideaValue(right, idea)) return "Left and right are the same.";
  switch (idea) {
    case "span": {
      const by = right.span - left.span;
      const amount = counted(Math.abs(by), "semitone");
      return `${amount} ${by > 0 ? "wider" : "narrower"}: ${notesWords(left, right, nameOf)}.`;
    }
    case "weight":
      return weightWords(left, right);
    case "density": {
      const by = right.notes - left.notes;
      const count = `${inWords(Math.abs(by))} ${Math.abs(by) === 1 ? "note" : "notes"}`;
      const inside = `${left.density.toFixed(1)} notes per octave on the left, ${right.density.toFixed(1)} on the right`;
      return `${capital(count)} ${by > 0 ? "more" : "fewer"} within the same span: ${inside}.`;
    }
    case "interleaving":
      return wovenWords(left, right);
  }
}

/** Which notes make the difference: "F3 gives way to F2". */
function notesWords(left: LessonTexture, right: LessonTexture, nameOf: Namer): string {
  const names = (pitches: readonly number[]) =>
    listed(pitches.map((pitch) => withSigns(nameOf(pitch).name)));
  const gone = left.stack.filter((pitch) => !right.stack.includes(pitch));
  const come = right.stack.filter((pitch) => !left.stack.includes(pitch));
  if (gone.length === 0 || come.length === 0) return "the same notes";
  return `${names(gone)} ${gone.length === 1 ? "gives" : "give"} way to ${names(come)}`;
}

function weightWords(left: LessonTexture, right: LessonTexture): string {
  const by = right.players - left.players;
  const { onlyA, onlyB } = notShared(left, right);
  const who = `${inWords(Math.abs(by))} ${Math.abs(by) === 1 ? "player" : "players"}`;
  const notes = onlyA + onlyB === 0 ? "the same notes" : "nearly the same notes";
  const ratio = ratioText(left.weight, right.weight);
  if (by === 0) return `As many players on ${notes}, ${ratio} times the weight.`;
  const [verb, weigh] = by > 0 ? ["more", "the weight"] : ["fewer", "less weight"];
  return `${capital(who)} ${verb} on ${notes}: ${ratio} times ${weigh}.`;
}

/** The larger over the smaller, to one decimal where it needs one: "2", "3.4". */
function ratioText(a: number, b: number): string {
  return `${Math.round((10 * Math.max(a, b)) / Math.min(a, b)) / 10}`;
}

function wovenWords(left: LessonTexture, right: LessonTexture): string {
  const moved = right.pitches.filter((pitch, index) => pitch !== left.pitches[index]).length;
  const { onlyA, onlyB } = notShared(left, right);
  const notes = onlyA + onlyB === 0 ? "The same notes" : "Nearly the same notes";
  const who = `${inWords(moved)} ${moved === 1 ? "player" : "players"}`;
  return `${notes}, ${who} on another of them.`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/**
 * What both voicings have in common, and what follows from the change.
 * @param left - the one that stays
 * @param right - the one that moves
 * @param idea - the idea
 * @returns two short texts: what is equal, and what is not
 */
export function equalWords(
  left: LessonTexture,
  right: LessonTexture,
  idea: Idea,
): { readonly same: string; readonly follows: string } {
  const facts: readonly (readonly [Idea | "notes" | "players", string, string])[] = [
    ["span", `${spanText(left.span)}`, `${spanText(right.span)}`],
    ["notes", counted(left.notes, "note"), counted(right.notes, "note")],
    ["players", counted(left.players, "player"), counted(right.players, "player")],
    [
      "weight",
      `${numberText(left.weight, 1)} balance units`,
      `${numberText(right.weight, 1)} balance units`,
    ],
    [
      "density",
      `${left.density.toFixed(1)} notes per octave`,
      `${right.density.toFixed(1)} notes per octave`,
    ],
    ["interleaving", `interleaving ${wovenText(left)}`, `interleaving ${wovenText(right)}`],
  ];
  const others = facts.filter(([key]) => key !== idea && !isToldAlready(idea, key));
  const same = others.filter(([, a, b]) => a === b).map(([, a]) => a);
  const not = others
    .filter(([, a, b]) => a !== b)
    .map(([, a, b]) => `${a} left, ${bareOf(b)} right`);
  return { same: same.join(", "), follows: not.join("; ") };
}

/** Weight comes with players, density with notes: the figure beside the voicing says both. */
function isToldAlready(idea: Idea, key: string): boolean {
  return (idea === "weight" && key === "players") || (idea === "density" && key === "notes");
}

function wovenText({ interleaving }: LessonTexture): string {
  return interleaving === null ? "none" : interleaving.toFixed(2);
}

/** The figure alone, where the unit has just been said. */
function bareOf(text: string): string {
  return text
    .replace(/^interleaving /, "")
    .replace(/ (balance units|notes per octave|notes|players)$/, "");
}
