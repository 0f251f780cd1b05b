import { quantity, type SoundingMidi } from "../base/index.ts";
import { canSound, type Dynamic, type Player } from "../band/index.ts";
import {
  pitchName,
  placeOf,
  placeText,
  readMelody,
  tickedTones,
  withoutRepeats,
  type Checked,
  type Melody,
  type MelodyProblem,
} from "../theory/index.ts";
import { searchAtlas, type Lock, type Question } from "../voicing/index.ts";
import { plannedBreaths } from "./breaths.ts";
import { textureAt } from "./curves.ts";
import { harmonise } from "./harmonise.ts";
import { momentsOf, type Moment } from "./moments.ts";
import type {
  AskedMoment,
  DynamicMark,
  Phrase,
  PhraseQuestion,
  PhraseRemark,
} from "./phrase-types.ts";
import { whoPlays } from "./who-plays.ts";

/**
 * Works a question out: reads the melody, harmonises it, cuts it into moments and says for each what
 * a voicing must respect.
 * @param question - melody, players, choices, curves, locks
 * @returns the phrase; or everything that is wrong, each naming its bar. Codes: those of readMelody
 *   and harmonise, `line-up-empty`, `melody-out-of-reach`, `lock-unknown-moment`, and those of the
 *   voicing search
 */
export function readPhrase(question: PhraseQuestion): Checked<Phrase> {
  const { players } = question;
  const written = readMelody(question.melody);
  if (!written.ok) return written;
  const melody = withoutRepeats(question.melody);
  const read = readMelody(melody);
  if (!read.ok) return read;
  if (players.length === 0)
    return wrong("line-up-empty", "Nobody is in the line-up: add a player.");
  const harmonised = harmonise(melody, read.value, question.choices);
  if (!harmonised.ok) return harmonised;
  const moments = momentsOf(harmonised.value, read.value.changes);
  const breaths = question.breaths
    ? plannedBreaths(moments, melody, players, question.leadPlayer)
    : moments.map(() => new Set<string>());
  const remarks: PhraseRemark[] = [];
  const asked = moments.map((moment) =>
    askedMoment(question, moment, breaths[moment.index] ?? new Set(), remarks),
  );
  remarks.push(...switchRemarks(moments));
  const problems = [
    ...lockProblems(question, moments),
    ...asked.flatMap((one) => problemsOf(one, melody)),
  ];
  if (problems.length > 0) return { ok: false, problems };
  return {
    ok: true,
    value: {
      melody,
      changes: read.value.changes,
      dynamics: question.dynamics,
      players,
      breaths: question.breaths,
      harmonised: harmonised.value,
      moments: asked,
      remarks,
    },
  };
}

/** Fewer notes than this between harmony and a line are too few. */
const fewestOfTexture = 3;

/** Where harmony and unison or octaves change within a few notes. */
function switchRemarks(moments: readonly Moment[]): readonly PhraseRemark[] {
  const starts = moments.filter(
    ({ texture, isHeld }, n) => n > 0 && !isHeld && texture !== moments[n - 1]?.texture,
  );
  return starts.flatMap(({ id, index }, n): PhraseRemark[] => {
    const next = starts[n + 1];
    if (!next || next.index - index >= fewestOfTexture) return [];
    const text =
      "Harmony and line change within a few notes here; staying with one is easier to hear (C. Israels, Exploring Jazz Arranging, lesson 15).";
    return [{ momentId: id, text }];
  });
}

function wrong(code: string, message: string): { ok: false; problems: readonly MelodyProblem[] } {
  return { ok: false, problems: [{ code, message }] };
}

/**
 * Dynamic at a time.
 * @param marks - dynamics in order of time
 * @param at - time
 * @returns the last mark at or before it; mf before the first
 */
export function dynamicAt(marks: readonly DynamicMark[], at: Moment["onset"]): Dynamic {
  return marks.filter((mark) => mark.at <= at).at(-1)?.dynamic ?? "mf";
}

