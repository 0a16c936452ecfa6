import { describe, expect, it } from "vitest";
import type { CuttingPlan } from "../../../core/cutting";
import { cutList } from "../../../core/cutting/cut-list";
import { planCutting } from "../../../core/cutting/plan-cutting";

const question = {
  stock: [{ length: 12000, count: null, remnant: false }],
  endCrop: 0,
  kerf: 0,
  timeLimit: 500,
};

describe("cutList", () => {
  it("should deal pieces of one length to their marks in schedule order", () => {
    // 12 pieces of 4 m: four bars of three, by hand
    const pieces = [
      { mark: "01", length: 4000, count: 5 },
      { mark: "07", length: 4000, count: 7 },
    ];
    const rows = cutList(planCutting({ ...question, pieces }) as CuttingPlan, pieces, 1000);
    expect(rows).toEqual([
      {
        stock: 12000,
        fromRemnant: false,
        bars: 4,
        heats: [],
        stops: [
          {
            length: 4000,
            perBar: 3,
            marks: [
              { mark: "01", count: 5 },
              { mark: "07", count: 7 },
            ],
          },
        ],
        offcut: 0,
        destination: "none",
      },
    ]);
  });

  it("should send a rest to the rack from the least remnant on, else to scrap", () => {
    const rest = (length: number) => {
      const pieces = [{ mark: "01", length, count: 1 }];
      return cutList(planCutting({ ...question, pieces }) as CuttingPlan, pieces, 1500)[0]?.destination;
    };
    expect([rest(10500), rest(10501)]).toEqual(["rack", "scrap"]);
  });

  it("should give every piece of every mark exactly once", () => {
    const pieces = [5800, 4100, 2650, 4100, 3300, 1900].map((length, index) => ({
      mark: String(index),
      length,
      count: 7 + 3 * index,
    }));
    const given = new Map<string, number>();
    for (const row of cutList(planCutting({ ...question, pieces }) as CuttingPlan, pieces, 1000)) {
      for (const stop of row.stops)
        for (const { mark, count } of stop.marks) given.set(mark, (given.get(mark) ?? 0) + count);
    }
    expect(Object.fromEntries(given)).toEqual({ 0: 7, 1: 10, 2: 13, 3: 16, 4: 19, 5: 22 });
  });
});
