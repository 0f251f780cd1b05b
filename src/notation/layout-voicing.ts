import type { Chord } from "../theory/index.ts";
import type { Voicing } from "../voicing/index.ts";
import { describeStaves, describeVoicing } from "./describe-voicing.ts";
import { layoutByPlayer } from "./layout-by-player.ts";
import { layoutGrand } from "./layout-grand.ts";
import type { StaffLayout, StaffPitch, StaffView } from "./staff-layout-types.ts";

/** What to lay out a voicing for. */
export interface LayoutOptions {
  /** The chord the voicing sounds; gives spelling and degrees. */
  readonly chord: Chord;
  readonly view: StaffView;
  /** Only for `by-player`; a grand staff is always at concert pitch. */
  readonly pitch: StaffPitch;
}

/**
 * Lays a voicing out on staves: clefs, spelled notes with their signs, degrees, players.
 * @param voicing - who sounds what; may be empty
 * @param options - chord, view and pitch
 * @returns staves top to bottom, ready to be drawn, with a title and a description in words
 * @example layoutVoicing(voicing, { chord, view: "grand", pitch: "concert" })
 */
export function layoutVoicing(voicing: Voicing, options: LayoutOptions): StaffLayout {
  const { chord, view } = options;
  const chordSymbol = chord.display;
  if (view === "grand")
    return {
      view,
      pitch: "concert",
      chordSymbol,
      staves: layoutGrand(voicing, chord),
      title: `${chordSymbol}, grand staff, concert pitch`,
      description: describeVoicing(voicing, chord),
    };
  const { pitch } = options;
  const staves = layoutByPlayer(voicing, chord, pitch);
  const pitchWords = pitch === "concert" ? "concert pitch" : "as written for each";
  return {
    view,
    pitch,
    chordSymbol,
    staves,
    title: `${chordSymbol}, one staff a player, ${pitchWords}`,
    description: describeStaves(staves, chord, pitch),
  };
}
