import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decodeXml } from "../../../src/files/musicxml/decode-xml.ts";
import { childOf, readXml, type XmlElement } from "../../../src/files/musicxml/xml-reader.ts";
import { printXml, xml, xmlText } from "../../../src/files/musicxml/xml-writer.ts";

function root(text: string): XmlElement {
  const read = readXml(text);
  if (!read.ok) throw new Error(read.problem.message);
  return read.value;
}

const codeOf = (text: string): string => {
  const read = readXml(text);
  return read.ok ? "read" : read.problem.code;
};

describe("reading XML", () => {
  it("reads elements, attributes in either quotes, text, CDATA, and passes over the rest", () => {
    const read = root(`<?xml version="1.0"?><!DOCTYPE a PUBLIC "x" "http://y/z.dtd"><!-- c -->
      <a one="1" two='t"wo'><?p i?>x<b/><!-- d --><![CDATA[<&]]>y</a><!-- e -->`);
    expect(read.name).toBe("a");
    expect([...read.attributes]).toEqual([
      ["one", "1"],
      ["two", 't"wo'],
    ]);
    expect(read.text).toBe("x<&y");
    expect(read.children.map(({ name }) => name)).toEqual(["b"]);
  });

  // W3C XML 1.0, sections 4.1 and 4.6.
  it("knows the five entities of XML and numbered characters", () => {
    expect(root(`<a k="&quot;&#x266D;">&lt;&amp;&gt;&apos;&#9837;</a>`)).toMatchObject({
      text: "<&>'♭",
      attributes: new Map([["k", '"♭']]),
    });
  });

  it.each([
    ["nothing", "", "xml-empty"],
    ["blanks only", "  \n ", "xml-empty"],
    ["no XML", "MThd", "xml-broken"],
    ["a wrong end tag", "<a><b></a></b>", "xml-broken"],
    ["two roots", "<a/><b/>", "xml-broken"],
    ["an attribute twice", `<a k="1" k="2"/>`, "xml-broken"],
    ["an attribute without quotes", "<a k=1/>", "xml-broken"],
    ["a bare < in an attribute", `<a k="<"/>`, "xml-broken"],
    ["an end after an opened tag", "<a><b>", "xml-cut-off"],
    ["an end inside a tag", "<a><b k=", "xml-broken"],
    ["an end inside a comment", "<a><!-- ", "xml-cut-off"],
    ["an unknown entity", "<a>&deep;</a>", "xml-entity"],
    ["a bare ampersand", "<a>R & B</a>", "xml-entity"],
    ["a character that is none", "<a>&#xD800;</a>", "xml-entity"],
    ["a document type that declares", `<!DOCTYPE a [<!ENTITY x "y">]><a>&x;</a>`, "xml-declares"],
  ])("refuses %s", (_, text, code) => {
    expect(codeOf(text)).toBe(code);
  });

  it("refuses entity bombs and files that ask for others", () => {
    const bomb = `<!DOCTYPE l [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;&a;">]><l>&b;</l>`;
    const outside = `<!DOCTYPE l [<!ENTITY a SYSTEM "file:///etc/passwd">]><l>&a;</l>`;
    expect([codeOf(bomb), codeOf(outside)]).toEqual(["xml-declares", "xml-declares"]);
  });

  it("refuses ten megabytes of nesting without running out of stack", () => {
    expect(codeOf("<a>".repeat(3_400_000))).toBe("xml-too-deep");
    expect(codeOf("<a>".repeat(64) + "</a>".repeat(64))).toBe("read");
  });

  it("refuses what is larger than any score", () => {
    expect(codeOf("<a>" + " ".repeat(32_000_001) + "</a>")).toBe("xml-too-large");
  });

  it("says in which line the fault is", () => {
    const read = readXml("<a>\n<b>\n</c></a>");
    expect(read).toMatchObject({ ok: false, problem: { message: /line 3/ } });
  });

  it("never throws, whatever it is given", () => {
    const pieces = fc.constantFrom(
      "<",
      ">",
      "a",
      "</a>",
      "<a ",
      "k='",
      "&",
      ";",
      "<!--",
      "]]>",
      "<?",
    );
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 20 }), (parts) => {
        expect(typeof readXml(parts.join("")).ok).toBe("boolean");
      }),
      { seed: 7, numRuns: 2000 },
    );
  });
});

describe("writing XML", () => {
  it("gives back any text that XML can hold", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), fc.string({ unit: "binary" }), (text, value) => {
        const allowed = (each: string) =>
          each.replace(/[^\t\n\x20-\uD7FF\uE000-\uFFFC\u{10000}-\u{10FFFF}]/gu, "");
        const printed = printXml(xml("a", { k: allowed(value) }, xmlText("b", allowed(text))));
        expect(root(printed).attributes.get("k")).toBe(allowed(value));
        expect(childOf(root(printed), "b")?.text).toBe(allowed(text));
      }),
      { seed: 7 },
    );
  });

  it("drops control characters and lone halves of characters", () => {
    expect(printXml(xmlText("a", "x\u0000\u0007\uD800y"))).toBe("<a>xy</a>\n");
  });

  it("leaves out what is undefined", () => {
    expect(printXml(xml("a", { k: undefined }, undefined))).toBe("<a/>\n");
  });
});

describe("decoding XML", () => {
  const encode = (text: string, unit: 1 | 2): Uint8Array => {
    const codes = [...text].map((each) => each.charCodeAt(0));
    return unit === 1
      ? Uint8Array.from(codes)
      : Uint8Array.from([0xff, 0xfe, ...codes.flatMap((code) => [code & 0xff, code >> 8])]);
  };

  it("goes by the byte order mark, the declaration, else UTF-8", () => {
    const latin = '<?xml version="1.0" encoding="ISO-8859-1"?><a>é</a>';
    expect(decodeXml(encode(latin, 1))).toEqual({ ok: true, value: latin });
    expect(decodeXml(encode("<a>♭</a>", 2))).toEqual({ ok: true, value: "<a>♭</a>" });
    expect(decodeXml(new TextEncoder().encode("<a>♭</a>"))).toEqual({
      ok: true,
      value: "<a>♭</a>",
    });
  });

  it("refuses bytes that are not in the encoding they claim", () => {
    expect(decodeXml(Uint8Array.from([0x3c, 0x61, 0x3e, 0xff, 0xfe]))).toMatchObject({
      problem: { code: "xml-encoding" },
    });
    const unknown = encode('<?xml version="1.0" encoding="ebcdic-cp-us"?><a/>', 1);
    expect(decodeXml(unknown)).toMatchObject({ problem: { code: "xml-encoding" } });
  });
});
