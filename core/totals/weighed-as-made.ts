import { counted } from "../units/counted";

/** A row that weighs another thing by the length that is typed, which is cut and loaded. kg. */
export interface WeighedAsMade {
  readonly sheet: string;
  readonly cell: string;
  readonly mass: number;
  readonly asTyped: number;
}

/** kg in all below which no printed tonnage shows the difference */
const LEAST_SHOWN = 0.5;
const MOST_CELLS = 8;
const KG_PER_TONNE = 1000;

/** What the total would be by the lengths as typed, tonnes. */
export function totalAsTyped(rows: readonly WeighedAsMade[], total: number): number {
  return total + rows.reduce((sum, { mass, asTyped }) => sum + asTyped - mass, 0) / KG_PER_TONNE;
}

/**
 * The sentence beside a total whose bars are cut and loaded by other lengths than it weighs; none where no
 * figure of it would show the difference.
 */
export function weighedAsMadeWords(rows: readonly WeighedAsMade[], total: number, isOfJob = false): string[] {
  const off = ({ mass, asTyped }: WeighedAsMade): number => Math.abs(asTyped - mass);
  if (rows.reduce((sum, row) => sum + off(row), 0) < LEAST_SHOWN) return [];
  const isSeveral = isOfJob || new Set(rows.map(({ sheet }) => sheet)).size > 1;
  const told = [...rows].sort((one, other) => off(other) - off(one)).slice(0, MOST_CELLS);
  const cells = told.map(({ sheet, cell }) => (isSeveral ? `${sheet}!${cell}` : cell)).join(", ");
  const more = rows.length > told.length ? ` and ${rows.length - told.length} more` : "";
  const are =
    rows.length === 1 ? "is weighed as its dimensions make it" : "are weighed as their dimensions make them";
  return [
    `${counted(rows.length, "row")} ${are} (${cells}${more}): ${total.toFixed(3)} t in all; by the lengths as typed, which are cut, ticketed and loaded, ${totalAsTyped(rows, total).toFixed(3)} t`,
  ];
}
