/** What a point and a comma between digits mean in a text file; null where its cells do not say. */
export interface NumberSigns {
  readonly point: "decimal" | "thousands" | null;
  /** true where commas part decimals */
  readonly decimalComma: boolean;
}

const GROUPED = /^-?[1-9]\d{0,2}(?:\.\d{3})+$/;
/** "1.300,5", "1.234.567": no sign of decimals stands twice, or before another */
const ONLY_GROUPED = /^-?[1-9]\d{0,2}(?:(?:\.\d{3})+,\d+|(?:\.\d{3}){2,})$/;
const POINT_DECIMAL = /^-?\d*\.\d+$/;
const COMMA_DECIMAL = /^-?\d+,(?:\d{1,2}|\d{4,})$/;
const WHOLE = /^-?(?:0|[1-9]\d{0,2})$/;

/**
 * One meaning for the whole file, by the spelling of all its cells: "1.300,5" has points between thousands, and so
 * has "1.200" beside "189,4". Where no comma tells, a column that holds "1.000" beside "250" does: a number format
 * that writes three decimals writes them in each of its cells, and one that leaves noughts out leaves them out here.
 */
export function signsOfCsv(records: readonly (readonly string[])[], delimiter: string): NumberSigns {
  const columns: { grouped: number; whole: number }[] = [];
  let [isGroupedAlone, isPointDecimal, decimalComma] = [false, false, false];
  for (const record of records) {
    for (const [column, cell] of record.entries()) {
      const text = cell.trim();
      const seen = columns[column] ?? { grouped: 0, whole: 0 };
      columns[column] = seen;
      if (ONLY_GROUPED.test(text)) isGroupedAlone = true;
      else if (GROUPED.test(text)) seen.grouped += text.endsWith("0") ? 1 : 0;
      else if (POINT_DECIMAL.test(text)) isPointDecimal = true;
      else if (delimiter !== "," && COMMA_DECIMAL.test(text)) decimalComma = true;
      else if (WHOLE.test(text)) seen.whole += 1;
    }
  }
  const isMixed = columns.some(({ grouped, whole }) => grouped > 0 && whole > 0);
  const isThousands = isGroupedAlone || decimalComma || isMixed;
  // marks such as 1.1 beside them say nothing of the numbers, and nothing is made of what contradicts
  const point = isPointDecimal === isThousands ? null : isThousands ? "thousands" : "decimal";
  return { point, decimalComma };
}

/** The number that a cell has whose points part thousands; null where it has none. */
export function groupedNumber(text: string): number | null {
  if (!GROUPED.test(text) && !ONLY_GROUPED.test(text)) return null;
  return Number(text.replaceAll(".", "").replace(",", "."));
}
