import { expect, it } from "vitest";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../core/standards";

const standard = resolveStandard("BS8666:2005") as Standard;
const HEADS = [
  "Description",
  "Dia (mm)",
  "No. of members",
  "Nos per member",
  "Total nos",
  "Cutting length (m)",
];
const members = (rows: Cell[][]) =>
  readSchedule(sheetFromRows("BBS", rows), standard).bars.map(({ member, remark }) => [member, remark]);

it("takes a sub-header for the member also where it stands under the serial numbers", () => {
  for (const serial of ["S.No", "Sr No"])
    expect(
      members([
        [serial, ...HEADS],
        ["BEAM B1 (4 Nos)", null, null, null, null, null, null],
        [1, "Top", 16, 4, 3, 12, 6.2],
        [2, "Stirrups", 8, 4, 38, 152, 1.18],
        ["BEAM B2 (2 Nos)", null, null, null, null, null, null],
        [3, "Top", 20, 2, 3, 6, 5.4],
      ]),
    ).toEqual([
      ["BEAM B1", "Top"],
      ["BEAM B1", "Stirrups"],
      ["BEAM B2", "Top"],
    ]);
});

it("leaves a lone serial number and a remark under them what they were", () => {
  const found = members([
    ["S.No", ...HEADS],
    [1, "Top", 16, 4, 3, 12, 6.2],
    ["as agreed on site", null, null, null, null, null, null],
    [2, null, null, null, null, null, null],
    [3, "Bottom", 16, 4, 3, 12, 6.2],
  ]);
  expect(found).toEqual([
    ["Top", null],
    ["Bottom", null],
  ]);
});
