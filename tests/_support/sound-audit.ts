import type { Finding } from "../../core/audit/finding";
import { checkBooks } from "../../core/jobs";
import { isRefusal } from "../../core/units/refusal";
import type { CountryHabit } from "./sound-bars";
import { soundSheet } from "./sound-sheets";

/** What is heard of sound rows of one habit. */
export interface SoundAudit {
  readonly rows: number;
  /** above a note */
  readonly loud: readonly { readonly seed: number; readonly finding: Finding }[];
  /** rows passed over, and tonnages that are not those of the bars */
  readonly wrong: readonly string[];
}

const WITHIN = 0.01;
const KG_PER_TONNE = 1000;

/** Checks sheets of a habit, from a seed on, until so many rows are; nobody chooses a standard. */
export function auditSound(habit: CountryHabit, atLeast: number, from = 1): SoundAudit {
  const loud: { seed: number; finding: Finding }[] = [];
  const wrong: string[] = [];
  let rows = 0;
  for (let seed = from; rows < atLeast; seed += 1) {
    const { sheet, bars, mass, ways } = soundSheet(habit, seed);
    rows += bars;
    const book = {
      name: `${habit.name} ${seed}`,
      sheets: [{ name: sheet.name, visibility: "visible" as const }],
      ...{ read: () => sheet, setting: () => null },
    };
    const [checked] = checkBooks([book], { sheet: null, standard: null });
    if (checked === undefined || isRefusal(checked)) {
      wrong.push(`${book.name}: refused ${ways}`);
      continue;
    }
    const { report, tonnage } = checked;
    for (const finding of report.findings) if (finding.severity !== "note") loud.push({ seed, finding });
    if (report.rows.bars !== bars) wrong.push(`${book.name}: ${report.rows.bars} of ${bars} rows ${ways}`);
    const kilograms = tonnage.tonnage.total * KG_PER_TONNE;
    if (tonnage.held !== null || Math.abs(kilograms - mass) > WITHIN * mass)
      wrong.push(`${book.name}: ${tonnage.held === null ? kilograms : "held"} of ${mass} kg ${ways}`);
  }
  return { rows, loud, wrong };
}
