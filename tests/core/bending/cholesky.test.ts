import { expect, it } from "vitest";
import { cholesky } from "../../../core/bending/cholesky";

const matrix = [
  [4, 2, 0],
  [2, 5, 1],
  [0, 1, 3],
].map((row) => Float64Array.from(row));

it("solves, inverts and gives the determinant of a matrix worked by hand", () => {
  const parts = cholesky(matrix);
  // 4(15 - 1) - 2(6 - 0) = 44
  expect(parts.logDeterminant).toBeCloseTo(Math.log(44), 12);
  // A (1, 2, 3) = (8, 15, 11)
  expect([...parts.solve(Float64Array.of(8, 15, 11))]).toEqual(
    [1, 2, 3].map((value) => expect.closeTo(value, 12)),
  );
  // adjugate's first row over 44: 14, -6, 2
  const first = [...(parts.inverse()[0] as Float64Array)];
  expect(first).toEqual([14, -6, 2].map((value) => expect.closeTo(value / 44, 12)));
});
