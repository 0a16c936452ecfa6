import { describe, expect, it } from "vitest";
import rule from "../../../../core/audit/rules/another-document-named";
import { runAudit } from "../../../../core/audit/run-audit";
import { type Cell, sheetFromRows } from "../../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../../core/standards";
import { ruleCases } from "../rule-cases";

const rows = [{ size: "H16", shape: "00", A: 1000, length: 1000 }];

ruleCases(rule, {
  silent: [
    { rows },
    { rows, foot: [{ remark: "scheduled to BS 8666:2005" }] },
    { rows, foot: [{ remark: "scheduled to BS 8666" }] },
    { rows, foot: [{ remark: "scheduled to BS 8666, design to BS EN 1992-1-1" }] },
    // a word of lists is no document, and the standard was chosen
    { rows, foot: [{ remark: "Stahlliste" }] },
    { standard: "INDIA-SITE", rows, foot: [{ remark: "IS 2502" }] },
  ],
  speaks: [
    {
      rows,
      foot: [{ remark: "scheduled to BS 8666:2020" }],
      says: [
        {
          cell: "N3",
          severity: "note",
          outcome: "unsure",
          message: 'the sheet names BS8666:2020 ("BS 8666:2020"), and BS8666:2005 was chosen for the check',
        },
      ],
    },
  ],
});

describe("a document named where nobody chose one", () => {
  const standard = resolveStandard("BS8666:2005") as Standard;
  const HEADS = ["Bar mark", "Size", "Total no.", "Length mm", "Shape code", "A", "B", "C"];
  // clause 5 of either edition has shape 21 at A + B + C - r - 2d; 1200 is short of it
  const BAR: Cell[] = ["01", "H16", 10, 1200, "21", 500, 500, 500];

  function check(title: string, isStandardAssumed: boolean) {
    const sheets = [sheetFromRows("List", [[title], [], HEADS, BAR])];
    return runAudit({ sheets, standard, isStandardAssumed }).findings;
  }
  const fixes = (title: string, isAssumed = true) =>
    check(title, isAssumed).filter(({ fix }) => fix?.safety === "needs-review").length;

  it("is asked about once, and nothing of the steel is to be changed before", () => {
    // IS 2502 has no size H16, so that the bars are of another document
    const titles = { "Schedule to BS 8666:2020": "doubtful", "BBS to IS 2502": "note" };
    // what a list calls itself names no document
    for (const [title, severity] of Object.entries({ ...titles, "Stahlliste Wand": "note" })) {
      const asked = check(title, true).filter(({ code }) => code === rule.code);
      expect(asked).toMatchObject([{ cell: "A1", severity, outcome: "unsure" }]);
      expect(fixes(title)).toBe(0);
    }
  });

  it("is asked about once a book", () => {
    const sheets = ["1", "2"].map((name) =>
      sheetFromRows(name, [["Schedule to BS 8666:2020"], [], HEADS, BAR]),
    );
    const { findings } = runAudit({ sheets, standard, isStandardAssumed: true });
    const asked = findings.filter(({ code }) => code === rule.code);
    expect(asked).toMatchObject([
      { sheet: "1", severity: "doubtful" },
      { sheet: "2", severity: "note" },
    ]);
    expect(findings.filter(({ fix }) => fix?.safety === "needs-review")).toEqual([]);
  });

  it("leaves fixes where the document in force is named, or was chosen", () => {
    expect(fixes("Schedule to BS 8666:2005")).toBeGreaterThan(0);
    expect(fixes("Schedule to BS 8666:2020", false)).toBeGreaterThan(0);
    expect(check("Schedule to BS 8666:2005", true).map(({ code }) => code)).not.toContain(rule.code);
  });
});
