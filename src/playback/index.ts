export type * from "./playback-types.ts";
export { createPlayback, START_VOLUME_DB } from "./playback.ts";
export type * from "./midi-types.ts";
export { openMidi } from "./midi-ports.ts";
