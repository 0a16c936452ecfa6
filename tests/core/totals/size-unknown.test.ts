import { expect, it } from "vitest";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { reckonTonnage } from "../../../core/totals/reckon-tonnage";
import { doubtedWords } from "../../../core/totals/tonnage-notes";
import { heldStandard } from "../../_support/held-standard";

const standard = heldStandard("BS8666:2005");
const reckoned = (rows: readonly (readonly Cell[])[]) => {
  const sheet = sheetFromRows("S1", rows);
  return reckonTonnage([{ sheet, reading: readSchedule(sheet, standard) }], standard);
};

// kg/m of a plain round: pi/4 x d2 x 7850 kg/m3 (EC2 3.2.7(3)): 1.387 of 15 mm, 1.782 of 17 mm; 0.617 of 10 mm (BS 4449)
it.each([
  [
    "Finnish",
    ["Pos", "Tunnus", "Kpl", "Pituus mm", "Paino kg"],
    "T15",
    1000,
    "82.3 kg, by its size as round steel 185.1 kg",
  ],
  [
    "Polish",
    ["Nr", "Średnica", "Liczba", "Długość mm", "Masa kg"],
    "17",
    1000,
    "82.3 kg, by its size as round steel 237.7 kg",
  ],
] as const)(
  "doubts the mass typed for a size that no table has in a %s list",
  (_, heads, size, factor, said) => {
    const metres = 133.4;
    const { doubted } = reckoned([
      heads,
      ["1", "10", 10, 2 * factor, 12.3],
      ["2", "12", 10, 2 * factor, 17.8],
      ["3", size, 20, (metres / 20) * factor, 82.3],
      ["4", "16", 10, 2 * factor, 31.6],
      ["5", "12", 20, 2 * factor, 35.5],
    ]);
    expect(doubtedWords(doubted)[0]).toContain(said);
  },
);

it("doubts no mass that is that of a round of the number", () => {
  const { doubted } = reckoned([
    ["Mark", "Size", "Total no", "Length mm", "Mass kg"],
    ["1", "10", 10, 2000, 12.3],
    ["2", "17", 20, 2000, 71.3],
    ["3", "16", 10, 2000, 31.6],
  ]);
  expect(doubted).toEqual([]);
});
