import { describe, expect, it } from "vitest";
import { alteredFigures } from "./altered-books";
import { HEADS_AND_COLUMNS } from "./heads-and-columns";

/** Books that are told of more or less than before; none has another tonnage. */
const LOUDER: Readonly<Record<string, number>> = { "a column without a head": 2, "a column of ticks": 1 };

describe("heads and columns written otherwise", () => {
  const figures = alteredFigures(HEADS_AND_COLUMNS, { books: 120, each: 2, seed: 1 });

  it.each(Object.entries(figures))(
    "should leave what is read of a list: %s",
    (name, { tried, total, held, loud }) => {
      expect(tried).toBeGreaterThan(0);
      expect({ total, held }).toEqual({ total: 0, held: 0 });
      expect(loud).toBeLessThanOrEqual(LOUDER[name] ?? 0);
    },
  );
});
