import { beforeAll, beforeEach, describe, expect, it } from "vitest";
import { page } from "vitest/browser";
import { drawStaves, loadMusicFonts } from "../../src/drawing/index.ts";
import { layoutVoicing, type StaffPitch, type StaffView } from "../../src/notation/index.ts";
import { F13, WIDE_F13 } from "../notation/support/voicings.ts";

let container: HTMLElement;

beforeAll(loadMusicFonts);

beforeEach(() => {
  document.body.innerHTML = '<main style="color: rgb(10, 20, 30); font: 16px sans-serif"></main>';
  container = document.querySelector("main")!;
});

function draw(view: StaffView, pitch: StaffPitch, width: number) {
  const layout = layoutVoicing(WIDE_F13, { chord: F13, view, pitch });
  return drawStaves(layout, container, { width });
}

const boxOf = (element: Element) => element.getBoundingClientRect();
const crosses = (a: DOMRect, b: DOMRect) =>
  Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1 &&
  Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 1;

describe("staves in a browser", () => {
  it("have the music fonts that come with the page", () => {
    const loaded = [...document.fonts].filter((face) => face.status === "loaded");
    expect(loaded.map((face) => face.family)).toEqual(
      expect.arrayContaining(["Bravura", "Academico"]),
    );
  });

  it("ask nothing of any other server", () => {
    draw("grand", "concert", 360);
    const elsewhere = performance
      .getEntriesByType("resource")
      .filter(
        (entry) => !entry.name.startsWith(location.origin) && !/^(data|blob):/.test(entry.name),
      );
    expect(elsewhere.map((entry) => entry.name)).toEqual([]);
  });

  it("are found as a picture by their name in words", async () => {
    draw("grand", "concert", 600);
    await expect.element(page.getByRole("img", { name: /^F13, grand staff/ })).toBeVisible();
  });

  it.each<[StaffView, StaffPitch, number]>([
    ["grand", "concert", 300],
    ["grand", "concert", 360],
    ["grand", "concert", 700],
    ["by-player", "concert", 360],
    ["by-player", "written", 360],
    ["by-player", "written", 540],
    ["by-player", "written", 700],
  ])("%s, %s, keep everything inside %i pixels and no text on another", (view, pitch, width) => {
    const { svg } = draw(view, pitch, width);
    const frame = boxOf(svg);
    expect(frame.width).toBe(width);
    const labels = [...svg.querySelectorAll(".staff-label text, .staff-chord-symbol")].map(boxOf);
    expect(labels.length).toBeGreaterThan(0);
    labels.forEach((label, index) => {
      expect(label.left).toBeGreaterThanOrEqual(frame.left - 1);
      expect(label.right).toBeLessThanOrEqual(frame.right + 1);
      expect(label.bottom).toBeLessThanOrEqual(frame.bottom + 1);
      expect(labels.slice(0, index).some((other) => crosses(label, other))).toBe(false);
    });
  });

  it("draw note heads as filled glyphs of the music font, in the page's text colour", () => {
    const { svg, notes } = draw("grand", "concert", 600);
    const heads = [...svg.querySelectorAll(".staff-note text:first-of-type")];
    expect(heads).toHaveLength(notes.length);
    for (const head of heads) {
      const style = getComputedStyle(head);
      expect(style.fill).toBe("rgb(10, 20, 30)");
      expect(style.fontFamily).toContain("Bravura");
      // A whole note is 1.7 staff spaces wide (SMuFL metadata of the font); a space is 12 pixels.
      expect(boxOf(head).width).toBeGreaterThan(18);
      expect(boxOf(head).width).toBeLessThan(23);
    }
  });

  it("say where the heads really are", () => {
    const { svg, notes } = draw("by-player", "written", 700);
    const frame = boxOf(svg);
    const heads = [...svg.querySelectorAll(".staff-note text:first-of-type")].map(boxOf);
    notes.forEach((note, index) => {
      const head = heads[index]!;
      expect(note.x).toBeGreaterThan(head.left - frame.left);
      expect(note.x).toBeLessThan(head.right - frame.left);
    });
  });

  it("can be pointed at: hovering finds the players of a note", () => {
    const { svg, notes } = draw("grand", "concert", 600);
    const frame = boxOf(svg);
    const top = notes.find((note) => note.midi === 74)!;
    const hit = document.elementFromPoint(frame.left + top.x - 6, frame.top + top.y);
    expect(hit?.closest<SVGElement>("[data-player]")?.dataset["player"]).toBe("tpt1 tpt2 alto1");
  });

  it("follow the theme through CSS variables without being drawn again", () => {
    const { svg } = draw("grand", "concert", 600);
    const mark = svg.querySelector(".section-mark-saxes")!;
    container.style.setProperty("--section-saxes", "rgb(51, 105, 175)");
    expect(getComputedStyle(mark).fill).toBe("rgb(51, 105, 175)");
    container.style.setProperty("--section-saxes", "rgb(127, 182, 238)");
    expect(getComputedStyle(mark).fill).toBe("rgb(127, 182, 238)");
  });
});
