import type { BarFacts } from "../bar/bar-facts";
import type { AuditReport } from "./audit-report";
import type { Audit, AuditState } from "./audit-state";
import type { Finding } from "./finding";
import { findingsUnder, notAmong, rulesAsking } from "./limit-watch";
import { type Limits, limitsInForce } from "./limits";
import { barsByFacts, barsOf, type NotTold } from "./not-told";
import { ruleWords } from "./rule-words";
import { findingKey } from "./waivers";
import { mayBeTurnedOff } from "./withhold";

/** A decision that somebody is about to take. */
export type DecisionAhead =
  | { readonly kind: "waiver"; readonly finding: Pick<Finding, "code" | "sheet" | "row"> }
  | { readonly kind: "rule off"; readonly code: string }
  /** null takes the limit back to what the Shop sheet or the standard says */
  | { readonly kind: "limit"; readonly limit: keyof Limits; readonly value: number | null };

export interface WouldHide extends Pick<NotTold, "bars" | "unsafe" | "hidden"> {
  /** why the decision cannot be taken; null where it can */
  readonly refusal: string | null;
  /** findings that are told now and would not be */
  readonly findings: number;
}

/**
 * What a decision would keep from being told, asked before it is taken.
 *
 * @example whatItWouldHide(audit, { kind: "rule off", code: "LEN102" }) // { refusal: null, findings: 12, bars: 12, unsafe: 0, hidden: [...] }
 */
export function whatItWouldHide({ report, state }: Audit, decision: DecisionAhead): WouldHide {
  const hidden = hiddenBy(state, report, decision);
  if (typeof hidden === "string") return { refusal: hidden, findings: 0, bars: 0, unsafe: 0, hidden: [] };
  return { refusal: null, findings: hidden.length, ...barsOf(hidden, barsByFacts(state.sheets)) };
}

function hiddenBy(
  state: AuditState,
  { findings, byRow }: AuditReport,
  decision: DecisionAhead,
): readonly Finding[] | string {
  // one finding that stands for many is waived as such
  if (decision.kind === "waiver")
    return sameAs(state, decision.finding.row === null ? findings : byRow, decision.finding);
  if (decision.kind === "limit") return hiddenByLimit(state, byRow, decision.limit, decision.value);
  const { code } = decision;
  const rule = state.rules.find((each) => each.code === code);
  if (rule !== undefined && !mayBeTurnedOff(rule)) {
    return `${code} ${ruleWords(code)} finds what is unsafe and cannot be turned off: waive it row by row`;
  }
  return byRow.filter((finding) => finding.code === code && finding.severity !== "unsafe");
}

/** All that one waiver answers to: the same rule at the same bar. */
function sameAs(
  state: AuditState,
  told: readonly Finding[],
  { code, sheet, row }: Pick<Finding, "code" | "sheet" | "row">,
): readonly Finding[] {
  const facts = state.sheets.find((each) => each.facts.name === sheet)?.facts ?? null;
  const key = findingKey({ row }, facts);
  return told.filter(
    (finding) => finding.code === code && finding.sheet === sheet && findingKey(finding, facts) === key,
  );
}

function hiddenByLimit(
  state: AuditState,
  told: readonly Finding[],
  name: keyof Limits,
  value: number | null,
): readonly Finding[] {
  const { settings, standard } = state.question;
  const changed = value === null ? null : { value, reason: "", by: "", date: "" };
  const shop = state.context.shop?.shop ?? null;
  const limits = limitsInForce({ ...settings.limits, [name]: changed }, standard, shop);
  const rules = rulesAsking(name, state.rules);
  const codes = new Set(rules.map(({ code }) => code));
  const now = told.filter(({ code, row }) => row !== null && codes.has(code));
  return now.filter((finding) => {
    const bar = barOf(state, finding);
    if (bar === undefined) return false;
    return notAmong(findingsUnder(rules, bar, { ...state.context, limits }), [finding]).length > 0;
  });
}

function barOf({ sheets }: AuditState, { sheet, row }: Finding): BarFacts | undefined {
  const facts = sheets.find((each) => each.facts.name === sheet)?.facts;
  return facts?.barAt((row ?? 0) - 1 - facts.sheet.top);
}
