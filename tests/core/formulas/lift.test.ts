import { describe, expect, it } from "vitest";
import { WORKSHEET_FUNCTIONS } from "../../../core/formulas";
import { call, column, one, refused } from "./call";

describe("row by row", () => {
  it("gives n rows for columns of n rows, and one row broadcasts", () => {
    expect(call("DIAMETER", column("H16", 20, "12"))).toEqual(column(16, 20, 12));
    // 1000 + 400 - 0.5r - d, then up to 25
    expect(call("CUTLENGTH", "11", column("H12", "H20"), [1000, 400])).toEqual(column(1400, 1350));
    expect(
      call("CUTLENGTH", column("11", "21"), "H16", [
        [1000, 400, null],
        [1000, 400, 500],
      ]),
    ).toEqual(column(1375, 1850));
  });

  it("refuses unequal row counts as a whole", () => {
    expect(refused("CUTLENGTH", column("11", "11"), column("H12", "H12", "H12"), [1000, 400])).toBe(
      "#VALUE! shape has 2 rows and size has 3: give ranges of as many rows, or one row",
    );
  });

  it("refuses a block where a column is due, and too many arguments", () => {
    expect(refused("DIAMETER", ["H16", "H20"])).toContain("size has 2 columns: give one cell or one column");
    expect(refused("AREA", "H16", undefined, "x")).toContain("3 arguments were given: BAR.AREA takes 2");
  });

  it("ends at the last row that is not blank, and keeps blank rows blank", () => {
    expect(call("MASS", column("H16", null, "", "H20", null, "", null))).toEqual(
      column(1.579, null, null, 2.466),
    );
    expect(call("MASS", column(null, null))).toEqual([[null]]);
    expect(one("MASS", null)).toBeNull();
  });

  it("takes a filled-down optional column as no reason for a row", () => {
    expect(
      call("MASS", column("H16", null, null), column("BS8666:2005", "BS8666:2005", "BS8666:2005")),
    ).toEqual(column(1.579));
  });

  it("goes by the optional column where that is the only one", () => {
    expect(call("MASS", "16", column("BS8666:2005", null, "EC2:2004"))).toEqual(column(1.579, null, 1.58));
  });

  it("keeps an error cell and a refusal in their own rows", () => {
    const answer = call("CUTLENGTH", column("11", { error: "#REF!" }, "17", "11"), "H16", [
      [1000, 400],
      [1000, 400],
      [1000, 400],
      [1000, { error: "#DIV/0!", message: "x" }],
    ]);
    expect(answer[0]).toEqual([1375]);
    expect(answer[1]).toEqual([{ error: "#REF!" }]);
    expect(answer[2]).toEqual([{ error: "#N/A", message: expect.stringContaining(`shape "17" is no code`) }]);
    expect(answer[3]).toEqual([{ error: "#DIV/0!", message: "x" }]);
  });

  it("spoils every row with a broadcast error, and no blank one", () => {
    expect(call("MASS", column("H16", null, "H20"), { error: "#NAME?" })).toEqual([
      [{ error: "#NAME?" }],
      [null],
      [{ error: "#NAME?" }],
    ]);
  });

  it("takes whole columns", () => {
    const rows = 1_048_576;
    const sizes = Array.from({ length: rows }, (_, row) => [row < 3 ? "H16" : null]);
    expect(call("MASS", sizes)).toEqual(column(1.579, 1.579, 1.579));
  });

  it("does not change the blocks it is given", () => {
    const dims = Object.freeze([Object.freeze([1000, 400]), Object.freeze([500, 300])]);
    expect(call("CUTLENGTH", "11", "H16", dims)).toEqual(column(1375, 775));
  });
});

describe("numbers beyond all measure", () => {
  it("are refused, never an infinity", () => {
    for (const answer of [
      refused("DEVELOPED", "21", 16, [1e308, 1e308, 1e308]),
      refused("CUTLENGTH", "21", 16, [1e308, 1e308, 1e308]),
      refused("ROWMASS", "00", 16, [1e300], 1e15),
    ]) {
      expect(answer).toMatch(
        /^#VALUE! (the result is beyond the largest number.*too many figures|(legs and bends|A) .* give no length that a bar can have)/,
      );
    }
  });

  it("are cut short in the words of a refusal", () => {
    const answer = refused("MASS", "9".repeat(5000));
    expect(answer).toMatch(/^#\S+ size "9{40,400}(?:\.\.\.|…)"/);
    expect(answer.length).toBeLessThan(1000);
  });
});

describe("one bar", () => {
  it("refuses more than one row", () => {
    expect(refused("EXPLAIN", column("11", "21"), "H16", [1000, 400])).toContain(
      "shape has 2 rows: BAR.EXPLAIN takes one bar",
    );
  });

  it("is blank for a blank bar", () => {
    expect(one("EXPLAIN", null, null)).toBeNull();
  });

  it("passes an error on", () => {
    expect(one("EXPLAIN", "11", { error: "#REF!" }, [1000, 400])).toEqual({ error: "#REF!" });
  });
});

describe("the list", () => {
  it("describes each function and argument, optional ones last", () => {
    for (const [name, definition] of WORKSHEET_FUNCTIONS) {
      expect(definition.name).toBe(name);
      expect(name).toBe(name.toUpperCase());
      expect(definition.description).not.toBe("");
      const optional = definition.args.map((argument) => argument.optional);
      expect(optional).toEqual([...optional].sort((a, b) => Number(a) - Number(b)));
      for (const argument of definition.args) expect(argument.description).not.toBe("");
    }
  });
});
