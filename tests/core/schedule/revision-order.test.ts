import { describe, expect, it } from "vitest";
import { isLaterRevision } from "../../../core/schedule/revision-order";

/** Orders that are common practice; P and C by the status codes of ISO 19650 practice, from memory. */
const ORDERS = [
  [null, "A", "B", "Z", "AA"],
  ["-", "1", "2", "10"],
  ["0", "P1", "P2", "C1", "C2"],
  ["", "A", "A1", "A2", "B"],
  ["Rev A", "rev. b"],
];

describe("isLaterRevision", () => {
  it.each(ORDERS)("follows %s, %s", (...order) => {
    order.forEach((one, at) => {
      order.forEach((other, place) => {
        expect(isLaterRevision(one ?? null, other ?? null)).toBe(at > place);
      });
    });
  });

  it("does not say whether a letter or a number is later", () => {
    for (const [one, other] of [
      ["A", "1"],
      ["P2", "3"],
      ["B", "P1"],
    ] as const) {
      expect([isLaterRevision(one, other), isLaterRevision(other, one)]).toEqual([false, false]);
    }
  });
});
