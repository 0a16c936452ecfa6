import type { SheetFacts } from "../bar/sheet-facts";
import type { AuditSettings, RuleOff, Waiver } from "./audit-settings";
import type { AuditState } from "./audit-state";
import type { Finding } from "./finding";
import { LIMIT_WORDS } from "./limit-words";
import { type BarsOfRow, barsByFacts, barsOf, type NotTold } from "./not-told";
import type { Rule } from "./rule";
import { ruleWords } from "./rule-words";
import { RULES } from "./rules/index";
import type { SettingsFacts } from "./settings-facts";
import { Waivers } from "./waivers";

/** Whether a rule may be turned off for a whole workbook: never one that finds what may hurt somebody. */
export function mayBeTurnedOff(rule: Pick<Rule, "severity">): boolean {
  return rule.severity !== "unsafe";
}

const NEVER_OFF: ReadonlySet<string> = new Set(
  RULES.filter((rule) => !mayBeTurnedOff(rule)).map(({ code }) => code),
);

/** Sorts the findings of one report into those told and those that somebody said are not to be. */
export class Withholding {
  readonly waivers: Waivers;
  readonly notObeyed: SettingsFacts["notObeyed"];
  readonly #off = new Map<string, RuleOff>();
  readonly #ofRule = new Map<string, Finding[]>();
  readonly #ofWaiver = new Map<Waiver, Finding[]>();

  readonly #barsOfRow: BarsOfRow;

  constructor(private readonly state: AuditState) {
    this.#barsOfRow = barsByFacts(state.sheets);
    const { settings } = state.question;
    this.waivers = new Waivers(settings);
    this.notObeyed = settings.rulesOff
      .filter(({ code }) => NEVER_OFF.has(code))
      .map((decision) => ({
        rule: decision.code,
        words: `${decision.code} ${ruleWords(decision.code)}`,
        decision,
      }));
    for (const off of settings.rulesOff) if (!NEVER_OFF.has(off.code)) this.#off.set(off.code, off);
  }

  /** True where a finding is told; keeps it where it is not. `facts` is null for the Shop sheet. */
  tells(finding: Finding, facts: SheetFacts | null): boolean {
    const waiver = this.waivers.of(finding, facts);
    if (waiver !== null) {
      add(this.#ofWaiver, waiver, finding);
      return false;
    }
    if (finding.severity === "unsafe" || !this.#off.has(finding.code)) return true;
    add(this.#ofRule, finding.code, finding);
    return false;
  }

  /** Every decision that keeps something back, once every finding was asked for. */
  notTold(): readonly NotTold[] {
    return [...this.#waived(), ...this.#rulesOff(), ...this.#limits()];
  }

  #waived(): NotTold[] {
    return notToldBy(this.#ofWaiver, this.#barsOfRow);
  }

  #rulesOff(): NotTold[] {
    return [...this.#off.values()].map((off) => {
      const findings = this.#ofRule.get(off.code) ?? [];
      return {
        because: { kind: "rule off" },
        rule: off.code,
        sheet: null,
        row: null,
        ...said(off),
        findings,
        ...barsOf(findings, this.#barsOfRow),
      };
    });
  }

  #limits(): NotTold[] {
    if (this.state.watched.length === 0) return [];
    const hidden = this.state.sheets.flatMap(({ hiddenByLimits }) =>
      hiddenByLimits.flatMap((ofRow) => ofRow ?? []),
    );
    return LIMIT_WORDS.flatMap(({ name }): NotTold[] => {
      const watched = this.state.watched.find((each) => each.name === name);
      if (watched === undefined) return [];
      const findings = hidden.filter((each) => each.name === name).map(({ finding }) => finding);
      return [
        {
          because: { kind: "limit", limit: name, value: watched.changed.value },
          rule: findings[0]?.code ?? watched.rules[0]?.code ?? "",
          sheet: null,
          row: null,
          ...said(watched.changed),
          findings,
          ...barsOf(findings, this.#barsOfRow),
        },
      ];
    });
  }
}

/** Findings that no rule of the audit makes, those told apart from those that were waived row by row. */
export function waivedApart(
  findings: readonly Finding[],
  settings: AuditSettings,
  barsOfRow: BarsOfRow,
): { readonly told: readonly Finding[]; readonly notTold: readonly NotTold[] } {
  const waivers = new Waivers(settings);
  const ofWaiver = new Map<Waiver, Finding[]>();
  const told = findings.filter((finding) => {
    const waiver = waivers.of(finding, null);
    if (waiver !== null) add(ofWaiver, waiver, finding);
    return waiver === null;
  });
  return { told, notTold: notToldBy(ofWaiver, barsOfRow) };
}

function notToldBy(ofWaiver: ReadonlyMap<Waiver, readonly Finding[]>, barsOfRow: BarsOfRow): NotTold[] {
  return [...ofWaiver].map(([waiver, findings]) => ({
    because: { kind: "waiver", waiver },
    rule: waiver.code,
    sheet: waiver.sheet,
    row: findings[0]?.row ?? null,
    ...said(waiver),
    findings,
    ...barsOf(findings, barsOfRow),
  }));
}

function said({ reason, by, date }: Pick<NotTold, "reason" | "by" | "date">) {
  return { reason, by, date };
}

function add<Key>(lists: Map<Key, Finding[]>, key: Key, finding: Finding): void {
  const list = lists.get(key);
  if (list === undefined) lists.set(key, [finding]);
  else list.push(finding);
}
