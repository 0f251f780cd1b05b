// @vitest-environment jsdom
import { describe, expect, it } from "vitest";
import { sectionMark } from "../../src/drawing/section-mark.ts";
import { variableTheme } from "../../src/drawing/staff-theme.ts";

describe("marks of the sections", () => {
  const sections = ["trumpets", "trombones", "saxes", "rhythm"] as const;

  it("differ in shape, so that they can be told without colour", () => {
    const shapes = sections.map((section) => {
      const mark = sectionMark(section, 0, 10, variableTheme);
      for (const name of ["class", "fill", "stroke"]) mark.removeAttribute(name);
      return mark.outerHTML;
    });
    expect(new Set(shapes).size).toBe(4);
  });

  it("carry the name of their section and its colours", () => {
    const mark = sectionMark("saxes", 0, 10, variableTheme);
    expect(mark.getAttribute("class")).toBe("section-mark section-mark-saxes");
    expect(mark.getAttribute("fill")).toBe("var(--section-saxes, currentColor)");
  });
});
