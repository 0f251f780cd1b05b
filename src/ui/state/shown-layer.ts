import type { SectionId } from "../../band/index.ts";
import type { LayerId } from "../../voicing/index.ts";

/** Which version of every texture a map shows. */
export interface ShownLayer {
  readonly layer: LayerId;
  /** Sections that sound, each with a player; null when any may. */
  readonly sections: readonly SectionId[] | null;
}
