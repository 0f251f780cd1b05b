import { quantity, type Problem, type Result } from "../base/index.ts";
import { readChord, readPitch, type Chord, type ReadPitch } from "../theory/index.ts";
import { remarksOn, searchAtlas, type Question } from "../voicing/index.ts";
import type { FieldProblem, Inquiry, InquiryField, StripTone } from "./inquiry.ts";
import { stripTones, tonesWith } from "./strip-tones.ts";

/** An inquiry, read: a question that can be searched, or what is wrong with which field. */
export type InquiryReading =
  | {
      readonly ok: true;
      readonly question: Question;
      readonly strip: readonly StripTone[];
      /** Readings chosen where the trade is split, and clashes between melody and chord. */
      readonly remarks: readonly string[];
    }
  | {
      readonly ok: false;
      readonly problems: readonly FieldProblem[];
      readonly strip: readonly StripTone[];
    };

/** The field that a problem of the search belongs to. */
const fieldOfProblem: Readonly<Record<string, InquiryField>> = {
  "line-up-empty": "line-up",
  "line-up-too-large": "line-up",
  "range-upside-down": "line-up",
  "melody-out-of-reach": "melody",
  "lock-unknown-player": "locks",
  "locks-contradict": "locks",
  "lock-out-of-range": "locks",
  "lock-not-in-chord": "locks",
};

const atField = (field: InquiryField, problem: Problem): FieldProblem => ({ ...problem, field });

/**
 * Reads what the user asked. Each field is read on its own, so that several problems are told at
 * once and none hides another.
 * @param inquiry - the user's text and choices
 * @returns the question, or a problem for each field that cannot be read
 */
export function readInquiry(inquiry: Inquiry): InquiryReading {
  const chord = readChord(inquiry.chordText);
  const lead = readPitch(inquiry.melodyText);
  const strip = chord.ok ? stripTones(inquiry, chord.value) : [];
  const problems: FieldProblem[] = [];
  if (!chord.ok) problems.push(atField("chord", chord.problem));
  if (!lead.ok) problems.push(atField("melody", lead.problem));
  if (!chord.ok || !lead.ok) return { ok: false, problems, strip };
  const question = questionFrom(inquiry, chord.value, lead.value, strip);
  const checked: Result<unknown> = searchAtlas(question);
  if (!checked.ok) {
    const field = fieldOfProblem[checked.problem.code] ?? "rules";
    return { ok: false, problems: [atField(field, checked.problem)], strip };
  }
  return {
    ok: true,
    question,
    strip,
    remarks: [...chord.value.choices, ...remarksOn(question)],
  };
}

function questionFrom(
  inquiry: Inquiry,
  chord: Chord,
  lead: ReadPitch,
  strip: readonly StripTone[],
): Question {
  const { leadPlayer, octaveBelowPlayer, octaveAbovePlayer } = inquiry;
  return {
    chord,
    lead: lead.sounding,
    players: inquiry.players,
    dynamic: inquiry.dynamic,
    ticked: tonesWith(strip, "on", "required"),
    required: tonesWith(strip, "required"),
    bassSounds: inquiry.bassSounds,
    rules: inquiry.rules,
    strictLowIntervals: inquiry.strictLowIntervals,
    clusterSetting: inquiry.clusterSetting,
    shortNote: inquiry.shortNote,
    homes: inquiry.homes,
    locks: inquiry.locks.map((lock) => ({
      ...lock,
      sounding: lock.sounding === "rest" ? "rest" : quantity(lock.sounding),
    })),
    ...(leadPlayer === undefined ? {} : { leadPlayer }),
    ...(octaveBelowPlayer === undefined ? {} : { octaveBelowPlayer }),
    ...(octaveAbovePlayer === undefined ? {} : { octaveAbovePlayer }),
  };
}
