import { describe, expect, test } from "vitest";
import { demoFiles } from "../../../addin/demo/demo-files";
import { EXAMPLES } from "../../../addin/demo/examples";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import { runAudit } from "../../../core/audit/run-audit";
import { resolveStandard } from "../../../core/standards";
import { isRefusal } from "../../../core/units/refusal";

function findings(key: string, standardId: string): string[] {
  const example = EXAMPLES.find((one) => one.key === key);
  const standard = resolveStandard(standardId);
  if (example === undefined || isRefusal(standard)) throw new Error(`no example ${key}`);
  const workbook = openWorkbook(example.bytes());
  const report = runAudit({ sheets: workbook.sheets.map(({ name }) => workbook.read(name)), standard });
  return report.findings.map(({ severity, cell }) => `${severity} ${cell}`);
}

describe("the examples", () => {
  // the slips that the invented lists were written with, and that the page tells of
  test("should have in the list of inches a leg that is too short and a length without its unit", () => {
    const found = findings("inches", "ACI318:2019");
    expect(found).toContain("unbendable F11");
    expect(found).toContain("doubtful E13");
    expect(found.filter((one) => !one.startsWith("note"))).toHaveLength(2);
  });

  test("should have in the messy list a C that is no number, a missing E and a size of another country", () => {
    const found = findings("messy", "BS8666:2005");
    expect(found).toContain("doubtful G12");
    expect(found).toContain("off-standard B19");
    expect(found).toContain("off-standard C20");
  });

  test("should stand among the files that the command line writes", () => {
    const written = [...demoFiles().values()].map((bytes) => Buffer.from(bytes).toString("base64"));
    for (const example of EXAMPLES.filter(({ key }) => key !== "british"))
      expect(written).toContain(Buffer.from(example.bytes()).toString("base64"));
  });
});
