import type { AuditReport } from "../audit/audit-report";
import { type Finding, rowsBehind } from "../audit/finding";
import { IN_NO_PLAN } from "../audit/holds";
import { BarFacts } from "../bar/bar-facts";
import { SheetFacts } from "../bar/sheet-facts";
import { beyondStock } from "../cutting/beyond-stock";
import { cuttingSupply } from "../cutting/cutting-supply";
import type { Shop } from "../shop/shop";
import { inNoPlan, SAID_BY_STOCK } from "../tickets/row-to-send";
import type { ReadSheet } from "../totals/reckon-tonnage";

type Held = Pick<Finding, "name" | "severity" | "outcome" | "sheet" | "row" | "message">;

/** Everything that keeps bars from being made or is to be asked first, row by row: what the audit found, and what the cut list has in no plan. */
export function heldRows(
  report: Pick<AuditReport, "byRow" | "waivers" | "standard">,
  schedules: readonly ReadSheet[],
  workshop: { readonly shop: Shop | null },
): readonly (Finding | Held)[] {
  return [...report.byRow, ...heldByStock(report, schedules, workshop)];
}

/** What the cut list has in no plan, as a finding of each row that nobody waived. */
export function heldByStock(
  { waivers, standard }: Pick<AuditReport, "waivers" | "standard">,
  schedules: readonly ReadSheet[],
  { shop }: { readonly shop: Shop | null },
): Held[] {
  const noStockFor = beyondStock(cuttingSupply(shop, standard), schedules, standard);
  const waived = new Set(
    waivers.flatMap(({ findings }) =>
      findings
        .filter(({ name }) => name === SAID_BY_STOCK)
        .flatMap((finding) => rowsBehind(finding).map((row) => JSON.stringify([finding.sheet, row]))),
    ),
  );
  return schedules.flatMap(({ sheet, reading }) => {
    const facts = new SheetFacts(sheet, reading);
    return reading.bars.flatMap((bar): Held[] => {
      if (bar.struckThrough || bar.superseded === true) return [];
      const why = noStockFor(new BarFacts(bar, facts, standard));
      const row = sheet.top + bar.row + 1;
      if (why === null || waived.has(JSON.stringify([sheet.name, row]))) return [];
      const message = inNoPlan(why);
      return [{ name: IN_NO_PLAN, severity: "doubtful", outcome: "broken", sheet: sheet.name, row, message }];
    });
  });
}
