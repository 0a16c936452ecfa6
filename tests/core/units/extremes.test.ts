import { expect, it } from "vitest";
import { greatest, least } from "../../../core/units/extremes";

it("the greatest and the least of more numbers than a call takes arguments", () => {
  const numbers = Array.from({ length: 1_048_576 }, (_, at) => at - 7);
  expect([least(numbers), greatest(numbers)]).toEqual([-7, 1_048_568]);
  expect([least([]), greatest([])]).toEqual([Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]);
});
