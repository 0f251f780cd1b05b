// Source: Unicode 15 charts "Miscellaneous Symbols", "Musical Symbols", "Greek and Coptic",
// "Latin-1 Supplement", "Mathematical Operators", "Geometric Shapes", "General Punctuation"; which
// of them players type for one another is common practice.

/** Signs people type or paste → the plain sign the readers work with. */
export const PLAIN_SIGNS: Readonly<Record<string, string>> = Object.freeze({
  "♭": "b",
  "♯": "#",
  "𝄫": "bb",
  "𝄪": "##",
  "＃": "#",
  "∆": "Δ",
  "△": "Δ",
  "▵": "Δ",
  "^": "Δ",
  Ø: "ø",
  "∅": "ø",
  "⌀": "ø",
  º: "°",
  "˚": "°",
  "∘": "°",
  "−": "-",
  "‐": "-",
  "‑": "-",
  "–": "-",
  "—": "-",
  "＋": "+",
  "⁄": "/",
  "∕": "/",
  "\u00a0": " ",
  "\u202f": " ",
  "\t": " ",
});
