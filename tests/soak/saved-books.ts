import { execFileSync, spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { openWorkbook } from "../../addin/xlsx/read/open-workbook";
import type { Cell } from "../../core/schedule/sheet";
import { findOffice } from "../_support/libre-office";

/** Comma, quotes, UTF-8, values as they are and not as they are shown, every sheet to a file of its own. */
const CSV = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1";

/**
 * Files that the workbench saved in the browser's tests, opened by LibreOffice: each cell holds there what
 * was saved. Gives the faults.
 */
export function soakSavedBooks(): string[] {
  const office = findOffice();
  if (office === null) throw new Error("LibreOffice is not installed: apt-get install libreoffice-calc");
  const work = mkdtempSync(join(tmpdir(), "barwright-saved-"));
  const [saved, out] = [join(work, "saved"), join(work, "csv")];
  mkdirSync(saved);
  execFileSync(
    "npx",
    [
      "vitest",
      "run",
      "--config",
      "tests/vitest.config.ts",
      "--project",
      "browser",
      "day-of-work",
      "yard",
      "findings-sheet",
    ],
    { env: { ...process.env, BARWRIGHT_KEEP_SAVES: saved }, stdio: "inherit" },
  );
  const files = readdirSync(saved);
  if (files.length === 0) throw new Error("no test saved a file");
  const profile = `-env:UserInstallation=file://${join(work, "profile")}`;
  const paths = files.map((name) => join(saved, name));
  spawnSync(office, [profile, "--headless", "--norestore", "--convert-to", CSV, "--outdir", out, ...paths]);
  console.log(`${files.length} files saved by the workbench`);
  return files.flatMap((name) => differences(join(saved, name), out, name.replace(/\.xlsx$/, "")));
}

function differences(path: string, out: string, stem: string): string[] {
  const book = openWorkbook(new Uint8Array(readFileSync(path)));
  return book.sheets.flatMap(({ name }) => {
    const csv = join(out, `${stem}-${name}.csv`);
    if (!existsSync(csv)) return [`${stem}, sheet "${name}": LibreOffice does not open it`];
    const theirs: string[][] = parse(readFileSync(csv), { relax_column_count: true });
    const sheet = book.read(name, { formulas: true });
    // A formula that asks one of the add-in's own functions, and does without, is blank there.
    const isOurs = (row: number, column: number): boolean =>
      /BAR_/.test(sheet.formulaAt(row, column)?.text ?? "");
    return [...sheet.rowNumbers].flatMap((row) =>
      [...sheet.cellsOfRow(row)].flatMap(({ column, value }) => {
        const there = theirs[row]?.[column] ?? "";
        return isSame(value, there) || (there === "" && isOurs(row, column))
          ? []
          : [`${stem} ${name} ${row + 1}/${column + 1}: ${JSON.stringify(value)}, there ${there}`];
      }),
    );
  });
}

/** Line ends aside; an error is shown by each program in its own words. */
function isSame(value: Cell, there: string): boolean {
  // It has none of the add-in's functions, and calculates what was saved without a result.
  if (there === "#NAME?") return true;
  if (value !== null && typeof value === "object" && value.uncalculated) return true;
  if (value === null) return there === "";
  if (typeof value === "number")
    return Math.abs(Number(there) - value) <= 1e-9 * Math.max(1, Math.abs(value));
  if (typeof value === "boolean") return there.toUpperCase() === String(value).toUpperCase();
  if (typeof value === "object") return there.startsWith("#") || there.startsWith("Err:");
  return there.replace(/\r/g, "") === value.replace(/\r/g, "");
}
