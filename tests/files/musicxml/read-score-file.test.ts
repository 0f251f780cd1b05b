import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { readScoreFile } from "../../../src/files/musicxml/read-score-file.ts";
import { writeMusicXml } from "../../../src/files/musicxml/write-musicxml.ts";
import { shortPhrase } from "../support/scores.ts";
import { dataBytes, hasData } from "../support/shared-data.ts";

const text = writeMusicXml(shortPhrase, { pitch: "concert" });
const container = (path: string): Uint8Array =>
  strToU8(
    `<?xml version="1.0"?><container><rootfiles><rootfile full-path="${path}"/></rootfiles></container>`,
  );
const codeOf = (bytes: Uint8Array): string => {
  const read = readScoreFile(bytes);
  return read.ok ? "read" : read.problem.code;
};
const mxl = zipSync({
  mimetype: [strToU8("application/vnd.recordare.musicxml"), { level: 0 }],
  "META-INF/container.xml": container("scores/one.xml"),
  "scores/zero.xml": strToU8("<html/>"),
  "scores/one.xml": strToU8(text),
});

describe("score files", () => {
  it("are read plain and zipped alike", () => {
    const expected = { ok: true, value: { score: shortPhrase, remarks: [] } };
    expect(readScoreFile(strToU8(text))).toEqual(expected);
    expect(readScoreFile(mxl)).toEqual(expected);
  });

  it("are found in a zip without a container by their name", () => {
    expect(codeOf(zipSync({ "a.txt": strToU8("x"), "b.musicxml": strToU8(text) }))).toBe("read");
    expect(codeOf(zipSync({ "a.txt": strToU8("x") }))).toBe("mxl-no-score");
  });

  it("are refused when cut off anywhere", () => {
    for (const share of [0.1, 0.5, 0.9, 0.99]) {
      const bytes = strToU8(text);
      expect(codeOf(bytes.subarray(0, Math.floor(bytes.length * share)))).toMatch(
        /^xml-(cut-off|broken)$/,
      );
      expect(codeOf(mxl.subarray(0, Math.floor(mxl.length * share)))).toBe("mxl-broken");
    }
  });

  it("are refused when a zipped byte is damaged in a way that shows", () => {
    const damaged = mxl.slice();
    const at = damaged.length - 22;
    damaged[at + 16] = 0xff;
    expect(codeOf(damaged)).toBe("mxl-broken");
  });

  it("never unpack a bomb: neither one that owns up to its size nor one that lies", () => {
    const bomb = zipSync({ "bomb.xml": new Uint8Array(200_000_000) });
    expect(bomb.length).toBeLessThan(300_000);
    expect(codeOf(bomb)).toBe("mxl-too-large");
    const lying = bomb.slice();
    const view = new DataView(lying.buffer);
    for (let at = 0; at + 28 < lying.length; at += 1)
      if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, 1000, true);
    expect(codeOf(lying)).toBe("mxl-too-large");
  });

  it("are refused when the zip claims a directory that is not there", () => {
    const view = new DataView(new ArrayBuffer(22));
    view.setUint32(0, 0x04034b50, true);
    const end = new DataView(new ArrayBuffer(44));
    end.setUint32(0, 0x04034b50, true);
    end.setUint32(22, 0x06054b50, true);
    end.setUint16(32, 0xffff, true);
    expect(codeOf(new Uint8Array(view.buffer))).toBe("mxl-broken");
    expect(codeOf(new Uint8Array(end.buffer))).toBe("mxl-broken");
  });

  it.skipIf(!hasData("musicxml/edge/malformed-xml.musicxml"))(
    "of a published malformed example are refused in one sentence",
    () => {
      const read = readScoreFile(dataBytes("musicxml/edge/malformed-xml.musicxml"));
      expect(read).toMatchObject({ ok: false, problem: { message: /^[A-Z][^\n]*\.$/ } });
    },
  );
});
