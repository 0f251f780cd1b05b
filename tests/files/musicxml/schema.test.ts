import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { writeMusicXml } from "../../../src/files/musicxml/write-musicxml.ts";
import { musicXmlOfPhrase } from "../../../src/files/score/phrase-files.ts";
import { randomMelodies } from "../../phrase/support/random-melodies.ts";
import { schemaFault } from "../support/music-xsd.ts";
import { examples, scores, shortPhrase } from "../support/scores.ts";
import { hasData } from "../support/shared-data.ts";
import { voicedDemo, voicedMelody, type Voiced } from "../support/voiced-phrases.ts";

describe.skipIf(!hasData("xsd/musicxml.xsd"))("the W3C MusicXML 4.0 schema", () => {
  it.each(examples)("finds nothing wrong with %s, transposed and at concert pitch", (_, score) => {
    expect(schemaFault(writeMusicXml(score))).toBeNull();
    expect(schemaFault(writeMusicXml(score, { pitch: "concert" }))).toBeNull();
    expect(schemaFault(writeMusicXml(score, { chordsOver: "every-part" }))).toBeNull();
  });

  it("finds nothing wrong with random scores", () => {
    fc.assert(
      fc.property(scores, (score) => {
        expect(schemaFault(writeMusicXml(score))).toBeNull();
      }),
      { seed: 7, numRuns: 60 },
    );
  });

  it("finds nothing wrong with voiced phrases, of our own and at random", () => {
    const check = ({ phrase, performance }: Voiced): void => {
      const whole = { rhythm: ["piano", "bass"], chordsOver: "every-part" } as const;
      expect(schemaFault(musicXmlOfPhrase(phrase, performance, whole))).toBeNull();
      const concert = { pitch: "concert" } as const;
      expect(schemaFault(musicXmlOfPhrase(phrase, performance, concert))).toBeNull();
    };
    for (const id of ["shout", "ballad"] as const) check(voicedDemo(id));
    fc.assert(
      fc.property(randomMelodies, (melody) => check(voicedMelody(melody))),
      { seed: 7, numRuns: 40 },
    );
  });

  it("would find a fault: an element out of order, a wrong name", () => {
    const text = writeMusicXml(shortPhrase);
    expect(schemaFault(text.replace("<voice>1</voice>", "<voice2>1</voice2>"))).not.toBeNull();
    expect(
      schemaFault(text.replace(/(<duration>6<\/duration>)\s*(<voice>1<\/voice>)/, "$2$1")),
    ).not.toBeNull();
  });
});
