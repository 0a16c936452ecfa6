import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { readDefaultStandardBy } from "../../addin/functions/default-standard";
import { functionsMetadata } from "../../addin/functions/functions-metadata";
import { ownSheet } from "../../addin/functions/own-sheet";
import { createLocalEngine } from "../../addin/pane/engine/local-engine";
import { NO_OTHER_SHEETS } from "../../addin/pane/engine/other-sheets";
import { writeNewWorkbook } from "../../addin/xlsx/write/new-workbook";
import { ownTemplate, readOwn } from "../../core/own";
import { type Cell, sheetFromRows } from "../../core/schedule";
import { NOTHING_OWN, type OwnStandard } from "../../core/standards";
import { barwright } from "../_support/command-line";
import { type OpenExcel, openInJsdom } from "../_support/office-host/open-in-jsdom";

// person, day and shapes are invented
const WHO = ["R. Ashdown", "2026-11-02"];
const BY = "confirmed by R. Ashdown, 2026-11-02";
const HEAD = "Member,Bar mark,Size,No. of mbrs,No. in each,Total no.,Length (mm),Shape code,A,B,C,D".split(
  ",",
);
const folder = mkdtempSync(join(tmpdir(), "barwright-own-"));

/** A file of its own, and one of the bars alone. */
function books(name: string, bars: readonly (readonly Cell[])[], own: readonly (readonly Cell[])[]) {
  const [joined, alone, file] = [`${name}.xlsx`, `${name}-bars.xlsx`, `${name}-own.xlsx`].map((one) =>
    join(folder, one),
  ) as [string, string, string];
  const schedule = { name: "Bars", rows: [HEAD, ...bars] };
  const standard = { name: "Standard", rows: own };
  writeFileSync(joined, writeNewWorkbook({ sheets: [schedule, standard] }));
  writeFileSync(alone, writeNewWorkbook({ sheets: [schedule] }));
  writeFileSync(file, writeNewWorkbook({ sheets: [standard] }));
  return { joined, alone, file };
}

async function asked(...args: string[]): Promise<string> {
  const run = await barwright(args);
  expect([0, 1], run.err).toContain(run.exit);
  return run.out;
}

let open: OpenExcel;
const counts = new Map<string, number>();
let ownOfBook: OwnStandard = NOTHING_OWN;

beforeAll(async () => {
  open = await openInJsdom();
  await import("../../addin/functions/associate-functions");
  for (const { id, parameters } of (await functionsMetadata("https://x")).functions)
    counts.set(id, parameters.length);
  readDefaultStandardBy(async () => null);
});
afterAll(() => open.close());

/** The function as Excel calls it, under what the workbook's sheet Standard says. */
async function inExcel(id: string, ...given: unknown[]): Promise<unknown> {
  ownSheet.readBy(async () => ownOfBook);
  const padded = Array.from({ length: counts.get(id) ?? 0 }, (_, index) => given[index] ?? null);
  return (await open.excel.functions.call(id, ...padded)).value;
}

async function inPane(
  bars: readonly (readonly Cell[])[],
  own: readonly (readonly Cell[])[],
  standard: string,
) {
  const engine = createLocalEngine();
  const behind = own.length === 0 ? [] : [sheetFromRows("Standard", own)];
  const view = await engine.check({
    sheet: sheetFromRows("Bars", [HEAD, ...bars]),
    shop: null,
    otherSheets: { ...NO_OTHER_SHEETS, behind },
    standard,
    settings: null,
  });
  return { engine, view };
}

