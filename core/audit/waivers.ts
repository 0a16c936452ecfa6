import { rowKey } from "../bar/row-facts";
import type { SheetFacts } from "../bar/sheet-facts";
import type { Sheet } from "../schedule/sheet";
import type { AuditSettings, Waiver } from "./audit-settings";
import type { Finding } from "./finding";
import type { OutdatedWaiver } from "./settings-facts";

/** The waivers of a workbook during one report: which findings each answers to, and which answer to none. */
export class Waivers {
  readonly #byFinding = new Map<string, Waiver>();
  readonly #used = new Set<Waiver>();

  constructor(readonly settings: AuditSettings) {
    for (const waiver of settings.waivers) {
      this.#byFinding.set(keyOf(waiver.code, waiver.sheet, waiver.key), waiver);
    }
  }

  /** The waiver of a finding; null where it is to be told. `facts` is null for the Shop sheet. */
  of(finding: Finding, facts: SheetFacts | null): Waiver | null {
    if (this.#byFinding.size === 0) return null;
    const { code, sheet } = finding;
    const waiver = this.#byFinding.get(keyOf(code, sheet, findingKey(finding, facts))) ?? null;
    if (waiver !== null) this.#used.add(waiver);
    return waiver;
  }

  /** Once every finding was asked for. A sheet that was not read tells nothing. */
  outdated(sheets: readonly SheetFacts[], shop: Sheet | null): readonly OutdatedWaiver[] {
    const found: OutdatedWaiver[] = [];
    for (const waiver of this.#byFinding.values()) {
      if (this.#used.has(waiver)) continue;
      const facts = sheets.find(({ name }) => name === waiver.sheet);
      const sheet = facts?.sheet ?? (shop?.name === waiver.sheet ? shop : null);
      if (sheet === null) continue;
      const row = waiver.key === null ? undefined : facts?.bars.find((bar) => rowKey(bar) === waiver.key);
      found.push({ waiver, sheet, row: row ?? null });
    }
    return found;
  }
}

/** Under which a waiver of the finding is kept; null for a sheet-wide finding. */
export function findingKey({ row }: Pick<Finding, "row">, facts: SheetFacts | null): string | null {
  if (row === null) return null;
  const bar = facts?.barAt(row - 1 - facts.sheet.top);
  return bar === undefined ? `row ${row}` : rowKey(bar);
}

function keyOf(code: string, sheet: string, key: string | null): string {
  return JSON.stringify([code, sheet, key]);
}
