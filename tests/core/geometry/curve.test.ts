import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { flatten, layOut, type Piece, pointAlong, type Step } from "../../../core/geometry/curve";

const lengthOf = (step: Step): number =>
  step.kind === "straight" ? step.length : step.radius * Math.abs(step.angle);

describe("layOut", () => {
  it("runs a quarter circle from +x to +y", () => {
    const pieces = layOut([
      { kind: "straight", length: 10 },
      { kind: "arc", radius: 5, angle: Math.PI / 2 },
      { kind: "straight", length: 3 },
    ]);
    const end = pieces[2]?.to;
    expect(end?.x).toBeCloseTo(15, 10);
    expect(end?.y).toBeCloseTo(8, 10);
    // the middle of the arc: centre (10, 5), 45 degrees below it
    const middle = pointAlong(pieces[1] as Piece, 0.5);
    expect(middle.x).toBeCloseTo(10 + 5 * Math.SQRT1_2, 10);
    expect(middle.y).toBeCloseTo(5 - 5 * Math.SQRT1_2, 10);
  });

  it("turns the other way for a negative angle", () => {
    const end = layOut([{ kind: "arc", radius: 5, angle: -Math.PI }])[0]?.to;
    expect(end?.x).toBeCloseTo(0, 10);
    expect(end?.y).toBeCloseTo(-10, 10);
  });

  it("should keep every flattened point of an arc on its circle and no chord longer than the arc", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 500, noNaN: true }),
        fc.integer({ min: -180, max: 180 }),
        (radius, degrees) => {
          const angle = (degrees * Math.PI) / 180;
          const step: Step = { kind: "arc", radius, angle };
          const points = flatten(layOut([step]), 0.1);
          // the circle's centre is one radius to the left or right of the start
          const centre = { x: 0, y: Math.sign(angle) * radius };
          const off = points.map((point) =>
            Math.abs(Math.hypot(point.x - centre.x, point.y - centre.y) - radius),
          );
          let chords = 0;
          points.forEach((point, index) => {
            const before = points[index - 1];
            if (before !== undefined) chords += Math.hypot(point.x - before.x, point.y - before.y);
          });
          return angle === 0 || (Math.max(...off) < 1e-6 * radius && chords <= lengthOf(step) * (1 + 1e-9));
        },
      ),
    );
  });
});
