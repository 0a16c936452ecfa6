import type { AuditReport } from "../../../core/audit/audit-report";
import type { AuditSettings } from "../../../core/audit/audit-settings";
import { type Limits, limitsInForce } from "../../../core/audit/limits";
import { RULES } from "../../../core/audit/rules/index";
import type { Sheet } from "../../../core/schedule/sheet";
import { readShop } from "../../../core/shop";
import { citationText } from "../../../core/standards";
import type { DecisionsView, LimitView, SilenceView } from "./audit-view";

const LIMITS: readonly Pick<LimitView, "name" | "words" | "unit">[] = [
  { name: "handLift", words: "Lifted by hand up to", unit: "kg" },
  { name: "hoist", words: "Crane or hoist lifts", unit: "kg" },
  { name: "stockLength", words: "Longest stock length", unit: "mm" },
  { name: "transportWidth", words: "Widest for transport", unit: "mm" },
  { name: "accessWidth", words: "Narrowest access on site", unit: "mm" },
];

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

function ruleWords(code: string): string {
  const rule = RULES.find((each) => each.code === code);
  return rule === undefined ? "no rule of this edition" : rule.name.replaceAll("-", " ");
}

function limitViews({ standard }: AuditReport, changed: Limits, shop: Sheet | null): LimitView[] {
  const now = limitsInForce(changed, standard, shop === null ? null : readShop(shop, standard));
  return LIMITS.map((limit) => {
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
  const hidden = isOutdated
    ? undefined
    : report.silenced.find(
        ({ finding, reason }) =>
          finding.code === silence.code && finding.sheet === silence.sheet && reason === silence.reason,
      )?.finding;
  return {
    ...silence,
    rule: ruleWords(silence.code),
    message: hidden?.message ?? null,
    cell: hidden?.cell ?? null,
    isElsewhere: silence.sheet !== sheet,
  };
}
