import { describe, expect, it } from "vitest";
import { boxesOverlap, boxInside, boxOfPoints, boxToSegment, nearestInBox } from "../../../core/geometry/box";

const box = { x: 0, y: 0, width: 4, height: 2 };

describe("boxes", () => {
  it("holds all its points", () => {
    const points = [
      { x: 1, y: 5 },
      { x: -2, y: 0 },
      { x: 3, y: 1 },
    ];
    expect(boxOfPoints(points)).toEqual({ x: -2, y: 0, width: 5, height: 5 });
    expect(boxOfPoints([])).toEqual({ x: 0, y: 0, width: 0, height: 0 });
  });

  it("overlaps where it comes nearer than the gap in both directions", () => {
    expect(boxesOverlap(box, { x: 5, y: 0, width: 1, height: 1 })).toBe(false);
    expect(boxesOverlap(box, { x: 5, y: 0, width: 1, height: 1 }, 1.5)).toBe(true);
    expect(boxesOverlap(box, { x: 3, y: 1, width: 9, height: 9 })).toBe(true);
  });

  it("is 0 from a segment that crosses it without ending in it", () => {
    expect(boxToSegment(box, { x: -1, y: 1 }, { x: 9, y: 1 })).toBe(0);
    expect(boxToSegment(box, { x: 1, y: 1 }, { x: 2, y: 1 })).toBe(0);
    // 3-4-5 from the corner (4, 2)
    expect(boxToSegment(box, { x: 7, y: 6 }, { x: 20, y: 6 })).toBe(5);
  });

  it("knows what is inside, and its nearest point", () => {
    expect(boxInside({ x: 1, y: 1, width: 1, height: 1 }, box)).toBe(true);
    expect(boxInside({ x: 1, y: 1, width: 1, height: 1.5 }, box)).toBe(false);
    expect(nearestInBox(box, { x: 9, y: -1 })).toEqual({ x: 4, y: 0 });
  });
});
