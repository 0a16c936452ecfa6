import { expect, it } from "vitest";
import { spacingSaid } from "../../../core/bar/spacing-said";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { sheetFromRows } from "../../../core/schedule/sheet";
import { factsToWeigh } from "../../../core/totals/row-mass";
import { heldStandard } from "../../_support/held-standard";

const standard = heldStandard("BS8666:2005");

// who writes lengths in metres writes spacings in centimetres: common practice in Latin America and southern Europe
it.each([
  ["Length m", 1.58, "links @20", 200],
  ["Length m", 1.58, "links @200", 200],
  ["Length m", 1.58, "links @20 mm", 20],
  ["Length cm", 158, "links @20", 200],
  ["Length mm", 1580, "links @200", 200],
])("takes a spacing without a unit in that of its list: %s, %s", (head, length, remark, mm) => {
  const sheet = sheetFromRows("List", [
    ["Mark", "Size", "Total", head, "Remarks"],
    ["1", "H12", 30, length, remark],
    ["2", "H12", 30, length, "top"],
  ]);
  const { bars } = factsToWeigh(sheet, readSchedule(sheet, standard), standard);
  expect(spacingSaid(bars[0]!)).toBe(mm);
});
