import { describe, expect, test } from "vitest";
import { withoutTables } from "../../../addin/workbench/book/without-tables";
import type { WorkbookTable } from "../../../addin/xlsx/read/read-tables";

/** Heads in row 1, sizes and masses in rows 2 to 9, a total in row 10, on columns B to D. */
const UNITS: WorkbookTable = {
  name: "UnitTable",
  sheet: "Unit masses",
  range: { top: 0, left: 1, bottom: 9, right: 3 },
  heads: 1,
  totals: 1,
  columns: ["Size", "kgm", "No [pcs]"],
};
const bare: WorkbookTable = { ...UNITS, name: "Bare", heads: 0, totals: 0 };
const shown = (formula: string, sheet = "Bars", row = 4, column = 2) =>
  withoutTables(formula, [UNITS, bare], { sheet, row, column });

describe("a formula that names a table", () => {
  test("should name its cells, by column and part (how Excel reads them: from memory)", () => {
    expect(shown("=ROUND(F7*INDEX(UnitTable[kgm],MATCH(C7,UnitTable[Size],0)),1)")).toBe(
      "=ROUND(F7*INDEX('Unit masses'!$C$2:$C$9,MATCH(C7,'Unit masses'!$B$2:$B$9,0)),1)",
    );
    expect(shown("=SUM(unittable[KGM])")).toBe("=SUM('Unit masses'!$C$2:$C$9)");
    expect(shown("=ROWS(UnitTable)")).toBe("=ROWS('Unit masses'!$B$2:$D$9)");
    expect(shown("=COUNTA(UnitTable[#All])")).toBe("=COUNTA('Unit masses'!$B$1:$D$10)");
    expect(shown("=UnitTable[[#Headers],[kgm]]")).toBe("='Unit masses'!$C$1");
    expect(shown("=UnitTable[[#Totals],[kgm]]")).toBe("='Unit masses'!$C$10");
    expect(shown("=SUM(UnitTable[[#Data],[#Totals],[Size]:[kgm]])")).toBe("=SUM('Unit masses'!$B$2:$C$10)");
    expect(shown("=SUM(UnitTable[No '[pcs']])")).toBe("=SUM('Unit masses'!$D$2:$D$9)");
    expect(withoutTables("UnitTable[kgm]", [UNITS], null)).toBe("'Unit masses'!$C$2:$C$9");
  });

  test("should name the cells of its own row, which go along when it is filled down", () => {
    expect(shown("=[@kgm]*2", "Unit masses")).toBe("=$C5*2");
    expect(shown("=UnitTable[[#This Row],[kgm]]*2", "Unit masses")).toBe("=$C5*2");
    expect(shown("=UnitTable[@kgm]", "Unit masses", 4, 20)).toBe("=$C5");
  });

  test("should stay as it is where it means no cells", () => {
    for (const formula of [
      "=Nowhere[kgm]",
      "=UnitTable[Weight]",
      "=UnitTable[@kgm]",
      "=Bare[[#Headers],[kgm]]",
      "=Bare[[#Totals],[kgm]]",
      "=[@kgm]",
      '="UnitTable[kgm]"&A1',
      "=SUM(A1:B2)",
    ])
      expect(shown(formula)).toBe(formula);
    expect(shown("=[@kgm]", "Unit masses", 9, 2)).toBe("=[@kgm]");
  });
});
