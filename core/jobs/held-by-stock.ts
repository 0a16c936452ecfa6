import type { AuditReport } from "../audit/audit-report";
import { type Finding, rowsBehind } from "../audit/finding";
import { IN_NO_PLAN } from "../audit/holds";
import { BarFacts } from "../bar/bar-facts";
import { SheetFacts } from "../bar/sheet-facts";
import { beyondStock, endlessLength } from "../cutting/beyond-stock";
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
  const supply = cuttingSupply(shop, standard);
  const noStockFor = beyondStock(supply, schedules, standard);
  const waived = new Set(
    waivers.flatMap(({ findings }) =>
      findings
        .filter(({ name }) => name === SAID_BY_STOCK)
        .flatMap((finding) => rowsBehind(finding).map((row) => JSON.stringify([finding.sheet, row]))),
    ),
  );
  // most bars are shorter than what is never short of: those need no look
  const reaches = new Map<string, number>();
  const held: Held[] = [];
  for (const { sheet, reading } of schedules) {
    const facts = new SheetFacts(sheet, reading);
    for (const bar of reading.bars) {
      if (bar.struckThrough || bar.superseded === true) continue;
      const size = bar.sizeTyped ?? "";
      let reach = reaches.get(size);
      if (reach === undefined) {
        reach = endlessLength(supply, new BarFacts(bar, facts, standard).sizeName);
        reaches.set(size, reach);
      }
      if (bar.length !== null && bar.length > 0 && bar.length <= reach) continue;
      const why = noStockFor(new BarFacts(bar, facts, standard));
      const row = sheet.top + bar.row + 1;
      if (why === null || waived.has(JSON.stringify([sheet.name, row]))) continue;
      const place = { sheet: sheet.name, row, message: inNoPlan(why) };
      held.push({ name: IN_NO_PLAN, severity: "doubtful", outcome: "broken", ...place });
    }
  }
  return held;
}
