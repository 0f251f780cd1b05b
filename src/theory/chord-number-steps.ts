import type { Count } from "../base/index.ts";
import type { ChordExtension, Refusal } from "./chord-draft-types.ts";
import { addedDegree, alteredDegree, omittedDegree } from "./chord-mark-degrees.ts";
import { displayDegree } from "./degree.ts";
import {
  hasNoTail,
  pushMark,
  stemBefore,
  type ChordWork,
  type Taken,
  type TokenOf,
} from "./chord-work.ts";

/**
 * Takes a number: the chord's own, an added or a left-out one.
 * @param into - work so far
 * @param token - the number
 * @returns pieces taken, or a refusal: `chord-number`, `chord-unclear`, `chord-degree`, `chord-omit`
 */
export function takeNumber(into: ChordWork, token: TokenOf<"number">): Taken {
  if (into.mode === "omitting") return takeOmitted(into, token);
  if (into.mode === "adding") return takeAdded(into, token, "");
  const isFirst = into.extension === 0 && into.marks.length === 0 && !into.isAlt;
  // C(maj7): the number belongs to the word before it, bracket or not.
  const followsMajor = into.isMajorSeventh && hasNoTail(into);
  if (isFirst && (into.bracketAt === undefined || followsMajor)) return takeExtension(into, token);
  if (into.bracketAt !== undefined && into.extension >= 6) return takeAdded(into, token, "");
  const stem = stemBefore(into.text, into.bracketAt ?? token.at);
  const { value } = token;
  return {
    code: "chord-unclear",
    message: `The ${value} is not clear here; put a second number in brackets, or write “add”.`,
    at: token.at,
    candidates: [`${stem}${value}`, `${stem}(${value})`, `${stem}(add${value})`, stem],
  };
}

function takeExtension(into: ChordWork, token: TokenOf<"number">): Taken {
  const { value, at } = token;
  const { quality } = into;
  const isPlain = quality === undefined && into.suspension === 0;
  const awaitsSeventh = into.wantsNumber?.word === "major";
  if (value === 2 && (isPlain || quality === "minor") && !into.isMajorSeventh) {
    into.choices.push("two");
    return pushMark(into, "add", "9", at);
  }
  const isDiminished = quality === "diminished" || quality === "half-diminished";
  const takesSixth = !isDiminished && into.wantsNumber === undefined;
  const allowed = [7, 9, 11, 13, ...(takesSixth ? [6, 69] : []), ...(isPlain ? [5] : [])];
  if (!allowed.includes(value)) return wrongExtension(into, token, awaitsSeventh);
  into.extension = value as ChordExtension;
  return 1;
}

/** What was probably meant by a number no chord has; {} stands for the text before it. */
const INSTEAD: Readonly<Record<number, readonly string[]>> = {
  2: ["{}9", "{}(add9)"],
  4: ["{}sus4", "{}(add11)"],
  5: ["{}(b5)", "{}"],
  79: ["{}9", "{}7(b9)"],
  711: ["{}11", "{}7(#11)"],
  713: ["{}13", "{}7(13)"],
};

function wrongExtension(
  work: ChordWork,
  { value, at, end }: TokenOf<"number">,
  awaitsSeventh: boolean,
): Refusal {
  const stem = work.text.slice(0, at);
  const after = work.text.slice(end);
  const instead = awaitsSeventh ? [] : (INSTEAD[value] ?? []);
  return {
    code: "chord-number",
    message: `A chord of this kind cannot take the number ${value}.`,
    at,
    candidates: [
      ...instead.map((one) => one.replace("{}", stem)),
      `${stem}7${after}`,
      `${stem}${after}`,
    ],
  };
}

function takeAdded(
  into: ChordWork,
  token: TokenOf<"number"> | TokenOf<"altered">,
  signs: string,
): Taken {
  const degree = addedDegree(signs, token.value ?? 0, into.extension);
  if (degree === undefined) return wrongDegree(into, token, signs);
  if (into.bracketAt === undefined) into.mode = "plain";
  return pushMark(into, "add", degree, token.at);
}

