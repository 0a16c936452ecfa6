import { describe, expect, it } from "vitest";
import { memberLength } from "../../../core/audit/member-size";

describe("the length of a member in words", () => {
  it.each([
    ["length 6000 cover 40", 6000],
    ["beam b1 l=4000", 4000],
    ["@ beam b1, l=4000", 4000],
    ["lap length 1200", null],
  ])("should be read in %s", (words, length) => expect(memberLength(words)).toBe(length));

  // common practice: what is spaced stands over the length behind it, and lies across it
  it.each([
    "s200 l=4000",
    "s 200 l=4000",
    "@150 l=5800",
    "@ 150 mm c/c, length 5800",
    "e=20 l=4000",
    "150 c/c l=4000",
  ])("should not be the run of %s", (words) => expect(memberLength(words)).toBeNull());
});
