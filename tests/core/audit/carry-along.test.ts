import { describe, expect, it } from "vitest";
import { exampleSheets } from "../../../core/audit/example-sheet";
import type { ExampleRow } from "../../../core/audit/rule";
import { runAudit } from "../../../core/audit/run-audit";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { editedSheet } from "./edited-sheet";
import { standardNamed } from "./rule-cases";

const standard = standardNamed("BS8666:2005");
const audit = (row: ExampleRow) => {
  const sheets = exampleSheets({ rows: [row] });
  return { sheets, findings: runAudit({ sheets, standard }).findings };
};

describe("a fix", () => {
  it("should say and carry along the mass and the total length that follow from a length", () => {
    // 16 mm at 1.579 kg/m: 10 x 0.975 m x 1.579 = 15.395 kg; BS 8666 shape 11: 500 + 500 - 16 - 16 = 968, up to 975
    const row: ExampleRow = {
      size: "H16",
      shape: "11",
      A: 500,
      B: 500,
      length: 1075,
      members: 1,
      each: 10,
      total: 10,
    };
    const typed = { ...row, mass: 16.974, totalLength: 10.75 };
    const { sheets, findings } = audit(typed);
    const fix = findings.find(({ code }) => code === "LEN102")?.fix;
    expect(fix?.label).toBe(
      "change the length to 975 mm, and with it the total length to 9750 mm and the mass to 15.39 kg",
    );
    expect(fix?.edits.map(({ to, keepsFormula }) => [to, keepsFormula])).toEqual([
      [975, undefined],
      [9.75, true],
      [15.395, true],
    ]);
    const after = runAudit({ sheets: [editedSheet(sheets[0]!, fix?.edits ?? [])], standard }).findings;
    expect(after.filter(({ severity }) => severity !== "note")).toEqual([]);
  });

  it("should carry nothing along that did not agree before, and nothing into cells that are blank", () => {
    const row: ExampleRow = { size: "H16", shape: "11", A: 500, B: 500, length: 1075 };
    expect(audit(row).findings.find(({ code }) => code === "LEN102")?.fix?.edits).toHaveLength(1);
    const other = audit({ ...row, members: 1, each: 10, total: 10, mass: 99 });
    expect(other.findings.find(({ code }) => code === "LEN102")?.fix?.edits).toHaveLength(1);
  });

  it("should carry the length along with a former that changes it", () => {
    // DIN: 500 +90 500 in 16 mm; on 64 mm 1000 - (2 (32 + 16) - (pi/2) 40) = 966.8; on 40 mm 977.2
    const sheets = exampleSheets({ rows: [{ size: "16", shape: "500 +90 500", length: 980, former: 40 }] });
    const { findings } = runAudit({ sheets, standard: standardNamed("DIN-EC2:2013") });
    const fix = findings.find(({ code }) => code === "BEND101")?.fix;
    expect(fix?.label).toBe("use the least former 64 mm, and with it the length to 970 mm");
    expect(fix?.edits.map(({ to }) => to)).toEqual([64, 970]);
  });
});

describe("a fix of a figure in another unit than its column", () => {
  // metres, among which 1200 stands; 16 mm at 1.579 kg/m (BS 8666:2005, Table 1): 10 x 1.2 x 1.579 = 18.948 kg
  const HEADER = ["Bar mark", "Type and size", "Total no.", "Length m", "Mass kg"];
  const slips = (mass: number | null) => {
    const rows: Cell[][] = [
      HEADER,
      ...[1, 2, 3, 4].map((at) => [`0${at}`, "H16", 10, 1.2 * at, 18.948 * at]),
    ];
    rows.push(["05", "H16", 10, 1200, mass]);
    const { findings } = runAudit({ sheets: [sheetFromRows("Schedule", rows)], standard });
    return findings
      .filter(({ code }) => code.startsWith("UNIT"))
      .map(({ code, cell, fix }) => [code, cell, fix?.edits[0]?.to]);
  };

  it("should be offered only where the rest of the row then agrees", () => {
    expect(slips(18.948)).toEqual([["UNIT102", "D6", 1.2]]);
    expect(slips(null)).toEqual([["UNIT102", "D6", undefined]]);
  });
});
