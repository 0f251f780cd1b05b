// @vitest-environment jsdom
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { soundingMidi } from "../../src/base/index.ts";
import { drawStaves, type DrawOptions, type StaffDrawing } from "../../src/drawing/index.ts";
import { layoutVoicing, type StaffPitch, type StaffView } from "../../src/notation/index.ts";
import type { Chord } from "../../src/theory/index.ts";
import type { Voicing } from "../../src/voicing/index.ts";
import { chord, F13, player, voicing, WIDE_F13 } from "../notation/support/voicings.ts";
import { musicBoxes, overlap } from "./support/boxes.ts";
import { measureByFonts } from "./support/measuring.ts";

beforeAll(measureByFonts);

interface Picture {
  readonly of?: Voicing;
  readonly over?: Chord;
  readonly view?: StaffView;
  readonly pitch?: StaffPitch;
}

function draw(picture: Picture, options: DrawOptions = { width: 600 }): StaffDrawing {
  const { of = WIDE_F13, over = F13, view = "grand", pitch = "concert" } = picture;
  const layout = layoutVoicing(of, { chord: over, view, pitch });
  return drawStaves(layout, document.createElement("div"), options);
}

function texts(drawing: StaffDrawing, selector: string): readonly string[] {
  return [...drawing.svg.querySelectorAll(selector)].map((each) => each.textContent);
}

describe("a drawn grand staff", () => {
  it("is a picture with a title and the voicing in words", () => {
    const { svg } = draw({});
    expect(svg.getAttribute("role")).toBe("img");
    expect(svg.getAttribute("aria-label")).toContain("E flat 4, flat seventh, alto 2");
    expect(svg.querySelector("title")?.textContent).toBe("F13, grand staff, concert pitch");
    expect(svg.querySelector("desc")?.textContent).toContain("D5, thirteenth, trumpet 1");
  });

  it("tags every head with its pitch and its players", () => {
    const { svg } = draw({});
    const tags = [...svg.querySelectorAll<SVGElement>(".staff-note")].map((head) => [
      head.dataset["midi"],
      head.dataset["player"],
    ]);
    expect(tags).toEqual([
      ["60", "tpt4 tbn2"],
      ["63", "alto2"],
      ["67", "tpt3 tbn1 tenor1"],
      ["74", "tpt1 tpt2 alto1"],
      ["41", "btbn bari"],
      ["57", "tbn3 tenor2"],
    ]);
    expect(svg.querySelectorAll('[data-player~="alto2"]')).toHaveLength(2);
  });

  it("writes degree and players beside every note, top down", () => {
    const drawing = draw({});
    expect(texts(drawing, ".staff-degree")).toEqual(["13", "9", "♭7", "5", "3", "1"]);
    expect(texts(drawing, ".staff-label")).toEqual([
      "13Tpt 1, 2Alto 1",
      "9Tpt 3Tbn 1Ten 1",
      "♭7Alto 2",
      "5Tpt 4Tbn 2",
      "3Tbn 3Ten 2",
      "1B. TbnBari",
    ]);
  });

  it("gives each section a shape of its own beside its colour", () => {
    const { svg } = draw({});
    const shape = (section: string) => svg.querySelector(`.section-mark-${section}`)?.tagName;
    expect(["trumpets", "trombones", "saxes"].map(shape)).toEqual(["path", "rect", "circle"]);
  });

  it("can leave players or all labels out", () => {
    const degrees = draw({}, { width: 200, labels: "degrees" });
    expect(texts(degrees, ".staff-label")).toEqual(["13", "9", "♭7", "5", "3", "1"]);
    expect(texts(draw({}, { width: 120, labels: "none" }), ".staff-label")).toEqual([]);
  });

  it("takes colours from CSS variables and from the theme it is given, never black", () => {
    const plain = draw({}).svg.outerHTML;
    expect(plain).toContain("var(--section-trumpets, currentColor)");
    expect(plain).not.toMatch(/(fill|stroke)="(black|#[0-9a-f]+)"/);
    const colours = { fill: "gold", outline: "brown" };
    const sections = { trumpets: colours, trombones: colours, saxes: colours, rhythm: colours };
    const theme = { ink: "navy", softInk: "gray", line: "silver", sections };
    const themed = draw({}, { width: 600, theme }).svg.outerHTML;
    expect(themed).not.toContain("var(");
    expect(themed).toContain('fill="gold"');
  });

  it("carries no ids, so that two pictures on a page cannot disturb each other", () => {
    expect(draw({}).svg.querySelectorAll("[id]")).toHaveLength(0);
  });

  it("replaces what was in the container, and draws the same again", () => {
    const container = document.createElement("div");
    const layout = layoutVoicing(WIDE_F13, { chord: F13, view: "grand", pitch: "concert" });
    const first = drawStaves(layout, container, { width: 400 }).svg.outerHTML;
    const second = drawStaves(layout, container, { width: 400 }).svg.outerHTML;
    expect(container.children).toHaveLength(1);
    expect(second).toBe(first);
  });

  it("keeps heads in place while accidentals come and go", () => {
    const at = (notes: string) => draw({ of: voicing(notes) }).notes[0]?.x;
    expect(at("tpt1=E4 tpt2=G4")).toBe(at("tpt1=Eb4 tpt2=G4"));
  });

  it("tells where each head stands: line by line up the staff", () => {
    const { notes, width, height } = draw({ of: voicing("tpt1=D5 tpt2=G4 btbn=F2") });
    const heights = notes.map((note) => note.y);
    expect(notes.map((note) => [note.staffId, note.midi])).toEqual([
      ["treble", 67],
      ["treble", 74],
      ["bass", 41],
    ]);
    // G4 to D5 are four letter steps: two staff spaces, 12 pixels each at this width.
    expect(heights[0]! - heights[1]!).toBeCloseTo(24, 5);
    expect(notes.every(({ x, y }) => x > 0 && x < width && y > 0 && y < height)).toBe(true);
  });

  it("refuses a width that is no width", () => {
    expect(() => draw({}, { width: 0 })).toThrow(RangeError);
    expect(() => draw({}, { width: NaN })).toThrow(RangeError);
  });

  it("draws silence as two empty staves", () => {
    const drawing = draw({ of: { placements: [] } });
    expect(drawing.notes).toEqual([]);
    expect(drawing.svg.querySelectorAll(".vf-clef")).toHaveLength(2);
  });
});

