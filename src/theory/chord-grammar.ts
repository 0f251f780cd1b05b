import type { Count } from "../base/index.ts";
import type { ChordDraft, Drafted, Refusal } from "./chord-draft-types.ts";
import { takeAltered, takeNumber } from "./chord-number-steps.ts";
import { takeSign } from "./chord-sign-steps.ts";
import type { ChordToken } from "./chord-token.ts";
import { takeWord } from "./chord-word-steps.ts";
import {
  draftOf,
  emptyWork,
  missingNumber,
  stemBefore,
  type ChordWork,
  type Taken,
} from "./chord-work.ts";

/**
 * Reads the pieces behind a chord's root in the order players print them: quality, number, then
 * suspensions, alterations, added and left-out notes in any order, bracketed or not.
 * @param tokens - the pieces
 * @param text - the plain text they were cut from
 * @param end - index where the slash bass begins, or the length of the text
 * @returns the symbol taken apart, or the refusal with its place
 */
export function draftChord(
  tokens: readonly ChordToken[],
  text: string,
  end: Count,
): Drafted<ChordDraft> {
  const work = emptyWork(text.slice(0, end));
  let index = 0;
  for (let token = tokens[0]; token !== undefined; token = tokens[index]) {
    const taken = take(work, token, tokens[index + 1]);
    if (typeof taken !== "number") return { ok: false, refusal: taken };
    index += taken;
  }
  const refusal = unfinished(work);
  return refusal === undefined ? { ok: true, value: draftOf(work) } : { ok: false, refusal };
}

function take(into: ChordWork, token: ChordToken, next: ChordToken | undefined): Taken {
  const wanted = into.wantsNumber;
  const isNumber = token.kind === "number" || token.kind === "altered";
  const addsMajor = wanted?.word === "add" && token.kind === "word" && token.word === "major";
  if (wanted !== undefined && !isNumber && !addsMajor)
    return missingNumber(wanted, stemBefore(into.text, token.at));
  const taken = takeAny(into, token, next);
  if (isNumber) into.wantsNumber = undefined;
  return taken;
}

function takeAny(into: ChordWork, token: ChordToken, next: ChordToken | undefined): Taken {
  if (token.kind === "sign") return takeSign(into, token, next);
  into.separatorAt = undefined;
  switch (token.kind) {
    case "word":
      return takeWord(into, token, next);
    case "number":
      return takeNumber(into, token);
    case "altered":
      return takeAltered(into, token);
    case "unknown":
      return unknownText(into, token.at);
  }
}

function unknownText({ text }: ChordWork, at: number): Refusal {
  const rest = text.slice(at).trim();
  return {
    code: "chord-unknown",
    message: `“${rest}” is not part of a chord symbol.`,
    at,
    candidates: [stemBefore(text, at)],
  };
}

function unfinished(work: ChordWork): Refusal | undefined {
  const { bracketAt, separatorAt, text } = work;
  const stem = text.trimEnd();
  if (work.wantsNumber !== undefined) return missingNumber(work.wantsNumber, stem);
  if (separatorAt !== undefined && separatorAt !== bracketAt)
    return {
      code: "chord-dangling",
      message: "Something is missing behind this sign.",
      at: separatorAt,
      candidates: [text.slice(0, separatorAt) + (bracketAt === undefined ? "" : ")")],
    };
  if (bracketAt === undefined) return undefined;
  return {
    code: "chord-bracket-open",
    message: "This bracket is never closed.",
    at: bracketAt,
    candidates: [`${stem})`, text.slice(0, bracketAt)],
  };
}
