import { describe, expect, it } from "vitest";
import { sheetFromRows } from "../../../core/schedule";
import { readDay } from "../../../core/shop/read-day";

const day = (cell: string | number, isDate = false, datesFrom1904 = false): string | null =>
  readDay({ ...sheetFromRows("Shop", [[cell]]), isDate: () => isDate, datesFrom1904 }, 0, 0);

describe("readDay", () => {
  it("should read what can be one day only", () => {
    expect(day("2030-05-31")).toBe("2030-05-31");
    expect(day("1.6.2030")).toBe("2030-06-01");
    expect(day("31/05/2030")).toBe("2030-05-31");
    expect(day("05/31/2030")).toBe("2030-05-31");
    expect(day("6/6/2030")).toBe("2030-06-06");
  });

  it("should not choose between two days, nor take what no calendar has", () => {
    expect(day("04/05/2030")).toBeNull();
    expect(day("2030-02-30")).toBeNull();
    expect(day("31.04.2030")).toBeNull();
    expect(day("13/13/2030")).toBeNull();
    expect(day("next week")).toBeNull();
    expect(day(47_639)).toBeNull();
  });

  it("should read dates of a sheet by its date system", () => {
    // ECMA-376 part 1, 18.17.4.1: serial 1 is 1 January 1900 and 29 February 1900 is counted; 1904 counts from 0
    expect(day(61, true)).toBe("1900-03-01");
    expect(day(0, true, true)).toBe("1904-01-01");
  });
});
