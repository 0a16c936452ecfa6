import { describe, expect, it } from "vitest";
import { isDateFormat, numberFormatCode, shownNumber } from "../../../../addin/xlsx/read/number-format";

describe("shownNumber", () => {
  // Each pair is what a spreadsheet's TEXT function gives for the value and the format.
  it.each([
    [450, '"("0")"', "(450)"],
    [450, "\\(0\\)", "(450)"],
    [1, "00", "01"],
    [1234.5, "#,##0.00", "1,234.50"],
    [-7, "0_);(0)", "(7)"],
    [0.256, "0%", "26%"],
    [12, '0" No."', "12 No."],
    [-3.5, "0.00", "-3.50"],
    [1250, '0.00" m"', "1250.00 m"],
    [0.5, ".0", ".5"],
    [12345, "0,", "12"],
    [1101, '#"."##0', "1.101"],
    [1234567, '000"-"0000', "123-4567"],
  ])("shows %d under %s as %s", (value, code, shown) => {
    expect(shownNumber(value, code)).toBe(shown);
  });

  it.each([
    [450, "General"],
    [450, "0"],
    [45352, "dd/mm/yyyy"],
    [0.5, "# ?/?"],
    [5, "@"],
    [5, "[>10]0.0;0"],
  ])("gives nothing for %d under %s: shown as it is, or in a way not read here", (value, code) => {
    expect(shownNumber(value, code)).toBeUndefined();
  });
});

describe("isDateFormat", () => {
  it.each(["dd/mm/yyyy", "h:mm", "[h]:mm:ss", "d-mmm", "[$-409]d mmm yyyy"])(
    "takes %s for a date",
    (code) => {
      expect(isDateFormat(code)).toBe(true);
    },
  );

  it.each(["General", "0.00", '0" mm"', "0\\d", "[Red]0", "@", "#,##0_d"])("takes %s for no date", (code) => {
    expect(isDateFormat(code)).toBe(false);
  });
});

describe("numberFormatCode", () => {
  it("prefers the file's own format, then the built-in one", () => {
    expect(numberFormatCode(164, new Map([[164, "00"]]))).toBe("00");
    expect(numberFormatCode(2, new Map())).toBe("0.00");
    expect(isDateFormat(numberFormatCode(14, new Map()))).toBe(true);
    expect(numberFormatCode(200, new Map())).toBe("General");
  });
});
