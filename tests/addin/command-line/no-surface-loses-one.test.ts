import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { check } from "../../../addin/command-line/check";
import type { Command } from "../../../addin/command-line/command";
import { compare } from "../../../addin/command-line/compare";
import { cutplan } from "../../../addin/command-line/cutplan";
import { loads } from "../../../addin/command-line/loads";
import { readOptions } from "../../../addin/command-line/read-options";
import { tickets } from "../../../addin/command-line/tickets";
import { tonnage } from "../../../addin/command-line/tonnage";
import { createLocalEngine } from "../../../addin/pane/engine/local-engine";
import { NO_OTHER_SHEETS } from "../../../addin/pane/engine/other-sheets";
import { summaryLine } from "../../../addin/pane/panels/check/summary-line";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import { exampleSheets } from "../../../core/audit/example-sheet";
import { exampleShop } from "../../../core/audit/example-shop";
import type { Finding } from "../../../core/audit/finding";
import { isHolding, isSevere } from "../../../core/audit/holds";
import type { Example } from "../../../core/audit/rule";
import { RULES } from "../../../core/audit/rules";
import { type Cell, type Sheet, sheetFromRows } from "../../../core/schedule/sheet";

const folder = mkdtempSync(join(tmpdir(), "barwright-surfaces-"));
process.env.XDG_CACHE_HOME = mkdtempSync(join(tmpdir(), "barwright-surfaces-cache-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const at = (name: string): string => join(folder, name);

interface Case {
  readonly name: string;
  readonly standard: string;
  readonly sheets: readonly { readonly name: string; readonly rows: readonly (readonly Cell[])[] }[];
  readonly kept?: string;
}

const LIMITS = {
  name: "Shop",
  rows: [
    ["limit", "value"],
    ["hoist or crane kg", 2000],
    ["lorry load kg", 20_000],
  ],
};

const rowsOf = (sheet: Sheet): Cell[][] =>
  Array.from({ length: sheet.rowCount }, (_, row) =>
    Array.from({ length: sheet.columnCount }, (_cell, column) => sheet.cell(row, column)),
  );

function caseOf(name: string, example: Example): Case {
  const sheets = exampleSheets(example).map((sheet) => ({ name: sheet.name, rows: rowsOf(sheet) }));
  const hasShop = sheets.some((sheet) => sheet.name === "Shop");
  const kept =
    example.kept ?? (example.limits === undefined ? null : JSON.stringify({ limits: example.limits }));
  return {
    name,
    standard: example.standard ?? "BS8666:2005",
    sheets: hasShop ? sheets : [...sheets, LIMITS],
    ...(kept === null ? {} : { kept }),
  };
}

/** Every bar that a rule's own page shows to be wrong. */
const OF_RULES = RULES.flatMap(({ code, docs }) =>
  docs.failing.map((example, index) => caseOf(`${code} ${index + 1}`, example)),
);

/** Lists as other offices write them, each with one bar that is bent too tight or cannot be bent, among sound ones. */
const OF_OFFICES: readonly Case[] = [
  {
    name: "Germany, a roll of 40 mm for 16 mm (EN 1992-1-1 8.1N: 4 d)",
    standard: "DIN-EC2:2013",
    sheets: [
      {
        name: "Stahlliste",
        rows: [
          ["Stahlliste Nr. 3", null, "Bauvorhaben: Pumpwerk"],
          [],
          ["Pos.", "Anzahl", "Ø mm", "Einzellänge [m]", "Biegeform", "Biegerolle [mm]"],
          // 500 + 500 - (2 (32 + 16) - (32 + 8) pi/2) = 966.8
          ["1", 10, 16, 0.97, "500 +90 500", 64],
          ["2", 10, 16, 0.97, "500 +90 500", 40],
          ["3", 12, 16, 3, "gerade", null],
        ],
      },
      LIMITS,
    ],
  },
  {
    name: "United States, a pin of 2 in for #5 (ACI 318 25.3.1: 6 db)",
    standard: "ACI318:2019",
    sheets: [
      {
        name: "Bar list",
        rows: [
          ["Mark", "Qty", "Size", "Length", "Shape", "Bend pin in"],
          ["B1", 6, "#5", `3'-10 1/2"`, "24 +90 24", 3.75],
          ["B2", 6, "#5", `3'-10 1/2"`, "24 +90 24", 2],
          ["B3", 6, "#5", `10'-0"`, "00", null],
        ],
      },
      LIMITS,
    ],
  },
  {
    name: "Spain, a mandrel of 30 mm for 16 mm",
    standard: "EC2:2004",
    sheets: [
      {
        name: "Despiece",
        rows: [
          ["Marca", "Diámetro", "Nº barras", "Longitud (mm)", "Forma", "Mandril (mm)"],
          ["V1", 16, 8, 970, "500 +90 500", 64],
          ["V2", 16, 8, 970, "500 +90 500", 30],
        ],
      },
      LIMITS,
    ],
  },
  {
    name: "an untidy list, two tables, figures as text",
    standard: "BS8666:2005",
    sheets: [
      {
        name: "Bars",
        rows: [
          ["WALLS", null, null],
          ["Bar mark", "Type & size", "no. off", "Length mm", "Shape", "A", "B", "Former"],
          ["01", "H 16", " 10 ", "875 ", "11", "500", "400", "64"],
          [],
          ["SLAB"],
          ["mark", "size", "total", "length", "shape code", "A", "B", "former mm", "remarks"],
          ["02", "h16", "10 no", "875mm", 11, "500", "400", "40", "as 01"],
          ["Total", null, 20],
        ],
      },
      LIMITS,
    ],
  },
  {
    name: "a bar beyond the plate in a list whose shop has one bender",
    standard: "BS8666:2005",
    sheets: [
      {
        name: "Bars",
        rows: [
          ["Bar mark", "Size", "Total", "Length mm", "Shape", "A", "B"],
          ["01", "H16", 10, 875, "11", 500, 400],
          ["02", "H25", 10, 1750, "11", 900, 900],
        ],
      },
      {
        name: "Shop",
        rows: exampleShop({
          bender: { formers: "64, 140, 175", orbitRadius: 200 },
          plates: [
            ["Bench 2", "bend", "H16", 500, 2],
            ["Bench 2", "bend", "H25", 500, 0],
          ],
        }),
      },
    ],
  },
];

async function run(command: Command, ...args: string[]): Promise<{ out: string; all: string }> {
  const out: string[] = [];
  const notes: string[] = [];
  const streams = {
    result: (line: string) => void out.push(line),
    piece: (text: string) => void out.push(text),
    note: (line: string) => void notes.push(line),
    progress: () => undefined,
  };
  try {
    await command.run(readOptions(args, command.options), streams);
  } catch (error) {
    // a refusal is what the user reads
    notes.push((error as Error).message);
  }
  return { out: out.join("\n"), all: [...out, ...notes].join("\n") };
}

const MARKUP: readonly (readonly [string, string])[] = [
  ["&gt;", ">"],
  ["&lt;", "<"],
  ["&quot;", '"'],
  ["&#39;", "'"],
  ["&amp;", "&"],
];

function page(name: string): string {
  if (!existsSync(at(name))) return "";
  return MARKUP.reduce((text, [from, to]) => text.replaceAll(from, to), readFileSync(at(name), "utf8"));
}

/** What stands on a sheet; blank where the workbook was not written. */
function cellsOf(path: string, name: string): string {
  if (!existsSync(path)) return "";
  const book = openWorkbook(readFileSync(path));
  // several schedules give the workbook of a job
  const read = book.sheets.some((sheet) => sheet.name === name) ? name : "Job";
  return rowsOf(book.read(read)).flat().join(" | ");
}

/** What each surface says of a book. */
async function surfaces(path: string, standard: string): Promise<Record<string, string>> {
  const of = ["--standard", standard];
  const bundles = ["--bundle-limit", "2000"];
  const copy = at("copy.xlsx");
  for (const name of ["copy.xlsx", "t.html", "l.html", "c.html", "o.html", "job.xlsx", "totals.xlsx"])
    rmSync(at(name), { force: true });
  await run(check, path, "--out", copy, ...of);
  const made = await run(tickets, path, "--out", at("t.html"), "--labels", at("l.html"), ...bundles, ...of);
  const cut = await run(cutplan, path, "--out", at("c.html"), ...of);
  const loaded = await run(loads, path, "--out", at("o.html"), ...bundles, "--lorry-load", "20000", ...of);
  const both = await run(tonnage, path, at("sound.xlsx"), "--out", at("job.xlsx"), ...of);
  await run(tonnage, path, "--out", at("totals.xlsx"), ...of);
  const cutOfBoth = await run(cutplan, path, at("sound.xlsx"), ...of);
  const readable = (json: string): string => json.replaceAll('\\"', '"');
  return {
    check: (await run(check, path, ...of)).all,
    "check --jsonl": readable((await run(check, path, "--jsonl", ...of)).all),
    "findings sheet": cellsOf(copy, "Findings"),
    tickets: page("t.html"),
    labels: page("l.html") + made.all,
    "cut list": page("c.html") + cut.all,
    "cutplan --json": readable((await run(cutplan, path, "--json", ...of)).all),
    "cut list of a job": cutOfBoth.all,
    loads: page("o.html") + loaded.all,
    tonnage: (await run(tonnage, path, ...of)).all,
    "tonnage --json": readable((await run(tonnage, path, "--json", ...of)).all),
    "Totals sheet": cellsOf(at("totals.xlsx"), "Totals"),
    "tonnage of a job": both.all,
    "workbook of a job": cellsOf(at("job.xlsx"), "Job") + cellsOf(at("job.xlsx"), "Not counted"),
    compare: (await run(compare, path, path, ...of)).all,
  };
}

/** The line that the pane gives to be passed on, of a book with one schedule; null for several. */
async function lineToPassOn({ sheets, standard, kept }: Case): Promise<string | null> {
  const [schedule, more] = sheets.filter(({ name }) => name !== "Shop" && name !== "Standard");
  if (schedule === undefined || more !== undefined || sheets.some(({ name }) => name === "Standard"))
    return null;
  const shop = sheets.find(({ name }) => name === "Shop");
  const view = await createLocalEngine().check({
    sheet: sheetFromRows(schedule.name, schedule.rows),
    shop: shop === undefined ? null : sheetFromRows(shop.name, shop.rows),
    otherSheets: NO_OTHER_SHEETS,
    standard,
    settings: kept ?? null,
  });
  return summaryLine(view);
}

/** Words by which a paper names a bar that it leaves out. */
const LEFT_OUT = /in no plan|in no bundle|nothing can be planned|no ticket for|superseded|newer and counts/;

async function book({ name, sheets, kept }: Case): Promise<string> {
  const path = at(`${name.replace(/\W+/g, "-")}.xlsx`);
  const names = kept === undefined ? null : new Map([["Barwright.Audit", `"${kept.replaceAll('"', '""')}"`]]);
  writeFileSync(path, writeNewWorkbook({ sheets, ...(names === null ? {} : { names }) }));
  return path;
}

const SOUND: Case = caseOf("sound", {
  rows: [{ mark: "S1", size: "H12", shape: "00", A: 2000, length: 2000 }],
});

describe("no surface loses a bar that is unsafe or cannot be made", () => {
  const found = new Set<string>();

  it.each([...OF_RULES, ...OF_OFFICES])("$name", async (one) => {
    await book(SOUND);
    const path = await book(one);
    const { out } = await run(check, path, "--json", "--standard", one.standard);
    const findings = (out === "" ? [] : JSON.parse(out).findings) as Finding[];
    const severe = findings.filter((finding) => isSevere(finding) || isHolding(finding));
    if (OF_OFFICES.includes(one)) expect(severe.map(({ severity }) => severity)).toContain("unsafe");
    if (severe.length === 0) return;
    const said = await surfaces(path, one.standard);
    const line = await lineToPassOn(one);
    for (const { code, message, severity } of severe) {
      found.add(code);
      if (line !== null) expect(line).toMatch(new RegExp(`[1-9]\\d* (?:perhaps )?${severity}`));
      const lost = Object.entries(said).filter(
        ([, words]) => !words.includes(message.slice(0, MESSAGE)) && !LEFT_OUT.test(words),
      );
      expect(
        lost.map(([surface]) => surface),
        message,
      ).toEqual([]);
    }
  });

  it("is asked of every rule that finds what is unsafe or cannot be bent", () => {
    const severe = RULES.filter(({ severity }) => severity === "unsafe" || severity === "unbendable");
    expect(severe.map(({ code }) => code).filter((code) => !found.has(code))).toEqual([]);
  });
});

/** characters of a message that tell it from others */
const MESSAGE = 60;
