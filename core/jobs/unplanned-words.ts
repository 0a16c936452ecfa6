import type { AuditReport } from "../audit/audit-report";
import type { Shop } from "../shop/shop";
import { SAID_BY_STOCK } from "../tickets/row-to-send";
import type { ReadSheet } from "../totals/reckon-tonnage";
import { heldByStock } from "./held-by-stock";
import { filteredBy } from "./many/bar-names";
import { severeBars, severeWords } from "./severe-bars";

/** What the cut list has in no plan and the audit says nothing of, in a sentence each. */
export function unplannedWords(
  report: Pick<AuditReport, "byRow" | "waivers" | "standard">,
  schedules: readonly ReadSheet[],
  workshop: { readonly shop: Shop | null },
): string[] {
  const told = new Set(
    report.byRow
      .filter(({ name }) => name === SAID_BY_STOCK)
      .map(({ sheet, row }) => JSON.stringify([sheet, row])),
  );
  const left = heldByStock(report, schedules, workshop).filter(
    ({ sheet, row }) => !told.has(JSON.stringify([sheet, row])),
  );
  if (left.length === 0) return [];
  const rows = new Set(left.map(({ sheet, row }) => JSON.stringify([sheet, row])));
  const bars = filteredBy(schedules).filter(({ sheet, row }) => rows.has(JSON.stringify([sheet, row])));
  return severeWords(severeBars(left, bars), schedules.length > 1);
}
