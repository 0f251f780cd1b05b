import type { SectionId } from "../../band/index.ts";

/**
 * The sign of a section, centred on a point: trumpets a triangle, trombones a bar, saxes a disc,
 * rhythm a square. The shape carries the meaning; colour only helps.
 */
export function SectionMark(props: {
  readonly section: SectionId;
  readonly x: number;
  readonly y: number;
  readonly r: number;
}) {
  const { section, x, y, r } = props;
  const look = { className: `mark-${section}` };
  switch (section) {
    case "trumpets":
      return (
        <path
          {...look}
          d={`M${x - 1.12 * r},${y + 0.9 * r}L${x},${y - 1.1 * r}L${x + 1.12 * r},${y + 0.9 * r}Z`}
        />
      );
    case "trombones":
      return <rect {...look} x={x - 1.25 * r} y={y - 0.62 * r} width={2.5 * r} height={1.24 * r} />;
    case "saxes":
      return <circle {...look} cx={x} cy={y} r={r} />;
    case "rhythm":
      return <rect {...look} x={x - 0.9 * r} y={y - 0.9 * r} width={1.8 * r} height={1.8 * r} />;
  }
}

/** The sign as a small picture of its own, for running text. */
export function SectionSign({ section }: { readonly section: SectionId }) {
  return (
    <svg width="14" height="12" viewBox="0 0 14 12" aria-hidden="true">
      <SectionMark section={section} x={7} y={6} r={4.4} />
    </svg>
  );
}
