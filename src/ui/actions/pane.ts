import { rememberPane, type Pane } from "../state/pane.ts";
import { page } from "../store.ts";
import { stopSound } from "./hear.ts";

/**
 * Shows one chord, or the phrase.
 * @param pane - which of the two
 */
export function showPane(pane: Pane): void {
  if (page.getState().pane === pane) return;
  stopSound();
  rememberPane(pane);
  page.setState({ pane });
}
