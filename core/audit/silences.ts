import { rowKey } from "../bar/bar-facts";
import type { SheetFacts } from "../bar/sheet-facts";
import type { Sheet } from "../schedule/sheet";
import type { AuditSettings, Silence } from "./audit-settings";
import type { Finding } from "./finding";
import type { OutdatedSilence } from "./settings-facts";

/** The silences of a workbook during one report: which finding each answers to, and which answer to none. */
export class Silences {
  readonly #byFinding = new Map<string, Silence>();
  readonly #used = new Set<Silence>();

  constructor(readonly settings: AuditSettings) {
    for (const silence of settings.silences) {
      this.#byFinding.set(keyOf(silence.code, silence.sheet, silence.key), silence);
    }
  }

  /** The silence of a finding; null where it is to be shown. `facts` is null for the Shop sheet. */
  of(finding: Finding, facts: SheetFacts | null): Silence | null {
    if (this.#byFinding.size === 0) return null;
    const { code, sheet } = finding;
    const silence = this.#byFinding.get(keyOf(code, sheet, rowKeyOf(finding, facts))) ?? null;
    if (silence !== null) this.#used.add(silence);
    return silence;
  }

  /** Once every finding was asked for. A rule that is off and a sheet that was not read tell nothing. */
  outdated(sheets: readonly SheetFacts[], shop: Sheet | null): readonly OutdatedSilence[] {
    const off = new Set(this.settings.rulesOff);
    const found: OutdatedSilence[] = [];
    for (const silence of this.#byFinding.values()) {
      if (this.#used.has(silence) || off.has(silence.code)) continue;
      const facts = sheets.find(({ name }) => name === silence.sheet);
      const sheet = facts?.sheet ?? (shop?.name === silence.sheet ? shop : null);
      if (sheet === null) continue;
      const row = silence.key === null ? undefined : facts?.bars.find((bar) => rowKey(bar) === silence.key);
      found.push({ silence, sheet, row: row ?? null });
    }
    return found;
  }
}

function rowKeyOf({ row }: Finding, facts: SheetFacts | null): string | null {
  if (row === null) return null;
  const bar = facts?.barAt(row - 1 - facts.sheet.top);
  return bar === undefined ? `row ${row}` : rowKey(bar);
}

function keyOf(code: string, sheet: string, key: string | null): string {
  return JSON.stringify([code, sheet, key]);
}
