import { expect, it } from "vitest";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { sheetFromRows } from "../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../core/standards";

const standard = resolveStandard("BS8666:2005") as Standard;
const LIST = sheetFromRows("List", [
  ["Поз.", "Наименование", "Кол.", "Масса ед., кг"],
  ["1", "Ø16 А500С, L=5950", 12, 9.39],
  ["2*", "Ø12 А500С, L=1850", 48, 1.64],
  ["3*", "Ø8 А240, L=1620", 64, 0.64],
  ["4*", "Ø8 А240, L=620", 64, 0.24],
  ["5", "Ø12 А500С, L=5900", 8, 5.24],
]);
const details = (marks: readonly string[]) => [
  ["Поз.", "Эскиз", "Длина, мм"],
  ...marks.map((mark, at) => [mark, "300 + 1250 + 300", 1850 - at]),
];

it("takes the sketches of marks that the list before has for no bars", () => {
  const sheet = { ...sheetFromRows("Details", details(["2*", "3*", "4"])), follows: LIST };
  const { bars, rowClasses, tables } = readSchedule(sheet, standard);
  expect(bars).toEqual([]);
  expect(tables).toEqual([]);
  expect(rowClasses).not.toContain("unread");
});

it("says of marks that no list has that their rows are bars without size and count", () => {
  const sheet = { ...sheetFromRows("Details", details(["7", "8", "9"])), follows: LIST };
  expect(readSchedule(sheet, standard).bars).toHaveLength(3);
});
