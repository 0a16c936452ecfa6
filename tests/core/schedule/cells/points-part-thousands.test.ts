import { describe, expect, it } from "vitest";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { standardNamed } from "../../shapes/resolved";

const EC2 = standardNamed("EC2:2004");

function lengths(head: string, typed: readonly Cell[]) {
  const rows = typed.map((length, at) => [String(at + 1), 12, 10, length]);
  const sheet = sheetFromRows("S", [["Pos", "Ø", "Stück", head], ...rows]);
  return readSchedule(sheet, EC2).bars.map(({ length }) => length);
}

// 1.250 is a thousand and more in German, Spanish, Portuguese and Vietnamese lists: common practice
describe("a point in texts of a column of lengths", () => {
  it("parts thousands of millimetres", () => {
    expect(lengths("Länge (mm)", ["2.400", "850", "11.300"])).toEqual([2400, 850, 11_300]);
  });

  it("parts thousands of centimetres", () => {
    expect(lengths("Länge (cm)", ["182", "1.140", "745", "1.120"])).toEqual([1820, 11_400, 7450, 11_200]);
  });

  it("parts thousands where no unit is named and others have hundreds", () => {
    expect(lengths("Länge", ["2.400", "850", "11.300"])).toEqual([2400, 850, 11_300]);
  });

  it("is that of decimals among metres", () => {
    expect(lengths("Länge (m)", ["2.400", "1.850", "11.300"])).toEqual([2400, 1850, 11_300]);
  });

  it("is that of decimals where any text has one or two of them", () => {
    expect(lengths("Länge (cm)", ["182.5", "114.250", "745.5", "112.500"])).toEqual([
      1825, 1142.5, 7455, 1125,
    ]);
  });
});
