import type { Continuation, StepRequest } from "../../phrase/index.ts";

/** What the page asks of the worker. */
export interface NextRequest {
  /** Counts requests: only the last one's answer is wanted. */
  readonly id: number;
  readonly request: StepRequest;
}

/** What the worker answers. */
export type NextReply =
  | { readonly id: number; readonly ok: true; readonly found: readonly Continuation[] }
  | { readonly id: number; readonly ok: false; readonly message: string };
