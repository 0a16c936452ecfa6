import { describe, expect, it } from "vitest";
import { FIRST_RUNS } from "./first-runs.data";
import { judgeBatch } from "./judge-unseen";

describe("schedules written by people who had not seen the program", () => {
  it.each(FIRST_RUNS.map((one) => [one.batch, one] as const))(
    "batch %s should be read no worse than it was",
    (batch, { books, mistakes, right, found, silent }) => {
      const now = judgeBatch(batch);
      expect(now.books).toBe(books);
      expect(now.mistakes).toBe(mistakes);
      expect(now.right).toBeGreaterThanOrEqual(right);
      expect(now.found).toBeGreaterThanOrEqual(found);
      expect(now.silent).toBeLessThanOrEqual(silent);
      expect(now.contradictions).toBeLessThanOrEqual(1);
    },
  );
});
