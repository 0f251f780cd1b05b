import { useRef, useState, type KeyboardEvent, type PointerEvent } from "react";
import { placeKept } from "../actions/keep.ts";

/** Where a kept voicing would be put down: at a place in the row, 0 and up. */
export interface RowDrag {
  readonly letter: string;
  readonly to: number;
}

/** Pixels a finger may tremble before it drags. */
const tremble = 5;

/**
 * Puts the list's items in another order, by pointer and by keys.
 * @param letters - the kept voicings in order
 * @returns the drag that is going on, a ref for the list, and what the handles hear
 */
export function useRowDrag(letters: readonly string[]) {
  const list = useRef<HTMLUListElement>(null);
  const [drag, setDrag] = useState<RowDrag | null>(null);
  const onPointerDown = (event: PointerEvent<HTMLButtonElement>, letter: string) => {
    if (event.button !== 0) return;
    const handle = event.currentTarget;
    const start = { x: event.clientX, y: event.clientY };
    handle.setPointerCapture(event.pointerId);
    let now: RowDrag | null = null;
    const moved = ({ clientX, clientY }: globalThis.PointerEvent) => {
      const far = Math.hypot(clientX - start.x, clientY - start.y);
      if (now === null && far < tremble) return;
      now = { letter, to: nearestPlace(list.current, clientX, clientY) };
      setDrag(now);
    };
    const ended = (end: globalThis.PointerEvent) => {
      handle.removeEventListener("pointermove", moved);
      handle.removeEventListener("pointerup", ended);
      handle.removeEventListener("pointercancel", ended);
      setDrag(null);
      if (now !== null && end.type === "pointerup") placeKept(letter, now.to);
    };
    handle.addEventListener("pointermove", moved);
    handle.addEventListener("pointerup", ended);
    handle.addEventListener("pointercancel", ended);
  };
  const onKeyDown = (event: KeyboardEvent, letter: string) => {
    const to = placeOfKey(event.key, letters.indexOf(letter), letters.length);
    if (to === null) return;
    event.preventDefault();
    placeKept(letter, to);
  };
  return { list, drag, onPointerDown, onKeyDown };
}

function placeOfKey(key: string, at: number, count: number): number | null {
  if (key === "ArrowLeft" || key === "ArrowUp") return at - 1;
  if (key === "ArrowRight" || key === "ArrowDown") return at + 1;
  if (key === "Home") return 0;
  return key === "End" ? count - 1 : null;
}

/** The place of the item whose middle is nearest to the pointer; rows count before columns. */
function nearestPlace(list: HTMLElement | null, x: number, y: number): number {
  const away = [...(list?.children ?? [])].map((item) => {
    const box = item.getBoundingClientRect();
    const over = Math.max(box.top - y, y - box.bottom, 0);
    return 1000 * over + Math.abs((box.left + box.right) / 2 - x);
  });
  return away.indexOf(Math.min(...away));
}
