import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { check } from "../../addin/command-line/check";
import type { Command } from "../../addin/command-line/command";
import { readOptions } from "../../addin/command-line/read-options";
import { tonnage } from "../../addin/command-line/tonnage";
import { excelWorkbook } from "../../addin/excel/excel-workbook";
import { createLocalEngine } from "../../addin/pane/engine/local-engine";
import { PaneModel } from "../../addin/pane/model/pane-model";
import { textConstant } from "../../addin/workbook/defined-name";
import type { WorkbookPort } from "../../addin/workbook/workbook-port";
import { writeNewWorkbook } from "../../addin/xlsx/write/new-workbook";
import type { Severity } from "../../core/audit/finding";
import { severityCounts } from "../../core/audit/severity-counts";
import { launchChromium } from "../_support/chromium";
import { type OpenExcel, openInJsdom } from "../_support/office-host/open-in-jsdom";
import { CORPUS } from "../corpus/corpus";
import { type CorpusSchedule, cellsOf } from "../corpus/corpus-schedule";
import type { RemotePort } from "./port-page";
import { remotePort, stopListening } from "./remote-port";

declare const remote: RemotePort;

const folder = mkdtempSync(join(tmpdir(), "barwright-surfaces-"));

let browser: Browser;
let page: Page;

beforeAll(async () => {
  browser = await launchChromium();
  page = await browser.newPage();
  await page.goto(`${inject("pages")}workbench/port.html`);
  await page.waitForFunction(() => "remote" in globalThis);
});
afterAll(() => browser.close());

interface Told {
  readonly findings: readonly {
    readonly code: string;
    readonly severity: Severity;
    readonly message: string;
  }[];
  readonly rows: Readonly<Record<string, number>>;
  readonly counts: unknown;
  readonly reading: readonly string[];
  readonly held: boolean;
  readonly notInTotal: unknown;
  readonly total: number | null;
  /** tonnes by pour, to the gram */
  readonly pours: readonly string[];
}

/** A whole command, its result lines as one text. */
async function ran(command: Command, args: readonly string[]): Promise<string> {
  let told = "";
  const tell = (text: string): void => {
    told += text;
  };
  const streams = {
    result: (line: string) => tell(`${line}\n`),
    piece: tell,
    note: () => {},
    progress: () => {},
  };
  await command.run(readOptions(args, command.options), streams);
  return told;
}

const found = ({ code, severity, outcome, cell, message, fix }: FoundOnce) => ({
  code,
  severity,
  outcome,
  cell,
  message,
  fix: fix?.label ?? null,
});
type FoundOnce = {
  code: string;
  severity: Severity;
  outcome: string;
  cell: string | null;
  message: string;
  fix: { label: string } | null;
};

async function commandLine(path: string): Promise<Told> {
  const checked = JSON.parse(await ran(check, [path, "--explain", "--json"]));
  const summed = JSON.parse(await ran(tonnage, [path, "--json"]));
  return {
    findings: checked.findings.map(found),
    rows: checked.rows,
    counts: checked.counts,
    reading: checked.reading[0].columns.map(
      ({ column, kept, tested }: { column: string; kept: number | null; tested: number | null }) =>
        `${column}: ${kept} of ${tested}`,
    ),
    held: summed.held !== null,
    notInTotal: checked.notInTotal,
    total: summed.total,
    pours: summed.pours.map(
      ({ pour, total }: { pour: string; total: number }) => `${pour} ${total.toFixed(3)}`,
    ),
  };
}

/** What the pane says over a workbook, whichever holds it. */
async function pane(workbook: WorkbookPort): Promise<Told> {
  const engine = createLocalEngine();
  const model = new PaneModel(workbook, engine);
  await model.start();
  await model.check();
  const { view, notice } = model.state;
  if (view === null) throw new Error(notice?.text ?? "not checked");
  const totals = await engine.totals(view.sheet);
  const { columns } = await engine.explain(view.sheet);
  return {
    findings: view.findings.map(found),
    rows: { ...view.rows },
    counts: severityCounts(view.findings),
    reading: columns.map(({ letter, kept, tested }) => `${letter}: ${kept} of ${tested}`),
    held: totals.held !== null,
    notInTotal: view.notInTotal,
    total: totals.held === null ? view.mass / 1000 : null,
    pours: totals.pours.map(({ pour, total }) => `${nameless(pour)} ${total}`),
  };
}

function isSame({ total, ...told }: Told, { total: tonnes, ...said }: Told): void {
  expect(told).toEqual(said);
  // one is an exact sum, the other one of floats
  if (tonnes === null) expect(total).toBeNull();
  else expect(total).toBeCloseTo(tonnes, 9);
}

/** The command line's JSON leaves a group without a name blank, where the pane says that it has none. */
const nameless = (pour: string): string => (/^no (pour|member|sheet)$/.test(pour) ? "" : pour);

async function inExcel(schedule: CorpusSchedule): Promise<{ told: Told; open: OpenExcel }> {
  const open = await openInJsdom();
  const { workbook } = open.excel;
  const cells = cellsOf(schedule);
  const width = Math.max(...cells.map((row) => row.length));
  // a text stays one, whatever it looks like
  const typed = (cell: unknown) => (typeof cell === "string" ? `'${cell}` : (cell ?? ""));
  const values = cells.map((row) => Array.from({ length: width }, (_, column) => typed(row[column])));
  workbook.active.Name = "Schedule";
  workbook.active.GetRangeByIndexes(0, 0, values.length, width).Values = values as never;
  const port = excelWorkbook();
  await port.saveSetting("Barwright.Standard", schedule.standard);
  return { told: await pane(port), open };
}

async function inWorkbench(bytes: Uint8Array): Promise<Told> {
  await page.evaluate((file) => remote.open(file, "book.xlsx"), [...bytes]);
  try {
    return await pane(remotePort(page));
  } finally {
    stopListening();
  }
}

describe("command line, pane in Excel and pane in the workbench", () => {
  test.each(CORPUS.map((schedule) => [schedule.name, schedule] as const))(
    "%s: the same findings, reading, totals and counts",
    async (name, schedule) => {
      const bytes = writeNewWorkbook({
        sheets: [{ name: "Schedule", rows: cellsOf(schedule) }],
        names: new Map([["Barwright.Standard", textConstant(schedule.standard)]]),
      });
      const path = join(folder, `${name}.xlsx`);
      writeFileSync(path, bytes);
      const said = await commandLine(path);
      expect(said.findings.length + said.rows["bars"]!).toBeGreaterThan(0);
      const { told, open } = await inExcel(schedule);
      open.close();
      isSame(told, said);
      isSame(await inWorkbench(bytes), said);
    },
  );
});
