import type { Db } from "../base/index.ts";
import type { Frames, Lufs, SoundPlan } from "../audio/index.ts";

/** What the page asks of the render worker. */
export type RenderRequest =
  | {
      readonly kind: "render";
      readonly id: number;
      readonly plan: SoundPlan;
      readonly gain: Db;
      /** First frame wanted. */
      readonly from: Frames;
    }
  | { readonly kind: "measure"; readonly id: number; readonly plan: SoundPlan }
  | { readonly kind: "cancel"; readonly id: number };

/** What the render worker answers; everything names the request it belongs to. */
export type RenderReply =
  | {
      readonly kind: "block";
      readonly id: number;
      readonly from: Frames;
      readonly of: Frames;
      readonly left: Float32Array;
      readonly right: Float32Array;
    }
  | { readonly kind: "done"; readonly id: number; readonly isWhole: boolean }
  | { readonly kind: "loudness"; readonly id: number; readonly loudness: Lufs }
  | { readonly kind: "failed"; readonly id: number; readonly message: string };
