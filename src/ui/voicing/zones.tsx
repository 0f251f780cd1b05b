import { instrumentOf, type Register } from "../../band/index.ts";
import { SectionMark } from "../parts/section-mark.tsx";
import { usePage } from "../store.ts";
import { ladderSizes, type LadderPlan } from "./ladder-plan.ts";
import type { Strip } from "./ladder-strips.ts";

const words: Readonly<Record<Register["strength"], string>> = {
  weak: "weak",
  even: "easy",
  strong: "strong",
  tiring: "tiring",
  risky: "risky",
};

/** Compass and registers behind the tokens, with the strips' names above. */
export function Zones(props: { readonly plan: LadderPlan }) {
  const chosen = usePage((state) => state.selectedPlayer);
  const plan = withRegisters(props.plan, chosen);
  const labels = zoneLabels(plan);
  return (
    <g className="zones" aria-hidden="true">
      <defs>
        <pattern id="weak" width="8" height="8" patternUnits="userSpaceOnUse">
          <circle cx="2" cy="2" r=".85" className="zone-mark" />
          <circle cx="6" cy="6" r=".85" className="zone-mark" />
        </pattern>
        <pattern
          id="covered"
          width="6"
          height="6"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <rect width="2.4" height="6" className="cover-mark" />
        </pattern>
        <pattern id="hard" width="4" height="7" patternUnits="userSpaceOnUse">
          <rect width="4" height="1" className="zone-mark" />
        </pattern>
      </defs>
      {plan.strips.map((strip) => (
        <g key={strip.id}>
          <StripName strip={strip} />
          <rect className="zone" {...zoneBox(plan, strip, strip.range.low, strip.range.high)} />
          {strip.registers.map((register) => (
            <RegisterZone key={register.low} plan={plan} strip={strip} register={register} />
          ))}
        </g>
      ))}
      {labels.map(({ x, y, text }) => (
        <text key={text} className="zone-word" x={x} y={y} textAnchor="middle">
          {text}
        </text>
      ))}
    </g>
  );
}

/** A section's strip shows the registers of the player who is chosen in it. */
function withRegisters(plan: LadderPlan, chosen: string | null): LadderPlan {
  if (plan.by === "instrument") return plan;
  const strips = plan.strips.map((strip) => {
    const player = strip.players.find((one) => one.id === chosen);
    if (player === undefined) return strip;
    const { registers } = instrumentOf(player.instrument);
    return { ...strip, registers, range: player.range };
  });
  return { ...plan, strips };
}

/** A strip's name with its section's sign; narrow strips have room for the name only. */
function StripName({ strip }: { readonly strip: Strip }) {
  const { label, section, x, width } = strip;
  const isNarrow = 15 + label.length * 6.2 > width + 1;
  if (isNarrow)
    return (
      <text className="strip-name strip-name-narrow" x={x + width / 2} y={16} textAnchor="middle">
        {label.replace(" ", "")}
      </text>
    );
  return (
    <>
      <SectionMark section={section} x={x + 6} y={12} r={4.6} />
      <text className="strip-name" x={x + 15} y={16}>
        {label}
      </text>
    </>
  );
}

/** A register cut to the strip's compass and to the scale; even ones carry no marks. */
function RegisterZone(props: {
  readonly plan: LadderPlan;
  readonly strip: Strip;
  readonly register: Register;
}) {
  const { plan, strip, register } = props;
  const { strength } = register;
  if (strength === "even" || strength === "strong") return null;
  const box = registerBox(plan, strip, register);
  if (box.height <= 0) return null;
  return <rect fill={strength === "weak" ? "url(#weak)" : "url(#hard)"} {...box} />;
}

function registerBox(plan: LadderPlan, strip: Strip, { low, high }: Register) {
  return zoneBox(plan, strip, Math.max(low, strip.range.low), Math.min(high, strip.range.high));
}

function zoneBox(plan: LadderPlan, strip: Strip, low: number, high: number) {
  const end = plan.height - ladderSizes.shelf;
  const top = Math.max(ladderSizes.head, plan.yOf(high + 0.5));
  const bottom = Math.min(end, plan.yOf(low - 0.5));
  return { x: strip.x, y: top, width: strip.width, height: Math.max(0, bottom - top) };
}

/** Each kind of register is named once, in a stretch of a strip where no token stands. */
function zoneLabels(plan: LadderPlan) {
  const labels: { x: number; y: number; text: string }[] = [];
  const named = new Set<string>();
  for (const strength of ["weak", "even", "tiring", "risky"] as const) {
    for (const strip of plan.strips) {
      const register = strip.registers.find((each) => each.strength === strength);
      if (register === undefined || named.has(strength) || strip.width < 44) continue;
      const y = freeMiddle(plan, registerBox(plan, strip, register));
      if (y === null) continue;
      named.add(strength);
      labels.push({ x: strip.x + strip.width / 2, y: y + 4, text: words[strength] });
    }
  }
  return labels;
}

/** The middle of the longest stretch of a zone without a rung; null when it is too short. */
function freeMiddle(
  plan: LadderPlan,
  box: { readonly y: number; readonly height: number },
): number | null {
  const half = ladderSizes.token / 2;
  const ys = plan.rungs
    .map((rung) => rung.y)
    .filter((y) => y > box.y - half && y < box.y + box.height + half)
    .sort((a, b) => a - b);
  const edges = [box.y - half, ...ys, box.y + box.height + half];
  let best: number | null = null;
  let longest = 26 + 2 * half;
  edges.slice(1).forEach((edge, index) => {
    const before = edges[index] ?? edge;
    if (edge - before < longest) return;
    longest = edge - before;
    best = (edge + before) / 2;
  });
  return best;
}
