import { describe, expect, it } from "vitest";
import { wrappedLines } from "../../../addin/workbook/wrapped-lines";

describe("wrappedLines", () => {
  it.each([
    ["", 10, 1],
    ["ten chars.", 10, 1],
    ["eleven chars", 10, 2],
    ["one two three four", 9, 3],
    ["a word of abcdefghijklmnopqrstuvwxyz letters", 10, 5],
    ["first\nsecond line", 20, 2],
    ["anything", 0, 8],
  ])("counts the lines of %j in %i characters", (text, width, lines) => {
    expect(wrappedLines(text, width)).toBe(lines);
  });
});
