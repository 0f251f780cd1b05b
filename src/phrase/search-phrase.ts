import type { Count, Semitones } from "../base/index.ts";
import { beatLength, type Melody } from "../theory/index.ts";
import { densityOf } from "./curves.ts";
import { moveCosts } from "./line-cost-table.ts";
import { moveCost, MoveMemory, speedOf, type PitchOrRest } from "./move-cost.ts";
import { secondsOf } from "./moments.ts";
import { pathThrough, solveLast, solveStage, type Solved, type Step } from "./path.ts";
import type {
  AskedMoment,
  Phrase,
  PhraseAnswer,
  PhraseProgress,
  PhraseRemark,
  VoicedMoment,
} from "./phrase-types.ts";
import { stageOf, type Stage, type StageSize } from "./stages.ts";

/** What a first, playable answer is chosen from. Judgement. */
const firstSize: StageSize = {
  rows: 16,
  cells: 1,
  stacksInCell: 1,
  assignmentsOfStack: 8,
};

/** What the answer is chosen from: at least 600 voicings a moment, as far as the atlas has them. */
const fullSize: StageSize = {
  rows: 600,
  cells: 10,
  stacksInCell: 5,
  assignmentsOfStack: 12,
};

/** Moments between two reports of the full search. */
const momentsBetweenReports = 4;

/**
 * What lies between a moment and the one after it.
 * @param before - the moment
 * @param after - the one after it
 * @param melody - tempo, metre, division
 * @returns leads and situation of every player's move
 * @source a silence of half a beat or more lets a line begin anew: judgement
 */
export function stepBetween(before: AskedMoment, after: AskedMoment, melody: Melody): Step {
  const { moment } = after;
  const apart = (moment.onset - before.moment.onset) as typeof moment.onset;
  return {
    leadBefore: before.moment.lead,
    leadAfter: moment.lead,
    situation: {
      speed: speedOf(secondsOf(apart, melody)),
      isMelodyMoving: !moment.isHeld && moment.lead !== before.moment.lead,
      isAfterRest: 2 * moment.restBefore >= beatLength(melody),
    },
  };
}

/**
 * Finds the best sequence of voicings for a phrase: exact over the voicings of each moment, the same
 * however it is stepped through. A first answer comes early from few voicings a moment; the full one
 * costs no more.
 * @param phrase - a question that readPhrase has worked out
 * @returns a generator of progress that ends with the answer
 */
export function* searchPhrase(phrase: Phrase): Generator<PhraseProgress, PhraseAnswer> {
  const memory = new MoveMemory();
  const moments = phrase.moments.length;
  const first = yield* solvePhrase(phrase, firstSize, "first", memory);
  yield { stage: "first", momentsDone: moments, moments, answer: first };
  const full = yield* solvePhrase(phrase, fullSize, "full", memory);
  yield { stage: "full", momentsDone: moments, moments, answer: full };
  return full;
}

function* solvePhrase(
  phrase: Phrase,
  size: StageSize,
  name: PhraseProgress["stage"],
  memory: MoveMemory,
): Generator<PhraseProgress, PhraseAnswer> {
  const { moments, melody, players } = phrase;
  const stages = new Array<Stage>(moments.length);
  const solved = new Array<Solved>(moments.length);
  for (let index = moments.length - 1; index >= 0; index--) {
    const asked = moments[index]!;
    const after = moments[index + 1];
    const next = stages[index + 1];
    const isBlockNext = moments[index - 1]?.moment.movesAsBlock ?? false;
    const stage = stageOf(asked, isBlockNext ? doubled(size) : size, next, after);
    stages[index] = stage;
    solved[index] =
      after && next
        ? solveStage(
            players,
            stage,
            next,
            solved[index + 1]!,
            stepBetween(asked, after, melody),
            memory,
          )
        : solveLast(stage);
    const done = moments.length - index;
    if (name === "full" && done % momentsBetweenReports === 0)
      yield { stage: name, momentsDone: done, moments: moments.length };
  }
  return answerFrom(phrase, stages, solved);
}

/** A moment that a block moves into has room for those that cannot be moved. */
function doubled(size: StageSize): StageSize {
  return { ...size, rows: 2 * size.rows, cells: 2 * size.cells };
}

function answerFrom(
  phrase: Phrase,
  stages: readonly Stage[],
  solved: readonly Solved[],
): PhraseAnswer {
  const rows = pathThrough(solved);
  const voiced: VoicedMoment[] = [];
  const remarks: PhraseRemark[] = [...phrase.remarks];
  phrase.moments.forEach((asked, index) => {
    const stage = stages[index]!;
    if (stage.remark !== "") remarks.push({ momentId: asked.moment.id, text: stage.remark });
    voiced.push(voicedMoment(phrase, asked, stage, rows[index] ?? 0, voiced.at(-1)));
  });
  const [first] = solved;
  return { moments: voiced, cost: first?.best[rows[0] ?? 0] ?? 0, remarks };
}

function voicedMoment(
  phrase: Phrase,
  asked: AskedMoment,
  stage: Stage,
  row: Count,
  before: VoicedMoment | undefined,
): VoicedMoment {
  const width = phrase.players.length;
  const pitches = [...stage.pitches.subarray(row * width, (row + 1) * width)];
  const sounding = pitches.filter((pitch) => pitch > 0);
  const distinct = new Set(sounding);
  const span = Math.max(...distinct) - Math.min(...distinct);
  const askedBefore = phrase.moments[asked.moment.index - 1];
  const lines =
    before && askedBefore
      ? linesCost(phrase, before.pitches, pitches, stepBetween(askedBefore, asked, phrase.melody))
      : 0;
  return {
    moment: asked.moment,
    pitches,
    asked: asked.asked,
    span: span as Semitones,
    notes: distinct.size,
    density: densityOf(distinct.size, span),
    players: sounding.length,
    cost: {
      voicing: stage.voicing[row]!,
      texture: stage.texture[row]!,
      chairs: stage.chairs[row]!,
      lines,
    },
    candidates: stage.count,
  };
}

/**
 * What all players' moves between two voicings cost.
 * @param phrase - gives the players
 * @param from - pitches before, 0 for rest
 * @param to - pitches after, 0 for rest
 * @param step - what lies between
 * @returns whole number
 */
export function linesCost(
  { players }: Pick<Phrase, "players">,
  from: readonly Count[],
  to: readonly Count[],
  step: Step,
): Count {
  return players.reduce((sum, player, p) => {
    const start = (from[p] ?? 0) as PitchOrRest;
    const end = (to[p] ?? 0) as PitchOrRest;
    return sum + moveCost(player, start, end, step.situation) + leadChange(start, end, step);
  }, 0);
}

function leadChange(start: PitchOrRest, end: PitchOrRest, step: Step): number {
  if (step.situation.isAfterRest || start === 0 || end === 0) return 0;
  const changes = (start === step.leadBefore) !== (end === step.leadAfter);
  return changes ? moveCosts.leadChange : 0;
}
