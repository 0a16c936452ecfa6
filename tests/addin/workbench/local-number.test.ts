import { describe, expect, it } from "vitest";
import { localNumber, numberSigns, pointNumber } from "../../../addin/workbench/grid/local-number";

// signs of each place by the Unicode CLDR that the platform carries
const [german, french, british] = ["de-DE", "fr-FR", "en-GB"].map((locale) => numberSigns(locale));

describe("a number as it is typed", () => {
  it("should be read by the signs of the place", () => {
    expect(pointNumber("1,5", german!)).toBe("1.5");
    expect(pointNumber("-0,25", german!)).toBe("-0.25");
    expect(pointNumber("1.234,5", german!)).toBe("1234.5");
    expect(pointNumber("12.000", german!)).toBe("12000");
    expect(pointNumber("1 234,5", french!)).toBe("1234.5");
    expect(pointNumber("1,234.5", british!)).toBe("1234.5");
  });

  it("should be left as it is where it is none, or means the same already", () => {
    for (const text of ["1500", "16", "H16", "1,5,2", "1,", "12.3456,1", "600 +90 450", "3,5 m", ""])
      expect(pointNumber(text, german!), text).toBeNull();
    // a point before no three digits groups nothing: it stays what the grid makes of it
    expect(pointNumber("1.5", german!)).toBeNull();
  });

  it("should be shown by them", () => {
    expect(localNumber(39.040775, german!)).toBe("39,040775");
    expect(localNumber(0.1 + 0.2, german!)).toBe("0,3");
    expect(localNumber(1500, german!)).toBe("1500");
  });
});
