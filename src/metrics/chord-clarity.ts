import { chordClarity as clarityOf, chordIdentity, heardProfile } from "../acoustics/index.ts";
import { pitchClass, type PitchClass, type SoundingMidi } from "../base/index.ts";
import { degreeOf, displayDegree, requiredGroups, type Chord } from "../theory/index.ts";
import { stackOf } from "../voicing/index.ts";
import { listenTo } from "./listener.ts";
import type { Metric } from "./metric.ts";
import { notDefined } from "./stack-gaps.ts";

/** Third and seventh, or what stands for them: of each group the tone that is heard best. */
function definingTones(chord: Chord, profile: Float64Array): readonly PitchClass[] {
  return requiredGroups(chord)
    .slice(0, 2)
    .map((group) => group.map((tone) => pitchClass(chord.rootPitchClass + tone)))
    .map((group) => group.reduce((a, b) => ((profile[b] ?? 0) > (profile[a] ?? 0) ? b : a)));
}

/** How surely the ear gets this chord on this root. */
export const chordClarity: Metric = {
  id: "chord-clarity",
  label: "Chord clarity",
  unit: "of 1",
  meaning:
    "How surely the ear gets the chord: its root against rivals, times how well third and seventh are heard.",
  source: "root supports of R. Parncutt 1988; bass and heard tones: definition of this project",
  better: "higher",
  axis: [0, 1],
  isHeard: true,
  measure: (voicing, situation) => {
    const { chord, bassSounds } = situation;
    if (chord.family === "no-chord") return notDefined("There is no chord to be heard.");
    const lowest = stackOf(voicing)[0];
    if (lowest === undefined) return notDefined("No horn sounds.");
    const profile = heardProfile(listenTo(voicing, situation.dynamic).tones);
    const bass = bassSounds ? chord.bassPitchClass : pitchClass(lowest);
    const { clarity } = clarityOf({ profile, root: chord.rootPitchClass, bass });
    const { identity, weakest } = chordIdentity(profile, definingTones(chord, profile));
    const value = clarity * identity;
    const notes = stackOf(voicing).filter((midi) => pitchClass(midi) === weakest);
    return {
      value,
      text: value.toFixed(2),
      detail: detailOf(chord, weakest, identity, clarity),
      notes: identity < 1 ? notes : [],
      playerIds: [],
    };
  },
};

function detailOf(
  chord: Chord,
  weakest: PitchClass | null,
  identity: number,
  clarity: number,
): string {
  if (weakest === null || identity === 1)
    return clarity >= 0.6 ? "The root is sure." : "The root has rivals.";
  const midi = (60 + weakest) as SoundingMidi;
  const degree = displayDegree(degreeOf(midi, chord));
  return identity === 0 ? `The ${degree} is not heard.` : `The ${degree} is heard least.`;
}
