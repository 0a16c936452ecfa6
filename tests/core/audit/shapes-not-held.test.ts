import { describe, expect, it } from "vitest";
import { exampleSheets } from "../../../core/audit/example-sheet";
import { runAudit } from "../../../core/audit/run-audit";
import { STANDARD_IDS } from "../../../core/standards/index";
import { standardNamed } from "./rule-cases";

const OF_SHAPES: ReadonlySet<string> = new Set(["READ104", "SHAPE101", "READ101", "READ102", "SHAPE114"]);

describe("a shape that neither document nor workbook holds", () => {
  it.each(STANDARD_IDS)("%s: is told once a sheet, with its rows and the way out", (id) => {
    const standard = standardNamed(id);
    const { size } = standard.bars[2]!;
    const known = Array.from({ length: 6 }, () => ({ size, shape: "00", length: 3000 }));
    const unknown = { size, shape: "Q7", A: 400, B: 900, length: 1250 };
    const { findings } = runAudit({
      sheets: exampleSheets({ rows: [...known, unknown, unknown, unknown] }),
      standard,
    });
    const said = findings.filter(({ code, message }) => OF_SHAPES.has(code) && message.includes("Q7"));
    expect(said.map(({ message }) => message)).toHaveLength(1);
    expect(said[0]?.message).toContain("8-10");
    expect(said[0]?.message).toMatch(/\bpaths?\b/);
    expect(said[0]?.message).toContain("sheet Standard");
  });
});
