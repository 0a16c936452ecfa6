import { describe, expect, it } from "vitest";
import { KINDS, plant } from "./planted-mistakes";

/** Of ten mistakes of a kind, each alone in another list of another maker, those that a finding at the row must tell. */
const LEAST_TOLD = 0.9;
const FEWEST = 5;
/** a row doubled is told at its mark or its words, which are right */
const LEAST_AT_CELL: Readonly<Record<string, number>> = { "a row entered twice": 0 };
const AT_CELL = 0.6;

describe("mistakes planted in sound lists", () => {
  it.each(Object.entries(KINDS))("should be told where they stand: %s", (kind, places) => {
    const { planted, told, atCell, missed } = plant(places);
    expect(planted).toBeGreaterThanOrEqual(FEWEST);
    expect(told, missed.join("\n")).toBeGreaterThanOrEqual(LEAST_TOLD * planted);
    expect(atCell).toBeGreaterThanOrEqual((LEAST_AT_CELL[kind] ?? AT_CELL) * planted);
  });
});
