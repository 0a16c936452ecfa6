import { measuredFindings } from "../../../core/jobs";
import { Workshop } from "../../../core/shop";
import { citationText } from "../../../core/standards";
import { ticketsOfAudit } from "../../../core/tickets";
import type { FindingView } from "./audit-view";
import type { KeptCheck } from "./kept-check";

/** What was measured of a checked sheet's bars and is to be looked at, as the pane shows findings. */
export function measuredViews({ audit: { report }, sheet, shop, inspection }: KeptCheck): FindingView[] {
  if (inspection === null || (report.sheets[0]?.reading.bars.length ?? 0) === 0) return [];
  const { tickets } = ticketsOfAudit(report, [sheet], new Workshop(shop, report.standard));
  const asked = { unit: report.standard.unit, of: sheet.name };
  return measuredFindings(inspection, tickets, asked).map((finding) => ({
    ...finding,
    key: `${finding.code} ${finding.sheet}!${finding.cell}`,
    source: finding.cite === null ? null : citationText(finding.cite),
    rule: finding.name.replaceAll("-", " "),
    member: null,
    pour: null,
    mark: null,
    waiverKey: null,
    before: [],
    guess: null,
    ways: [],
  }));
}
