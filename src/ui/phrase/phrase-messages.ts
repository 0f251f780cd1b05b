import type {
  Phrase,
  PhraseAlternative,
  PhraseAnswer,
  PhraseQuestion,
} from "../../phrase/index.ts";
import type { MelodyProblem } from "../../theory/index.ts";

/** What the phrase view asks of its worker. Numbers rise from request to request. */
export type PhraseRequest =
  | { readonly kind: "solve"; readonly id: number; readonly question: PhraseQuestion }
  | {
      readonly kind: "alternatives";
      readonly id: number;
      readonly question: PhraseQuestion;
      readonly count: number;
    }
  /** Ends everything numbered `upTo` or lower. */
  | { readonly kind: "stop"; readonly upTo: number };

/** What the worker tells the page; `id` is that of the request. */
export type PhraseReply =
  | {
      readonly kind: "wrong";
      readonly id: number;
      readonly problems: readonly MelodyProblem[];
    }
  | { readonly kind: "read"; readonly id: number; readonly phrase: Phrase }
  | {
      readonly kind: "progress";
      readonly id: number;
      readonly done: number;
      readonly all: number;
    }
  | {
      readonly kind: "answer";
      readonly id: number;
      readonly answer: PhraseAnswer;
      readonly isWhole: boolean;
    }
  | {
      readonly kind: "alternatives";
      readonly id: number;
      readonly alternatives: readonly PhraseAlternative[];
    }
  | { readonly kind: "failed"; readonly id: number; readonly message: string };
