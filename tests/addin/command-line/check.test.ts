import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import { buildPackage } from "../../_support/build-package";
import { barwright, type CommandRun } from "../../_support/command-line";
import { comparePackages } from "../../_support/compare-packages";
import { zipBomb } from "../../_support/zip-bomb";

const folder = mkdtempSync(join(tmpdir(), "barwright-check-"));
const fixture = (name: string): string =>
  fileURLToPath(new URL(`../../_support/workbooks/${name}`, import.meta.url));

interface JsonReport {
  readonly standard: string;
  readonly rows: Readonly<Record<string, number>>;
  readonly sheets: readonly { sheet: string; header: number | null; rows: Record<string, number> }[];
  readonly findings: readonly {
    code: string;
    name: string;
    severity: string;
    outcome: string;
    sheet: string;
    row: number | null;
    cell: string | null;
    message: string;
    fix: { label: string; safety: string; edits: { cell: string; to: unknown }[] } | null;
    cite: unknown;
  }[];
}

const HEADER =
  "Member,Bar mark,Type and size,No. of mbrs,No. of bars in each,Total no.,Length (mm),Shape code,A,B,C";

function file(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

async function report(...args: string[]): Promise<JsonReport> {
  const run = await barwright(["check", ...args, "--json"]);
  expect([0, 1], run.err).toContain(run.exit);
  return JSON.parse(run.out) as JsonReport;
}

async function refusal(path: string, ...args: string[]): Promise<string> {
  const run: CommandRun = await barwright(["check", path, ...args]);
  expect([run.exit, run.out], run.err).toEqual([2, ""]);
  expect(run.err.trim().split("\n")).toHaveLength(1);
  return run.err;
}

describe("barwright check", () => {
  it("reports every row once and every finding with its place", async () => {
    const found = await report(fixture("quay-excel-shaped.xlsx"));
    expect(found.standard).toBe("BS8666:2005");
    expect(found.sheets.map(({ sheet, header }) => [sheet, header])).toEqual([
      ["Schedule", 6],
      ["Totals", null],
      ["Locked", 1],
    ]);
    // used ranges: Schedule rows 1 to 17, Totals 1 to 5, Locked 1 to 2
    const sum = Object.values(found.rows).reduce((a, b) => a + b, 0);
    expect(sum).toBe(17 + 5 + 2);
    expect(found.rows["bars"]).toBe(8 + 1);
    // 2 members of 10 bars each are 20, not the 21 in F9; a 14.5 m bar is over the 12 m stock
    expect(found.findings.some(({ sheet, cell }) => sheet === "Schedule" && cell === "F9")).toBe(true);
    expect(found.findings.some(({ sheet, row }) => sheet === "Schedule" && row === 12)).toBe(true);
    const keys = ["cell", "cite", "code", "fix", "message", "name", "outcome", "row", "severity", "sheet"];
    for (const finding of found.findings) expect(Object.keys(finding).sort()).toEqual(keys);
    expect(Object.keys(found)).toEqual([
      "standard",
      "rows",
      "sheets",
      "reading",
      "findings",
      "waivers",
      "counts",
      "notInTotal",
    ]);
  });

  it("exits 1 where something unbendable is found and 0 where nothing is", async () => {
    const overlapping = `${HEADER}\nB1,01,H25,1,2,2,2025,11,2000,40,\n`;
    const good = `${HEADER}\nB1,01,H16,1,2,2,1350,11,900,500,\n`;
    expect((await barwright(["check", file("bad.csv", overlapping)])).exit).toBe(1);
    expect((await barwright(["check", file("good.csv", good)])).exit).toBe(0);
  });

  it("reads separated values of any common kind alike", async () => {
    const rows = [HEADER.split(","), ["B1", "007", "Ø16", "1", "2", "2", "1350", "11", "900", "502,5", ""]];
    const join = (sign: string): string =>
      rows.map((row) => row.map((cell) => `"${cell}"`).join(sign)).join("\r\n");
    const kinds: [string, Uint8Array][] = [
      ["semicolon.csv", new TextEncoder().encode(join(";"))],
      ["tab.csv", new TextEncoder().encode(join("\t"))],
      ["bom.csv", new TextEncoder().encode(`\uFEFF${join(",")}`)],
      ["hint.csv", new TextEncoder().encode(`sep=;\r\n${join(";")}`)],
      ["wide.csv", new Uint8Array(Buffer.from(`\uFEFF${join("\t")}`, "utf16le"))],
      ["western.csv", new Uint8Array(Buffer.from(join(";"), "latin1"))],
    ];
    for (const [name, bytes] of kinds) {
      const found = await report(file(name, bytes));
      const lines = name === "hint.csv" ? 2 : 1;
      expect([found.rows["bars"], found.sheets[0]?.header], name).toEqual([1, lines]);
      expect(
        found.findings.filter(({ code }) => code === "SIZE101"),
        name,
      ).toEqual([]);
    }
  });

  it("takes the standard of the option, else of the workbook", async () => {
    const names = new Map([["Barwright.Standard", '"bs 8666:2020"']]);
    const rows = [HEADER.split(","), ["B1", "01", "H16", 1, 2, 2, 1350, "11", 900, 500]];
    const path = file("named.xlsx", writeNewWorkbook({ sheets: [{ name: "S", rows }], names }));
    expect((await report(path)).standard).toBe("BS8666:2020");
    expect((await report(path, "--standard", "EC2:2004+BS8666:2005")).standard).not.toBe("BS8666:2020");
    const pointed = new Map([["Barwright.Standard", "Settings!$B$2"]]);
    const settings = { name: "Settings", rows: [[], ["standard", "BS8666:2020"]] };
    const other = file(
      "pointed.xlsx",
      writeNewWorkbook({ sheets: [{ name: "S", rows }, settings], names: pointed }),
    );
    expect((await report(other)).standard).toBe("BS8666:2020");
    expect(await refusal(path, "--standard", "BS1234")).toContain("BS1234");
  });

  it.each(["quay-excel-shaped.xlsx", "quay-libreoffice.xlsx"])(
    "writes a copy of %s that differs only where it must",
    async (name) => {
      const out = join(folder, `copy-${name}`);
      const before = readFileSync(fixture(name));
      const found = await report(fixture(name), "--out", out);
      const after = readFileSync(out);
      expect(readFileSync(fixture(name))).toEqual(before);
      const { changed, added, removed } = await comparePackages(before, after);
      expect(removed).toEqual([]);
      // styles, the sheets with findings, the notes of the sheet that had some, and what registers the new parts
      const allowed = [
        "[Content_Types].xml",
        "xl/_rels/workbook.xml.rels",
        "xl/comments1.xml",
        "xl/drawings/vmlDrawing1.vml",
        "xl/styles.xml",
        "xl/workbook.xml",
        "xl/worksheets/sheet1.xml",
      ];
      expect(changed).toEqual(allowed);
      // the findings sheet with its chart, beside the chart that the workbook had
      expect(added).toEqual([
        "xl/charts/chart2.xml",
        "xl/drawings/_rels/drawing2.xml.rels",
        "xl/drawings/drawing2.xml",
        "xl/worksheets/_rels/sheet4.xml.rels",
        "xl/worksheets/sheet4.xml",
      ]);
      const workbook = openWorkbook(after);
      expect(workbook.sheets.map((sheet) => sheet.name)).toEqual([
        "Schedule",
        "Totals",
        "Locked",
        "Findings",
      ]);
      const listed = workbook.read("Findings");
      const cells = Array.from({ length: listed.rowCount }, (_, row) => listed.cell(row, 3));
      for (const { message } of found.findings)
        expect(cells.some((cell) => String(cell).startsWith(message))).toBe(true);
      const again = await report(out);
      expect(again.findings).toEqual(found.findings);
    },
  );

  it("reads the Shop sheet for machines and limits, and never as a schedule", async () => {
    // 6.313 kg/m make 18.9 kg of 3 m; the rack holds no former of 224, the least for 32 mm
    const rows = [
      HEADER.split(","),
      ["B1", "01", "H32", 1, 2, 2, 3000, "00", 3000],
      ["B1", "02", "H32", 1, 1, 1, 2850, "11", 1500, 1500],
    ];
    const shop = [
      ["Machine", "Largest angle", "Formers"],
      ["Bench 2", 190, "64, 140"],
      [],
      ["Limit", "Value"],
      ["Hoist", 15],
    ];
    const sheets = [
      { name: "Beams", rows },
      { name: "SHOP", rows: shop },
    ];
    const path = file("with-shop.xlsx", writeNewWorkbook({ sheets }));
    const found = await report(path, "--sheet", "Beams");
    expect(found.sheets.map(({ sheet }) => sheet)).toEqual(["Beams"]);
    expect(found.rows["bars"]).toBe(2);
    const of = (code: string) => found.findings.filter((finding) => finding.code === code);
    expect(of("MACHINE101").map(({ cell, severity }) => [cell, severity])).toEqual([["H3", "unbendable"]]);
    expect(of("LIFT101").map(({ cell, severity }) => [cell, severity])).toEqual([
      ["G2", "unsafe"],
      ["G3", "unsafe"],
    ]);
    expect(of("SHOP102").map(({ sheet, row, severity }) => [sheet, row, severity])).toEqual([
      ["SHOP", null, "note"],
    ]);
    const run = await barwright(["check", path]);
    expect([run.exit, run.err]).toEqual([1, expect.stringContaining('sheet "SHOP": read for machines')]);
    const alone = file("shop-alone.xlsx", writeNewWorkbook({ sheets: [{ name: "Shop", rows: shop }] }));
    expect(await refusal(alone)).toContain("is no schedule");
  });

  it("audits a protected sheet, one with error cells, and a sheet called __proto__", async () => {
    const locked = await report(fixture("quay-excel-shaped.xlsx"), "--sheet", "Locked");
    expect(locked.rows["bars"]).toBe(1);
    const rows = [
      HEADER.split(","),
      ["B1", "01", "H16", 1, 2, { error: "#REF!" }, 1350, "11", 900, { error: "#N/A" }],
    ];
    const sheets = [
      { name: "__proto__", rows },
      { name: "constructor", rows },
    ];
    const found = await report(file("odd.xlsx", writeNewWorkbook({ sheets })));
    expect(found.sheets.map(({ sheet }) => sheet)).toEqual(["__proto__", "constructor"]);
    expect(found.findings.some(({ sheet, cell }) => sheet === "__proto__" && cell === "J2")).toBe(true);
  });

  it("reads a sheet of 16,384 columns", async () => {
    const wide = [...HEADER.split(",")];
    const bar: (string | number | null)[] = ["B1", "01", "H16", 1, 2, 2, 1350, "11", 900, 500];
    wide[16_383] = "end";
    bar[16_383] = "x";
    const rows = [Array.from(wide, (cell) => cell ?? null), Array.from(bar, (cell) => cell ?? null)];
    const found = await report(file("wide.xlsx", writeNewWorkbook({ sheets: [{ name: "S", rows }] })));
    expect(found.rows["bars"]).toBe(1);
  });

  it("exits 2 with one line for what it cannot read", async () => {
    const container = new Uint8Array(2048);
    container.set([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]);
    container.set(new Uint8Array(Buffer.from("EncryptedPackage", "utf16le")), 512);
    const noHeader = [["Deck pour 3"], ["Size", "colour"], ["H16", "red"]];
    expect(await refusal(join(folder, "missing.xlsx"))).toContain("no file");
    expect(await refusal(mkdtempSync(join(tmpdir(), "barwright-empty-")))).toContain("holds no .xlsx");
    expect(await refusal(file("text.xlsx", "hello"))).toContain("not a workbook");
    expect(await refusal(file("locked.xlsx", container))).toContain("encrypted");
    expect(await refusal(file("empty.xlsx", await buildPackage([{ name: "S", xml: "" }])))).toContain(
      "empty",
    );
    const reason = await refusal(
      file("plain.xlsx", writeNewWorkbook({ sheets: [{ name: "S", rows: noHeader }] })),
    );
    expect(reason).toMatch(/no header row: looked for .*shape code.*the nearest is row 2/);
    expect(await refusal(fixture("quay-excel-shaped.xlsx"), "--sheet", "Nowhere")).toContain("Nowhere");
    const csv = file("plain.csv", `${HEADER}\n`);
    expect(await refusal(csv, "--out", join(folder, "x.xlsx"))).toContain(".xlsx");
    const own = fixture("quay-excel-shaped.xlsx");
    expect(await refusal(own, "--out", own)).toContain("itself");
  });

  it("refuses a workbook that would inflate to 1.5 GB, before it has", async () => {
    const honest = await zipBomb(1_500_000_000);
    expect(honest.length).toBeLessThan(2_000_000);
    expect(await refusal(file("bomb.xlsx", honest))).toContain("not opened");
    const lying = await zipBomb(1_500_000_000, 20_000);
    expect(await refusal(file("lying-bomb.xlsx", lying))).toContain("not opened");
  });
});
