import { melodyPlace } from "./phrase-place.ts";
import {
  checkLines,
  type Harmonised,
  type Phrase,
  type PhraseAnswer,
  type PhrasePerformance,
  type PlayerPart,
  type VoicedMoment,
} from "../phrase/index.ts";
import { formatPitch, type Melody } from "../theory/index.ts";

/** An answer with its parts and a name. */
export interface NamedAnswer {
  readonly label: string;
  readonly answer: PhraseAnswer;
  readonly performance: PhrasePerformance;
}

/**
 * The melody as data: what it is and how each note is harmonised. Times are in quarter notes.
 * @param phrase - the phrase
 * @returns plain data
 */
export function melodyData(phrase: Phrase) {
  const { melody, harmonised } = phrase;
  const { title, metre, tempo, style, key } = melody;
  return {
    title,
    metre: `${metre.beats}/${metre.beatType}`,
    key: `${formatPitch({ ...key.tonic, octave: 4 }).replace("4", "")} ${key.mode}`,
    tempo,
    style,
    pickup: melody.pickup / melody.division,
    quarters: melody.length / melody.division,
    notes: harmonised.map((each) => harmonisedData(each, melody)),
  };
}

function harmonisedData(each: Harmonised, melody: Melody) {
  const { note, role, technique, texture, kind, chord, main, reason } = each;
  return {
    id: note.id,
    ...melodyPlace(melody, note.onset),
    quarters: note.duration / melody.division,
    name: formatPitch(note.pitch),
    midi: note.sounding,
    role,
    ...(technique === undefined ? {} : { technique }),
    texture,
    kind,
    chord: chord.symbol,
    main: main.symbol,
    reason,
  };
}

/**
 * An answer as data: voicings moment by moment, every player's line and what is to be said of it.
 * @param phrase - the phrase
 * @param named - the answer
 * @returns plain data
 */
export function answerData(phrase: Phrase, { label, answer, performance }: NamedAnswer) {
  const checks = checkLines(phrase, answer, performance.parts);
  return {
    label,
    cost: answer.cost,
    moments: answer.moments.map((voiced) => momentData(phrase, voiced)),
    parts: performance.parts.map((part) => partData(part, phrase.melody)),
    lines: checks.map(({ player, range, longestStretch, tiringShare, remarks }) => ({
      player: player.id,
      ...(range === undefined ? {} : { lowest: range.low, highest: range.high }),
      longestSeconds: rounded(longestStretch.seconds),
      tiringShare: rounded(tiringShare),
      remarks: remarks.map(({ text }) => text),
    })),
    remarks: answer.remarks.map(({ momentId, text }) => ({ moment: momentId, text })),
  };
}

const rounded = (value: number): number => Math.round(value * 100) / 100;

function momentData({ players, melody }: Phrase, voiced: VoicedMoment) {
  const { moment, pitches, asked, span, notes, density, players: sounding, cost } = voiced;
  return {
    id: moment.id,
    ...melodyPlace(melody, moment.onset),
    quarters: moment.duration / melody.division,
    chord: moment.chord.symbol,
    lead: moment.lead,
    asked: { span: asked.span, density: asked.density, players: asked.weight },
    got: { span, notes, density: rounded(density), players: sounding },
    voicing: Object.fromEntries(
      players.flatMap(({ id }, index) => (pitches[index] ? [[id, pitches[index]]] : [])),
    ),
    cost,
    candidates: voiced.candidates,
  };
}

function partData({ player, notes }: PlayerPart, melody: Melody) {
  return {
    player: player.id,
    notes: notes.map(({ onset, duration, sounding, pitch, marks }) => ({
      ...melodyPlace(melody, onset),
      quarters: duration / melody.division,
      midi: sounding,
      name: formatPitch(pitch),
      marks,
    })),
  };
}
