import { expect, it } from "vitest";
import { studentQuantile } from "../../../core/bending/student-quantile";

/** Printed tables of Student's t, one-sided (any statistics handbook; from memory), three decimals. */
it.each([
  [0.95, 1, 6.314],
  [0.95, 6, 1.943],
  [0.95, 10, 1.812],
  [0.95, 30, 1.697],
  [0.95, 120, 1.658],
  [0.975, 5, 2.571],
  [0.99, 8, 2.896],
])("is the %s point with %s degrees of freedom", (share, freedom, printed) => {
  expect(studentQuantile(share, freedom)).toBeCloseTo(printed, 3);
});
