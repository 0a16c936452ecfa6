import type { BarFacts } from "../../bar/bar-facts";
import type { SheetFacts } from "../../bar/sheet-facts";
import type { TotalRow } from "../../schedule/bar-row";
import { defineRule } from "../rule";
import { sizedLines } from "../sized-sums";
import { allBefore, massMade, stretchesOf, sumLines } from "../sum-lines";

const bar = (size: string, length: number, total: number) => ({
  ...{ size, shape: "00", A: length, length, members: 1, each: total, total },
});
const BARS = [bar("H16", 6000, 200), bar("H20", 5000, 200), bar("H12", 4000, 300)];

export default defineRule({
  code: "SUM113",
  name: "tonnes-line-differs",
  severity: "doubtful",
  docs: {
    summary: "A line below the list gives tonnes, and the bars make others.",
    why: "The steel is ordered by this figure, whether or not each row has a mass. Tables of masses differ by a per cent, so less is not told.",
    failing: [{ rows: BARS, foot: [{ member: "Total mass, tonnes", total: 4.9 }] }],
    passing: [{ rows: BARS, foot: [{ member: "Total mass, tonnes", total: 5.43 }] }],
  },
  messages: {
    differs: "the line gives {typed} t, but the bars above make {made} t: see which of the two is right",
  },
  checkSheet(sheet, { standard }, report) {
    // tonnes below sums by size follow from them, and which of them is wrong is told there
    if (sizedLines(sheet, standard).length > 0) return;
    const known = new Set(sumLines(sheet).map(({ line }) => line.row));
    for (const line of sheet.reading.totals) {
      const [cell, another] = line.cells;
      if (cell === undefined || another !== undefined || known.has(line.row) || !givesTonnes(line)) continue;
      const made = massesOf(sheet, line);
      if (made.length === 0 || made.some((kg) => isOf(cell.value, kg))) continue;
      report({
        messageId: "differs",
        outcome: "unsure",
        place: { row: line.row, column: cell.column },
        values: { typed: cell.value, made: Math.round(made[0] ?? 0) / KG_PER_TONNE },
      });
    }
  },
});

const KG_PER_TONNE = 1000;
/** by two tables of masses, and lengths as cut or as typed */
const WITHIN = 0.015;
/** "t" stands alone in brackets, behind a comma or at the end */
const TONNES =
  /(?<!\p{L})(?:metric tons?|tonnes?|tonnen|toneladas?|tonnellate|ton|tony?|тонн\p{L}*)(?!\p{L})|[([,]\s*[tт]\s*[)\]]?\s*$|吨|噸|トン/iu;
/** what is added, and what is only a part */
const NOT_OF_BARS = /[%\d]|wast|verschnitt|chute|merma|perda|sfrido|price|cost|preis|prix|precio|preço/iu;

function givesTonnes({ label, kind }: TotalRow): boolean {
  return kind !== "carried" && kind !== "summary" && TONNES.test(label) && !NOT_OF_BARS.test(label);
}

/** kg of the bars that a line may stand for, by number, length and size, and by the masses as typed; all of them first. */
function massesOf(sheet: SheetFacts, line: TotalRow): readonly number[] {
  const above = sheet.bars.filter(({ row }) => row.row < line.row);
  const lists = [above, allBefore(sheet, line), ...stretchesOf(sheet, line, line.table?.headerBottom ?? -1)];
  return lists
    .filter((bars) => bars.length > 0)
    .flatMap((bars) => [sumOf(bars, massMade), sumOf(bars, ({ row }) => row.mass)])
    .filter((sum) => sum !== null);
}

/** Null where one bar has none: the line may hold what is not known here. */
function sumOf(bars: readonly BarFacts[], kgOf: (facts: BarFacts) => number | null): number | null {
  let sum = 0;
  for (const facts of bars) {
    if (facts.row.struckThrough || facts.row.superseded === true) continue;
    const kg = kgOf(facts);
    if (kg === null) return null;
    sum += kg;
  }
  return sum;
}

/** As far as its decimals, and tables of masses, can tell; a line may give its tonnes in kilograms. */
function isOf(typed: number, kg: number): boolean {
  const decimals = /\.(\d+)/.exec(String(typed))?.[1]?.length ?? 0;
  const [half, ofSum] = [0.5000001 * 10 ** -decimals, kg * WITHIN];
  return (
    Math.abs(typed * KG_PER_TONNE - kg) <= half * KG_PER_TONNE + ofSum || Math.abs(typed - kg) <= half + ofSum
  );
}
