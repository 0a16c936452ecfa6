import type { Sheet } from "../../../core/schedule/sheet";
import type { CorpusBar } from "../corpus-bar";
import type { CorpusSchedule, RecipeColumn } from "../corpus-schedule";
import type { Seeded } from "../seeded";

export type ColumnKey = RecipeColumn["key"];

/** One mistake as it stands in a schedule. */
export interface Planted {
  readonly sheets: readonly Sheet[];
  /** where a finding is a hit; null for the sheet as a whole */
  readonly hit: { readonly sheet: string; readonly row: number; readonly cells: readonly string[] } | null;
  /** rows of the first sheet, from 1, that the mistake touches: findings there are no false alarms */
  readonly touched: readonly number[];
  /** limits that the workbook would hold */
  readonly limits?: Readonly<Record<string, number>>;
}

/** A bar, where it stands, and the draw of numbers. */
export interface PlantingPlace {
  readonly schedule: CorpusSchedule;
  readonly at: number;
  readonly bar: CorpusBar;
  readonly random: Seeded;
}

/** One of the 62 mistakes that detailers make, and how it is put into a clean schedule. */
export interface Mistake {
  readonly number: number;
  readonly name: string;
  /** codes of the rules that are for it: only theirs is a hit */
  readonly rules: readonly string[];
  /** what has to agree beside the rule: the cell, or the row or sheet where the rule speaks of those */
  readonly judgedBy: "cell" | "row" | "sheet";
  /** the limit one step below which the smallest planting lies */
  readonly smallest: string;
  /** shows in any practice's list, not only in the coded form */
  readonly isGeneral?: true;
  /** null: this bar cannot bear the mistake, try another */
  plant(place: PlantingPlace): Planted | null;
}

/** A mistake that no sheet can show, and what it lacks. */
export interface UnheldMistake {
  readonly number: number;
  readonly name: string;
  readonly lacks: string;
}