describe("a workbook whose figures of BS 8666:2020 are confirmed", () => {
  const ID = "BS8666:2020";
  const own: Cell[][] = ownTemplate([ID]).map(({ kind, cells }) =>
    kind === "line" ? [...cells, "agrees", ...WHO] : [...cells],
  );
  // by hand, shape 21 in 16 mm: 1000 + 400 + 500 - 32 - 32 = 1836, up to 1850; the second is 100 short, and its
  // leg A of 125 is below P 130
  const bars: Cell[][] = [
    ["B1", "01", "H16", 1, 2, 2, 1850, "21", 1000, 400, 500],
    ["B1", "02", "H16", 1, 2, 2, 875, "21", 125, 400, 500],
  ];
  const { joined, alone, file } = books("confirmed", bars, own);

  test("on the command line, in the book and with --own: what breaks a confirmed limit is certain, and says by whom", async () => {
    for (const args of [[joined], [alone, "--own", file]]) {
      const { findings } = JSON.parse(await asked("check", ...args, "--standard", ID, "--json"));
      const of = (code: string) => findings.filter((finding: { code: string }) => finding.code === code);
      expect(of("BEND102")).toMatchObject([{ cell: "I3", outcome: "broken" }]);
      expect(JSON.stringify(of("BEND102"))).toContain("confirmed");
      expect(JSON.stringify(of("BEND102"))).toContain(WHO[0]);
      expect(of("LEN102")).toMatchObject([{ cell: "G3", outcome: "broken" }]);
      expect(of("STANDARD101")).toEqual([]);
    }
    const { findings } = JSON.parse(await asked("check", alone, "--standard", ID, "--json"));
    const told = findings.map(({ code, outcome }: Record<string, string>) => `${code} ${outcome}`);
    expect(told).toEqual(expect.arrayContaining(["BEND102 unsure", "LEN102 unsure", "STANDARD101 unsure"]));
  });

  test("calc, tonnage and tickets go by it", async () => {
    const explained = await asked(
      "calc",
      '=BAR.EXPLAIN("21","H16",{1000,400,500})',
      "--standard",
      ID,
      "--own",
      file,
    );
    expect(explained).toContain(BY);
    expect(explained).not.toMatch(/memory|doubtful/);
    // the second is cut as its dimensions need, 125 + 400 + 500 - 64 = 961, up to 975: 2 x 2.825 x 1.579 = 8.921 kg
    const tonnes = JSON.parse(await asked("tonnage", joined, "--standard", ID, "--json"));
    expect(tonnes.total).toBeCloseTo(0.008921, 6);
    const page = join(folder, "confirmed.html");
    await asked("tickets", joined, "--standard", ID, "--out", page);
    const html = readFileSync(page, "utf8");
    expect(html).toContain("confirmed by R. Ashdown");
    expect(html).not.toContain("recalled");
  });

  test("in Excel", async () => {
    ownOfBook = readOwn(sheetFromRows("Standard", own)).own;
    const lines = await inExcel("EXPLAIN", [["21"]], [["H16"]], [[1000, 400, 500]], [[ID]]);
    expect(JSON.stringify(lines)).toContain(BY);
    ownOfBook = NOTHING_OWN;
    expect(
      JSON.stringify(await inExcel("EXPLAIN", [["21"]], [["H16"]], [[1000, 400, 500]], [[ID]])),
    ).toContain("memory");
  });

  test("in the pane", async () => {
    const { view } = await inPane(bars, own, ID);
    const leg = view.findings.find(({ code }) => code === "BEND102");
    expect(leg).toMatchObject({ outcome: "broken", cell: "I3", source: expect.stringContaining(BY) });
    const unread = await inPane(bars, [], ID);
    expect(unread.view.findings.find(({ code }) => code === "BEND102")).toMatchObject({ outcome: "unsure" });
  });
});

