import { expect, test } from "vitest";
import { encodedPieces } from "../../../../addin/xlsx/xml/encoded-pieces";

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
