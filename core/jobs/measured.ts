import type { AuditReport } from "../audit";
import type { Finding } from "../audit/finding";
import { MEASURED_CODES } from "../audit/measured-codes";
import type { Sheet } from "../schedule/sheet";
import type { Workshop } from "../shop/workshop";
import { isInspectionSheet } from "../tickets/is-inspection-sheet";
import { type InspectionFinding, judgeInspection } from "../tickets/judge-inspection";
import type { Ticket } from "../tickets/ticket";
import type { LengthUnit } from "../units/length-unit";
import type { Book } from "./book";
import { ticketsOf } from "./tickets";

/** What was measured of a book's bars, held against its schedules as they now stand. */
export interface Measured {
  readonly sheet: string;
  readonly findings: readonly Finding[];
  /** said beside the findings */
  readonly note: string;
}

/** Findings of the sheet Inspection; null where the book has none. Lengths of bars that were not read are not judged. */
export function measuredOf(
  book: Book,
  audited: { readonly report: AuditReport; readonly sheets: readonly Sheet[]; readonly workshop: Workshop },
  isWhole: boolean,
): Measured | null {
  const kept = book.sheets.find(({ name }) => isInspectionSheet(name));
  if (kept === undefined) return null;
  const words = `sheet "${kept.name}": `;
  if (!isWhole)
    return { sheet: kept.name, findings: [], note: `${words}not judged: one sheet alone was asked for` };
  const { tickets } = ticketsOf([audited]);
  const judged = judgeInspection(book.read(kept.name), tickets, audited.report.standard.unit);
  return {
    sheet: kept.name,
    findings: judged.findings.map(asFinding),
    note: `${words}${judged.measured} lengths measured, ${judged.waiting} waiting`,
  };
}

/** What was measured of the bars of one schedule. */
export function measuredFindings(
  inspection: Sheet,
  tickets: readonly Ticket[],
  { unit, of }: { readonly unit: LengthUnit; readonly of: string },
): Finding[] {
  return judgeInspection(inspection, tickets, unit, of).findings.map(asFinding);
}

function asFinding({ code, ...finding }: InspectionFinding): Finding {
  return { ...finding, code: MEASURED_CODES[code], name: code, fix: null };
}
