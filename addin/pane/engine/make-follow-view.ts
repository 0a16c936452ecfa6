import type { AuditReport } from "../../../core/audit/audit-report";
import type { Finding } from "../../../core/audit/finding";
import { recheck } from "../../../core/audit/run-audit";
import type { Sheet } from "../../../core/schedule/sheet";
import { reckonTonnage } from "../../../core/totals/reckon-tonnage";
import { greatest, least } from "../../../core/units/extremes";
import { tonnesOf } from "../../../core/units/print-mass";
import type { CellEdit } from "../../workbook/workbook-port";
import { contentOf } from "./content-of";
import type { FollowView } from "./follow-view";
import type { KeptCheck } from "./kept-check";
import { placeIn } from "./place-in";

/** a length makes a mass wrong, and that a sum; no chain is longer */
const MOST_STEPS = 4;
/** rules that hold a row's own figures against each other: their fixes are what follows a change */
const AGREEMENT: ReadonlySet<string> = new Set([
  "length-differs",
  "mass-differs",
  "total-length-differs",
  "total-differs",
]);

/** Tries edits on a copy of a checked sheet, and gives what else must change for the same rows to agree. */
export function followView(kept: KeptCheck, edits: readonly CellEdit[]): FollowView {
  const {
    sheet,
    audit: { report },
  } = kept;
  const rows = new Set(edits.map(({ cell }) => sheet.top + (placeIn(sheet, cell)?.row ?? -1)));
  const known = new Set(report.findings.map(placeOf));
  const wanted = new Set(edits.map(({ cell }) => cell));
  const following = new Map<string, CellEdit>();
  let tried = withEdits(sheet, edits);
  let judged = judge(kept, tried, rows);
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const next = judged.findings
      .filter(
        (finding) =>
          isOfRows(finding, sheet, rows) && AGREEMENT.has(finding.name) && !known.has(placeOf(finding)),
      )
      .flatMap(({ fix }) => fix?.edits ?? [])
      .filter(({ cell }) => !wanted.has(cell) && !following.has(cell));
    if (next.length === 0) break;
    for (const edit of next) following.set(edit.cell, edit);
    tried = withEdits(sheet, [...edits, ...following.values()]);
    judged = judge(kept, tried, rows);
  }
  return {
    edits: [...following.values()].map((edit) => ({ ...edit, before: contentOf(sheet, edit.cell) })),
    effect:
      report.sheets[0]?.reading.held == null
        ? effectWords(massOf(kept, report, sheet, rows), massOf(kept, judged, tried, rows))
        : "The steel is not added up: totals are held back until it is said how the sheet is read.",
  };
}

function judge({ sheet, audit }: KeptCheck, tried: Sheet, rows: ReadonlySet<number>) {
  const list = [...rows].map((row) => row - sheet.top);
  return recheck(audit, tried, least(list), greatest(list)).report;
}

const placeOf = ({ code, cell, row }: Finding): string => `${code} ${cell ?? row}`;

function isOfRows({ row, sheet: of }: Finding, sheet: Sheet, rows: ReadonlySet<number>): boolean {
  return row !== null && of === sheet.name && rows.has(row - 1);
}

/** The sheet with other contents in some cells, all else as it was. */
function withEdits(sheet: Sheet, edits: readonly CellEdit[]): Sheet {
  const changed = new Map<string, CellEdit["to"]>();
  for (const { cell, to } of edits) {
    const place = placeIn(sheet, cell);
    if (place !== null) changed.set(`${place.row} ${place.column}`, to);
  }
  const { rowCells: _whole, ...rest } = sheet;
  return {
    ...rest,
    cell: (row, column) => {
      const to = changed.get(`${row} ${column}`);
      return to === undefined ? sheet.cell(row, column) : to;
    },
    shown: (row, column) => (changed.has(`${row} ${column}`) ? undefined : sheet.shown?.(row, column)),
  };
}

/** kg that a change has to make to be told */
const LEAST_SHOWN = 0.05;

interface Steel {
  /** kg of the rows that are changed */
  readonly rows: number;
  /** kg of them by the lengths that are cut and loaded */
  readonly cut: number;
  /** kg of the whole sheet */
  readonly all: number;
}

function massOf(
  {
    audit: {
      report: { standard },
    },
  }: KeptCheck,
  { sheets }: AuditReport,
  sheet: Sheet,
  rows: ReadonlySet<number>,
): Steel {
  const reading = sheets[0]?.reading;
  if (reading === undefined) return { rows: 0, cut: 0, all: 0 };
  const { masses } = reckonTonnage([{ sheet, reading }], standard);
  const steel = { rows: 0, cut: 0, all: 0 };
  reading.bars.forEach((bar, index) => {
    const mass = masses[0]?.massAt(index) ?? 0;
    steel.all += mass;
    if (!rows.has(sheet.top + bar.row)) return;
    steel.rows += mass;
    steel.cut += masses[0]?.asTypedAt(index) ?? mass;
  });
  return steel;
}

function effectWords(before: Steel, after: Steel): string {
  const kilograms = (value: number): string => `${value.toFixed(1)} kg`;
  const isSame = (one: number, other: number): boolean => Math.abs(one - other) < LEAST_SHOWN;
  const isCutAlike = isSame(before.cut, after.cut);
  if (isSame(before.rows, after.rows)) {
    const all = `${tonnesOf(before.all)} t in all`;
    if (isCutAlike) return `The steel stays: ${all}.`;
    return `What is cut, ticketed and loaded changes: ${kilograms(before.cut)} of these rows, then ${kilograms(after.cut)}. The tonnes stay, as they go by the dimensions: ${all}.`;
  }
  const cut =
    isCutAlike || (isSame(before.cut, before.rows) && isSame(after.cut, after.rows))
      ? ""
      : ` By the lengths that are cut and loaded: ${kilograms(before.cut)}, then ${kilograms(after.cut)}.`;
  return `Steel of these rows: ${kilograms(before.rows)}, then ${kilograms(after.rows)}.${cut} In all: ${tonnesOf(before.all)} t, then ${tonnesOf(after.all)} t.`;
}
