/** Ways to hear the voicing. */
export function HearBar() {
  return <div className="hear" role="group" aria-label="Hear" />;
}
