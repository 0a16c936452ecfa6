import type { BarFacts } from "../bar/bar-facts";
import type { ColumnKind, ColumnReading, TableReading } from "../schedule/bar-row";
import { cellAddress } from "../schedule/cell-address";
import { amountColumn } from "../schedule/columns/amount-column";
import { IN_COLUMN_UNIT } from "../schedule/columns/in-column-unit";
import type { Sheet } from "../schedule/sheet";
import { isSure } from "../standards/citation";
import type { LengthUnit } from "../units/length-unit";
import { carriedAlong } from "./carry-along";
import type { Finding, Fix, Outcome } from "./finding";
import { findingText } from "./finding-text";
import type { RowReport, Rule, SheetReport } from "./rule";

/** Where a finding stands whose own column the table does not have. */
const STANDS_IN: readonly ColumnKind[] = ["shape", "mark", "size"];

/** A finding about one bar: the rule's words, the cell's address and the fix in the column's own unit. */
export function rowFinding(rule: Rule, facts: BarFacts, found: RowReport): Finding {
  const { sheet } = facts.sheet;
  const { row, table } = facts.row;
  return {
    code: rule.code,
    name: rule.name,
    severity: found.severity ?? rule.severity,
    outcome: outcomeOf(found),
    sheet: sheet.name,
    row: sheet.top + row + 1,
    cell: cellAddress(sheet, row, amountColumn(facts.row, found.at) ?? columnOf(table, found.at)),
    message: wording(rule, found, facts.standard.unit),
    // what is joined in one cell cannot be changed apart
    fix: facts.sheet.reading.pasted === true ? null : fixOf(rule, facts, found),
    cite: found.cite ?? null,
    ...(rule.tellsEach?.includes(found.messageId) === true && { toldEach: true as const }),
  };
}

/** A finding about several rows, a line that is no bar, or the sheet as a whole. */
export function sheetFinding(rule: Rule, sheet: Sheet, unit: LengthUnit, found: SheetReport): Finding {
  const { row, place, also } = found;
  if (row !== undefined) {
    const made = rowFinding(rule, row, { ...found, at: found.at ?? "mark" });
    if (also === undefined) return made;
    const message = wording(rule, { ...found, values: also.values }, unit);
    return { ...made, also: { row: sheet.top + also.row.row.row + 1, message } };
  }
  return {
    code: rule.code,
    name: rule.name,
    severity: found.severity ?? rule.severity,
    outcome: outcomeOf(found),
    sheet: sheet.name,
    row: place === undefined ? null : sheet.top + place.row + 1,
    cell: place === undefined ? null : cellAddress(sheet, place.row, place.column),
    message: wording(rule, found, unit),
    fix: null,
    cite: found.cite ?? null,
  };
}

/** Never surer than the source that it rests on; what rests on no document is what the sheet itself shows. */
function outcomeOf({ outcome, cite }: RowReport | SheetReport): Outcome {
  if (outcome === "unsure") return "unsure";
  return cite == null || isSure(cite) ? "broken" : "unsure";
}

function wording(rule: Rule, found: RowReport | SheetReport, unit: LengthUnit): string {
  return findingText(rule.messages[found.messageId] ?? found.messageId, found.values, unit);
}

function fixOf(rule: Rule, facts: BarFacts, found: RowReport): Fix | null {
  if (found.fix === undefined) return null;
  const words = rule.fixes?.[found.fix.id];
  if (words === undefined) return null;
  const edits: Fix["edits"][number][] = [];
  for (const { at, to } of found.fix.edits) {
    const column = facts.row.table.columns.get(at);
    // a length in two cells, feet and inches, is not mended by one number
    if (column === undefined || column.inches !== undefined) continue;
    const written = inColumnUnit(to, column);
    // nothing is put right by a length, mass or count that no bar can have
    if (typeof written === "number" && !(written > 0 && Number.isFinite(written))) return null;
    edits.push({ cell: cellAddress(facts.sheet.sheet, facts.row.row, column.column), to: written });
  }
  if (edits.length === 0) return null;
  const label = findingText(words.label, found.values, facts.standard.unit);
  if (words.safety === "safe") return { label, safety: words.safety, edits };
  const said: string[] = [];
  for (const { at, to } of carriedAlong(facts, found.fix.edits)) {
    const column = facts.row.table.columns.get(at);
    if (column === undefined || column.inches !== undefined) continue;
    const written = inColumnUnit(to, column);
    if (typeof written !== "number" || !(written > 0 && Number.isFinite(written))) return null;
    edits.push({
      cell: cellAddress(facts.sheet.sheet, facts.row.row, column.column),
      to: written,
      keepsFormula: true,
    });
    said.push(
      `${CARRIED[at]} to ${findingText("{to}", { to: at === "mass" ? { kg: to } : { mm: to } }, facts.standard.unit)}`,
    );
  }
  const along = said.length === 0 ? "" : `, and with it ${said.join(" and ")}`;
  return { label: label + along, safety: words.safety, edits };
}

const CARRIED = { length: "the length", totalLength: "the total length", mass: "the mass" } as const;

function inColumnUnit(value: string | number | null, column: ColumnReading): string | number | null {
  if (typeof value !== "number" || column.unit === null) return value;
  return Number((value / IN_COLUMN_UNIT[column.unit]).toFixed(6));
}

function columnOf(table: TableReading, field: ColumnKind): number {
  // the form has one column for E and for the radius
  const own = table.columns.get(field) ?? (field === "R" ? table.columns.get("E") : undefined);
  if (own !== undefined) return own.column;
  for (const kind of STANDS_IN) {
    const column = table.columns.get(kind);
    if (column !== undefined) return column.column;
  }
  return table.left ?? 0;
}
