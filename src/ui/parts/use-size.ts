import { useLayoutEffect, useRef, useState, type RefObject } from "react";

/** Size of an element, CSS pixels. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/**
 * Watches an element's inner size.
 * @param first - size before the first measurement
 * @returns a ref for the element, and its size in whole pixels
 */
export function useSize<E extends HTMLElement>(first: Size): [RefObject<E | null>, Size] {
  const ref = useRef<E>(null);
  const [size, setSize] = useState(first);
  useLayoutEffect(() => {
    const element = ref.current;
    if (element === null) return;
    const measure = () => {
      const next = { width: element.clientWidth, height: element.clientHeight };
      setSize((old) => (old.width === next.width && old.height === next.height ? old : next));
    };
    measure();
    const watcher = new ResizeObserver(measure);
    watcher.observe(element);
    return () => watcher.disconnect();
  }, []);
  return [ref, size];
}

/**
 * Follows a media query.
 * @param query - e.g. "(max-width: 767px)"
 * @returns whether it holds now
 */
export function useMedia(query: string): boolean {
  const [holds, setHolds] = useState(() => matchMedia(query).matches);
  useLayoutEffect(() => {
    const list = matchMedia(query);
    const change = () => setHolds(list.matches);
    change();
    list.addEventListener("change", change);
    return () => list.removeEventListener("change", change);
  }, [query]);
  return holds;
}
