import type { Register } from "../../band/index.ts";
import { SectionMark } from "../parts/section-mark.tsx";
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
export function Zones({ plan }: { readonly plan: LadderPlan }) {
  const labels = zoneLabels(plan);
  return (
    <g className="zones" aria-hidden="true">
      <defs>
        <pattern id="weak" width="8" height="8" patternUnits="userSpaceOnUse">
          <circle cx="2" cy="2" r=".85" className="zone-mark" />
          <circle cx="6" cy="6" r=".85" className="zone-mark" />
        </pattern>
        <pattern id="hard" width="4" height="7" patternUnits="userSpaceOnUse">
          <rect width="4" height="1" className="zone-mark" />
        </pattern>
      </defs>
      {plan.strips.map((strip) => (
        <g key={strip.id}>
          <SectionMark section={strip.section} x={strip.x + 6} y={12} r={4.6} />
          <text className="strip-name" x={strip.x + 15} y={16}>
            {strip.label}
          </text>
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
