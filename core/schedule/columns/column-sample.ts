import type { ColumnKind } from "../bar-row";
import { cleanText } from "../cells/clean-text";
import { LONGEST_VALUE } from "../cells/longest-text";
import { type CommaUse, isGrouped, readNumberText } from "../cells/read-number-text";
import type { Header } from "../header/find-header";
import type { HeaderBlock, HeaderColumn } from "../header/header-blocks";
import type { Cell } from "../sheet";
import { LENGTH_KINDS } from "./length-kinds";

/** rows under a header that are looked at to decide what its columns are */
export const SAMPLE_ROWS = 400;

/** The cells of one column that hold something of a number. */
export interface Sample {
  readonly numbers: number[];
  readonly texts: string[];
}

/** The rows under a header up to the next one, cut at the block's right end. */
export function sampleRows(
  source: { readonly rowCount: number; cells(row: number): readonly Cell[] },
  header: Header,
  block: HeaderBlock,
): (readonly Cell[])[] {
  const rows: (readonly Cell[])[] = [];
  const last = Math.min(source.rowCount, header.bottom + 1 + SAMPLE_ROWS);
  const stacked: (readonly Cell[])[] = [];
  for (let row = Math.max(0, header.top); row <= header.bottom; row += 1) stacked.push(source.cells(row));
  for (let row = header.bottom + 1; row < last; row += 1) {
    const cells = source.cells(row);
    // the header that stands again over the next member
    if (isHeaderAgain(cells, block) || stacked.some((one) => saysSame(cells, one, block))) continue;
    rows.push(cells.slice(0, block.right + 1));
  }
  return rows;
}

function isHeaderAgain(cells: readonly Cell[], { columns }: HeaderBlock): boolean {
  let again = 0;
  for (const { column, header } of columns) {
    if (cells[column] === header && header !== "") again += 1;
    if (again > 1) return true;
  }
  return false;
}

/** Two texts of a row of the header or more stand again in their columns, and no other text or number there. */
function saysSame(cells: readonly Cell[], head: readonly Cell[], { left, right }: HeaderBlock): boolean {
  let again = 0;
  for (let column = left; column <= right && column < cells.length; column += 1) {
    const cell = cells[column] ?? null;
    if (cell === null || cell === "") continue;
    if (cell !== head[column]) return false;
    again += 1;
  }
  return again > 1;
}

export function sampleOf(rows: readonly (readonly Cell[])[], column: number): Sample {
  const numbers: number[] = [];
  const texts: string[] = [];
  // a column writes few texts, many times
  const known = new Map<string, string | null>();
  for (const cells of rows) {
    const cell = cells[column];
    if (typeof cell === "number" && Number.isFinite(cell)) numbers.push(cell);
    if (typeof cell !== "string" || cell.length > LONGEST_VALUE) continue;
    let text = known.get(cell);
    if (text === undefined) {
      text = HOLDS_DIGIT.test(cell) ? cleanText(cell).replace(/^\((.+)\)$/, "$1") : null;
      known.set(cell, text);
    }
    if (text !== null) texts.push(text);
  }
  return { numbers, texts };
}

const HOLDS_DIGIT = /\d|[\u0660-\u0669\u06f0-\u06f9\u0966-\u096f\uff10-\uff19]/;

export function sizesTyped(sample: Sample | undefined): string[] {
  return sample === undefined ? [] : [...sample.texts, ...sample.numbers.map(String)];
}

const OFTEN = 2;

/** What is typed in several rows, of all tables side by side. */
export function typedOften(samples: readonly (Sample | undefined)[]): ReadonlySet<string> {
  const counts = new Map<string, number>();
  for (const sample of samples) {
    for (const typed of sizesTyped(sample)) {
      const text = typed.trim();
      counts.set(text, (counts.get(text) ?? 0) + 1);
    }
  }
  return new Set([...counts].filter(([, count]) => count >= OFTEN).map(([text]) => text));
}

const DECIMAL_FOR_SURE = /^\d+,(?:\d{1,2}|\d{4,})$|^0,\d+$|^\d{1,3}(?:\.\d{3})+,\d+$/;
const THOUSANDS_FOR_SURE = /^\d{1,3}(?:,\d{3})+\.\d+$|^\d{1,3}(?:,\d{3}){2,}$/;

/** One habit for the whole table where any of its cells tells; else null. */
export function commaOf(block: HeaderBlock, samples: ReadonlyMap<ColumnKind, Sample>): CommaUse {
  for (const { kind } of block.columns) {
    if (kind !== "mass" && kind !== "unitMass" && kind !== "pieceMass" && !LENGTH_KINDS.has(kind)) continue;
    const texts = samples.get(kind)?.texts ?? [];
    if (texts.some((text) => THOUSANDS_FOR_SURE.test(text))) return "thousands";
    if (texts.some((text) => DECIMAL_FOR_SURE.test(text.replace(/\s*(?:mm|cm|m|kg|t|kg\/m)$/i, ""))))
      return "decimal";
  }
  return "thousands";
}

export function commaOfColumn(column: HeaderColumn, sample: Sample, table: CommaUse): CommaUse {
  if (pointsPartThousands(sample, column.unit)) return "grouped";
  if (table === "decimal") {
    // 1,250 in a mm column is a thousand however the file writes its decimals
    return column.unit === "mm" && !sample.texts.some((text) => DECIMAL_FOR_SURE.test(text))
      ? "thousands"
      : "decimal";
  }
  return column.unit === "m" ? "decimal" : "thousands";
}

const HUNDREDS = /^[1-9]\d\d$/;
const WHOLE = /^\d{1,3}$/;
const FEWEST_GROUPS = 2;

/**
 * Nobody writes a length to the thousandth of a mm or cm: texts of such a column are whole numbers, and a point parts
 * all from a thousand up. Of no unit they are where some have hundreds, which no metres have.
 */
function pointsPartThousands({ numbers, texts }: Sample, unit: HeaderColumn["unit"]): boolean {
  const isSmall =
    unit === "mm" || unit === "cm" || (unit === null && texts.some((text) => HUNDREDS.test(text)));
  if (numbers.length > 0 || !isSmall) return false;
  const grouped = texts.filter(isGrouped).length;
  return grouped >= FEWEST_GROUPS && texts.every((text) => isGrouped(text) || WHOLE.test(text));
}

const UNIT_BEHIND = /(?<=\d)\s*(?:mm|cm|m|kgs?|t|lbs?)\.?$/i;

/** The number of a cell, as it stands where a unit stands behind it; null where it holds none. */
export function numberIn(cell: Cell | undefined, comma: CommaUse): number | null {
  if (typeof cell === "number") return Number.isFinite(cell) ? cell : null;
  if (typeof cell !== "string") return null;
  const bare = cleanText(cell).replace(/^\((.+)\)$/, "$1");
  return readNumberText(bare, comma) ?? readNumberText(bare.replace(UNIT_BEHIND, ""), comma);
}

export function parsed(texts: readonly string[], comma: CommaUse): number[] {
  return texts
    .map((text) => readNumberText(text, comma))
    .filter((one): one is number => one !== null && one > 0);
}

export function median(numbers: readonly number[]): number | null {
  if (numbers.length === 0) return null;
  const sorted = Float64Array.from(numbers).sort();
  return sorted[Math.floor((sorted.length - 1) / 2)] ?? null;
}
