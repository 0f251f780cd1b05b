import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pairPlan } from "../../src/ui/teaching/pair-plan.ts";
import { pairSizes, type PairSize } from "../../src/ui/teaching/pair-sizes.ts";
import { tokenLabel } from "../../src/ui/teaching/token-label.ts";
import { texturesOf } from "../explore/support/textures.ts";
import { ask, playersOf } from "../voicing/support/questions.ts";

const question = ask("F13", "D5", "f");
const textures = texturesOf(question);
const rooms: readonly (readonly [PairSize, number, number])[] = [
  ["phone", 358, 420],
  ["desk", 1030, 640],
  ["room", 1520, 520],
];

const somePlan = fc
  .tuple(fc.constantFrom(...textures), fc.constantFrom(...textures), fc.constantFrom(...rooms))
  .map(([left, right, [size, width, height]]) => {
    const bottom = Math.min(left.stack[0] ?? 0, right.stack[0] ?? 0);
    const { players, lead } = question;
    const plan = pairPlan({ players, left, right, size, top: lead, bottom, width, height });
    return { left, right, size, plan };
  });

describe("two ladders side by side", () => {
  it("show every sounding player exactly once, at his or her pitch's height", () => {
    fc.assert(
      fc.property(somePlan, ({ left, right, plan }) => {
        for (const [texture, ladder] of [
          [left, plan.left],
          [right, plan.right],
        ] as const) {
          const shown = ladder.tokens.flatMap((token) =>
            token.players.map((player) => `${player.id} ${token.pitch}`),
          );
          const sounding = question.players.flatMap((player, index) => {
            const pitch = texture.pitches[index] ?? 0;
            return pitch > 0 ? [`${player.id} ${pitch}`] : [];
          });
          expect([...shown].sort()).toEqual([...sounding].sort());
          for (const token of ladder.tokens)
            expect(ladder.rungs.find((rung) => rung.pitch === token.pitch)?.y).toBe(token.y);
        }
      }),
      { seed: 7 },
    );
  });

  it("let no two tokens of a ladder overlap and keep everything inside the drawing", () => {
    fc.assert(
      fc.property(somePlan, ({ plan, size }) => {
        const { height } = pairSizes[size].token;
        for (const { tokens } of [plan.left, plan.right])
          tokens.forEach((a, index) => {
            expect(a.x).toBeGreaterThanOrEqual(0);
            expect(a.x + a.width).toBeLessThanOrEqual(plan.width + 0.01);
            expect(a.y - height / 2).toBeGreaterThanOrEqual(0);
            expect(a.y + height / 2).toBeLessThanOrEqual(plan.height + 0.01);
            for (const b of tokens.slice(index + 1)) {
              const across = a.x < b.x + b.width && b.x < a.x + a.width;
              expect(across && Math.abs(a.y - b.y) < height).toBe(false);
            }
          });
      }),
      { seed: 7 },
    );
  });

  it("draw the arrow only where exactly one note gives way to one other", () => {
    fc.assert(
      fc.property(somePlan, ({ left, right, plan }) => {
        const gone = left.stack.filter((pitch) => !right.stack.includes(pitch)).length;
        const come = right.stack.filter((pitch) => !left.stack.includes(pitch)).length;
        expect(plan.move !== null).toBe(gone === 1 && come === 1);
      }),
      { seed: 7 },
    );
  });
});

describe("a token's label", () => {
  const [, , , , , , , , alto1, alto2, tenor1] = playersOf("big-band");
  const [tpt1, tpt2] = playersOf("big-band");

  it("says as much as there is room for", () => {
    if (!tpt1 || !tpt2 || !alto1 || !alto2 || !tenor1) throw new Error("players are missing");
    expect(tokenLabel([tpt1, tpt2], 106, 21)).toBe("Tpt 1, 2");
    expect(tokenLabel([tpt1, tpt2], 34, 13)).toBe("1, 2");
    expect(tokenLabel([alto2, tenor1], 84, 15.5)).toBe("A2 T1");
    expect(tokenLabel([alto1, alto2, tenor1], 34, 13)).toBe("× 3");
    expect(tokenLabel([tpt1], 20, 13)).toBe("T1");
    expect(tokenLabel([tpt1], 5, 13)).toBe("1");
  });
});