describe("a workbook with ten own shapes", () => {
  const SHAPE_HEADS = [
    "own code",
    "standard",
    "in words",
    "course",
    "length formula",
    "limits",
    "use",
    "who looked",
    "when",
  ];
  // ten shapes of an invented yard; lengths of 12 mm bars by hand from the formulas, up to 25 mm; r 24
  const SHAPES: readonly (readonly [string, string, string, string, readonly number[], number])[] = [
    ["Y1", "A +90 (B)", "A + (B) - 0.5r - d", "A, (B) >= P", [500, 400], 900], // 876
    ["Y2", "A +90 B +90 (C)", "A + B + (C) - r - 2d", "", [500, 400, 300], 1175], // 1152
    ["Y3", "A +90 B -90 (C)", "A + B + (C) - r - 2d", "", [300, 300, 300], 875], // 852
    ["Y4", "A +90 B +90 C +90 (D)", "A + B + C + (D) - 1.5r - 3d", "", [300, 300, 300, 300], 1150], // 1128
    ["Y5", "A +45 (B)", "A + (B)", "", [500, 400], 900],
    ["Y6", "A +180r(B/2-d) (C)", "A + 0.57B + (C) - 1.6d", "B >= 2(r + d)", [400, 200, 400], 900], // 894.8
    ["Y7", "A +t B -t (C)", "A + B + (C)", "", [500, 300, 400], 1200],
    ["Y8", "A +90 B -90 C -90 (D)", "A + B + C + (D) - 1.5r - 3d", "", [300, 200, 300, 200], 950], // 928
    ["Y9", "A +135 (B)", "A + (B)", "", [500, 300], 800],
    ["Y10", "A +90 B +90 (A)", "2A + B - r - 2d", "", [300, 400], 975], // 952
  ];
  const angle = (code: string) => (code === "Y7" ? "; t: B sin t = 150" : "");
  const own: Cell[][] = [
    SHAPE_HEADS,
    ...SHAPES.map(([code, course, formula, limits]) => [
      ...[code, null, `the yard's ${code}`, course + angle(code), formula, limits, null],
      ...WHO,
    ]),
  ];
  const bars: Cell[][] = SHAPES.map(([code, , , , dims, length], index) => [
    ...["B1", String(index + 1).padStart(2, "0"), "H12", 1, 2, 2, length, code],
    ...dims,
  ]);
  const { joined, alone, file } = books("ten", bars, own);

  test("each is measured alike by the command line and by Excel", async () => {
    ownOfBook = readOwn(sheetFromRows("Standard", own)).own;
    expect(readOwn(sheetFromRows("Standard", own)).problems).toEqual([]);
    const formulas = SHAPES.map(
      ([code, , , , dims]) => `=BAR.CUTLENGTH("${code}","H12",{${dims.join(",")}})`,
    );
    const run = await barwright(["calc", "-", "--own", file, "--json"], formulas.join("\n"));
    const lines = run.out.trim().split("\n");
    expect(lines.map((line) => JSON.parse(line).value)).toEqual(
      SHAPES.map(([, , , , , length]) => [[length]]),
    );
    for (const [code, , , , dims, length] of SHAPES)
      expect(await inExcel("CUTLENGTH", [[code]], [["H12"]], [dims]), code).toEqual([[length]]);
    expect(JSON.stringify(await inExcel("EXPLAIN", [["Y2"]], [["H12"]], [[500, 400, 300]]))).toContain(
      "own, by R. Ashdown, 2026-11-02",
    );
    ownOfBook = NOTHING_OWN;
  });

  test("check finds nothing in them, and without the sheet that none is held", async () => {
    for (const args of [[joined], [alone, "--own", file]]) {
      const { findings } = JSON.parse(await asked("check", ...args, "--json"));
      expect(findings.filter(({ severity }: { severity: string }) => severity !== "note")).toEqual([]);
    }
    const without = await asked("check", alone, "--json");
    expect(without).toContain("are no codes of BS8666:2005");
  });

  test("they are drawn on tickets, weighed, and shown in the pane", async () => {
    const page = join(folder, "ten.html");
    await asked("tickets", joined, "--out", page);
    expect(readFileSync(page, "utf8").match(/<svg/g)?.length).toBeGreaterThanOrEqual(10);
    // lengths of 9.625 m in all, two of each, at 0.888 kg/m
    const metres = SHAPES.reduce((sum, [, , , , , length]) => sum + length / 1000, 0);
    const { total } = JSON.parse(await asked("tonnage", joined, "--json"));
    expect(total).toBeCloseTo((2 * metres * 0.888) / 1000, 5);
    const { engine, view } = await inPane(bars, own, "BS8666:2005");
    expect(view.findings.filter(({ severity }) => severity !== "note")).toEqual([]);
    for (let row = 2; row <= 11; row += 1) {
      const bar = await engine.bar("Bars", row - 1);
      expect(bar?.shape).toContain("the yard's Y");
      expect(bar?.svg).toMatch(/^<svg/);
    }
  });

  test("a line that cannot be taken is a finding with its cell, on each surface", async () => {
    const bad = [...own, ["Y11", null, "no course", "A +95x (B)", "A + (B)", "", null, ...WHO]];
    const { joined: book } = books("bad", bars, bad);
    const { findings } = JSON.parse(await asked("check", book, "--json"));
    const told = findings.filter((finding: { sheet: string }) => finding.sheet === "Standard");
    expect(told).toMatchObject([{ cell: "D12", row: 12 }]);
    const { view } = await inPane(bars, bad, "BS8666:2005");
    expect(view.findings.filter(({ sheet }) => sheet === "Standard").map(({ cell }) => cell)).toEqual([
      "D12",
    ]);
  });
});
