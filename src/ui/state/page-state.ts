import type {
  FieldProblem,
  History,
  ReferencePoint,
  StripTone,
  VoicingReport,
  Inquiry,
} from "../../explore/index.ts";
import type { AtlasCell, CellKey, Question, RuleId, Voicing } from "../../voicing/index.ts";
import type { SoundingMidi } from "../../base/index.ts";
import type { Shade } from "../search-messages.ts";
import type { Namer } from "../words/pitch-names.ts";
import type { CellTraits, MapFilter } from "./map-filter.ts";
import type { ShownLayer } from "./shown-layer.ts";
import type { Pane } from "./pane.ts";
import type { MadeBy, Pitches, Session } from "./session.ts";

/** A question that could be read, with what the page needs to talk about it. */
export interface Asked {
  /** What was asked, as typed. */
  readonly inquiry: Inquiry;
  readonly question: Question;
  readonly strip: readonly StripTone[];
  /** Readings chosen where the trade is split, one sentence each. */
  readonly remarks: readonly string[];
  readonly nameOf: Namer;
}

/** One layer of the map of one question. */
export interface LayerMap extends ShownLayer {
  readonly cells: readonly AtlasCell[];
  readonly isWhole: boolean;
  /** Rules that, lifted one at a time, would give some cell; only for an empty map. */
  readonly emptiedBy: readonly RuleId[];
}

/** The last question that was answered; stays while the next one is read or searched. */
export interface Answer {
  readonly asked: Asked;
  /** The free layer: the best there is, whatever layer is in view. */
  readonly free: LayerMap;
  /** The layer in view. */
  readonly map: LayerMap;
  /** The textbook voicings on the same map; empty until they are worked out. */
  readonly references: readonly ReferencePoint[];
  /** Why each hatched gap of the map holds nothing, by its lowest span; empty until known. */
  readonly gapWords: ReadonlyMap<number, string>;
}

/** A search that is going on. */
export interface Searching {
  readonly asked: Asked;
  readonly cells: readonly AtlasCell[];
  readonly groupsDone: number;
  readonly groups: number;
  /** True once it has taken so long that its progress is shown. */
  readonly isSlow: boolean;
}

/** The voicing on the page. */
export interface InView {
  readonly by: MadeBy | "map";
  readonly pitches: Pitches;
  readonly voicing: Voicing;
  readonly report: VoicingReport;
  /** The best of the same texture, if the map has it: what the cost is compared with. */
  readonly best: VoicingReport | null;
}

/** The map's shading by one measure. */
export interface Shading {
  readonly metricId: string;
  /** By place; cells not yet measured are not in it. */
  readonly byPlace: ReadonlyMap<string, Shade>;
}

/** What the textures of a map are like; belongs to exactly these cells. */
export interface MapTraits {
  readonly cells: readonly AtlasCell[];
  readonly byPlace: ReadonlyMap<string, CellTraits>;
}

/** An empty place the user went to, and why it is empty. */
export interface EmptyPlace {
  readonly key: CellKey;
  /** Rules that empty it; null while they are worked out. */
  readonly rules: readonly RuleId[] | null;
}

/** A token under the finger: the voicing before, and with the token where it is now. */
export interface Drag {
  readonly start: Pitches;
  readonly pitches: Pitches;
}

/** What a measure points at on the ladder. */
export interface Pointed {
  readonly notes: readonly SoundingMidi[];
  readonly playerIds: readonly string[];
}

/** The best other voicings of the texture in view. */
export interface NextFew {
  readonly key: CellKey;
  readonly cells: readonly AtlasCell[];
}

/** A texture shown because it is far from the book, with the reason. */
export interface ShownUnwritten {
  readonly key: CellKey;
  readonly reason: string;
}

/** A moment of the phrase that is looked at on the one-chord page. */
export interface Borrowed {
  readonly momentId: string;
  /** In words: "bar 3, beat 2". */
  readonly where: string;
  readonly lead: SoundingMidi;
}

export type Theme = "system" | "light" | "dark";

/** Everything the page shows, except what a component keeps for itself (open menus, focus). */
export interface PageState {
  readonly history: History<Session>;
  /** The field whose keystrokes are one undo step. */
  readonly typing: string | null;
  /** The strip as the text now reads, and what was wrong with it. */
  readonly strip: readonly StripTone[];
  readonly problems: readonly FieldProblem[];
  readonly answer: Answer | null;
  readonly searching: Searching | null;
  readonly view: InView | null;
  /** While a token is under the finger: before it becomes a step. */
  readonly drag: Drag | null;
  readonly shading: Shading;
  /** Which textures of the map are shown in full. */
  readonly filter: MapFilter;
  readonly traits: MapTraits | null;
  readonly emptyPlace: EmptyPlace | null;
  readonly nextFew: NextFew | null;
  readonly unwritten: ShownUnwritten | "looking" | null;
  /** Place under the pointer on the map. */
  readonly hovered: CellKey | null;
  readonly selectedPlayer: string | null;
  /** Player who is about to change places with the next one chosen. */
  readonly swapping: string | null;
  readonly pointed: Pointed | null;
  /** Letter of the textbook voicing that the measures compare with; null means the first. */
  readonly comparedWith: string | null;
  readonly fault: string | null;
  readonly theme: Theme;
  readonly pane: Pane;
  /** The moment of the phrase whose voicing was opened on the one-chord page. */
  readonly borrowed: Borrowed | null;
}
