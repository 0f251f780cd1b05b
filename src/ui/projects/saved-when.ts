const clock = new Intl.DateTimeFormat("en", { hour: "2-digit", minute: "2-digit", hour12: false });
const day = new Intl.DateTimeFormat("en", { day: "numeric", month: "long" });
const dayOfYear = new Intl.DateTimeFormat("en", { day: "numeric", month: "long", year: "numeric" });

/**
 * A moment in the past, in words.
 * @param at - milliseconds since 1970
 * @param now - likewise
 * @returns "just now", "today at 14:05", "3 March" or "3 March 2024"
 */
export function savedWhen(at: number, now: number): string {
  if (Math.abs(now - at) < 60_000) return "just now";
  const [then, today] = [new Date(at), new Date(now)];
  if (then.toDateString() === today.toDateString()) return `today at ${clock.format(then)}`;
  return (then.getFullYear() === today.getFullYear() ? day : dayOfYear).format(then);
}