function askedMoment(
  question: PhraseQuestion,
  moment: Moment,
  breathing: ReadonlySet<string>,
  intoRemarks: PhraseRemark[],
): AskedMoment {
  const { players } = question;
  const locks = question.locks.notes.filter(({ momentId }) => momentId === moment.id);
  const whole = question.locks.moments.find(({ momentId }) => momentId === moment.id);
  const mayLead = (player: Player): boolean =>
    locks.every(({ playerId, sounding: at }) => playerId !== player.id || at === moment.lead);
  const { ids, isCalledIn } = whoPlays(players, moment, question.turns, mayLead);
  if (isCalledIn)
    intoRemarks.push({
      momentId: moment.id,
      text: "Nobody whose turn it is reaches this melody note, so whoever reaches it joins in.",
    });
  const mayRest = (player: Player): boolean =>
    !locks.some(({ playerId }) => playerId === player.id);
  const silent = players.filter((player) => mayRest(player) && !ids.has(player.id));
  const withBreaths = players.filter(
    (player) => mayRest(player) && (!ids.has(player.id) || breathing.has(player.id)),
  );
  // Nobody breathes where that would leave the melody without a player.
  const reaches = (player: Player): boolean => mayLead(player) && canSound(player, moment.lead);
  const isLed = players.some((player) => reaches(player) && !withBreaths.includes(player));
  const resting = isLed ? withBreaths : silent;
  const sounding = players.length - resting.length;
  const asked = textureAt(question.curves, moment.onset);
  return {
    moment,
    question: questionOf(question, moment, [
      ...locks.map(({ playerId, sounding: at }): Lock => ({ playerId, sounding: at })),
      ...resting.map(({ id }): Lock => ({ playerId: id, sounding: "rest" })),
    ]),
    asked: { ...asked, weight: Math.min(asked.weight, Math.max(1, sounding)) },
    ...(whole ? { held: players.map(({ id }) => whole.pitches[id] ?? 0) } : {}),
  };
}

function questionOf(question: PhraseQuestion, moment: Moment, locks: readonly Lock[]): Question {
  const { players, colour, leadPlayer } = question;
  const { chord, lead, technique } = moment;
  const isBorrowed =
    technique !== undefined && technique !== "chromatic" && technique !== "parallel";
  const leader = players.find(({ id }) => id === leadPlayer);
  const mayLead =
    leader !== undefined &&
    canSound(leader, lead) &&
    !locks.some(({ playerId }) => playerId === leader.id);
  return {
    chord,
    lead,
    players,
    dynamic: dynamicAt(question.dynamics, moment.onset),
    ticked: tickedTones(chord, isBorrowed ? "plain" : colour),
    required: [],
    bassSounds: question.bassSounds,
    rules: question.rules,
    strictLowIntervals: question.strictLowIntervals,
    clusterSetting: question.clusterSetting,
    shortNote: moment.duration <= quarterOf(question.melody),
    homes: question.homes,
    locks,
    ...(mayLead ? { leadPlayer: leader.id } : {}),
  };
}

const quarterOf = ({ division }: Melody): number => division;

function lockProblems(
  { locks }: PhraseQuestion,
  moments: readonly Moment[],
): readonly MelodyProblem[] {
  const ids = new Set(moments.map(({ id }) => id));
  const named = [...locks.notes, ...locks.moments].map(({ momentId }) => momentId);
  return [...new Set(named)]
    .filter((id) => !ids.has(id))
    .map((id) => ({
      code: "lock-unknown-moment",
      message: `Something is fixed at “${id}”, which is no longer in the melody: free it.`,
    }));
}

/** What the voicing search would say of a moment, with its bar. */
function problemsOf(
  { question, moment, held }: AskedMoment,
  melody: Melody,
): readonly MelodyProblem[] {
  if (held) return heldProblems(held, question, moment, melody);
  const searched = searchAtlas(question);
  if (!searched.ok)
    return [atMoment(moment, melody, searched.problem.code, searched.problem.message)];
  const isLed = question.players.some(
    (player) =>
      canSound(player, moment.lead) &&
      question.locks.every(
        ({ playerId, sounding }) => playerId !== player.id || sounding === moment.lead,
      ),
  );
  if (isLed) return [];
  const name = pitchName(moment.lead, moment.chord, { signs: "unicode" });
  const message = `whoever reaches the melody note ${name} is fixed on something else or rests: free a player.`;
  return [atMoment(moment, melody, "melody-out-of-reach", message)];
}

function heldProblems(
  held: readonly number[],
  { players }: Question,
  moment: Moment,
  melody: Melody,
): readonly MelodyProblem[] {
  return players.flatMap((player, index) => {
    const pitch = quantity<SoundingMidi>(held[index] ?? 0);
    if (pitch === 0 || canSound(player, pitch)) return [];
    const message = `${player.name} is fixed on ${pitchName(pitch, moment.chord, { signs: "unicode" })}, which lies outside the player's range.`;
    return [atMoment(moment, melody, "lock-out-of-range", message)];
  });
}

function atMoment(moment: Moment, melody: Melody, code: string, message: string): MelodyProblem {
  const where = placeText(melody, moment.onset);
  return {
    code,
    message: `${where.charAt(0).toUpperCase()}${where.slice(1)}: ${message}`,
    bar: placeOf(melody, moment.onset).bar,
    noteId: moment.noteId,
  };
}
