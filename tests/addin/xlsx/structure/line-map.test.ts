import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { LineMap } from "../../../../addin/xlsx/structure/line-map";

describe("LineMap", () => {
  test("should say where each line went, as a list of lines that is cut and joined does", () => {
    const step = fc.record({ at: fc.nat(30), count: fc.integer({ min: 1, max: 6 }), isInsert: fc.boolean() });
    fc.assert(
      fc.property(fc.array(step, { maxLength: 12 }), (steps) => {
        const list: (number | null)[] = Array.from({ length: 120 }, (_, index) => index);
        let map = LineMap.unchanged;
        for (const { at, count, isInsert } of steps) {
          if (isInsert) {
            list.splice(at, 0, ...Array<null>(count).fill(null));
            map = map.insert(at, [{ from: null, count }]);
          } else {
            list.splice(at, count);
            map = map.remove(at, count).map;
          }
        }
        for (let old = 0; old < 40; old += 1) {
          const place = list.indexOf(old);
          expect(map.to(old)).toBe(place < 0 ? null : place);
        }
        for (let now = 0; now < 40; now += 1) expect(map.from(now)).toBe(list[now] ?? null);
      }),
    );
  });

  test("should be unchanged once what was taken out is put back", () => {
    const { map, removed } = LineMap.unchanged.insert(4, [{ from: null, count: 2 }]).remove(3, 5);
    const back = map.insert(3, removed).remove(4, 2).map;
    expect(back.isUnchanged).toBe(true);
  });

  test("should let a range grow by what is put into it, and end with its last line", () => {
    const map = LineMap.unchanged.insert(2, [{ from: null, count: 3 }]);
    expect(map.range(1, 4)).toEqual({ first: 1, last: 7 });
    expect(map.range(0, 1)).toEqual({ first: 0, last: 1 });
    expect(LineMap.unchanged.remove(1, 3).map.range(1, 3)).toBeNull();
  });
});
