import { describe, expect, it } from "vitest";
import { exampleSheets } from "../../../core/audit/example-sheet";
import type { ExampleRow } from "../../../core/audit/rule";
import { runAudit } from "../../../core/audit/run-audit";
import { resolveStandard, type Standard } from "../../../core/standards";
import { editedSheet } from "./edited-sheet";

const standard = resolveStandard("BS8666:2005") as Standard;

function checked(rows: readonly ExampleRow[]) {
  const sheets = exampleSheets({ rows });
  const { findings } = runAudit({ sheets, standard });
  return { sheets, findings, offered: findings.filter(({ code }) => code === "DIM101") };
}

// BS 8666:2005, 13: B at least 2(r + d): 72 of r = 24 and d = 12, 96 of 32 and 16 (Tables 2 and 3, from memory)
describe("a figure that is rounded to the step", () => {
  it.each<[string, ExampleRow, number | undefined]>([
    [
      "up where the bend would be tighter",
      { size: "H12", shape: "13", A: 600, B: 72, C: 600, length: 1225 },
      75,
    ],
    [
      "up where the bend would be tighter",
      { size: "H16", shape: "13", A: 600, B: 96, C: 600, length: 1250 },
      100,
    ],
    ["down where that holds", { size: "H12", shape: "13", A: 600, B: 77, C: 600, length: 1225 }, 75],
    [
      "not at all beside a question to the designer",
      { size: "H12", shape: "13", A: 600, B: 68, C: 600, length: 1225 },
      undefined,
    ],
  ])("goes %s", (_, row, to) => {
    const { sheets, findings, offered } = checked([row]);
    expect(offered.map(({ fix }) => fix?.edits.find(({ cell }) => cell === "J2")?.to)).toEqual([to]);
    const fixed = sheets.map((sheet) =>
      editedSheet(
        sheet,
        offered.flatMap(({ fix }) => fix?.edits ?? []),
      ),
    );
    const wrong = (told: typeof findings) =>
      told
        .filter(({ severity }) => severity === "unsafe" || severity === "off-standard")
        .map(({ code }) => code);
    if (to !== undefined) expect(wrong(runAudit({ sheets: fixed, standard }).findings)).toEqual([]);
  });
});
