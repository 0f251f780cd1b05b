import { quantity } from "../base/index.ts";
import { lineUpById } from "../band/index.ts";
import {
  melodyFromBars,
  readPitch,
  type Divisions,
  type Melody,
  type SpelledPitch,
  type WrittenItem,
} from "../theory/index.ts";
import { allRules } from "../voicing/index.ts";
import { demoTable, type DemoItem, type DemoRow } from "./demo-table.ts";
import type { PhraseQuestion } from "./phrase-types.ts";
import { texturePlan } from "./texture-presets.ts";

function pitchOf(text: string): SpelledPitch {
  const read = readPitch(text);
  if (!read.ok) throw new RangeError(`the demo has no pitch "${text}"`);
  return read.value.spelled;
}

function itemOf([pitch, length, chord, tie]: DemoItem): WrittenItem {
  return {
    length,
    ...(pitch === "" ? {} : { pitch: pitchOf(pitch) }),
    ...(chord === undefined ? {} : { chord }),
    isTied: tie !== undefined,
  };
}

function melodyOf(row: DemoRow): Melody {
  const { letter, alteration } = pitchOf(`${row.tonic}4`);
  const built = melodyFromBars(
    {
      title: row.title,
      metre: { beats: 4, beatType: 4 },
      key: { tonic: { letter, alteration }, mode: "major" },
      tempo: quantity(row.tempo),
      style: row.style,
    },
    row.bars.map((bar) => bar.map(itemOf)),
  );
  if (!built.ok) throw new RangeError(built.problems.map(({ message }) => message).join(" "));
  return built.value;
}

/**
 * A phrase to start from, with its band and its shape.
 * @param id - "shout" or "ballad"
 * @returns the question, every choice automatic
 * @throws RangeError when there is no such phrase
 */
export function demoPhrase(id: DemoRow["id"]): PhraseQuestion {
  const row = demoTable.find((each) => each.id === id);
  const band = row && lineUpById(row.lineUp);
  if (!row || !band?.ok) throw new RangeError(`there is no demo "${id}"`);
  const melody = melodyOf(row);
  const { players } = band.value;
  return {
    melody,
    players,
    dynamics: [{ at: quantity<Divisions>(0), dynamic: row.dynamic }],
    colour: "tensions",
    bassSounds: true,
    rules: allRules,
    strictLowIntervals: false,
    clusterSetting: false,
    homes: true,
    choices: {},
    ...texturePlan(row.shape, melody, players),
    breaths: true,
    locks: { notes: [], moments: [] },
  };
}
