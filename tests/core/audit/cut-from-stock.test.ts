import { describe, expect, it } from "vitest";
import { isCutFromStock } from "../../../core/audit/cut-from-stock";
import type { BarFacts } from "../../../core/bar/bar-facts";

const facts = (members: number, each: number, total: number, by: "arithmetic" | "words") =>
  ({
    row: {
      members,
      each,
      total,
      table: {
        columns: new Map([
          ["members", { by }],
          ["each", { by }],
        ]),
      },
    },
  }) as unknown as BarFacts;

describe("isCutFromStock", () => {
  it("should hold where the last bar bought is cut in part, by hand", () => {
    // 9 m / 1.75 m is 5 pieces a bar; 72 pieces take 14.4, so 15 bars
    expect(isCutFromStock(facts(5, 15, 72, "arithmetic"))).toBe(true);
    expect(isCutFromStock(facts(15, 5, 72, "arithmetic"))).toBe(true);
    expect(isCutFromStock(facts(5, 15, 57, "arithmetic"))).toBe(false);
  });

  it("should hold for no members and bars in each that words name", () => {
    expect(isCutFromStock(facts(5, 15, 72, "words"))).toBe(false);
  });
});
