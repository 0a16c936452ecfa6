import type { AuditReport } from "../audit/audit-report";
import { type Finding, rowsBehind } from "../audit/finding";
import { withheldWords } from "../audit/not-told-words";
import { BarFacts } from "../bar/bar-facts";
import { SheetFacts } from "../bar/sheet-facts";
import { beyondStock } from "../cutting/beyond-stock";
import { cuttingSupply } from "../cutting/cutting-supply";
import { scheduleHead } from "../schedule/schedule-head";
import type { Sheet } from "../schedule/sheet";
import type { Workshop } from "../shop/workshop";
import { supersededWords } from "../totals/row-mass";
import { makeTicket } from "./make-ticket";
import { type RowQuestion, type RowToSend, rowToSend } from "./row-to-send";
import type { Ticket, TicketHeat, TicketWaived } from "./ticket";

/** Tickets of an audited book, or what is sent of it, and the rows that get none. */
export interface AuditTickets<Made> {
  readonly tickets: readonly Made[];
  readonly dropped: readonly DroppedRow[];
}

/** A row that is no bar to be made any more: struck through, or superseded. */
export interface DroppedRow {
  readonly sheet: string;
  /** the sheet's own number, from 1 */
  readonly row: number;
  readonly mark: string | null;
  readonly why: string;
}

/** Heats of a row's pieces, by sheet and the sheet's own row number. */
export type HeatsOfRow = (sheet: string, row: number) => readonly TicketHeat[];

/** One ticket for every bar row of the report's sheets that still holds, with the findings on its row. */
export function ticketsOfAudit(
  report: AuditReport,
  sheets: readonly Sheet[],
  workshop: Workshop,
  heatsOfRow: HeatsOfRow = () => [],
): AuditTickets<Ticket> {
  return eachRow(report, sheets, workshop, heatsOfRow, (row) => makeTicket({ ...row, workshop }));
}

/** The same rows as they are bundled and sent, which nothing is worked out for the bender of. */
export function rowsToSend(
  report: AuditReport,
  sheets: readonly Sheet[],
  workshop: Workshop,
  heatsOfRow: HeatsOfRow = () => [],
): AuditTickets<RowToSend> {
  return eachRow(report, sheets, workshop, heatsOfRow, rowToSend);
}

function eachRow<Made>(
  report: AuditReport,
  sheets: readonly Sheet[],
  workshop: Workshop,
  heatsOfRow: HeatsOfRow,
  make: (row: RowQuestion) => Made,
): AuditTickets<Made> {
  const { standard } = report;
  const byRow: ByRow<Finding> = new Map();
  const keep = (finding: Finding): void => {
    const known = byRow.get(finding.sheet)?.get(finding.row);
    if (known === undefined) rowsOf(byRow, finding.sheet).set(finding.row, [finding]);
    else known.push(finding);
  };
  for (const finding of report.byRow) {
    keep(finding);
    if (finding.also !== undefined) keep({ ...finding, ...finding.also });
  }
  const waivedOf = waivedByRow(report);
  const schedules = report.sheets.flatMap(({ sheet: name, reading }) => {
    const sheet = sheets.find((each) => each.name === name);
    return sheet === undefined ? [] : [{ sheet, reading }];
  });
  const noStockFor = beyondStock(cuttingSupply(workshop.shop, standard), schedules, standard);
  const dropped: DroppedRow[] = [];
  const tickets = schedules.flatMap(({ sheet, reading }) => {
    const { name } = sheet;
    const facts = new SheetFacts(sheet, reading);
    const head = scheduleHead(reading);
    return reading.bars.flatMap((bar): Made[] => {
      const row = sheet.top + bar.row + 1;
      if (bar.struckThrough || bar.superseded === true) {
        const why = bar.struckThrough ? "struck through" : supersededWords(bar);
        dropped.push({ sheet: name, row, mark: bar.mark, why });
        return [];
      }
      const findings = byRow.get(name)?.get(row) ?? [];
      const waived = waivedOf.get(name)?.get(row) ?? [];
      const heats = heatsOfRow(name, row);
      const barFacts = new BarFacts(bar, facts, standard);
      const noStock = noStockFor(barFacts);
      return [make({ facts: barFacts, head, findings, waived, heats, noStock })];
    });
  });
  return { tickets, dropped };
}

/** By sheet and its own row number. */
type ByRow<Said> = Map<string, Map<number | null, Said[]>>;

function rowsOf<Said>(byRow: ByRow<Said>, sheet: string): Map<number | null, Said[]> {
  const rows = byRow.get(sheet) ?? new Map<number | null, Said[]>();
  byRow.set(sheet, rows);
  return rows;
}

function waivedByRow(report: AuditReport): ByRow<TicketWaived> {
  const byRow: ByRow<TicketWaived> = new Map();
  for (const notTold of report.waivers) {
    for (const finding of notTold.findings) {
      const said = { severity: finding.severity, name: finding.name, text: withheldWords(finding, notTold) };
      for (const row of rowsBehind(finding)) {
        const rows = rowsOf(byRow, finding.sheet);
        const known = rows.get(row);
        if (known === undefined) rows.set(row, [said]);
        else known.push(said);
      }
    }
  }
  return byRow;
}
