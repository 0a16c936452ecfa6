import { describe, expect, it } from "vitest";
import { hashOf } from "../../../core/units/hash";

describe("hashOf", () => {
  it("should be the same for the same texts and figures in the same order", () => {
    expect(hashOf(1250, hashOf("B1"))).toBe(hashOf(1250, hashOf(["B", "1"].join(""))));
    expect(hashOf(0)).toBe(hashOf(-0));
  });

  it("should tell nearly all others apart", () => {
    const all = new Set<number>();
    for (const member of ["B1", "B2", "C1", null])
      for (let length = 25; length <= 12_000; length += 25)
        for (const count of [1, 2, 3, null]) all.add(hashOf(count, hashOf(length, hashOf(member))));
    // 4 members x 480 lengths x 4 counts; two of a hundred thousand alike would be many among 32 bits
    expect(all.size).toBeGreaterThan(7675);
  });
});
