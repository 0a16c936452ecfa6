import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { demoWorkbook } from "../../addin/demo/demo-workbook";
import { openWorkbook } from "../../addin/xlsx/read/open-workbook";
import { type NewCell, writeNewWorkbook } from "../../addin/xlsx/write/new-workbook";
import type { Cell } from "../../core/schedule";
import { readSchedule } from "../../core/schedule/read-schedule";
import { resolveStandard, type Standard } from "../../core/standards";
import { isInTotal, weighRows } from "../../core/totals/row-mass";
import { barwrightBundle } from "../_support/command-line";
import { findOffice, recalculateCommand } from "../_support/libre-office";
import type { Bench } from "./bench";

/** Tonnes of the demo by BAR.TONNAGE, as `recalc` stores them, beside plain SUMIFS that LibreOffice computes. */
export default {
  name: "tonnes of the demo beside SUMIFS",
  async run() {
    const office = findOffice();
    if (office === null) return { figures: { LibreOffice: "skipped: soffice is not installed" } };
    const folder = mkdtempSync(join(tmpdir(), "barwright-bench-"));
    try {
      return { figures: compare(office, folder) };
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  },
} satisfies Bench;

function compare(office: string, folder: string): Record<string, number | string> {
  const lines = demoLines();
  const pours = distinct(lines.map(([pour]) => pour));
  const sizes = distinct(lines.map(([, size]) => size));
  const last = lines.length + 1;
  const bar: NewCell = {
    value: null,
    formula: `BAR.TONNAGE(Rows!A2:A${last},Rows!B2:B${last},Rows!C2:C${last})`,
    fills: { rows: pours.length + 2, columns: sizes.length + 2 },
  };
  const column = (letter: string): string => `Rows!$${letter}$2:$${letter}$${last}`;
  const plain = pours.map((pour, row) => [
    pour,
    ...sizes.map((size): NewCell => {
      const of = `SUMIFS(${column("C")},${column("A")},"${pour}",${column("B")},"${size}")/1000`;
      return { value: row, formula: of };
    }),
    { value: 0, formula: `SUMIFS(${column("C")},${column("A")},"${pour}")/1000` } satisfies NewCell,
  ]);
  const book = join(folder, "book.xlsx");
  const stored = join(folder, "stored.xlsx");
  writeFileSync(
    book,
    writeNewWorkbook({
      sheets: [
        { name: "Rows", rows: [["pour", "size", "mass kg"], ...lines] },
        { name: "Totals", rows: [[bar]] },
        { name: "Plain", rows: plain },
      ],
    }),
  );
  execFileSync(process.execPath, [barwrightBundle(), "recalc", book, "--out", stored], { stdio: "pipe" });
  const [program, ...args] = recalculateCommand(office, folder, stored, join(folder, "out"));
  execFileSync(program!, args, { stdio: "pipe" });
  const ours = openWorkbook(readFileSync(stored)).read("Totals");
  const theirs = openWorkbook(readFileSync(join(folder, "out", "stored.xlsx"))).read("Plain");
  let largest = 0;
  pours.forEach((_, row) => {
    for (let at = 1; at <= sizes.length + 1; at += 1) {
      const difference = Number(ours.valueAt(row + 1, at)) - Number(theirs.valueAt(row, at));
      largest = Math.max(largest, Number.isNaN(difference) ? Number.POSITIVE_INFINITY : Math.abs(difference));
    }
  });
  const grams = largest * 1e6;
  if (!(grams < 0.5)) throw new Error(`BAR.TONNAGE and SUMIFS differ by ${grams} g`);
  return {
    rows: lines.length,
    "pours x sizes": `${pours.length} x ${sizes.length}`,
    "tonnes in all": Number(ours.valueAt(pours.length + 1, sizes.length + 1)),
    "largest difference, g": grams,
  };
}

/** SUMIFS takes "h16" and "H16" as one. */
function distinct(labels: readonly string[]): string[] {
  const plain = labels.map((label) => label.toLowerCase());
  return labels.filter((_, index) => plain.indexOf(plain[index]!) === index);
}

function demoLines(): [string, string, number][] {
  const standard = resolveStandard("BS8666:2005") as Standard;
  const sheet = openWorkbook(demoWorkbook()).read("Schedule");
  const reading = readSchedule(sheet, standard);
  const masses = weighRows(sheet, reading, standard).map((row) => (isInTotal(row) ? row : null));
  const text = (cell: Cell | null): string => (cell === null ? "none" : String(cell));
  return reading.bars.flatMap((bar, index) => {
    const mass = masses[index]?.mass ?? null;
    return mass === null ? [] : [[text(bar.pour), text(bar.sizeTyped), mass]];
  });
}
