import type { ReactNode } from "react";
import type { Way } from "../actions/sound-state.ts";

const rows = [1.6, 8.2, 14.8, 21.4];

/** Blocks in time and section shapes for each way of hearing. */
const signs: Readonly<Partial<Record<Way, ReactNode>>> = {
  hit: rows.map((y) => <rect key={y} x="27" y={y} width="8" height="5" />),
  sustained: rows.map((y) => <rect key={y} x="6" y={y} width="50" height="5" />),
  "rolled-from-bottom": rows.map((y, index) => (
    <rect key={y} x={44 - 12.6 * index} y={y} width={12 + 12.6 * index} height="5" />
  )),
  "section-by-section": (
    <>
      <circle cx="10" cy="14" r="7" />
      <rect x="23" y="9.5" width="17" height="8.5" />
      <path d="M44.5,20L52,6L59.5,20Z" />
    </>
  ),
};

/** The sign of a way of hearing. */
export function WaySign({ way }: { readonly way: Way }) {
  return (
    <svg width="62" height="28" viewBox="0 0 62 28" aria-hidden="true">
      {signs[way]}
    </svg>
  );
}
