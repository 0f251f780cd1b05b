/** Words of the page, each with its meaning in one sentence. Source: the project's own design. */
export const wordTable: readonly (readonly [word: string, meaning: string])[] = Object.freeze([
  ["Voicing", "Who sounds what at one moment: each player on a pitch, or resting."],
  ["Texture", "One place on the map: how wide, how many different notes, how many players."],
  ["Span", "From the lowest to the highest sounding note, in semitones."],
  ["Notes", "Different pitches that sound, however many players share each."],
  ["Free", "The best voicing of a texture, players wherever they serve best."],
  ["By section", "Every section sounds an unbroken run of the notes, as a section writer does."],
  ["Crossed", "No section sounds two neighbouring notes: the sections are fully woven."],
  ["Interleaving", "How far the sections interlock in pitch, 0 to 1; 0 when each is a run."],
  [
    "The best here",
    "The voicing of least cost in its texture; costs compare inside one texture only.",
  ],
  ["Lead", "The melody note, and whoever plays it."],
  ["Lead 8vb", "A player who doubles the lead an octave below."],
  ["Fixed", "A player held to a note or to silence while the rest is found anew."],
  ["Hexagon", "A voicing by section, by the textbook, placed on the same map."],
]);

/** What the keys do. Source: the project's own design. */
export const keyTable: readonly (readonly [keys: string, meaning: string])[] = Object.freeze([
  ["Tab", "From group to group: tones, layer, map, players, tokens, ways to hear."],
  ["On the map: ← →", "Narrower, wider."],
  ["On the map: ↑ ↓", "One note more, one fewer."],
  ["On the map: Page up, Page down", "One player more, one fewer."],
  ["On the map: Shift + arrow", "One place on, empty places too; an empty place says why."],
  ["Enter", "Sounds the place or the player chosen."],
  ["Space", "Sounds the last way again."],
  ["On a token: ← →", "The next player."],
  ["On a token: ↑ ↓", "The player's next ticked note; with Shift a semitone."],
  ["On a token: F", "Fixes the player to this note, or frees the player."],
  ["On a token: S", "Swaps the player with the one you go to next and press S or Enter on."],
  ["On a token: Enter", "Hears the player alone; with Shift against the rest, 12 dB softer."],
  ["On a token: Delete", "The player rests."],
  ["On a kept voicing’s handle: ← →", "One place on; Home and End to the ends of the row."],
  ["In the note of a kept voicing: Enter", "Ends the note; with Shift a new line."],
  ["Escape", "Stops the sound."],
  ["Ctrl + Z, Ctrl + Shift + Z", "Takes a step back, takes it again."],
]);
