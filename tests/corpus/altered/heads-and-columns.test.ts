import { describe, expect, it } from "vitest";
import { alteredFigures } from "./altered-books";
import { HEADS_AND_COLUMNS } from "./heads-and-columns";

describe("heads and columns written otherwise", () => {
  const figures = alteredFigures(HEADS_AND_COLUMNS, { books: 60, each: 2, seed: 1 });

  it.each(Object.entries(figures))(
    "should leave what is read of a list: %s",
    (_, { tried, total, held, loud }) => {
      expect(tried).toBeGreaterThan(0);
      expect({ total, held, loud }).toEqual({ total: 0, held: 0, loud: 0 });
    },
  );
});
