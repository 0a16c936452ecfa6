import { describe, expect, it } from "vitest";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { sheetFromRows } from "../../../../core/schedule/sheet";
import { standardNamed } from "../../shapes/resolved";

const EC2 = standardNamed("EC2:2004");
const HEADS = ["Pos", "Ø", "Stück", "Länge (m)", "kg/m", "Masse (kg)"];

describe("a mass of one metre with its unit behind it", () => {
  // 0.888 and 1.58 kg/m: handbook tables of bars
  it.each(["0,888 kg/m", "0,888kg/m", "0,888 кг/м", "0,888 kg / m", "0,888 kg"])("%s is read", (typed) => {
    const rows = [HEADS, ["1", 12, 10, 2, typed, 17.76], ["2", 16, 10, 4, "1,58 kg/m", 63.2]];
    const { bars } = readSchedule(sheetFromRows("S", rows), EC2);
    expect([bars[0]?.unitMass, bars[0]?.problems]).toEqual([0.888, null]);
  });

  it("is no mass where another unit stands behind it", () => {
    const rows = [HEADS, ["1", 12, 10, 2, "0,888 kg/St", 17.76], ["2", 16, 10, 4, "1,58 kg/m", 63.2]];
    expect(readSchedule(sheetFromRows("S", rows), EC2).bars[0]?.problems).toMatchObject([
      { field: "unitMass" },
    ]);
  });
});
