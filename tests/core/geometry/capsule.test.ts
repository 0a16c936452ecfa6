import { expect, it } from "vitest";
import { capsuleGap } from "../../../core/geometry/capsule";

it("is the clear distance between two thick segments, negative where they overlap", () => {
  const bar = { from: { x: 0, y: 0 }, to: { x: 10, y: 0 }, radius: 2 };
  const disc = { from: { x: 5, y: 8 }, to: { x: 5, y: 8 }, radius: 3 };
  expect(capsuleGap(bar, disc)).toBe(3);
  expect(capsuleGap(bar, { ...disc, radius: 7 })).toBe(-1);
});
