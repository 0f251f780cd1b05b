import type { Player, SectionId } from "../../band/index.ts";
import { quantity, type SoundingMidi } from "../../base/index.ts";
import type { LessonTexture } from "../../explore/index.ts";
import { spreadLabels } from "../voicing/ladder-plan.ts";
import { pairSizes, type PairSize, type PairSizes } from "./pair-sizes.ts";
import { tokenLabel } from "./token-label.ts";

/** A token: the players of one section on one note. */
export interface PairToken {
  readonly section: SectionId;
  readonly players: readonly Player[];
  readonly pitch: SoundingMidi;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly label: string;
}

/** The outline of players who are elsewhere in the other voicing. */
export interface PairGhost {
  readonly section: SectionId;
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** One section of a ladder, from its lowest to its highest note. */
export interface PairWarp {
  readonly section: SectionId;
  readonly x: number;
  readonly from: number;
  readonly to: number;
}

/** A note across one ladder: solid where a section sounds it. */
export interface PairRung {
  readonly pitch: number;
  readonly y: number;
  readonly over: readonly (readonly [from: number, to: number])[];
}

/** A note's degree and name beside a ladder; smaller where they are crowded. */
export interface PairLabel {
  readonly pitch: number;
  readonly degree: number;
  readonly note: number;
  readonly x: number;
  readonly y: number;
}

/** One of the two ladders. */
export interface PairLadder {
  readonly from: number;
  readonly to: number;
  readonly top: number;
  readonly bottom: number;
  readonly tokens: readonly PairToken[];
  readonly ghosts: readonly PairGhost[];
  readonly warps: readonly PairWarp[];
  readonly rungs: readonly PairRung[];
  readonly labels: readonly PairLabel[];
}

/** Where everything of two voicings side by side lies. */
export interface PairPlan {
  readonly width: number;
  readonly height: number;
  readonly left: PairLadder;
  readonly right: PairLadder;
  /** Middles of notes that both sound: one dotted thread through both. */
  readonly shared: readonly number[];
  /** The one note that moves, from the left voicing's place to the right one's. */
  readonly move: { readonly x: number; readonly from: number; readonly to: number } | null;
  readonly perSemitone: number;
}

/** What to lay out. */
export interface PairInput {
  readonly players: readonly Player[];
  readonly left: LessonTexture;
  readonly right: LessonTexture;
  readonly size: PairSize;
  /** Highest and lowest pitch of the scale, so that it stays put while the right one moves. */
  readonly top: number;
  readonly bottom: number;
  readonly width: number;
  readonly height: number;
}

/** Most tokens that left a place and are still outlined there. */
const mostGhosts = 4;

/**
 * Lays two voicings out on one vertical pitch scale.
 * @param input - the voicings and the room
 * @returns where everything lies
 */
export function pairPlan(input: PairInput): PairPlan {
  const { players, left, right, size, top, bottom, width, height } = input;
  const sizes = pairSizes[size];
  const half = sizes.token.height / 2;
  const perSemitone = Math.min(
    sizes.perSemitone,
    (height - 2 * half - 8) / Math.max(1, top - bottom),
  );
  const yOf = (pitch: number) => half + 4 + perSemitone * (top - pitch);
  const columns = columnsOf(players, size, width);
  const shared = left.stack.filter((pitch) => right.stack.includes(pitch));
  const room: Room = { players, size, yOf, columns };
  const tokens = {
    left: tokensOf(left, columns.left, room),
    right: tokensOf(right, columns.right, room),
  };
  return {
    width,
    height: Math.min(height, 2 * half + 8 + perSemitone * (top - bottom)),
    perSemitone,
    shared: shared.map(yOf),
    move: moveOf(left, right, columns.right, yOf),
    left: {
      ...ladderOf(left, tokens.left, columns.left, room),
      labels: labelsOf(left.stack, columns.left.from, sizes, yOf),
      ghosts: silentOnes(left, right, tokens, room),
    },
    right: {
      ...ladderOf(right, tokens.right, columns.right, room),
      labels: labelsOf(
        right.stack.filter((pitch) => !shared.includes(pitch)),
        columns.right.from,
        sizes,
        yOf,
      ),
      ghosts: movedOnes(left, right, columns.left, tokens.left, columns.right),
    },
  };
}

interface Columns {
  readonly from: number;
  readonly to: number;
  readonly sections: readonly SectionId[];
  readonly width: number;
  readonly between: number;
}

interface Room {
  readonly players: readonly Player[];
  readonly size: PairSize;
  readonly yOf: (pitch: number) => number;
  readonly columns: { readonly left: Columns; readonly right: Columns };
}

/** Room for two ladders of equal width with their labels and numbers. */
function columnsOf(players: readonly Player[], size: PairSize, width: number): Room["columns"] {
  const sizes = pairSizes[size];
  const sections = [...new Set(players.map((player) => player.section))];
  const around = sizes.labels + sizes.rightLabels + 2 * sizes.aside;
  const gaps = sizes.between * (sections.length - 1);
  const each = Math.min(
    sizes.token.width,
    ((width - around) / 2 - gaps) / Math.max(1, sections.length),
  );
  const wide = each * sections.length + gaps;
  // What is left over goes between the two and to the outside, so that they stand apart.
  const spare = Math.max(0, width - around - 2 * wide);
  const start = sizes.labels + spare * 0.12;
  const second = start + wide + sizes.aside + sizes.rightLabels + spare * 0.6;
  const column = (from: number): Columns => ({
    from,
    to: from + wide,
    sections,
    width: each,
    between: sizes.between,
  });
  return { left: column(start), right: column(second) };
}

function xOf(columns: Columns, section: SectionId): number {
  const at = columns.sections.indexOf(section);
  return columns.from + at * (columns.width + columns.between);
}

/** The tokens of one voicing; those of a section that would overlap stand side by side. */
function tokensOf(texture: LessonTexture, columns: Columns, room: Room): readonly PairToken[] {
  const sizes = pairSizes[room.size];
  return columns.sections.flatMap((section) => {
    const groups = notesOf(texture, section, room.players);
    const slots = slotsOf(
      groups.map(([pitch]) => room.yOf(pitch)),
      sizes.token.height + 2,
    );
    return groups.map(([pitch, players], index): PairToken => {
      const { slot, count } = slots[index] ?? { slot: 0, count: 1 };
      const width = (columns.width - (count - 1) * 2) / count;
      return {
        section,
        players,
        pitch,
        x: xOf(columns, section) + slot * (width + 2),
        y: room.yOf(pitch),
        width,
        label: tokenLabel(players, width, sizes.label),
      };
    });
  });
}

/** Players of a section by the note they sound, top note first. */
function notesOf(
  texture: LessonTexture,
  section: SectionId,
  players: readonly Player[],
): readonly (readonly [SoundingMidi, readonly Player[]])[] {
  const byPitch = new Map<SoundingMidi, Player[]>();
  players.forEach((player, index) => {
    const pitch = texture.pitches[index] ?? 0;
    if (player.section !== section || pitch === 0) return;
    const sounding = quantity<SoundingMidi>(pitch);
    byPitch.set(sounding, [...(byPitch.get(sounding) ?? []), player]);
  });
  return [...byPitch].sort(([a], [b]) => b - a);
}

/** Which of how many places side by side each of a column of middles takes. */
function slotsOf(
  ys: readonly number[],
  apart: number,
): readonly { readonly slot: number; readonly count: number }[] {
  const slots: { slot: number; count: number }[] = [];
  let run: { slot: number; count: number }[] = [];
  let lasts: number[] = [];
  ys.forEach((y, index) => {
    const before = ys[index - 1];
    if (before === undefined || y - before >= apart) {
      run = [];
      lasts = [];
    }
    const free = lasts.findIndex((last) => y - last >= apart);
    const slot = free === -1 ? lasts.length : free;
    lasts[slot] = y;
    run.push({ slot, count: 1 });
    for (const each of run) each.count = lasts.length;
    const own = run[run.length - 1];
    if (own !== undefined) slots.push(own);
  });
  return slots;
}

function ladderOf(
  texture: LessonTexture,
  tokens: readonly PairToken[],
  columns: Columns,
  { yOf, size }: Room,
): Omit<PairLadder, "labels" | "ghosts"> {
  const { from, to } = columns;
  const half = pairSizes[size].token.height / 2;
  return {
    from,
    to,
    top: yOf(texture.stack[texture.stack.length - 1] ?? 0),
    bottom: yOf(texture.stack[0] ?? 0),
    tokens,
    rungs: texture.stack.map((pitch) => ({
      pitch,
      y: yOf(pitch),
      over: tokens
        .filter((one) => one.pitch === pitch)
        .map(({ x, width }) => [x, x + width] as const),
    })),
    warps: columns.sections.flatMap((section) => {
      const ys = tokens.filter((one) => one.section === section).map((one) => one.y);
      if (ys.length === 0) return [];
      const x = xOf(columns, section) + columns.width / 2;
      return [{ section, x, from: Math.min(...ys) - half, to: Math.max(...ys) + half }];
    }),
  };
}

/** How much smaller crowded labels are set, and how far from its thread a label may stand. */
const crowded = { scale: 0.72, most: 7 };

function labelsOf(
  stack: readonly number[],
  x: number,
  { degree, note }: PairSizes,
  yOf: (pitch: number) => number,
): readonly PairLabel[] {
  const falling = [...stack].sort((a, b) => b - a);
  const wanted = falling.map(yOf);
  const spread = (scale: number) => spreadLabels(wanted, scale * degree * 0.94);
  const isCrowded = spread(1).some((y, index) => Math.abs(y - (wanted[index] ?? y)) > crowded.most);
  const scale = isCrowded ? crowded.scale : 1;
  const ys = spread(scale);
  return falling.map((pitch, index) => ({
    pitch,
    x,
    y: ys[index] ?? yOf(pitch),
    degree: scale * degree,
    note: isCrowded ? Math.min(note, scale * degree) : note,
  }));
}

/** On the left: who rests there, outlined where they join on the right. */
function silentOnes(
  left: LessonTexture,
  right: LessonTexture,
  tokens: { readonly left: readonly PairToken[]; readonly right: readonly PairToken[] },
  { players, columns }: Room,
): readonly PairGhost[] {
  if (tokens.left.length === 0 || left.players >= right.players) return [];
  const sounding = new Set(
    players.filter((_, index) => (left.pitches[index] ?? 0) > 0).map((player) => player.id),
  );
  const isTaken = ({ pitch, section }: PairToken) =>
    tokens.left.some((one) => one.pitch === pitch && one.section === section);
  return tokens.right
    .filter((token) => token.players.every(({ id }) => !sounding.has(id)) && !isTaken(token))
    .map((token) => shifted(token, columns.left, columns.right));
}

/** On the right: where the players of the left have moved away from, if they are few. */
function movedOnes(
  left: LessonTexture,
  right: LessonTexture,
  there: Columns,
  tokens: readonly PairToken[],
  here: Columns,
): readonly PairGhost[] {
  const gone = left.stack.filter((pitch) => !right.stack.includes(pitch));
  const moved = tokens.filter(({ pitch }) => gone.includes(pitch));
  return moved.length > mostGhosts ? [] : moved.map((token) => shifted(token, here, there));
}

function shifted({ section, x, y, width }: PairToken, to: Columns, from: Columns): PairGhost {
  return { section, x: x - from.from + to.from, y, width };
}

/** The move, where exactly one note gives way to one other. */
function moveOf(
  left: LessonTexture,
  right: LessonTexture,
  columns: Columns,
  yOf: (pitch: number) => number,
): PairPlan["move"] {
  const gone = left.stack.filter((pitch) => !right.stack.includes(pitch));
  const come = right.stack.filter((pitch) => !left.stack.includes(pitch));
  const [from, to] = [gone[0], come[0]];
  if (gone.length !== 1 || come.length !== 1 || from === undefined || to === undefined) return null;
  return { x: columns.from + columns.width / 2, from: yOf(from), to: yOf(to) };
}
