import {
  createHearingEngine,
  type HeardGroup,
  type HeardTone,
  type HeardVoicing,
  type HearingEngine,
  type PreparedNote,
} from "../acoustics/index.ts";
import { pitchClass, type Db, type DbSpl, type SoundingMidi } from "../base/index.ts";
import { partialsOf, type Dynamic, type InstrumentId, type Player } from "../band/index.ts";
import type { Placement, Voicing } from "../voicing/index.ts";
import { listenerRoom } from "./listener-table.ts";

/** Players whom the ear takes as one source, and how well it hears them. */
export interface HeardPlayers {
  readonly playerIds: readonly string[];
  readonly players: readonly Player[];
  readonly sounding: SoundingMidi;
  readonly judgement: HeardGroup;
  /** Who covers them most; empty when nobody does. */
  readonly coveredBy: readonly Player[];
}

/** What the listener hears of one voicing. */
export interface Listened {
  readonly heard: HeardVoicing;
  /** Each pitch class with all its players taken as one source. */
  readonly tones: readonly HeardTone[];
  readonly sources: readonly HeardPlayers[];
}

interface Ear {
  readonly engine: HearingEngine;
  readonly notes: Map<string, PreparedNote>;
}

/** Kinds of instrument that melt into one source when they share a note. */
const kinds: Readonly<Partial<Record<InstrumentId, string>>> = {
  "soprano-sax": "sax",
  "alto-sax": "sax",
  "tenor-sax": "sax",
  "baritone-sax": "sax",
  "bass-trombone": "trombone",
  flugelhorn: "flugelhorn",
  "bass-clarinet": "clarinet",
};

let sharedEar: Ear | null = null;

/** One ear for all measures: notes are prepared once and kept, which changes no result. */
function ear(): Ear {
  sharedEar ??= { engine: createHearingEngine({ field: "diffuse" }), notes: new Map() };
  return sharedEar;
}

/**
 * How much softer a note arrives in the room than one metre away in a free field.
 * @returns decibels to add, about −2
 */
export function roomLevel(): Db {
  const { volumeCubicMetres, reverberationSeconds, powerOverOneMetreDb } = listenerRoom;
  const room = 14 + 10 * Math.log10(reverberationSeconds) - 10 * Math.log10(volumeCubicMetres);
  return (room + powerOverOneMetreDb) as Db;
}

function preparedFor(player: Player, sounding: SoundingMidi, dynamic: Dynamic): PreparedNote {
  const { engine, notes } = ear();
  const { instrument, mute } = player;
  const key = `${instrument} ${sounding} ${dynamic} ${mute}`;
  const known = notes.get(key);
  if (known) return known;
  const change = roomLevel();
  const partials = partialsOf({ instrument, sounding, dynamic, mute }).map(({ hz, dbSpl }) => ({
    hz,
    dbSpl: (dbSpl + change) as DbSpl,
  }));
  const note = engine.prepare(partials);
  notes.set(key, note);
  return note;
}

/** Low to high, then by player: sums of floats must not depend on the order players came in. */
function inOneOrder({ placements }: Voicing): readonly Placement[] {
  return [...placements].sort(
    (a, b) => a.sounding - b.sounding || (a.player.id < b.player.id ? -1 : 1),
  );
}

/** Players of one kind of instrument with one mute on one note are one source to the ear. */
function groupsOf(placements: readonly Placement[]): readonly number[] {
  const numbers = new Map<string, number>();
  return placements.map(({ player, sounding }) => {
    const kind = kinds[player.instrument] ?? player.instrument;
    const key = `${kind} ${player.mute} ${sounding}`;
    const number = numbers.get(key) ?? numbers.size;
    numbers.set(key, number);
    return number;
  });
}

const remembered = new WeakMap<Voicing, Map<Dynamic, Listened>>();

/**
 * Lets the average listener hear a voicing: everyone at one dynamic, in a rehearsal room. Asked
 * again for the same voicing it answers from memory, so that all heard measures cost one hearing.
 * @param voicing - who sounds what; at least one player
 * @param dynamic - dynamic on paper
 * @returns loudness, sources with their verdicts, mud, roughness, centroid
 * @source loudness ISO 532-2:2017; audibility after Moore, Glasberg and Baer 1997
 */
export function listenTo(voicing: Voicing, dynamic: Dynamic): Listened {
  const before = remembered.get(voicing)?.get(dynamic);
  if (before) return before;
  const placements = inOneOrder(voicing);
  const notes = placements.map(({ player, sounding }) => preparedFor(player, sounding, dynamic));
  const heard = ear().engine.listen(notes, groupsOf(placements));
  const classes = placements.map(({ sounding }) => pitchClass(sounding));
  const tones = ear()
    .engine.judge(notes, classes)
    .map(({ members, margin }) => ({
      pitchClass: classes[members[0] ?? 0] ?? pitchClass(0),
      margin,
    }));
  const listened = { heard, tones, sources: sourcesOf(placements, heard) };
  const byDynamic = remembered.get(voicing) ?? new Map<Dynamic, Listened>();
  byDynamic.set(dynamic, listened);
  remembered.set(voicing, byDynamic);
  return listened;
}

function sourcesOf(placements: readonly Placement[], heard: HeardVoicing): readonly HeardPlayers[] {
  const playersOf = (group: HeardGroup): readonly Player[] =>
    group.members.flatMap((index) => placements[index]?.player ?? []);
  return heard.groups.map((judgement) => {
    const players = playersOf(judgement);
    const coverer = heard.groups[judgement.coveredBy];
    return {
      players,
      playerIds: players.map((player) => player.id),
      sounding: placements[judgement.members[0] ?? 0]?.sounding ?? (0 as SoundingMidi),
      judgement,
      coveredBy: coverer ? playersOf(coverer) : [],
    };
  });
}
