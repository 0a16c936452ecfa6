import { defineRefusal, type Refusal } from "../units/refusal";
import { COLUMN_KINDS, columnWords } from "./columns/column-words";
import type { ColumnCorrection } from "./read-options";

/** What somebody says of columns in words: of one sheet, or of every sheet that is read. */
export interface ColumnsSaid {
  readonly sheet: string | null;
  readonly columns: readonly ColumnCorrection[];
}

const LETTERS = /^[A-Z]{1,3}$/i;
const UNITS = ["mm", "cm", "m", "in", "ft", "kg", "t", "lb"] as const;
const ONE = /^([^=]{1,200}?)\s*=\s*(.+?)(?:\s+(?:in\s+)?(mm|cm|m|in|ft|kg|t|lb))?$/i;
const UNIT_ALONE = /^(?:in\s+)?(mm|cm|m|in|ft|kg|t|lb)$/i;

const noColumn = defineRefusal(
  "columns-said",
  "value",
  '"{typed}" says nothing of a column: write its letter or its heading, =, and what it holds, as in D=total or F=length in cm',
);
const noKind = defineRefusal(
  "columns-said-kind",
  "value",
  '"{typed}" is nothing that a column can hold: write one of {kinds}, or a unit ({units})',
);

/**
 * Columns pointed at in words: `D=total, F=length in cm`, with a sheet before them as in `List 2!D=total`. A column is
 * named by its letter (where bars stand in columns, by the number of its row) or by its heading.
 *
 * @example columnsSaid("D=total, F=length in cm") // columns D as total, F as length in cm
 */
export function columnsSaid(text: string): ColumnsSaid | Refusal {
  const at = text.indexOf("!");
  const sheet =
    at < 0
      ? null
      : text
          .slice(0, at)
          .trim()
          .replace(/^'(.*)'$/, "$1");
  const columns: ColumnCorrection[] = [];
  for (const part of text.slice(at + 1).split(",")) {
    const found = ONE.exec(part.trim());
    if (found === null) return noColumn({ typed: part.trim() });
    const column = (found[1] ?? "").trim();
    const said = (found[2] ?? "").trim();
    const unitAlone = UNIT_ALONE.exec(said)?.[1]?.toLowerCase() as ColumnCorrection["unit"];
    const kind = kindNamed(said);
    if (kind === undefined && unitAlone === undefined)
      return noKind({ typed: said, kinds: COLUMN_KINDS.join(", "), units: UNITS.join(", ") });
    const unit =
      (found[3]?.toLowerCase() as ColumnCorrection["unit"]) ?? (kind === undefined ? unitAlone : undefined);
    columns.push({
      column,
      ...(LETTERS.test(column) ? { isLetter: true } : {}),
      ...(kind === undefined ? {} : { kind }),
      ...(unit === undefined ? {} : { unit }),
    });
  }
  return { sheet, columns };
}

function kindNamed(said: string): ColumnCorrection["kind"] {
  const plain = said.toLowerCase();
  return COLUMN_KINDS.find((kind) => kind.toLowerCase() === plain || columnWords(kind) === plain);
}
