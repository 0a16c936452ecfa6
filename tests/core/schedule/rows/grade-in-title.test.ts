import { expect, it } from "vitest";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { sheetFromRows } from "../../../../core/schedule/sheet";
import type { Standard } from "../../../../core/standards/port";
import { resolveStandard } from "../../../../core/standards/resolve-standard";

const standard = resolveStandard("EC2:2004") as Standard;
const gradeUnder = (title: string) => {
  const heads = ["Pos.", "Stück", "Ø [mm]", "Einzellänge [m]"];
  const rows = [[title], [null], heads, ["1", 4, 12, 3.2], ["2", 6, 16, 4.4]];
  return readSchedule(sheetFromRows("Liste", rows), standard).bars[0]?.grade;
};

// names of grades as EN 10080, DIN 488 and older national standards write them (common practice)
it.each([
  ["Stahlliste Nr. 14   Bauvorhaben: Pumpwerk Erlenbach  B500B   DIN EN 1992-1-1", "B500B"],
  ["Betonstahl B500B", "B500B"],
  ["Liste 3   BSt 500 S", "BSt 500 S"],
  ["DESPIECE DE ARMADURAS - Depósito   B500SD   Plano E-07", "B500SD"],
  ["Acciaio FeB44k", "FeB44k"],
  ["Beton çelik S420", "S420"],
])("%s", (title, grade) => expect(gradeUnder(title)).toBe(grade));

it("takes no beam and no axis for a grade", () => {
  expect(["Beam B400", "Achse S500", "Plan B500"].map(gradeUnder)).toEqual([null, null, null]);
});
