import { useEffect, useState, type KeyboardEvent, type PointerEvent, type RefObject } from "react";
import { abandonDrag, dragTo, dropToken, move, nudge, selectPlayer } from "../actions/edit.ts";
import { hearPlayer, hearView } from "../actions/hear.ts";
import { toggleFixed } from "../actions/roles.ts";
import { abandonSwap, beginSwap, endSwap, swapPlayers } from "../actions/swap.ts";
import { page } from "../store.ts";
import type { LadderPlan, PlacedToken } from "./ladder-plan.ts";

/** How far the finger may leave the strip before it means another player, CSS pixels. */
const stripMargin = 8;

/**
 * What a key does on a token.
 * @param event - the key
 * @param id - whose token
 * @param go - goes to the next player (1) or the one before (−1)
 */
export function keyOnToken(event: KeyboardEvent, id: string, go: (by: number) => void): void {
  const size = event.shiftKey ? "semitone" : "note";
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  const { swapping } = page.getState();
  const key = event.key.length === 1 ? event.key.toLowerCase() : event.key;
  if (key === "ArrowUp") nudge(id, 1, size);
  else if (key === "ArrowDown") nudge(id, -1, size);
  else if (key === "ArrowRight") go(1);
  else if (key === "ArrowLeft") go(-1);
  else if (key === "Delete" || key === "Backspace") move(id, null);
  else if (key === "s" && swapping === null) beginSwap(id);
  else if ((key === "s" || key === "Enter") && swapping !== null) endSwap(id);
  else if (key === "Escape" && swapping !== null) abandonSwap();
  else if (key === "Enter") hearPlayer(id, event.shiftKey ? "softer" : "silent");
  else if (key === " ") hearView("again");
  else if (key === "f") toggleFixed(id);
  else return;
  event.preventDefault();
}

/**
 * Keeps a finger on a token from scrolling the page. The style for that is not heeded inside
 * drawings, so the touch itself is taken.
 * @param group - the tokens
 */
export function useTouchOnTokens(group: RefObject<SVGGElement | null>): void {
  useEffect(() => {
    const tokens = group.current;
    const take = (event: TouchEvent) => event.preventDefault();
    tokens?.addEventListener("touchstart", take, { passive: false });
    return () => tokens?.removeEventListener("touchstart", take);
  }, [group]);
}

/**
 * Takes a token along under the finger; it snaps from semitone to semitone. Taken sideways onto
 * another player's token, the two change places.
 * @param plan - where everything lies
 * @returns who is dragged, onto whom, and what begins a drag
 */
export function useTokenDrag(plan: LadderPlan) {
  const [dragged, setDragged] = useState<string | null>(null);
  const [target, setTarget] = useState<string | null>(null);
  const onPointerDown = (event: PointerEvent<SVGGElement>, token: PlacedToken) => {
    if (event.button !== 0) return;
    const { id } = token.player;
    const element = event.currentTarget;
    const svg = element.ownerSVGElement;
    if (svg === null) return;
    if (page.getState().swapping !== null) {
      element.focus({ preventScroll: true });
      return endSwap(id);
    }
    selectPlayer(id);
    element.focus({ preventScroll: true });
    element.setPointerCapture(event.pointerId);
    const startY = event.clientY;
    const startX = event.clientX;
    // The scale stays as it was when the token was taken, whatever the drag adds to it.
    const { pitchAt } = plan;
    const offset = token.y - (event.clientY - svg.getBoundingClientRect().top);
    let isDrag = false;
    let onto: string | null = null;
    const moved = (to: globalThis.PointerEvent) => {
      const far = Math.max(Math.abs(to.clientY - startY), Math.abs(to.clientX - startX));
      if (!isDrag && far < 5) return;
      isDrag = true;
      setDragged(id);
      onto = otherUnder(to, plan, token, svg);
      setTarget(onto);
      if (onto !== null) return abandonDrag();
      dragTo(id, pitchAt(to.clientY - svg.getBoundingClientRect().top + offset));
    };
    const ended = (end: globalThis.PointerEvent) => {
      element.removeEventListener("pointermove", moved);
      element.removeEventListener("pointerup", ended);
      element.removeEventListener("pointercancel", ended);
      setDragged(null);
      setTarget(null);
      if (!isDrag) return;
      if (end.type === "pointercancel") abandonDrag();
      else if (onto !== null) swapPlayers(id, onto);
      else dropToken(id);
      hearView("again");
    };
    element.addEventListener("pointermove", moved);
    element.addEventListener("pointerup", ended);
    element.addEventListener("pointercancel", ended);
  };
  return { dragged, target, onPointerDown };
}

/** The player whose token lies under a finger that has left the strip of the token it holds. */
function otherUnder(
  at: globalThis.PointerEvent,
  plan: LadderPlan,
  held: PlacedToken,
  svg: SVGSVGElement,
): string | null {
  const strip = plan.strips.find((each) => each.players.includes(held.player));
  if (strip === undefined) return null;
  const x = at.clientX - svg.getBoundingClientRect().left;
  if (x > strip.x - stripMargin && x < strip.x + strip.width + stripMargin) return null;
  const under = document.elementFromPoint(at.clientX, at.clientY)?.closest("[data-player]");
  const id = under?.getAttribute("data-player") ?? null;
  return id === held.player.id ? null : id;
}
