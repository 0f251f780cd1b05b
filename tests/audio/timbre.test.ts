import { describe, expect, it } from "vitest";
import { soundingMidi } from "../../src/base/index.ts";
import { articulationOf, partialsOf } from "../../src/band/index.ts";
import { bandTimbre } from "../../src/audio/timbre.ts";

describe("the band's timbre", () => {
  it("is the very one the analysis listens to", () => {
    const request = {
      instrument: "trumpet",
      sounding: soundingMidi(69),
      dynamic: "f",
      mute: "open",
    } as const;
    expect(bandTimbre.partialsOf(request)).toEqual(partialsOf(request));
    expect(bandTimbre.articulationOf("flute", soundingMidi(74), "p")).toEqual(
      articulationOf("flute", soundingMidi(74), "p"),
    );
  });
});
