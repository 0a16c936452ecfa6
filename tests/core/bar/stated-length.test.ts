import { describe, expect, it } from "vitest";
import { statedLength } from "../../../core/bar/stated-length";
import type { ScheduleReading } from "../../../core/schedule/bar-row";
import { sheetFromRows } from "../../../core/schedule/sheet";

function stated(note: string): number | null {
  const reading = { rowClasses: ["note"] } as unknown as ScheduleReading;
  return statedLength(sheetFromRows("List", [[note]]), reading)?.most ?? null;
}

// how lists of a dozen countries say it, common practice; mm by hand
describe("how long bars may be by a title or a note", () => {
  it.each([
    ["Stock length 12 m", 12_000],
    ["Ties Gr 60.  Stock = 60 ft max", 18_288],
    ["Delivery by rigid lorry only - no bar over 6.0 m to this site. All in mm.", 6000],
    ["barre commerciali da 12 m", 12_000],
    ["Barras de 12.00 m m\u00e1x.", 12_000],
    ["Barres de 12 m.", 12_000],
    ["th\u00e9p c\u00e2y d\u00e0i 11,7 m", 11_700],
    ["\u4e00\u6839\u94a2\u7b4b\u5b9a\u5c3a9m\uff0c\u63a5\u5934\u53e6\u8ba1", 9000],
    ["Demir boyu 12 m, bindirmeler boyda", 12_000],
    ["L\u00e4ngen in m; Transport max. 14 m", 14_000],
    ["COMMERCIAL LENGTHS: 6.0, 7.5, 9.0, 10.5, 12.0 m", 12_000],
    ["pr\u0119ty handlowe 12 m", 12_000],
    [
      "\u039c\u03ae\u03ba\u03b7 \u03c1\u03ac\u03b2\u03b4\u03c9\u03bd \u03b5\u03bc\u03c0\u03bf\u03c1\u03af\u03bf\u03c5 12 \u03ae 14 m.",
      14_000,
    ],
    ["طول شاخه ۱۲ متر", 12_000],
    ["طول الأسياخ 12 م", 12_000],
    ["tyče 12 m", 12_000],
    ["Strypų ilgis 11,7 m", 11_700],
    ["Стрижні довжиною 11,7 м", 11_700],
    ["Palice dolžine 14 m", 14_000],
    ["เหล็กยาวมาตรฐาน 10 เมตร", 10_000],
    ["Panjang stok 12 m, tiada bar lebih panjang daripada 12000 mm.", 12_000],
    ["Varda pikkus 12 m", 12_000],
  ])("%s", (note, mm) => expect(stated(note)).toBe(mm));

  it("takes what the book's other sheets say, where the sheet itself says none", () => {
    const elsewhere = () => [
      { cells: ["B7", "12", 20, "stock 9 m"], at: () => "Page 2!D4" },
      { cells: ["Stock length 12 m"], at: () => "Notes!A3" },
    ];
    const reading = { rowClasses: ["note"] } as unknown as ScheduleReading;
    const of = (note: string) => statedLength({ ...sheetFromRows("List", [[note]]), elsewhere }, reading);
    // a row that holds numbers is no note
    expect(of("All in mm")).toEqual({ most: 12_000, cell: "Notes!A3", typed: "Stock length 12 m" });
    expect(of("Stock length 14 m")).toMatchObject({ most: 14_000, cell: "A1" });
  });

  it.each([
    "Precast column 40/40, h = 6,45 m",
    "FOOTING F2 (1.50 x 1.50 m)",
    "links 150 x 350 at 200 c/c over 13.6 m",
    "Masa 1 m pr\u0119ta [kg/m]",
    "12 m2 of fabric, bars apart",
    "Bars 1 to 4 as drawn, level +12.50 m",
  ])("says nothing: %s", (note) => expect(stated(note)).toBe(null));
});
