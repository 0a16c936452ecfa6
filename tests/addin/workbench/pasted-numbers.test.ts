import { describe, expect, test } from "vitest";
import { pastedNumbers } from "../../../addin/workbench/grid/pasted-numbers";

const GERMAN = { decimal: ",", group: "." };
const ENGLISH = { decimal: ".", group: "," };

const read = (texts: readonly string[], signs: typeof GERMAN) => {
  const { numbers, words } = pastedNumbers(
    texts.map((text, row) => ({ row, column: 1, text })),
    signs,
  );
  return { values: numbers.map(({ row, value }) => [texts[row], value]), words };
};

describe("numbers that were copied elsewhere", () => {
  test("should say by their own decimals how they are written, at any place", () => {
    const values = [
      ["1,25", 1.25],
      ["1.234,5", 1234.5],
      ["1 234,5", 1234.5],
      ["-0,75", -0.75],
      ["1.234.567", 1_234_567],
    ];
    const texts = values.map(([text]) => String(text));
    expect(read(texts, ENGLISH).values).toEqual(values);
    expect(read(texts, GERMAN).values).toEqual(values);
  });

  test("should be told where they are written otherwise than here", () => {
    expect(read(["1,25", "2,5"], ENGLISH).words).toBe(
      'Pasted with a decimal comma: read "1,25" in B1 as 1.25 and 1 more',
    );
    expect(read(["1,25", "2,5"], GERMAN).words).toBeNull();
    expect(read(["1.25"], GERMAN).words).toBe('Pasted with a decimal point: read "1.25" in B1 as 1.25');
  });

  test("should be read as those beside them, where one says how", () => {
    expect(read(["1,250", "0,5"], ENGLISH).values).toEqual([
      ["1,250", 1.25],
      ["0,5", 0.5],
    ]);
    expect(read(["1.250", "0.5"], GERMAN).values[0]).toEqual(["1.250", 1.25]);
  });

  test("should be read as here, and said to be unsure, where nothing says how", () => {
    expect(read(["1,250"], ENGLISH).values).toEqual([["1,250", 1250]]);
    expect(read(["1,250"], ENGLISH).words).toMatch(/^Not sure: read "1,250" in B1 as 1250, as numbers/);
    expect(read(["1.250"], GERMAN).words).toMatch(/^Not sure: read "1\.250" in B1 as 1250/);
    // three decimals by the sign of the place are as sure as any
    expect(read(["1.579"], ENGLISH)).toEqual({ values: [["1.579", 1.579]], words: null });
    // two ways side by side say nothing of a third
    expect(read(["1,250", "0,5", "0.5"], ENGLISH).words).toMatch(/Not sure: read "1,250"/);
  });

  test("should leave marks, sizes, dates and plain integers as they are", () => {
    expect(read(["0107", "01,102", "H16", "1250", "1.2.2026", "12,5 mm", "1,2,3", ""], ENGLISH)).toEqual({
      values: [],
      words: null,
    });
  });
});
