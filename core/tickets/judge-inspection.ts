import { cellAddress } from "../schedule/cell-address";
import { isCellError, type Sheet } from "../schedule/sheet";
import { type Citation, isSure } from "../standards/citation";
import type { LengthUnit } from "../units/length-unit";
import { parseLength } from "../units/parse-length";
import { printLength } from "../units/print-length";
import { isRefusal } from "../units/refusal";
import { type InspectionLine, linesOf } from "./inspection";
import { INSPECTION_COLUMNS } from "./inspection-sheet.data";
import type { Ticket } from "./ticket";

/** A line of the inspection sheet that is to be told. */
export interface InspectionFinding {
  readonly code: "out-of-tolerance" | "schedule-changed" | "not-read" | "bar-not-found";
  /** `unsure` where the tolerance itself is not published or confirmed */
  readonly outcome: "broken" | "unsure";
  readonly severity: "off-standard" | "doubtful";
  readonly sheet: string;
  readonly row: number;
  /** of what was measured */
  readonly cell: string;
  readonly message: string;
  /** of the tolerance */
  readonly cite: Citation | null;
}

/** What the inspection sheet says when it is held against the schedule as it now stands. */
export interface JudgedInspection {
  readonly measured: number;
  readonly waiting: number;
  readonly findings: readonly InspectionFinding[];
}

/**
 * Measured lengths against the standard's tolerance. The limits are those of the schedule now, not the ones
 * that stand on the sheet: where the wanted length is another, that is told first. A blank is waiting. Of one
 * schedule alone where its name is given.
 */
export function judgeInspection(
  sheet: Sheet,
  tickets: readonly Ticket[],
  unit: LengthUnit,
  of: string | null = null,
): JudgedInspection {
  const columns = columnsOf(sheet);
  const ticketOf = new Map(tickets.map((ticket) => [JSON.stringify([ticket.sheet, ticket.row]), ticket]));
  const findings: InspectionFinding[] = [];
  let [measured, waiting] = [0, 0];
  for (let row = (columns?.header ?? sheet.rowCount) + 1; row < sheet.rowCount; row += 1) {
    const { at } = columns!;
    const text = (name: Column): string => String(sheet.cell(row, at.get(name)!) ?? "").trim();
    if (text("what") === "" || (of !== null && text("sheet") !== of)) continue;
    if (text("measured") === "") {
      waiting += 1;
      continue;
    }
    measured += 1;
    const tell = (
      code: InspectionFinding["code"],
      words: string,
      cite: Citation | null = null,
      sure = true,
    ): void => {
      findings.push({
        cite,
        code,
        outcome: sure && code !== "schedule-changed" ? "broken" : "unsure",
        severity: code === "out-of-tolerance" ? "off-standard" : "doubtful",
        sheet: sheet.name,
        row: sheet.top + row + 1,
        cell: cellAddress(sheet, row, at.get("measured")!),
        message: `${text("mark")}, ${text("what")}: ${words}`,
      });
    };
    const length = lengthAt(sheet, row, at.get("measured")!, unit);
    if (length === null) {
      tell("not-read", `"${text("measured")}" is no length: write it in ${unit}`);
      continue;
    }
    const ticket = ticketOf.get(JSON.stringify([text("sheet"), Number(text("row"))]));
    const line = ticket === undefined ? undefined : linesOf(ticket).find(({ what }) => what === text("what"));
    if (ticket === undefined || line === undefined) {
      tell("bar-not-found", `the schedule has no such length in row ${text("row")} of ${text("sheet")} now`);
      continue;
    }
    const stood = lengthAt(sheet, row, at.get("wanted")!, unit);
    if (stood === null || Math.abs(stood - line.wanted) > NOISE)
      tell(
        "schedule-changed",
        `drawn when ${text("wanted")} was wanted, now ${printLength(line.wanted, unit)}`,
      );
    const fault = outOf(line, length, unit);
    const { toleranceCite: cite } = ticket;
    if (fault !== null) tell("out-of-tolerance", fault, cite, cite !== null && isSure(cite));
  }
  return { measured, waiting, findings };
}

type Column = keyof typeof INSPECTION_COLUMNS;

function columnsOf(sheet: Sheet): { header: number; at: ReadonlyMap<Column, number> } | null {
  const names = Object.keys(INSPECTION_COLUMNS) as Column[];
  for (let row = 0; row < sheet.rowCount; row += 1) {
    const at = new Map<Column, number>();
    for (let column = 0; column < sheet.columnCount; column += 1) {
      const typed = String(sheet.cell(row, column) ?? "")
        .trim()
        .toLowerCase();
      const name = names.find((one) => typed === INSPECTION_COLUMNS[one]);
      if (name !== undefined && !at.has(name)) at.set(name, column);
    }
    if (at.size === names.length) return { header: row, at };
  }
  return null;
}

function lengthAt(sheet: Sheet, row: number, column: number, unit: LengthUnit): number | null {
  const cell = sheet.cell(row, column);
  if (cell === null || isCellError(cell) || typeof cell === "boolean") return null;
  const length = parseLength(cell, unit);
  return isRefusal(length) ? null : length;
}

function outOf({ wanted, least, most }: InspectionLine, length: number, unit: LengthUnit): string | null {
  if (length >= least - NOISE && length <= most + NOISE) return null;
  const by = length < least ? least - length : length - most;
  const limits = `${printLength(least, unit)} to ${printLength(most, unit)}`;
  return `measured ${printLength(length, unit)}, allowed ${limits} (${printLength(wanted, unit)} wanted): ${printLength(by, unit)} ${length < least ? "short" : "over"}`;
}

/** mm: noise of inch conversions */
const NOISE = 1e-6;
