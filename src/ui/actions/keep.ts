import type { LayerId } from "../../voicing/index.ts";
import type { Kept } from "../state/session.ts";
import {
  withCompared,
  withKept,
  withName,
  withNote,
  withPlaceInRow,
  withoutKept,
} from "../state/session.ts";
import { page, session } from "../store.ts";
import { ordinal } from "../words/counts.ts";
import { announce } from "./announce.ts";
import { take, wander } from "./steps.ts";

/** What the map's own answers are called, by layer. */
const bestNames: Readonly<Record<LayerId, string>> = {
  free: "Best here",
  "by-section": "Best by section",
  crossed: "Best crossed",
};

/** Keeps the voicing in view. */
export function keepThis(): void {
  const { view, answer } = page.getState();
  if (view === null || answer === null) return;
  const made = session().made;
  const name =
    view.by === "map"
      ? bestNames[answer.map.layer]
      : made === null || view.by === "hand"
        ? "By hand"
        : capital(made.title);
  take(withKept(session(), view.pitches, name, answer.asked.inquiry));
  announce(`Kept as ${session().kept.at(-1)?.letter ?? ""}.`);
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Chooses a kept voicing for comparing, or not. */
export function compare(letter: string): void {
  wander(withCompared(session(), letter));
}

export function nameKept(letter: string, name: string): void {
  take(withName(session(), letter, name), `name ${letter}`);
}

export function noteKept(letter: string, note: string): void {
  take(withNote(session(), letter, note), `note ${letter}`);
}

/** Puts a kept voicing at another place in the row; says where it is now. */
export function placeKept(letter: string, to: number): void {
  const next = withPlaceInRow(session(), letter, to);
  if (next === session()) return;
  take(next);
  const place = next.kept.findIndex((one) => one.letter === letter);
  announce(`${letter} is now ${ordinal(place + 1)} of ${next.kept.length}.`);
}

export function letGo(letter: string): void {
  take(withoutKept(session(), letter));
  announce(`${letter} is let go.`);
}

/** Brings a kept voicing back, with the question it answered. */
export function showKept(kept: Kept): void {
  take({
    ...session(),
    inquiry: kept.inquiry,
    made: {
      by: "kept",
      pitches: kept.pitches,
      moved: [],
      from: kept.pitches,
      title: kept.letter,
    },
    step: `show ${kept.letter}`,
  });
}
