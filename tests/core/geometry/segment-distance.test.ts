import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { distance, type Point } from "../../../core/geometry/point";
import { nearestOnSegment, segmentDistance } from "../../../core/geometry/segment-distance";

const pointToSegment = (point: Point, from: Point, to: Point): number =>
  distance(point, nearestOnSegment(point, from, to));
const at = (x: number, y: number): Point => ({ x, y });
const place = fc.record({ x: fc.integer({ min: -50, max: 50 }), y: fc.integer({ min: -50, max: 50 }) });

describe("segmentDistance", () => {
  it("is the gap of parallel segments", () => {
    expect(segmentDistance(at(0, 0), at(4, 0), at(1, 3), at(9, 3))).toBe(3);
  });

  it("is 0 where segments cross, touch or lie on each other", () => {
    expect(segmentDistance(at(0, 0), at(4, 4), at(0, 4), at(4, 0))).toBe(0);
    expect(segmentDistance(at(0, 0), at(4, 0), at(4, 0), at(9, 9))).toBe(0);
    expect(segmentDistance(at(0, 0), at(4, 0), at(1, 0), at(2, 0))).toBe(0);
  });

  it("takes a segment of no length as a point", () => {
    // 3-4-5 triangle
    expect(segmentDistance(at(0, 0), at(0, 0), at(3, 4), at(3, 4))).toBe(5);
  });

  it("should be no more than the least distance over sampled points, and near it", () => {
    fc.assert(
      fc.property(place, place, place, place, (a, b, c, d) => {
        let sampled = Infinity;
        for (let i = 0; i <= 40; i += 1) {
          for (let j = 0; j <= 40; j += 1) {
            const p = at(a.x + ((b.x - a.x) * i) / 40, a.y + ((b.y - a.y) * i) / 40);
            const q = at(c.x + ((d.x - c.x) * j) / 40, c.y + ((d.y - c.y) * j) / 40);
            sampled = Math.min(sampled, Math.hypot(p.x - q.x, p.y - q.y));
          }
        }
        const exact = segmentDistance(a, b, c, d);
        // two samples are at most half a step from the nearest pair: 142/80 each
        return exact <= sampled + 1e-9 && sampled - exact <= (2 * 142) / 80;
      }),
      { numRuns: 200 },
    );
  });
});

describe("pointToSegment", () => {
  it("measures to the nearest place, inside or at an end", () => {
    expect(pointToSegment(at(2, 5), at(0, 0), at(4, 0))).toBe(5);
    expect(pointToSegment(at(7, 4), at(0, 0), at(4, 0))).toBe(5);
    expect(nearestOnSegment(at(2, 5), at(0, 0), at(4, 0))).toEqual(at(2, 0));
  });
});
