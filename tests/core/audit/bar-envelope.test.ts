import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { widthIfOver } from "../../../core/audit/bar-envelope";
import { type ResolvedShape, resolveShape } from "../../../core/shapes/resolve-shape";
import { resolveStandard } from "../../../core/standards/index";
import { isRefusal } from "../../../core/units/refusal";

const leg = fc.integer({ min: 60, max: 300 }).map((fives) => 5 * fives);
const bent = fc.oneof(
  fc.tuple(leg, leg, leg).map((dims) => ({ shape: "21", dims })),
  fc.tuple(leg, leg, leg, leg).map((dims) => ({ shape: "31", dims })),
  fc.tuple(leg, leg).map((dims) => ({ shape: "11", dims })),
  fc
    .tuple(leg, leg, leg, fc.integer({ min: 15, max: 165 }), fc.boolean())
    .map(([a, b, c, turn, back]) => ({ shape: `${a} +${turn} ${b} ${back ? "-" : "+"}45 ${c}`, dims: [] })),
);

describe("widthIfOver", () => {
  it("should be the least width that turning the bar by small steps finds", () => {
    fc.assert(
      fc.property(bent, ({ shape, dims }) => {
        const bar = resolved(shape, dims);
        const width = widthIfOver(bar, 0);
        const turned = leastByTurning(bar);
        if (width === null) throw new Error("a bent bar has a width");
        expect(turned).toBeGreaterThanOrEqual(width - 1e-6);
        // a twentieth of a degree over the longest bar of 6 m is 5 mm
        expect(turned - width).toBeLessThan(6);
      }),
      { numRuns: 200 },
    );
  });

  it("should be null from that width on", () => {
    fc.assert(
      fc.property(bent, ({ shape, dims }) => {
        const bar = resolved(shape, dims);
        const width = widthIfOver(bar, 0) ?? 0;
        expect(widthIfOver(bar, width)).toBeNull();
        // where the other legs together are no wider, nothing is looked at
        const below = widthIfOver(bar, width - 30);
        if (below !== null) expect(below).toBeCloseTo(width, 6);
      }),
      { numRuns: 200 },
    );
  });
});

/** An independent search: the corners are laid by complex turns and the bar is turned step by step. */
function leastByTurning({ path }: ResolvedShape): number {
  if (path?.kind !== "planar") throw new Error("no legs");
  const corners: [number, number][] = [[0, 0]];
  let along: [number, number] = [1, 0];
  path.legs.forEach(({ length }, at) => {
    const [x, y] = corners[corners.length - 1] as [number, number];
    corners.push([x + length * along[0], y + length * along[1]]);
    const turn = ((path.turns[at]?.angle ?? 0) * Math.PI) / 180;
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    along = [along[0] * c - along[1] * s, along[0] * s + along[1] * c];
  });
  let least = Infinity;
  for (let step = 0; step < 1800; step += 1) {
    const turn = (step * Math.PI) / 1800;
    const places = corners.map(([x, y]) => y * Math.cos(turn) - x * Math.sin(turn));
    least = Math.min(least, Math.max(...places) - Math.min(...places));
  }
  return least;
}

function resolved(shape: string, dims: readonly number[]): ResolvedShape {
  const standard = resolveStandard("BS8666:2005");
  if (isRefusal(standard)) throw new Error("no standard");
  const answer = resolveShape({ standard, shape, dims, diameter: 16 });
  if (isRefusal(answer)) throw new Error(`${shape} was refused`);
  return answer;
}
