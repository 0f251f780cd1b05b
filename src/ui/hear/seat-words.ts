/**
 * A place from side to side, in words.
 * @param pan - −1 far left to 1 far right
 * @returns "middle", "15 % left", "far right"
 */
export function sideText(pan: number): string {
  const percent = Math.round(100 * Math.abs(pan));
  if (percent === 0) return "middle";
  const side = pan < 0 ? "left" : "right";
  return percent === 100 ? `far ${side}` : `${percent} % ${side}`;
}

/**
 * A distance in words.
 * @param metres - from the listener
 * @returns "4.2 m"
 */
export function metresText(metres: number): string {
  return `${metres.toFixed(1)} m`;
}
