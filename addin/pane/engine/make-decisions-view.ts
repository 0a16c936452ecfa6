import type { AuditReport } from "../../../core/audit/audit-report";
import type { AuditSettings, RuleOff, Waiver } from "../../../core/audit/audit-settings";
import { LIMIT_WORDS } from "../../../core/audit/limit-words";
import { limitsInForce } from "../../../core/audit/limits";
import { hiddenWords } from "../../../core/audit/not-told-words";
import { ruleWords } from "../../../core/audit/rule-words";
import type { Sheet } from "../../../core/schedule/sheet";
import { readShop } from "../../../core/shop";
import { citationText } from "../../../core/standards";
import type { DecisionsView, LimitView, RuleOffView, WaiverView } from "./audit-view";

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
    rulesOff: settings.rulesOff.map((off) => ruleOffView(report, off)),
    limits: limitViews(report, settings.limits, shop),
    waivers: settings.waivers.map((waiver) => waiverView(report, waiver, sheet)),
    corrections: reading?.columns ?? [],
    confirmed: reading?.confirmed ?? [],
    problem: settings.problem ?? null,
  };
}

function ruleOffView({ waivers }: AuditReport, off: RuleOff): RuleOffView {
  const inForce = waivers.find(({ because, rule }) => because.kind === "rule off" && rule === off.code);
  return {
    ...off,
    rule: ruleWords(off.code),
    hidden: inForce === undefined ? null : hiddenWords(inForce),
  };
}

function limitViews(
  { standard, waivers }: AuditReport,
  changed: AuditSettings["limits"],
  shop: Sheet | null,
): LimitView[] {
  const now = limitsInForce(changed, standard, shop === null ? null : readShop(shop, standard));
  return LIMIT_WORDS.map((limit) => {
    const cited = limit.name === "stockLength" ? now.stockLengthOf(SHOWN_DIAMETER) : now[limit.name];
    const hiding = waivers.find(({ because }) => because.kind === "limit" && because.limit === limit.name);
    return {
      ...limit,
      own: changed[limit.name],
      hidden: hiding === undefined ? null : hiddenWords(hiding),
      inForce: cited?.value ?? null,
      source: cited == null ? null : citationText(cited.cite),
    };
  });
}

function waiverView(report: AuditReport, waiver: Waiver, sheet: string): WaiverView {
  const inForce = report.waivers.find(
    ({ because }) => because.kind === "waiver" && because.waiver === waiver,
  );
  const hidden = inForce?.findings[0];
  return {
    ...waiver,
    rule: ruleWords(waiver.code),
    message: hidden?.message ?? null,
    cell: hidden?.cell ?? null,
    isElsewhere: waiver.sheet !== sheet,
  };
}
