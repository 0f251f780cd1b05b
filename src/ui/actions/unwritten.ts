import type { Unwritten } from "../../explore/index.ts";
import type { Answer } from "../state/page-state.ts";
import { page } from "../store.ts";
import { announce } from "./announce.ts";
import { atlasLink } from "./atlas-link.ts";
import { goTo } from "./walk.ts";

/** How many are offered before the walk starts again. */
const longest = 12;

interface Walk {
  readonly map: Answer["map"];
  readonly found: readonly Unwritten[];
  readonly at: number;
}

let under: Walk | null = null;

/** Walks to the next good texture that sections scored one by one would not give; says why. */
export async function showUnwritten(): Promise<void> {
  const { answer } = page.getState();
  if (answer === null) return;
  const { asked, map } = answer;
  if (under?.map !== map) {
    page.setState({ unwritten: "looking" });
    const found = await atlasLink().unwritten(asked.question, map.cells, longest);
    if (page.getState().answer?.map !== map) return;
    under = { map, found, at: -1 };
  }
  const { found } = under;
  const at = found.length === 0 ? -1 : (under.at + 1) % found.length;
  under = { ...under, at };
  const next = found[at];
  if (next === undefined) {
    page.setState({ unwritten: null });
    announce("Nothing on this map is both good and far from the book.");
    return;
  }
  goTo(next.cell.key);
  page.setState({ unwritten: { key: next.cell.key, reason: next.reason } });
  announce(next.reason);
}
