import { describe, expect, it } from "vitest";
import type { OfKind } from "../../../core/bar/bar-kind";
import { KindsOfBars } from "../../../core/bar/kinds-of-bars";

describe("KindsOfBars", () => {
  it("should give bars of one size, shape, grade and coating one kind, and any other bar another", () => {
    const kinds = new KindsOfBars();
    const kind = kinds.of(null, "11", "B500B", null);
    expect(kinds.of(null, "11", "B500B", null)).toBe(kind);
    expect(kinds.of(null, "21", "B500B", null)).not.toBe(kind);
    expect(kinds.of(null, "11", "B500A", null)).not.toBe(kind);
    expect(kinds.of(null, "11", "B500B", "epoxy")).not.toBe(kind);
  });

  it("should answer a question of a kind once", () => {
    const kind = new KindsOfBars().of(null, "11", null, null);
    let asked = 0;
    const ask = (_bar: OfKind): boolean => {
      asked += 1;
      return false;
    };
    expect([1, 2, 3].map(() => kind.ask(ask, {} as OfKind))).toEqual([false, false, false]);
    expect(asked).toBe(1);
  });

  it("should not keep a kind for each bar where every bar is of another", () => {
    const kinds = new KindsOfBars();
    const all = Array.from({ length: 5000 }, (_, at) => kinds.of(null, `${at} +90 500`, null, null));
    expect(all.filter(({ isKept }) => isKept).length).toBeLessThan(3000);
    expect(kinds.of(null, "0 +90 500", null, null)).toBe(all[0]);
    expect(kinds.of(null, "4999 +90 500", null, null)).not.toBe(all[4999]);
  });
});
