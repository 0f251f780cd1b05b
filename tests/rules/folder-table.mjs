/**
 * The one table of what may import what. The import check is generated from it and DEVELOPERS.md
 * is compared with it, so that map and check cannot disagree.
 * Source: the project's own design; folders from the bottom up.
 */
const throughVoicing = ["base", "theory", "band", "voicing"];
const throughMetrics = ["base", "theory", "acoustics", "band", "voicing", "phrase", "metrics"];
const forNode = [...throughMetrics, "explore", "audio", "notation", "files"];

/** Folder under src → the folders whose front doors it may use. */
export const mayImport = Object.freeze({
  base: [],
  theory: ["base"],
  acoustics: ["base"],
  band: ["base", "theory", "acoustics"],
  voicing: ["base", "theory", "band"],
  phrase: throughVoicing,
  metrics: ["base", "theory", "acoustics", "band", "voicing", "phrase"],
  explore: throughMetrics,
  audio: ["base", "theory", "acoustics", "band", "voicing", "phrase"],
  playback: ["base", "audio"],
  notation: [...throughVoicing, "phrase"],
  drawing: ["base", "notation"],
  files: [...throughVoicing, "phrase", "explore", "audio", "notation"],
  ui: [...forNode, "playback", "drawing"],
  cli: forNode,
});

/** Folders that compile without browser types and run anywhere. */
export const core = Object.freeze([
  "base",
  "theory",
  "acoustics",
  "band",
  "voicing",
  "phrase",
  "metrics",
  "explore",
  "audio",
  "notation",
]);

/** Library (start of its name) → the only folder behind whose door it lives. */
export const libraryOwner = Object.freeze({
  tone: "playback",
  vexflow: "drawing",
  "@vexflow-fonts": "drawing",
  react: "ui",
  "react-dom": "ui",
  "react-aria-components": "ui",
  zustand: "ui",
  "d3-scale": "ui",
  "@fontsource-variable": "ui",
  abcjs: "files",
  fflate: "files",
  "idb-keyval": "files",
  zod: "files",
});

/** Libraries that need a browser: nothing in the core may reach them, not even through others. */
export const browserBound = Object.freeze([
  "react",
  "react-dom",
  "react-aria-components",
  "zustand",
  "tone",
  "vexflow",
]);
