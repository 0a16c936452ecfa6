import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { textConstant } from "../../../addin/workbook/defined-name";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import { barwright } from "../../_support/command-line";

/** An American yard of our own: every number without a unit is in inches, pounds and grades. */
const folder = mkdtempSync(join(tmpdir(), "barwright-inches-"));
const path = join(folder, "book.xlsx");
writeFileSync(
  path,
  writeNewWorkbook({
    sheets: [
      {
        name: "Bars",
        rows: [
          ["Member", "Bar mark", "Size", "Total", "Length (ft-in)", "Shape", "Former (in)", "Weight (lb)"],
          ["F1", "1", "#5", 10, "4'-2 1/2\"", "40 +90 12", 3.75, 60],
          ["F1", "2", "#8", 2, "41'-0\"", "00", null, null],
        ],
      },
      {
        name: "Shop",
        rows: [
          [
            "machine",
            "largest angle",
            "guard radius",
            "orbit radius",
            "back-rest distance",
            "pins",
            "formers",
          ],
          ["Bender A", 190, 60, 4, 3, 1.25, "2.5, 3"],
          [],
          ["machine", "work", "size", "grade", "bars at once"],
          ["Bender A", "bend", "#5", 60, 2],
          [],
          ["size", "stock length"],
          [null, 480],
          [],
          ["limit", "value"],
          ["hoist or crane", 1000],
          ["lift by hand", 60],
          ["transport width", 96],
        ],
      },
    ],
    names: new Map([["Barwright.Standard", textConstant("ACI318:2019")]]),
  }),
);

describe("a workbook in inches", () => {
  it("is told of in inches and pounds, and its Shop sheet is read so", async () => {
    const run = await barwright(["check", path, "--json"]);
    const { findings } = JSON.parse(run.out) as {
      findings: { code: string; cell: string; message: string; fix: unknown }[];
    };
    const said = new Map(findings.map(({ code, message }) => [code, message]));
    expect(said.get("MACHINE101")).toContain('no former of 3 3/4" is in the rack, which holds 2 1/2", 3"');
    expect(said.get("SUPPLY101")).toContain("length 41'-0\" is over the stock length 40'-0\"");
    // 10 x 4.2083 ft x 1.043 lb/ft (ASTM A615) = 43.9 lb
    expect(said.get("MASS101")).toMatch(/^mass 60 lb is not 10 x 4'-2 1\/2" x 1.043 lb\/ft = 43\.\d+ lb$/);
    // 41 ft x 2.670 lb/ft = 109.5 lb
    expect(said.get("LIFT101")).toMatch(/109\.\d+ lb, above the 60 lb/);
    expect(said.has("MACHINE102")).toBe(false);
    expect(said.has("SUPPLY102")).toBe(false);
    for (const { message } of findings) expect(message).not.toMatch(/\d (mm|kg)\b/);
  });

  it("has its cutting plan, tickets and labels in inches and pounds", async () => {
    const plan = await barwright(["cutplan", path]);
    expect(plan.out).toContain("a piece of 41'-0\" is longer than the 40'-0\" that the longest stock gives");
    const pages = [join(folder, "tickets.html"), join(folder, "labels.html")] as const;
    await barwright(["tickets", path, "--out", pages[0], "--labels", pages[1]]);
    const [tickets, labels] = pages.map((page) =>
      readFileSync(page, "utf8").replace(/<style.*?<\/style>/s, ""),
    );
    expect(tickets).toMatch(/4\.4 lb each, 43\.9 lb in all/);
    expect(labels).toMatch(/43\.9 lb/);
    expect(labels).not.toMatch(/\d (mm|kg)\b/);
  });
});
