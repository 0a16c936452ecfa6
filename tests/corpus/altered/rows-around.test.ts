import { describe, expect, it } from "vitest";
import { alteredFigures } from "./altered-books";
import { ROWS_AROUND } from "./rows-around";

/** Books that are told of more or less than before; none has another tonnage. */
const LOUDER: Readonly<Record<string, number>> = { "member and drawing": 2 };

describe("rows above, between and after the bars", () => {
  const figures = alteredFigures(ROWS_AROUND, { books: 120, each: 2, seed: 1 });

  it.each(Object.entries(figures))(
    "should leave what is read of a list: %s",
    (name, { tried, total, held, loud }) => {
      expect(tried).toBeGreaterThan(0);
      expect({ total, held }).toEqual({ total: 0, held: 0 });
      expect(loud).toBeLessThanOrEqual(LOUDER[name] ?? 0);
    },
  );
});
