import type { SheetFacts } from "../bar/sheet-facts";
import type { TotalRow } from "../schedule/bar-row";
import { partsSaid, unitInHeader } from "../schedule/header/recognise-header";
import { KG_PER_UNIT } from "../units/unit-table";
import { linesAbove } from "./sized-sums";
import { additionsBefore } from "./sum-lines";
import type { Place } from "./wrong-sum";

/** A line of one number below lines of sums by size. */
export interface GrandTotal {
  readonly line: TotalRow;
  readonly column: number;
  readonly typed: number;
  /** what each line above adds up to, in its own unit, nearest first */
  readonly sums: readonly number[];
  /** the cells of the line that it sums */
  readonly parts: readonly Place[];
}

/** further from the nearest line than this it sums something else */
const MOST_OFF = 3;

/** The one number under columns by size that sums one of the lines above it. */
export function grandTotals(sheet: SheetFacts): readonly GrandTotal[] {
  return sheet.reading.totals.flatMap((line) => {
    const bySize = line.table?.bySize ?? [];
    const [one, another] = line.cells;
    if (bySize.length === 0 || one === undefined || another !== undefined) return [];
    if (line.kind !== "total" && line.kind !== "subtotal") return [];
    const lines = linesAbove(sheet, line).filter(({ cells }) => cells.length > 1);
    const above = ofItsKind(line, lines);
    const sums = above.map(({ cells }) => cells.reduce((sum, { value }) => sum + value, 0));
    const parts = above.slice(0, 1).flatMap(({ row, cells }) => cells.map(({ column }) => ({ row, column })));
    const nearest = sums[0];
    if (nearest === undefined) return [];
    const isOfLine = [1, KG_PER_UNIT.t].some(
      (per) => (one.value * per) / nearest < MOST_OFF && nearest / (one.value * per) < MOST_OFF,
    );
    if (!isOfLine) return [];
    const added = additionsBefore(sheet, line, one.column);
    const all = added === 0 ? sums : [...sums, ...sums.map((sum) => sum + added)];
    return [{ line, column: one.column, typed: one.value, sums: all, parts }];
  });
}

/** A total that says it is of mass sums a line that says so where there is one: those of lengths come near it by chance. */
function ofItsKind({ label }: TotalRow, lines: readonly TotalRow[]): readonly TotalRow[] {
  const kind = figureSaid(label);
  const said = kind === null ? [] : lines.filter((one) => figureSaid(one.label) === kind);
  return said.length === 0 ? lines : said;
}

/** Whether a line's words are of masses or of lengths: by its unit, else by its nouns; null where neither or both. */
function figureSaid(label: string): "mass" | "length" | null {
  const unit = unitInHeader(label);
  if (unit !== null) return unit in KG_PER_UNIT ? "mass" : "length";
  const parts = partsSaid(label);
  if (parts.has("mass") === parts.has("length")) return null;
  return parts.has("mass") ? "mass" : "length";
}
