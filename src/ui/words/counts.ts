/**
 * A count with its word: "1 note", "6 notes".
 * @param count - how many
 * @param one - the word for one
 * @param many - the word for several; the word for one with an s unless given
 * @returns both
 */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/**
 * Words in a row: "A, B and C".
 * @param words - any number of them
 * @returns one text; empty for none
 */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join("");
  return `${words.slice(0, -1).join(", ")} and ${words[words.length - 1]}`;
}

/**
 * A whole number with its sign, the minus as typesetters write it.
 * @param value - whole number
 * @returns "+4", "−1", "0"
 */
export function signed(value: number): string {
  if (value === 0) return "0";
  return value > 0 ? `+${value}` : `−${-value}`;
}

const smallNumbers = [
  "no",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
];

/**
 * A small count in words, as a sentence writes it.
 * @param count - 0 and up
 * @returns "two"; figures above twelve
 */
export function inWords(count: number): string {
  return smallNumbers[count] ?? String(count);
}

const ordinals = ["", "1st", "2nd", "3rd"];

/**
 * A place in a row: "1st", "2nd", "4th".
 * @param place - 1 and up
 * @returns the figure with its ending
 */
export function ordinal(place: number): string {
  return ordinals[place] ?? `${place}th`;
}
