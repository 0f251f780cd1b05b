import type { Count } from "../base/index.ts";
import type { Refusal } from "./chord-draft-types.ts";
import type { ChordToken } from "./chord-token.ts";
import {
  isFresh,
  pushMark,
  stemBefore,
  type ChordWork,
  type Taken,
  type TokenOf,
} from "./chord-work.ts";

/**
 * Takes a bracket, comma, slash, plus or dash.
 * @param into - work so far
 * @param token - the sign
 * @param next - the piece behind it
 * @returns pieces taken, or a refusal: `chord-sign`, `chord-bass`, `chord-unclear`
 */
export function takeSign(
  into: ChordWork,
  token: TokenOf<"sign">,
  next: ChordToken | undefined,
): Taken {
  switch (token.sign) {
    case "(":
      return openBracket(into, token);
    case ")":
      return closeBracket(into, token);
    case ",":
    case "/":
      return takeSeparator(into, token, next);
    case "+":
      into.separatorAt = undefined;
      return takePlus(into, token, adjacentNumber(token, next));
    case "-":
      into.separatorAt = undefined;
      return takeDash(into, token, adjacentNumber(token, next));
  }
}

function openBracket(into: ChordWork, token: TokenOf<"sign">): Taken {
  if (into.bracketAt !== undefined)
    return signRefusal(into, token, "A bracket inside a bracket cannot be read.");
  into.bracketAt = token.at;
  into.separatorAt = token.at;
  return 1;
}

function closeBracket(into: ChordWork, token: TokenOf<"sign">): Taken {
  if (into.bracketAt === undefined)
    return signRefusal(into, token, "This bracket was never opened.");
  if (into.separatorAt !== undefined)
    return signRefusal(into, token, "Something is missing before this bracket.");
  into.bracketAt = undefined;
  into.mode = "plain";
  return 1;
}

function signRefusal(work: ChordWork, token: TokenOf<"sign">, message: string): Refusal {
  const without = work.text.slice(0, token.at) + work.text.slice(token.end);
  const stem = stemBefore(work.text, work.bracketAt ?? token.at);
  return { code: "chord-sign", message, at: token.at, candidates: [without, stem] };
}

function takeSeparator(
  into: ChordWork,
  token: TokenOf<"sign">,
  next: ChordToken | undefined,
): Taken {
  const isNumber = next?.kind === "number";
  if (token.sign === "/" && !isNumber && next?.kind !== "altered") return badBass(into, token);
  const isAfterTriad = into.extension < 6 && into.bracketAt === undefined;
  if (token.sign === "/" && isAfterTriad && isNumber) return unclearSlash(into, token);
  if (into.separatorAt !== undefined || (isFresh(into) && into.bracketAt === undefined))
    return signRefusal(into, token, "Nothing stands before this sign for it to part.");
  into.separatorAt = token.at;
  // C6/9, C7/9: the number behind the slash is added.
  if (into.bracketAt === undefined && token.sign === "/" && isNumber) into.mode = "adding";
  return 1;
}

function badBass(work: ChordWork, token: TokenOf<"sign">): Refusal {
  const stem = work.text.slice(0, token.at);
  const rest = work.text.slice(token.end).trim();
  const bass = /^[A-Ga-g](?:bb|##|[b#])?/.exec(rest)?.[0] ?? "";
  const capital = bass.charAt(0).toUpperCase() + bass.slice(1);
  const isLower = bass !== "" && bass !== capital && bass === rest;
  return {
    code: "chord-bass",
    message: isLower
      ? "A bass note is a capital letter."
      : "A slash needs one bass note behind it, a capital letter from A to G, and nothing more.",
    at: token.end,
    candidates: bass === "" ? [stem] : [`${stem}/${capital}`, stem],
  };
}

function unclearSlash(work: ChordWork, token: TokenOf<"sign">): Refusal {
  const stem = work.text.slice(0, token.at);
  const number = work.text.slice(token.end);
  return {
    code: "chord-unclear",
    message: "A number behind a slash is not clear on a triad; write the seventh, or “add”.",
    at: token.at,
    candidates: [`${stem}${number}`, `${stem}(add${number})`],
  };
}

const adjacentNumber = (token: TokenOf<"sign">, next: ChordToken | undefined) =>
  next?.kind === "number" && next.at === token.end ? next.value : undefined;

function takePlus(into: ChordWork, token: TokenOf<"sign">, number: Count | undefined): Taken {
  if (isFresh(into)) {
    if (number === 11 || number === 13) return unclearSign(into, token, number);
    into.quality = "augmented";
    if (number === 9) into.choices.push("plus-nine");
    return number === 5 ? 2 : 1;
  }
  if (number === undefined) return pushMark(into, "alter", "#5", token.at);
  const isTension = into.extension >= 7 && (number === 9 || number === 11);
  if (number !== 5 && !isTension) return unclearSign(into, token, number);
  pushMark(into, "alter", `#${number}`, token.at);
  return 2;
}

function takeDash(into: ChordWork, token: TokenOf<"sign">, number: Count | undefined): Taken {
  const fresh = isFresh(into);
  if (fresh && number !== 5) {
    into.quality = "minor";
    return 1;
  }
  const isTension = into.extension >= 7 && (number === 9 || number === 13);
  if (number === undefined || (number !== 5 && !isTension)) return unclearSign(into, token, number);
  if (isTension) into.choices.push("dash-flat");
  else if (fresh) into.choices.push("dash-five");
  pushMark(into, "alter", `b${number}`, token.at);
  return 2;
}

/** A plus or dash that could be a sharp or flat, or belong to the chord's name. */
function unclearSign(work: ChordWork, token: TokenOf<"sign">, number: Count | undefined): Refusal {
  const accidental = token.sign === "-" ? "b" : "#";
  const before = work.text.slice(0, token.at);
  const after = work.text.slice(token.end);
  return {
    code: "chord-unclear",
    message: `“${token.sign}${number ?? ""}” is not clear here; write a ${accidental === "b" ? "♭" : "♯"} or a word instead.`,
    at: token.at,
    // Behind the bare root a sharp or flat would become the root's own.
    candidates: isFresh(work)
      ? [`${before}7${accidental}${after}`, `${before}${after}(#5)`, `${before}${after}`]
      : [
          number === 7 && token.sign === "+"
            ? `${before}(maj${after})`
            : `${before}${accidental}${after}`,
          `${before}7${accidental}${after}`,
          `${before}${after}`,
          before,
        ],
  };
}
