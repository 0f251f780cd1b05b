import type { Count } from "../../base/index.ts";

/**
 * Version of the cost tables and rules that choose voicings. To be raised whenever the same question
 * can get another answer than before; saved projects and links carry it, so that the page can say
 * that costs have changed while the notes stay.
 */
export const MODEL_VERSION: Count = 1;
