import { quantity, type Count, type Semitones, type SoundingMidi } from "../base/index.ts";
import { metrics, type Metric } from "../metrics/index.ts";
import {
  stackOf,
  type AtlasCell,
  type LayerId,
  type Question,
  type Voicing,
} from "../voicing/index.ts";
import type {
  BalanceUnits,
  Idea,
  IdeaValue,
  LessonTexture,
  NotesPerOctave,
} from "./lesson-types.ts";

function metricOf(id: Idea): Metric {
  const found = metrics.find((metric) => metric.id === id);
  if (found === undefined) throw new RangeError(`there is no measure "${id}"`);
  return found;
}

/**
 * The harmonies of an atlas as lessons compare them. Lines are left out: they have no density.
 * @param question - the question of the atlas
 * @param layer - which layer the cells are of
 * @param cells - its cells
 * @returns one texture a cell, in the order of the cells
 */
export function lessonTextures(
  question: Question,
  layer: LayerId,
  cells: readonly AtlasCell[],
): readonly LessonTexture[] {
  return cells.flatMap((cell) =>
    cell.family === "line" || cell.key.notes < 2 ? [] : [textureOf(question, layer, cell)],
  );
}

function textureOf(question: Question, layer: LayerId, cell: AtlasCell): LessonTexture {
  const voicing = voicingOfTexture(question, cell);
  const measure = (id: Idea) => metricOf(id).measure(voicing, question).value;
  return {
    layer,
    pitches: cell.pitches,
    stack: stackOf(voicing),
    span: quantity<Semitones>(cell.key.span),
    notes: cell.key.notes,
    players: cell.key.players,
    weight: quantity<BalanceUnits>(measure("weight") ?? 0),
    density: quantity<NotesPerOctave>(measure("density") ?? 0),
    interleaving: measure("interleaving"),
  };
}

/**
 * The voicing of a texture.
 * @param question - the question it answers
 * @param texture - the texture
 * @returns who sounds what, in the question's order of players
 */
export function voicingOfTexture(
  question: Pick<Question, "players">,
  texture: Pick<LessonTexture, "pitches">,
): Voicing {
  return {
    placements: question.players.flatMap((player, index) => {
      const pitch = texture.pitches[index] ?? 0;
      return pitch > 0 ? [{ player, sounding: quantity<SoundingMidi>(pitch) }] : [];
    }),
  };
}

/**
 * The value of one idea.
 * @param texture - a texture
 * @param idea - which measure
 * @returns its value in the measure's unit; 0 where nothing can interlock
 */
export function ideaValue(texture: LessonTexture, idea: Idea): IdeaValue {
  return texture[idea] ?? 0;
}

/**
 * How many notes two textures do not share.
 * @param a - one texture
 * @param b - another
 * @returns pitches of `a` that `b` lacks, and pitches of `b` that `a` lacks
 */
export function notShared(
  a: LessonTexture,
  b: LessonTexture,
): { readonly onlyA: Count; readonly onlyB: Count } {
  const onlyA = a.stack.filter((pitch) => !b.stack.includes(pitch)).length;
  const onlyB = b.stack.filter((pitch) => !a.stack.includes(pitch)).length;
  return { onlyA, onlyB };
}

/**
 * Whether two textures sound the same notes.
 * @param a - one texture
 * @param b - another
 * @returns true when they differ only in who plays what
 */
export function isSameStack(a: LessonTexture, b: LessonTexture): boolean {
  return a.notes === b.notes && a.stack.every((pitch, index) => pitch === b.stack[index]);
}

/**
 * How many players sound in both textures, but on another note.
 * @param a - one texture
 * @param b - another of the same question
 * @returns players
 */
export function movedPlayers(a: LessonTexture, b: LessonTexture): Count {
  return a.pitches.filter((pitch, index) => {
    const other = b.pitches[index] ?? 0;
    return pitch > 0 && other > 0 && pitch !== other;
  }).length;
}
