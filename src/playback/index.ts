export type * from "./playback-types.ts";
export { createPlayback, START_VOLUME_DB } from "./playback.ts";
