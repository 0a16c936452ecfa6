import { describe, expect, it } from "vitest";
import { simulateShops } from "./simulate-shops";

/** The truth of `simulated-shop.ts` is invented and differs from the model of the fit; every run is the same. */
describe("compensated angles over 200 simulated shops", () => {
  const rows = simulateShops(200, 90, null);
  const table = rows
    .map(
      (row) =>
        `${row.trials}: ${row.fit.toFixed(2)} / ${row.plain.toFixed(2)}, ${(row.covered * 100).toFixed(0)} %`,
    )
    .join("; ");

  it("err by at most 0.95 degrees at 90 after one trial and 0.78 after three", () => {
    expect(rows[1]?.fit, table).toBeLessThanOrEqual(0.95);
    expect(rows[3]?.fit, table).toBeLessThanOrEqual(0.78);
  });

  it("err less than the plain rule does, with one to three trials", () => {
    for (const row of rows.slice(1, 4)) expect(row.fit, table).toBeLessThan(row.plain);
  });

  it("lie in the 90 % interval in 88 to 97 of 100 cases, with none to five trials", () => {
    for (const row of rows) {
      expect(row.covered, table).toBeGreaterThanOrEqual(0.88);
      expect(row.covered, table).toBeLessThanOrEqual(0.97);
    }
  });

  it("err less than half as far as the plain rule at 135 from trials at 90", () => {
    const far = simulateShops(60, 135, 90);
    for (const row of far.slice(1)) expect(row.fit).toBeLessThan(row.plain / 2);
  });
});