describe("staves drawn one a player", () => {
  const written: Picture = { view: "by-player", pitch: "written" };

  it("name the player at every staff, in score order", () => {
    const names = draw(written, { width: 700 }).svg.querySelectorAll(".staff-label");
    expect([...names].map((each) => each.querySelector("text")?.textContent)).toEqual(
      "Alto 1,Alto 2,Ten 1,Ten 2,Bari,Tpt 1,Tpt 2,Tpt 3,Tpt 4,Tbn 1,Tbn 2,Tbn 3,B. Tbn".split(","),
    );
  });

  it("show the chord symbol of each part once where it changes", () => {
    expect(texts(draw(written, { width: 700 }), ".staff-chord-symbol")).toEqual([
      "D13",
      "G13",
      "D13",
      "G13",
      "F13",
    ]);
    const concert = draw({ view: "by-player", pitch: "concert" });
    expect(texts(concert, ".staff-chord-symbol")).toEqual(["F13"]);
  });

  it("stand side by side by section where there is room, and fold on a phone", () => {
    const wide = draw(written, { width: 700 });
    const phone = draw(written, { width: 360 });
    const narrow = draw(written, { width: 300 });
    const columnsOf = ({ notes }: StaffDrawing) => new Set(notes.map((note) => note.x)).size;
    expect([wide, phone, narrow].map(columnsOf)).toEqual([3, 2, 1]);
    expect(wide.height).toBeLessThan(phone.height);
    expect(phone.height).toBeLessThan(narrow.height);
  });

  it("keep the same row level across sections", () => {
    const { notes, svg } = draw(written, { width: 700 });
    expect(notes).toHaveLength(13);
    const nameAt = (name: string) =>
      [...svg.querySelectorAll("text")].find((each) => each.textContent === name);
    const heights = ["Alto 2", "Tpt 2", "Tbn 2"].map((name) => nameAt(name)?.getAttribute("y"));
    expect(new Set(heights).size).toBe(1);
  });

  it("draw nothing for nobody", () => {
    const drawing = draw({ ...written, of: { placements: [] } });
    expect(drawing.notes).toEqual([]);
  });
});

describe("engraving", () => {
  const alt = chord("C7alt", "altered-dominant", "C 1, Db b9, D# #9, E 3, F# #11, Ab b13, Bb b7");
  const ids = "tpt1 tpt2 tpt3 tpt4 tbn1 tbn2 tbn3 btbn alto1 alto2 tenor1 tenor2 bari".split(" ");

  it("lays no head and no accidental on another, however crowded the chord", () => {
    const pitches = fc.uniqueArray(fc.integer({ min: 36, max: 86 }), {
      minLength: 2,
      maxLength: 13,
    });
    fc.assert(
      fc.property(pitches, (midis) => {
        const placements = midis.map((midi, index) => ({
          player: player(ids[index] ?? "tpt1"),
          sounding: soundingMidi(midi),
        }));
        const boxes = musicBoxes(draw({ of: { placements }, over: alt }).svg);
        boxes.forEach((box, index) =>
          boxes.slice(0, index).forEach((other) => expect(overlap(box, other)).toBeLessThan(1)),
        );
      }),
      { seed: 7, numRuns: 60 },
    );
  });

  it("gives every ledger note its lines", () => {
    // C4 under the treble staff one line, C2 under the bass staff two (E2 and C2).
    const count = (notes: string) =>
      draw({ of: voicing(notes) }).svg.querySelectorAll(".vf-stavenote > path").length;
    expect(count("tpt1=C4 tpt2=G4")).toBe(1);
    expect(count("bari=C2")).toBe(2);
    expect(count("tpt1=G4")).toBe(0);
  });

  it("lays no label on another", () => {
    const crowd = voicing(ids.map((id, index) => `${id}=${"CDEFGAB"[index % 7]}4`).join(" "));
    const { svg } = draw({ of: crowd });
    const heights = [...svg.querySelectorAll(".staff-degree")].map((each) =>
      Number(each.getAttribute("y")),
    );
    const gaps = heights.slice(1).map((y, index) => y - heights[index]!);
    expect(Math.min(...gaps)).toBeGreaterThanOrEqual(16);
  });
});
