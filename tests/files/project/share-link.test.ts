import { deflateSync, strToU8 } from "fflate";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { createHistory } from "../../../src/explore/index.ts";
import type { Project } from "../../../src/files/index.ts";
import { inflateBounded } from "../../../src/files/bounded-inflate.ts";
import { readShareLink, writeShareLink } from "../../../src/files/project/share-link.ts";
import { projects, sampleProject } from "../support/projects.ts";

const codeOf = (link: string): string => {
  const read = readShareLink(link);
  return read.ok ? "read" : read.problem.code;
};
const written = (project: Project): string => {
  const link = writeShareLink(project);
  if (!link.ok) throw new Error(link.problem.message);
  return link.value;
};
const linkOf = (bytes: Uint8Array): string =>
  `1.${Buffer.from(deflateSync(bytes)).toString("base64url")}`;

describe("a share link", () => {
  const link = written(sampleProject);

  it("carries the question and the kept voicings, without history and settings", () => {
    const { name, history } = sampleProject;
    const expected = { name, history: createHistory(history.present), settings: {} };
    expect(readShareLink(`#${link}`)).toMatchObject({ ok: true, value: { project: expected } });
    expect(readShareLink(link)).toEqual(readShareLink(`#${link}`));
  });

  it("fits into an address, and needs no escaping there", () => {
    expect(link).toMatch(/^1\.[\w-]+$/);
    expect(encodeURIComponent(link)).toBe(link);
    expect(link.length).toBeLessThan(1200);
  });

  it("comes back for random projects", () => {
    fc.assert(
      fc.property(projects, ({ name, history }) => {
        const project = { name, history: createHistory(history.present), settings: {} };
        expect(readShareLink(written(project))).toMatchObject({
          ok: true,
          value: { project },
        });
      }),
      { seed: 7, numRuns: 60 },
    );
  });

  it("is refused when it was cut off, damaged, from the future, or none at all", () => {
    expect(codeOf(link.slice(0, -10))).toBe("link-damaged");
    expect(codeOf(link.slice(0, 20))).toBe("link-damaged");
    expect(codeOf("1.!!!!")).toBe("link-damaged");
    expect(codeOf("1.A")).toBe("link-damaged");
    expect(codeOf("9.AAAA")).toBe("link-unknown");
    expect(codeOf("section-2")).toBe("link-damaged");
    expect(codeOf("")).toBe("link-damaged");
  });

  it("is refused when it is too long or unpacks to too much, before it is unpacked whole", () => {
    expect(codeOf(`1.${"A".repeat(70_000)}`)).toBe("link-too-long");
    const bomb = linkOf(new Uint8Array(40_000_000));
    expect(bomb.length).toBeLessThan(65_536);
    expect(codeOf(bomb)).toBe("link-too-long");
  });

  it("is not made of a project that no link could carry", () => {
    const { history } = sampleProject;
    // Notes that cannot be packed: digits of a power, all different.
    const kept = Array.from({ length: 300 }, (_, index) => ({
      ...history.present.kept[0]!,
      letter: `A${index}`,
      note: String(7n ** BigInt(400 + index)),
    }));
    const large = { ...sampleProject, history: createHistory({ ...history.present, kept }) };
    expect(writeShareLink(large)).toMatchObject({ problem: { code: "link-too-large" } });
  });

  it("is checked like a file", () => {
    expect(codeOf(linkOf(strToU8("{}")))).toBe("project-format");
    expect(codeOf(linkOf(strToU8('{"format":1}')))).toBe("project-damaged");
    expect(codeOf(linkOf(strToU8("alert(1)")))).toBe("project-not-json");
  });
});

describe("unpacking with a bound", () => {
  it("gives what was packed, up to the bound and not a byte further", () => {
    const bytes = Uint8Array.from({ length: 5000 }, (_, index) => (index * 7919) % 251);
    const packed = deflateSync(bytes);
    expect(inflateBounded(packed, 5000)).toEqual({ ok: true, bytes });
    expect(inflateBounded(packed, 4999)).toEqual({ ok: false, why: "too-large" });
    expect(inflateBounded(packed.subarray(0, 100), 5000)).toEqual({ ok: false, why: "damaged" });
    expect(inflateBounded(new Uint8Array(), 10)).toEqual({ ok: false, why: "damaged" });
  });
});
