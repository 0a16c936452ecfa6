import type { AuditReport } from "../../../core/audit/audit-report";
import type { AuditSettings } from "../../../core/audit/audit-settings";
import { LIMIT_WORDS } from "../../../core/audit/limit-words";
import { type Limits, limitsInForce } from "../../../core/audit/limits";
import { ruleWords } from "../../../core/audit/rule-words";
import type { Sheet } from "../../../core/schedule/sheet";
import { readShop } from "../../../core/shop";
import { citationText } from "../../../core/standards";
import type { DecisionsView, LimitView, SilenceView } from "./audit-view";

/** Diameter for which the standard's stock length is shown where the workbook sets none, mm. */
const SHOWN_DIAMETER = 16;

/** The user's decisions, and what became of each in this report. */
export function decisionsView(
  report: AuditReport,
  settings: AuditSettings,
  sheet: string,
  shop: Sheet | null,
): DecisionsView {
  const reading = settings.readings.find((each) => each.sheet === sheet);
  return {
    rulesOff: settings.rulesOff.map((code) => ({ code, rule: ruleWords(code) })),
    limits: limitViews(report, settings.limits, shop),
    silences: settings.silences.map((silence) => silenceView(report, silence, sheet)),
    corrections: reading?.columns ?? [],
    confirmed: reading?.confirmed ?? [],
    problem: settings.problem ?? null,
  };
}

function limitViews({ standard }: AuditReport, changed: Limits, shop: Sheet | null): LimitView[] {
  const now = limitsInForce(changed, standard, shop === null ? null : readShop(shop, standard));
  return LIMIT_WORDS.map((limit) => {
    const cited = limit.name === "stockLength" ? now.stockLengthOf(SHOWN_DIAMETER) : now[limit.name];
    return {
      ...limit,
      own: changed[limit.name],
      inForce: cited?.value ?? null,
      source: cited == null ? null : citationText(cited.cite),
    };
  });
}

function silenceView(
  report: AuditReport,
  silence: AuditSettings["silences"][number],
  sheet: string,
): SilenceView {
  const isOutdated = report.outdatedSilences.some(
    ({ code, key, sheet: of }) => code === silence.code && key === silence.key && of === silence.sheet,
  );
  const hidden = isOutdated ? undefined : report.silenced.find((each) => each.silence === silence)?.finding;
  return {
    ...silence,
    rule: ruleWords(silence.code),
    message: hidden?.message ?? null,
    cell: hidden?.cell ?? null,
    isElsewhere: silence.sheet !== sheet,
  };
}
