/** A hexagon's outline around a point: by section, by the book. */
export function hexagonPath(x: number, y: number, r: number): string {
  const half = r / 2;
  const high = r * 0.866;
  return `M${x + r},${y}L${x + half},${y + high}H${x - half}L${x - r},${y}L${x - half},${y - high}H${x + half}Z`;
}

/** A lettered hexagon centred on a point. */
export function Hexagon(props: {
  readonly x: number;
  readonly y: number;
  readonly letter?: string;
  readonly r?: number;
  readonly isFaint?: boolean;
}) {
  const { x, y, letter, r = 8.6, isFaint = false } = props;
  return (
    <g className={isFaint ? "hexagon hexagon-faint" : "hexagon"}>
      <path d={hexagonPath(x, y, r)} />
      {letter !== undefined && (
        <text x={x} y={y + 3.9} textAnchor="middle">
          {letter}
        </text>
      )}
    </g>
  );
}

/** The hexagon as a small picture of its own, for running text. */
export function HexagonSign({ letter }: { readonly letter?: string }) {
  const size = letter === undefined ? 13 : 17;
  return (
    <svg width={size} height={size} aria-hidden="true">
      <Hexagon
        x={size / 2}
        y={size / 2}
        r={letter === undefined ? 5.4 : 7.6}
        {...(letter === undefined ? {} : { letter })}
      />
    </svg>
  );
}
