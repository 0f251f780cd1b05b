import type { Count } from "../../base/index.ts";
import type { StageSeat } from "../../audio/index.ts";
import type { SectionId } from "../../band/index.ts";
import type { History, Inquiry, PhraseWork } from "../../explore/index.ts";
import type { CellKey, LayerId } from "../../voicing/index.ts";

/** Player id → sounding MIDI note number; players who rest are not in it. */
export type ProjectPitches = Readonly<Record<string, Count>>;

/** A voicing shown instead of the map's best. */
export interface ProjectVoicing {
  readonly by: "hand" | "book" | "next" | "kept";
  readonly pitches: ProjectPitches;
  /** Players moved by hand, the last one last. */
  readonly moved: readonly string[];
  /** The voicing before the first move by hand. */
  readonly from: ProjectPitches;
  readonly title: string;
}

/** A voicing put aside, with the question it answered. */
export interface ProjectKept {
  readonly letter: string;
  readonly name: string;
  /** What the user wrote beside it. */
  readonly note?: string;
  readonly pitches: ProjectPitches;
  readonly inquiry: Inquiry;
}

/** One step of the work: everything that can be taken back. */
export interface ProjectState {
  readonly inquiry: Inquiry;
  readonly layer: LayerId;
  /** Sections that sound; null when any may. */
  readonly sections: readonly SectionId[] | null;
  readonly place: CellKey;
  readonly made: ProjectVoicing | null;
  readonly kept: readonly ProjectKept[];
  /** Letters chosen for comparing, in the order chosen. */
  readonly compared: readonly string[];
  /** Chairs that were moved from their usual places on the stage. */
  readonly seats: readonly StageSeat[];
  /** The phrase being worked on; null until one is begun. */
  readonly phrase: PhraseWork | null;
  readonly step: string;
}

/** Choices of the page that belong to a project, by name. */
export type ProjectSettings = Readonly<Record<string, string | number | boolean>>;

/** A project as it is worked on. */
export interface Project {
  readonly name: string;
  readonly history: History<ProjectState>;
  readonly settings: ProjectSettings;
}

/** A project that was read, with what is to be said about it. */
export interface ProjectReading {
  readonly project: Project;
  /** Version of the cost model it was saved with. */
  readonly model: Count;
  /** True when costs may differ from those it was saved with; the notes stay. */
  readonly hasOtherModel: boolean;
}
