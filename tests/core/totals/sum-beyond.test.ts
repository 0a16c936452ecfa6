import { describe, expect, it } from "vitest";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { reckonTonnage } from "../../../core/totals/reckon-tonnage";
import { tonnageNotes } from "../../../core/totals/tonnage-notes";
import { heldStandard } from "../../_support/held-standard";

const standard = heldStandard("BS8666:2005");

// kg/m of the UK three-decimal table, 10 mm by EN 10080: 20 is 2.466, 10 is 0.617, 16 is 1.579; one beam is 73.0 + 37.5 + 16.4 = 126.9 kg
const BEAM: Cell[][] = [
  ["Mark", "Type", "Dia", "No.", "Length mm", "Mass kg"],
  ["BEAM B1"],
  ["1", "H", 20, 4, 7400, 73],
  ["2", "H", 10, 38, 1600, 37.5],
  ["3", "H", 16, 2, 5200, 16.4],
];
const reckoned = (...foot: Cell[][]) => {
  const sheet = sheetFromRows("BS", [...BEAM, ...foot]);
  return reckonTonnage([{ sheet, reading: readSchedule(sheet, standard) }], standard);
};
const sum = (words: string, mass: number): Cell[] => [words, null, null, null, null, mass];

describe("a schedule's own sum far above its bars", () => {
  it("should be named beside the tonnes, the heaviest alone", () => {
    const found = reckoned(sum("Total of 3 members", 380.7), sum("Total mass", 507.6));
    expect(found.beyond).toMatchObject({ sheet: "BS", cell: "F7", mass: 507.6 });
    expect(tonnageNotes(found).filter((note) => note.includes("BS!F7"))).toEqual([
      "the schedule's own sum of 0.508 t (BS!F7) is far above the 0.127 t of the bars: look whether bars of one member were counted for all, or rows were left out",
    ]);
  });

  it("should be nothing where one sum is that of the bars, or hardly more", () => {
    expect(reckoned(sum("Total mass", 126.9), sum("Total of the pour", 507.6)).beyond).toBeNull();
    expect(reckoned(sum("Total with 3 % waste", 130.7)).beyond).toBeNull();
    expect(reckoned().beyond).toBeNull();
  });
});
