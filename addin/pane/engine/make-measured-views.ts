import type { Finding } from "../../../core/audit/finding";
import { barsByFacts } from "../../../core/audit/not-told";
import { notToldLine, notToldWords } from "../../../core/audit/not-told-words";
import { findingKey } from "../../../core/audit/waivers";
import { waivedApart } from "../../../core/audit/withhold";
import { measuredFindings } from "../../../core/jobs";
import { Workshop } from "../../../core/shop";
import { citationText } from "../../../core/standards";
import { ticketsOfAudit } from "../../../core/tickets";
import type { AuditView, FindingView } from "./audit-view";
import type { KeptCheck } from "./kept-check";

/** A check with what was measured of its sheet's bars and is to be looked at, as the pane shows findings. */
export function withMeasured(view: AuditView, kept: KeptCheck): AuditView {
  const { report } = kept.audit;
  const { told, notTold } = waivedApart(
    measuredOfSheet(kept),
    kept.settings,
    barsByFacts(kept.audit.state.sheets),
  );
  return {
    ...view,
    findings: [...view.findings, ...told.map(findingView)],
    notTold: [...view.notTold, ...notTold.map(notToldWords)],
    notToldLine: notToldLine([...report.waivers, ...notTold]),
  };
}

function measuredOfSheet({ audit: { report }, sheet, shop, inspection }: KeptCheck): readonly Finding[] {
  if (inspection === null || (report.sheets[0]?.reading.bars.length ?? 0) === 0) return [];
  const { tickets } = ticketsOfAudit(report, [sheet], new Workshop(shop, report.standard));
  const asked = { unit: report.standard.unit, of: sheet.name };
  return measuredFindings(inspection, tickets, asked);
}

function findingView(finding: Finding): FindingView {
  return {
    ...finding,
    key: `${finding.code} ${finding.sheet}!${finding.cell}`,
    source: finding.cite === null ? null : citationText(finding.cite),
    rule: finding.name.replaceAll("-", " "),
    member: null,
    pour: null,
    mark: null,
    waiverKey: findingKey(finding, null),
    before: [],
    guess: null,
    ways: [],
  };
}