function takeOmitted(into: ChordWork, token: TokenOf<"number">): Taken {
  const degree = omittedDegree(token.value);
  if (into.bracketAt === undefined) into.mode = "plain";
  if (degree !== undefined) return pushMark(into, "omit", degree, token.at);
  return {
    code: "chord-omit",
    message:
      token.value === 1
        ? "A symbol cannot leave out its root; untick the root instead."
        : `There is no ${token.value} to leave out.`,
    at: token.at,
    candidates: [into.text.slice(0, token.at).replace(/[\s(,/]*(omit|no|without)\s*$/i, "")],
  };
}

/**
 * Takes an altered number: ♭9, ♯11.
 * @param into - work so far
 * @param token - the signs and their number
 * @returns pieces taken, or a refusal: `chord-number-missing`, `chord-degree`
 */
export function takeAltered(into: ChordWork, token: TokenOf<"altered">): Taken {
  const { signs, value, at } = token;
  if (value === undefined) return missingAlteredNumber(into, token);
  const degree = alteredDegree(signs, value);
  const isRightBehindWord = into.wantsNumber !== undefined;
  if (into.mode === "omitting" && isRightBehindWord) return wrongDegree(into, token, signs);
  if (into.mode === "adding" && (isRightBehindWord || addsOn(into, value)))
    return takeAdded(into, token, signs);
  if (degree === undefined) return wrongDegree(into, token, signs);
  return pushMark(into, "alter", degree, at);
}

/** C(add9,#11): on a triad "add" holds for the rest of the bracket; a seventh chord is altered. */
const addsOn = (work: ChordWork, value: Count) => work.extension < 6 && value > 6;

/** What was probably meant by a degree that chord symbols do not print. */
const DEGREES_INSTEAD: Readonly<Record<string, readonly string[]>> = {
  b2: ["{before}b9{after}"],
  "#2": ["{before}#9{after}"],
  b10: ["{before}#9{after}"],
  "#4": ["{before}#11{after}"],
  b6: ["{before}b13{after}"],
  "#6": ["{stem}7"],
  b7: ["{stem}7"],
  "#7": ["{stem}(maj7)", "{stem}maj7"],
  "7": ["{stem}7", "{stem}maj7"],
  b3: ["{stem}m"],
  "#13": ["{stem}13"],
  b11: ["{stem}11"],
};

function wrongDegree(
  work: ChordWork,
  token: TokenOf<"number"> | TokenOf<"altered">,
  signs: string,
): Refusal {
  const degree = `${signs}${token.value ?? ""}`;
  const before = work.text.slice(0, token.at);
  const after = work.text.slice(token.end);
  const stem = before.replace(/[\s(,/]*(add|omit|no)?\s*$/i, "");
  const instead = DEGREES_INSTEAD[degree] ?? [];
  return {
    code: "chord-degree",
    message: `A chord symbol has no ${displayDegree(degree)} in this place.`,
    at: token.at,
    candidates: [
      ...instead.map((one) =>
        one.replace("{before}", before).replace("{after}", after).replace("{stem}", stem),
      ),
      stem,
    ],
  };
}

function missingAlteredNumber(work: ChordWork, { signs, at }: TokenOf<"altered">): Refusal {
  const isFlat = signs.startsWith("b");
  const stem = work.text.slice(0, at).trimEnd();
  const [, start = "", number] = /^(.*?)(5|9|11|13)$/.exec(stem) ?? [];
  const second = number === undefined ? (isFlat ? "b13" : "#11") : "";
  return {
    code: "chord-number-missing",
    message: `A ${isFlat ? "flat" : "sharp"} needs a number after it.`,
    at,
    candidates: [
      `${stem}${isFlat ? "b9" : "#9"}`,
      number === undefined ? `${stem}${second}` : `${start}7${signs}${number}`,
      stem,
    ],
  };
}
