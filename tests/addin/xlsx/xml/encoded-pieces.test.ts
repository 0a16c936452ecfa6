import { describe, expect, it, test } from "vitest";
import { encodedPieces, PLACE, wholeText, withPieces } from "../../../../addin/xlsx/xml/encoded-pieces";

test.each([
  ["nothing", "", 3],
  ["a whole number of steps", "abcdef", 3],
  ["a rest", "abcdefg", 3],
  ["characters of two halves on the border", "ab𝍪𝍪c𝍪", 3],
  ["one half alone, which is no character", "ab\ud834", 3],
  ["steps of one", "𝍪é€x", 1],
])("should give the bytes of the whole text: %s", (_, text, step) => {
  const pieces = [...encodedPieces(text, step)];
  expect(Buffer.concat(pieces)).toEqual(Buffer.from(new TextEncoder().encode(text)));
  expect(pieces.every((piece) => piece.length > 0 && piece.length <= (step + 1) * 4)).toBe(true);
});

describe("withPieces", () => {
  const long = withPieces(`<a>${PLACE}</a>`, () => ["é", "", "x".repeat(10), "𝄞"]);
  const whole = `<a>é${"x".repeat(10)}𝄞</a>`;

  it.each([1, 4, 1000])("should be packed as the whole text is, %s characters at a time", (step) => {
    expect(wholeText(long)).toBe(whole);
    const bytes = Buffer.concat([...encodedPieces(long, step)]);
    expect(bytes.equals(Buffer.from(whole))).toBe(true);
  });

  it("should put its pieces behind what a damaged file has in their place", () => {
    expect(wholeText(withPieces(`<a>${PLACE}<b/>${PLACE}</a>`, () => ["x"]))).toBe(`<a>${PLACE}<b/>x</a>`);
  });
});
