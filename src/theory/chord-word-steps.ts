import type { ChordQuality, Refusal } from "./chord-draft-types.ts";
import type { ChordToken } from "./chord-token.ts";
import {
  hasNoTail,
  isFresh,
  pushMark,
  stemBefore,
  type ChordWork,
  type Taken,
  type TokenOf,
} from "./chord-work.ts";

/**
 * Takes a word: quality, suspension, addition, omission, alt.
 * @param into - work so far
 * @param token - the word
 * @param next - the piece behind it
 * @returns pieces taken, or a refusal: `chord-contradiction`
 */
export function takeWord(
  into: ChordWork,
  token: TokenOf<"word">,
  next: ChordToken | undefined,
): Taken {
  switch (token.word) {
    case "major":
    case "triangle":
      return takeMajor(into, token, next);
    case "minor":
    case "diminished":
    case "half-diminished":
      return takeQuality(into, token, token.word);
    case "augmented":
      return isFresh(into)
        ? takeQuality(into, token, "augmented")
        : pushMark(into, "alter", "#5", token.at);
    case "dominant":
      into.wantsNumber = { word: "dominant", at: token.at };
      return takeQuality(into, token, "major");
    case "suspended":
      return takeSuspension(into, token, next);
    case "add":
    case "omit":
      into.mode = token.word === "add" ? "adding" : "omitting";
      into.wantsNumber = { word: token.word, at: token.at };
      return 1;
    case "alt":
      return takeAlt(into, token);
  }
}

function takeQuality(into: ChordWork, token: TokenOf<"word">, quality: ChordQuality): Taken {
  if (!isFresh(into)) return contradiction(into, token, "The kind of chord is already stated.");
  into.quality = quality;
  return 1;
}

function contradiction(work: ChordWork, token: TokenOf<"word">, message: string): Refusal {
  const without = work.text.slice(0, token.at) + work.text.slice(token.end);
  const stem = stemBefore(work.text, token.at);
  return { code: "chord-contradiction", message, at: token.at, candidates: [without, stem] };
}

function takeMajor(into: ChordWork, token: TokenOf<"word">, next: ChordToken | undefined): Taken {
  const isOnTop = into.mode === "adding" || (into.quality === "diminished" && into.extension >= 7);
  if (isOnTop) return takeAddedMajorSeventh(into, token, next);
  const isSecondWord =
    into.extension === 0 &&
    hasNoTail(into) &&
    !into.isMajorSeventh &&
    (into.quality === "minor" || into.quality === "diminished" || into.quality === "augmented");
  if (!isFresh(into) && !isSecondWord) return secondSeventh(into, token);
  const isBareTriangle = token.word === "triangle" && next?.kind !== "number";
  if (isBareTriangle) {
    into.extension = 7;
    into.choices.push("triangle");
  } else if (isSecondWord) into.wantsNumber = { word: "major", at: token.at };
  into.quality ??= "major";
  into.isMajorSeventh = true;
  return 1;
}

function secondSeventh(work: ChordWork, token: TokenOf<"word">): Refusal {
  const refusal = contradiction(
    work,
    token,
    "This chord cannot take a major seventh as well; print “maj” before the number.",
  );
  const stem = stemBefore(work.text, token.at);
  return { ...refusal, candidates: [stem.replace(/(\d+)$/, "maj$1"), stem] };
}

/** °7(maj7), °7(add maj7): the major seventh is put on top of the diminished one. */
function takeAddedMajorSeventh(
  into: ChordWork,
  token: TokenOf<"word">,
  next: ChordToken | undefined,
): Taken {
  const isSeventh = next?.kind === "number" && next.value === 7;
  if (!isSeventh && token.word !== "triangle")
    return contradiction(into, token, "Only a 7 can follow “maj” here.");
  if (into.quality !== "diminished" || into.extension < 7)
    return contradiction(into, token, "A major seventh can be added only to a °7 chord.");
  into.wantsNumber = undefined;
  pushMark(into, "add", "7", token.at);
  return isSeventh ? 2 : 1;
}

function takeSuspension(
  into: ChordWork,
  token: TokenOf<"word">,
  next: ChordToken | undefined,
): Taken {
  const { quality, text } = into;
  if (quality === "minor" || quality === "diminished" || quality === "half-diminished")
    return {
      code: "chord-contradiction",
      message: "A suspended chord has no third, so it cannot be minor or diminished.",
      at: token.at,
      candidates: [
        text.charAt(0) + text.slice(1).replace(/minor|min|mi|m|-|dim|°|o|ø/i, ""),
        stemBefore(text, token.at),
      ],
    };
  if (into.suspension !== 0 || into.extension === 5 || into.isAlt)
    return contradiction(into, token, "This chord has no third left to suspend.");
  const number = next?.kind === "number" && (next.value === 2 || next.value === 4) && next.value;
  if (number === false) into.choices.push("suspended");
  into.suspension = number === 2 ? 2 : 4;
  return number === false ? 1 : 2;
}

function takeAlt(into: ChordWork, token: TokenOf<"word">): Taken {
  const fits =
    (into.quality === undefined || into.quality === "major") &&
    (into.extension === 0 || into.extension === 7) &&
    hasNoTail(into) &&
    !into.isMajorSeventh &&
    !into.isAlt;
  if (!fits) return contradiction(into, token, "“alt” follows only a plain dominant seventh.");
  into.isAlt = true;
  into.extension = 7;
  return 1;
}
