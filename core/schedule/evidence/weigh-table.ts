import type { Standard } from "../../standards/port";
import { massTables } from "./mass-tables";
import { type PickedRows, pickRows, type RowSource } from "./pick-rows";
import { readingAgreement } from "./reading-agreement";
import { evidenceAsWorded, tableEvidence, testedRows } from "./table-evidence";
import { type ValueColumn, valueColumns } from "./value-column";
import { confirms, type Weighed, weighWords } from "./weigh-words";
import type { Words } from "./word-reading";

/** A table's columns as words and arithmetic together have them. */
export interface WeighedTable extends Weighed {
  /** rows of the sheet that were looked at, in order; `brokenRows` are places among them */
  readonly rows: readonly number[];
  /** texts such as "1,25" and "1.250" are read with a decimal comma */
  readonly decimalComma: boolean;
  readonly score: number;
}

/**
 * Weighs the words of a header against the arithmetic of the rows under it. Words make the table first; arithmetic
 * reads the same rows by itself; where they differ, what keeps its identities wins, and the sheet is told once.
 *
 * @param source cells of the rows under the header, and the columns between which the table stands
 * @param words what the header's words say, by column; a user's own corrections outrank everything
 * @returns null where too few rows hold values
 *
 * @example weighTable({ cells, from: 5, to: 60, left: 0, right: 8 }, standard, words)?.decisions
 */
export function weighTable(source: RowSource, standard: Standard, words: Words): WeighedTable | null {
  let best: WeighedTable | null = null;
  for (const picked of pickRows(source)) {
    const one = weighed(picked, source, standard, words);
    if (one !== null && (best === null || one.score > best.score)) best = one;
  }
  return best;
}

function weighed(
  picked: PickedRows,
  source: RowSource,
  standard: Standard,
  words: Words,
): WeighedTable | null {
  const columns = valueColumns(picked.values, source.left, source.right);
  if (columns.length === 0) return null;
  const tables = massTables(standard);
  const rows = testedRows(picked.rows.length);
  const agreement = readingAgreement(columns, words.values(), tables, rows);
  const isOpen = hasUnnamedNumbers(columns, words);
  const isPlain = confirms(agreement) && !isOpen;
  const asWorded = isPlain ? null : evidenceAsWorded(columns, tables, words);
  const isSettled = isPlain || (asWorded !== null && !isOpen);
  const evidence = isSettled ? asWorded : tableEvidence(columns, tables, words);
  const result = weighWords({ columns, tables, rows, words, agreement, asWorded, evidence });
  const kept = result.agreement.reduce((sum, one) => sum + one.bars * one.share, 0);
  return { ...result, rows: picked.rows, decimalComma: picked.decimalComma, score: kept };
}

/** Nothing that the words left open could be another amount of the bars. */
function hasUnnamedNumbers(columns: readonly ValueColumn[], words: Words): boolean {
  return columns.some((column) => (column.isNumber || column.isSize) && !words.has(column.column));
}
