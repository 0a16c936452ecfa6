import { describe, expect, it } from "vitest";
import { type Alter, alteredFigures } from "./altered-books";

/**
 * A test for each way of altering books: no other tonnage, and no total held back.
 *
 * @param louder books of a way that are told of more or less than before; none where it is left out
 */
export function alterationCases(
  title: string,
  ways: Readonly<Record<string, Alter>>,
  louder: Readonly<Record<string, number>>,
): void {
  describe(title, () => {
    const figures = alteredFigures(ways, { books: 120, each: 2, seed: 1 });

    it.each(Object.entries(figures))(
      "should leave what is read of a list: %s",
      (name, { tried, total, held, loud }) => {
        expect(tried).toBeGreaterThan(0);
        expect({ total, held }).toEqual({ total: 0, held: 0 });
        expect(loud).toBeLessThanOrEqual(louder[name] ?? 0);
      },
    );
  });
}
