import type { Standard } from "../../standards/port";
import { confirms } from "./confirms";
import { WEIGH } from "./evidence.data";
import { massTables } from "./mass-tables";
import { type PickedRows, pickRows, type RowSource } from "./pick-rows";
import { type Agreement, readingAgreement } from "./reading-agreement";
import { evidenceAsWorded, tableEvidence, testedRows } from "./table-evidence";
import { countTriples } from "./triples";
import { type ValueColumn, valueColumns } from "./value-column";
import { weighWords } from "./weigh-words";
import type { Weighed } from "./weighed";
import type { EvidenceRole, Words } from "./word-reading";

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
  const isOpen = hasUnnamedNumbers(columns, words) || hasTotalAmongLegs(columns, words, rows);
  const isPlain = !isOpen && (confirms(agreement) || restsOnLegs(agreement, words));
  const asWorded = isPlain ? null : evidenceAsWorded(columns, tables, words);
  const isSettled = isPlain || (asWorded !== null && !isOpen);
  const evidence = isSettled ? asWorded : tableEvidence(columns, tables, words);
  const result = weighWords({ columns, tables, rows, words, agreement, asWorded, evidence });
  const kept = result.agreement.reduce((sum, one) => sum + one.bars * one.share, 0);
  return { ...result, rows: picked.rows, decimalComma: picked.decimalComma, score: kept };
}

/** Words name no column of amounts, and the legs make up the lengths: no search could tell more. */
function restsOnLegs(agreement: readonly Agreement[], words: Words): boolean {
  const { leastBars, confirms: least } = WEIGH.value;
  const roles = new Set([...words.values()].map(({ role }) => role));
  const hasAmounts = roles.has("mass") || roles.has("totalLength") || roles.has("bySize");
  const isCounted = roles.has("total") || roles.has("each");
  if (hasAmounts || !isCounted || !roles.has("size") || !roles.has("length")) return false;
  const legs = agreement.find(({ identity }) => identity === "legs");
  return legs !== undefined && legs.bars >= leastBars && legs.share >= least;
}

/** Nothing that the words left open could be another amount of the bars. */
function hasUnnamedNumbers(columns: readonly ValueColumn[], words: Words): boolean {
  return columns.some((column) => (column.isNumber || column.isSize) && !words.has(column.column));
}

/** A column called a leg is members x bars of one. */
function hasTotalAmongLegs(columns: readonly ValueColumn[], words: Words, rows: readonly number[]): boolean {
  const called = (role: EvidenceRole): ValueColumn[] =>
    columns.filter(({ column }) => words.get(column)?.role === role);
  const [members] = called("members");
  const [each] = called("each");
  if (members === undefined || each === undefined || called("total").length > 0) return false;
  return called("leg").some((leg) => countTriples([members, each, leg], rows).length > 0);
}
