import type { Stave } from "vexflow/core";
import {
  Accidental,
  Articulation,
  Beam,
  Dot,
  Ornament,
  StaveNote,
  Tuplet,
  Voice,
  VoiceMode,
} from "vexflow/core";
import type { PhraseHead, PhraseStaff, PhraseStaffBar, PhraseValue } from "../notation/index.ts";
import type { StaffTheme } from "./staff-theme.ts";

const durations: Readonly<Record<PhraseValue["value"], string>> = Object.freeze({
  breve: "1/2",
  whole: "w",
  half: "h",
  quarter: "q",
  eighth: "8",
  "16th": "16",
  "32nd": "32",
  "64th": "64",
  "128th": "128",
});
const signCodes: Readonly<Record<PhraseHead["sign"], string>> = Object.freeze({
  none: "",
  natural: "n",
  flat: "b",
  sharp: "#",
  "double-flat": "bb",
  "double-sharp": "##",
});
/** Signs of the marks that stand at a head. */
const markCodes: Readonly<Partial<Record<PhraseValue["marks"][number], string>>> = Object.freeze({
  staccato: "a.",
  tenuto: "a-",
  accent: "a>",
  marcato: "a^",
});
const gestures: readonly string[] = ["scoop", "doit", "fall"];
const restKeys = Object.freeze({ treble: "b/4", bass: "d/3" });
const barRestKeys = Object.freeze({ treble: "d/5", bass: "f/3" });
const ABOVE = 3;
const BELOW = 4;

/** A value with the note that draws it. */
export interface MadeValue {
  readonly value: PhraseValue;
  readonly note: StaveNote;
}

/** One bar of one staff, made but not yet placed. */
export interface MadeBar {
  readonly values: readonly MadeValue[];
  readonly voice: Voice;
  readonly beams: readonly Beam[];
  readonly tuplets: readonly Tuplet[];
}

/**
 * Makes the notes, beams and tuplets of one bar of one staff.
 * @param staff - clef
 * @param bar - what stands in it
 * @param stave - where it will stand
 * @param theme - colours
 * @returns everything, not yet formatted
 */
export function makeBar(
  { clef }: PhraseStaff,
  bar: PhraseStaffBar,
  stave: Stave,
  theme: StaffTheme,
): MadeBar {
  const voice = new Voice({ numBeats: 4, beatValue: 4 }).setMode(VoiceMode.SOFT);
  const values = bar.values.map((value) => ({ value, note: noteOf(value, clef, theme) }));
  const tickables =
    values.length > 0
      ? values.map(({ note }) => note)
      : [new StaveNote({ keys: [barRestKeys[clef]], duration: "wr", clef, alignCenter: true })];
  for (const note of tickables) note.setStave(stave);
  const beams = runsOf(
    values,
    ({ beams: [beam] }) => beam === "begin",
    ({ beams: [beam] }) => beam === "end",
  ).map(
    (run) =>
      new Beam(
        run.map(({ note }) => note),
        true,
      ),
  );
  const tuplets = runsOf(
    values,
    (value) => value.beginsTuplet === true,
    (value) => value.endsTuplet === true,
  ).map((run) => tupletOf(run));
  voice.addTickables(tickables);
  for (const { note, value } of values) addMarks(note, value);
  return { values, voice, beams, tuplets };
}

function noteOf(value: PhraseValue, clef: PhraseStaff["clef"], theme: StaffTheme): StaveNote {
  const { heads, dots } = value;
  const isRest = heads.length === 0;
  const note = new StaveNote({
    keys: isRest ? [restKeys[clef]] : heads.map(keyOf),
    duration: `${durations[value.value]}${isRest ? "r" : ""}`,
    dots,
    clef,
    autoStem: true,
  });
  heads.forEach(({ sign, isCourtesy }, index) => {
    if (sign === "none") return;
    const accidental = new Accidental(signCodes[sign]);
    note.addModifier(isCourtesy ? accidental.setAsCautionary() : accidental, index);
  });
  if (dots > 0) Dot.buildAndAttach([note], { all: true });
  note.setLedgerLineStyle({ strokeStyle: theme.ink, lineWidth: 1.2 });
  return note;
}

function keyOf({ spelled }: PhraseHead): string {
  return `${spelled.letter.toLowerCase()}/${spelled.octave}`;
}

/** On the side away from the stem, a roof always above; stems are known once beams are made. */
function addMarks(note: StaveNote, { marks }: PhraseValue): void {
  for (const mark of marks) {
    const code = markCodes[mark];
    if (gestures.includes(mark)) note.addModifier(new Ornament(mark), 0);
    if (code === undefined) continue;
    const isAbove = mark === "marcato" || note.getStemDirection() < 0;
    note.addModifier(new Articulation(code).setPosition(isAbove ? ABOVE : BELOW), 0);
  }
}

function tupletOf(run: readonly MadeValue[]): Tuplet {
  const { notes = 3, inTimeOf = 2 } = run[0]?.value.tuplet ?? {};
  const isBeamed = run.every(({ value }) => value.beams.length > 0);
  return new Tuplet(
    run.map(({ note }) => note),
    { numNotes: notes, notesOccupied: inTimeOf, bracketed: !isBeamed, ratioed: false },
  );
}

function runsOf(
  values: readonly MadeValue[],
  begins: (value: PhraseValue) => boolean,
  ends: (value: PhraseValue) => boolean,
): readonly (readonly MadeValue[])[] {
  const runs: MadeValue[][] = [];
  let open: MadeValue[] | undefined;
  for (const made of values) {
    if (begins(made.value)) open = [];
    open?.push(made);
    if (!open || !ends(made.value)) continue;
    runs.push(open);
    open = undefined;
  }
  return runs;
}
