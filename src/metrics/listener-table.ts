/**
 * Where the average listener sits: a rehearsal room, so that the sound comes from all sides and
 * the players' distances hardly matter.
 * Source: diffuse field of a source, L = L_W − 10 lg V + 10 lg T + 14 dB (Sabine; value from
 * memory, textbook); room size and reverberation of a rehearsal room for a big band: value from
 * memory.
 */
export const listenerRoom = Object.freeze({
  volumeCubicMetres: 300,
  reverberationSeconds: 0.6,
  /** Sound power level less the level one metre away in a free field. */
  powerOverOneMetreDb: 11,
  source: "Sabine diffuse field; room after published rehearsal-room advice, values from memory",
});
