import type { AtlasCell, AtlasCounts, CellKey, Question, RuleId } from "../voicing/index.ts";
import type { Unwritten } from "../explore/index.ts";
import type { CellTraits } from "./state/map-filter.ts";
import type { ShownLayer } from "./state/shown-layer.ts";

/** What the page asks of its worker. Numbers rise from request to request. */
export type SearchRequest =
  | {
      readonly kind: "search";
      readonly id: number;
      readonly question: Question;
      readonly layer: ShownLayer;
    }
  | {
      readonly kind: "shade";
      readonly id: number;
      readonly question: Question;
      readonly cells: readonly AtlasCell[];
      readonly metricId: string;
    }
  | {
      readonly kind: "next-few";
      readonly id: number;
      readonly question: Question;
      readonly key: CellKey;
      readonly layer: ShownLayer;
      readonly count: number;
    }
  | {
      readonly kind: "why-empty";
      readonly id: number;
      readonly question: Question;
      readonly key: CellKey;
      readonly layer: ShownLayer;
    }
  | {
      readonly kind: "unwritten";
      readonly id: number;
      readonly question: Question;
      readonly cells: readonly AtlasCell[];
      readonly count: number;
    }
  | {
      readonly kind: "traits";
      readonly id: number;
      readonly question: Question;
      readonly cells: readonly AtlasCell[];
    }
  /** Ends every search (every shading) numbered `upTo` or lower. */
  | { readonly kind: "stop"; readonly of: "search" | "shade"; readonly upTo: number };

/** One cell's value of a measure, as the map shades and speaks it. */
export interface Shade {
  readonly value: number | null;
  readonly text: string;
}

/** What the worker tells the page; `id` is that of the request. */
export type SearchReply =
  | {
      readonly kind: "found";
      readonly id: number;
      readonly cells: readonly AtlasCell[];
      readonly groupsDone: number;
      readonly groups: number;
    }
  | {
      readonly kind: "done";
      readonly id: number;
      readonly cells: readonly AtlasCell[];
      readonly counts: AtlasCounts;
      readonly emptiedBy: readonly RuleId[];
    }
  | {
      readonly kind: "shaded";
      readonly id: number;
      /** For the cells of the request, in their order, from `from` on. */
      readonly from: number;
      readonly shades: readonly Shade[];
    }
  | { readonly kind: "next-few"; readonly id: number; readonly cells: readonly AtlasCell[] }
  | {
      readonly kind: "why-empty";
      readonly id: number;
      /** A smallest set of rules that, lifted together, opens the place; empty when none does. */
      readonly rules: readonly RuleId[];
    }
  | { readonly kind: "unwritten"; readonly id: number; readonly found: readonly Unwritten[] }
  /** In the order of the cells asked about. */
  | { readonly kind: "traits"; readonly id: number; readonly traits: readonly CellTraits[] }
  | { readonly kind: "failed"; readonly id: number; readonly message: string };
