import { runAudit } from "../../core/audit/run-audit";
import type { Sheet } from "../../core/schedule/sheet";
import type { Standard } from "../../core/standards";
import { reckonTonnage } from "../../core/totals/reckon-tonnage";

const NO_NUMBER = /\bNaN\b|Infinity|undefined/;

/** What no schedule may bring about: lost rows, holes in words, lengths and masses below nought or without end. */
export function scheduleFaults(sheet: Sheet, standard: Standard): string[] {
  const faults: string[] = [];
  const report = runAudit({ sheets: [sheet], standard });
  const [audited] = report.sheets;
  if (audited !== undefined) {
    const rows = Object.values(audited.rows).reduce((sum, count) => sum + count, 0);
    if (rows !== sheet.rowCount) faults.push(`${rows} rows in classes of ${sheet.rowCount}`);
  }
  // what was typed may be quoted
  const isTyped = holdsNoNumber(sheet);
  for (const { code, message, fix, row } of report.findings) {
    const words = `${message} ${fix?.label ?? ""}`;
    if (/\{\w+\}/.test(words)) faults.push(`${code}: a hole in "${words}"`);
    if (!isTyped && NO_NUMBER.test(words)) faults.push(`${code}: no number in "${words}"`);
    if (row !== null && (row < 1 || row > sheet.rowCount)) faults.push(`${code}: row ${row}`);
    for (const { cell, to } of fix?.edits ?? []) {
      if (typeof to === "number" && !(Number.isFinite(to) && to >= 0))
        faults.push(`${code}: a fix writes ${to}`);
      if (!/^[A-Z]+\d+$/.test(cell)) faults.push(`${code}: a fix of ${cell}`);
    }
  }
  if (audited === undefined) return faults;
  const { tonnage } = reckonTonnage([{ sheet, reading: audited.reading }], standard);
  const masses = [
    tonnage.total,
    ...tonnage.pours.flatMap(({ bySize, total }) => [total, ...bySize.values()]),
  ];
  for (const mass of masses) if (!(Number.isFinite(mass) && mass >= 0)) faults.push(`a mass of ${mass}`);
  return faults;
}

function holdsNoNumber(sheet: Sheet): boolean {
  for (let row = 0; row < sheet.rowCount; row += 1)
    for (let column = 0; column < sheet.columnCount; column += 1)
      if (NO_NUMBER.test(String(sheet.cell(row, column)))) return true;
  return false;
}
