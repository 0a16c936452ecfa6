import { expect, it } from "vitest";
import { alteredFigures } from "./altered-books";
import { CELLS_AS_TYPED } from "./cells-as-typed";

// What an altered book means is what the book itself means. 321 of 324 were read as before when the floors were measured.
const FLOORS = { same: 0.96, total: 0.025, held: 0.01 };

it("values that are typed otherwise are read as before", () => {
  const figures = Object.values(alteredFigures(CELLS_AS_TYPED, { books: 120, each: 3, seed: 3 }));
  const sum = (of: (one: (typeof figures)[number]) => number): number =>
    figures.reduce((so, one) => so + of(one), 0);
  const tried = sum((one) => one.tried);
  expect(tried).toBeGreaterThanOrEqual(100);
  expect(sum(({ same }) => same) / tried).toBeGreaterThanOrEqual(FLOORS.same);
  expect(sum(({ total }) => total) / tried).toBeLessThanOrEqual(FLOORS.total);
  expect(sum(({ held }) => held) / tried).toBeLessThanOrEqual(FLOORS.held);
});
