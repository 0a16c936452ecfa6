import { parseRange } from "../../workbook/cell-address";
import type { CellRange } from "../../workbook/sheet-changes";
import { attribute, findElement, xmlTags } from "../xml/xml-text";
import type { Workbook } from "./open-workbook";

/** A table of a workbook, which formulas name by its columns. */
export interface WorkbookTable {
  readonly name: string;
  readonly sheet: string;
  /** heads and totals included */
  readonly range: CellRange;
  /** rows of heads, and of totals */
  readonly heads: number;
  readonly totals: number;
  readonly columns: readonly string[];
}

/** The tables of all worksheets; one that cannot be read is left out. */
export function readTables({ parts, sheets }: Workbook): WorkbookTable[] {
  return sheets.flatMap(({ name: sheet, part }) =>
    parts.relationships(part).flatMap(({ type, target }) => {
      const at = type === "table" ? parts.nameOf(target) : null;
      const table = at === null ? null : readTable(parts.text(at), sheet);
      return table === null ? [] : [table];
    }),
  );
}

function readTable(xml: string, sheet: string): WorkbookTable | null {
  const element = findElement(xml, "table");
  if (element === null) return null;
  const { attributes } = element.tag;
  const name = attribute(attributes, "displayName") ?? attribute(attributes, "name");
  const range = parseRange(attribute(attributes, "ref") ?? "");
  if (name === null || range === null) return null;
  const columns = [...xmlTags(xml.slice(element.innerStart, element.innerEnd))]
    .filter((tag) => tag.name === "tableColumn" && tag.kind !== "close")
    .map((tag) => attribute(tag.attributes, "name") ?? "");
  const rows = (of: string, usual: number): number => Number(attribute(attributes, of) ?? usual);
  return { name, sheet, range, heads: rows("headerRowCount", 1), totals: rows("totalsRowCount", 0), columns };
}
