import { describe, expect, it } from "vitest";
import rule from "../../../../core/audit/rules/tonnes-line-differs";
import { runAudit } from "../../../../core/audit/run-audit";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { resolveStandard } from "../../../../core/standards/index";
import type { Standard } from "../../../../core/standards/port";

const standard = resolveStandard("BS8666:2005") as Standard;
const HEADS = {
  english: ["Bar mark", "Type and size", "Total no.", "Length mm", "Shape code", "A"],
  german: ["Pos", "Ø mm", "Anzahl", "Einzellänge mm", "Form", "Bemerkung"],
} as const;

/** 200 x 6 m of 16, 200 x 5 m of 20, 300 x 4 m of 12: 1894.8 + 2466 + 1065.6 kg (BS 4449:2005, table 7) */
function told(heads: keyof typeof HEADS, label: string, value: Cell, at: number): string[] {
  const [h, shape] = heads === "english" ? ["H", "00"] : ["", null];
  const bars: Cell[][] = [
    ["1", `${h}16`, 200, 6000, shape, null],
    ["2", `${h}20`, 200, 5000, shape, null],
    ["3", `${h}12`, 300, 4000, shape, null],
  ];
  const line: Cell[] = [label, null, null, null, null, null];
  line[at] = value;
  const sheet = sheetFromRows("List", [[...HEADS[heads]], ...bars, line]);
  const report = runAudit({ sheets: [sheet], standard, rules: [rule] });
  return report.findings.map(({ cell, outcome, message }) => `${cell} ${outcome}: ${message}`);
}

describe("tonnes below a list without masses", () => {
  it("should be told where the bars make others, in any language", () => {
    const message = "the line gives 4.9 t, but the bars above make 5.426 t: see which of the two is right";
    expect(told("english", "Total mass, tonnes", 4.9, 2)).toEqual([`C5 unsure: ${message}`]);
    expect(told("german", "Gesamtmasse in Tonnen", 4.9, 2)).toEqual([`C5 unsure: ${message}`]);
    expect(told("german", "Gesamtmasse [t]", 4.9, 3)).toEqual([`D5 unsure: ${message}`]);
  });

  it("should be silent where they agree, and on what no bar makes", () => {
    expect(told("english", "Total mass, tonnes", 5.4, 2)).toEqual([]);
    expect(told("german", "Gesamtmasse [t]", 5.43, 3)).toEqual([]);
    expect(told("english", "Total mass with 5 % waste, tonnes", 5.7, 2)).toEqual([]);
  });
});
