import { describe, expect, it } from "vitest";
import { ValueColumn } from "../../../../core/schedule/rows/value-column";

describe("ValueColumn", () => {
  it("should hold null until a value is set", () => {
    const column = new ValueColumn<string>(3);
    column.set(1, "B");
    expect([0, 1, 2].map((place) => column.get(place))).toEqual([null, "B", null]);
  });

  it.each([
    ["few that come again and again", 7],
    ["more than are known by their value", 5_000],
    ["all different", 16_384],
  ])("should give back what was set: %s", (_, different) => {
    const column = new ValueColumn<string>(16_384);
    for (let place = 0; place < 16_384; place += 1) column.set(place, `text ${place % different}`);
    const wrong = Array.from({ length: 16_384 }, (_none, place) => place).filter(
      (place) => column.get(place) !== `text ${place % different}`,
    );
    expect(wrong).toEqual([]);
  });

  it("should give back what was set last, however often values were replaced", () => {
    const column = new ValueColumn<object>(100);
    const last: object[] = [];
    for (let turn = 0; turn < 200_000; turn += 1) {
      const place = (turn * 31) % 100;
      last[place] = turn % 3 === 0 ? (last[(place + 1) % 100] ?? { turn }) : { turn };
      column.set(place, last[place]);
      if (turn % 1000 === 0) column.set((place + 5) % 100, null);
      if (turn % 1000 === 0) column.set((place + 5) % 100, last[(place + 5) % 100] ?? null);
    }
    expect(last.filter((value, place) => column.get(place) !== value)).toEqual([]);
  });
});
