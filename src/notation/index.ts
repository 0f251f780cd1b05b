export type * from "./staff-layout-types.ts";
export type { Clef, SectionId } from "../band/index.ts";
export { layoutVoicing, type LayoutOptions } from "./layout-voicing.ts";
export { describeVoicing } from "./describe-voicing.ts";
export { namesBySection, type SectionNames } from "./player-groups.ts";
