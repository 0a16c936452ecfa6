import { translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx/xlsx";
import { addressAt } from "../../../core/schedule/cell-address";
import { type ScannedCell, scanRows } from "../read/scan-cells";
import { decoded, sheetPieces } from "../read/sheet-pieces";
import { encodeXml } from "../xml/encode-xml";
import { writeNodes, type XmlNode, xmlNodes } from "../xml/xml-nodes";
import { attribute, decodeXml, findElement, withAttribute } from "../xml/xml-text";
import { shiftNodes } from "./shift-nodes";
import { type SheetShift, type Shifts, shiftFormula, shiftRanges } from "./shift-references";

/** Text of a worksheet's part after rows and columns of it, or sheets that its formulas name, came or went. */
export function shiftSheet(text: string, name: string, shift: SheetShift, shifts: Shifts): string {
  const rows = new RowShift(name, shift, shifts);
  const out: string[] = [];
  const put: { row: number; xml: string }[] = [];
  for (const piece of sheetPieces([new TextEncoder().encode(text)])) {
    if (piece.kind === "head") out.push(shiftHead(piece.text, name, shift, shifts));
    else if (piece.kind === "rows") put.push(...rows.take(decoded(piece.bytes), piece.prefix));
    else {
      for (const { xml } of put.sort((a, b) => a.row - b.row)) out.push(xml);
      out.push(writeNodes(shiftNodes(xmlNodes(piece.text), { sheet: name, shift }, shifts)));
    }
  }
  return out.join("");
}

function shiftHead(head: string, name: string, shift: SheetShift, shifts: Shifts): string {
  const nodes = shiftNodes(xmlNodes(head), { sheet: name, shift }, shifts);
  if (!shift.columns.isUnchanged) shiftColumns(nodes, shift);
  return writeNodes(nodes);
}

function shiftColumns(nodes: readonly (XmlNode | string)[], shift: SheetShift): void {
  for (const node of nodes) {
    if (typeof node === "string") continue;
    if (node.name !== "cols") {
      shiftColumns(node.inside, shift);
      continue;
    }
    const columns = node.inside.flatMap((column) => {
      if (typeof column === "string") return [];
      const first = Number(attribute(column.attributes, "min") ?? 1) - 1;
      const last = Math.min(Number(attribute(column.attributes, "max") ?? 1) - 1, 16_383);
      const now = shift.columns.range(first, last);
      if (now === null) return [];
      const attributes = withAttribute(column.attributes, "min", String(now.first + 1));
      column.attributes = withAttribute(attributes, "max", String(Math.min(now.last, 16_383) + 1));
      return [{ at: now.first, column }];
    });
    node.inside.splice(
      0,
      node.inside.length,
      ...columns.sort((a, b) => a.at - b.at).map((one) => one.column),
    );
  }
}

/** Rows and cells at their new places, each formula written out for its own cell. */
class RowShift {
  /** shared formulas of the file in relative notation, by group */
  private readonly groups = new Map<string, string>();
  private last = -1;

  constructor(
    private readonly name: string,
    private readonly shift: SheetShift,
    private readonly shifts: Shifts,
  ) {}

  take(text: string, prefix: string): { row: number; xml: string }[] {
    const rows: { row: number; xml: string }[] = [];
    let cells: string[] = [];
    let now: number | null = null;
    this.last = scanRows(text, prefix, this.last, {
      row: (row) => {
        now = this.shift.rows.to(row.row);
        cells = [];
        return true;
      },
      cell: (cell) => {
        const formula = this.formula(text, cell);
        const column = this.shift.columns.to(cell.column);
        if (now === null || column === null) return;
        cells.push(this.cell(text, cell, addressAt(now, column), formula));
      },
      rowEnd: (row) => {
        if (now === null) return;
        const tag = text.slice(row.start, row.tagEnd);
        const raw = tag.slice(`<${prefix}row`.length, tag.length - (row.isEmpty ? 2 : 1));
        const attributes = withAttribute(withAttribute(raw, "spans", null), "r", String(now + 1));
        const inside = cells.join("");
        rows.push({
          row: now,
          xml:
            inside === ""
              ? `<${prefix}row${attributes}/>`
              : `<${prefix}row${attributes}>${inside}</${prefix}row>`,
        });
      },
    });
    return rows;
  }

  private cell(text: string, cell: ScannedCell, address: string, formula: string | null): string {
    const tag = text.slice(cell.start, cell.tagEnd);
    const isEmpty = tag.endsWith("/>");
    const nameEnd = tag.search(/[\s/>]/);
    const attributes = withAttribute(tag.slice(nameEnd, tag.length - (isEmpty ? 2 : 1)), "r", address);
    const open = `${tag.slice(0, nameEnd)}${attributes}`;
    if (isEmpty) return `${open}/>`;
    return `${open}>${formula ?? text.slice(cell.innerStart, cell.innerEnd)}${text.slice(cell.innerEnd, cell.end)}`;
  }

  /** Inside of a cell with a formula, at its new place; null where it has none. */
  private formula(text: string, cell: ScannedCell): string | null {
    if (cell.innerEnd === 0) return null;
    const inner = text.slice(cell.innerStart, cell.innerEnd);
    const element = inner.includes("f") ? findElement(inner, "f") : null;
    if (element === null) return null;
    const { attributes, prefix } = element.tag;
    const before = addressAt(cell.row, cell.column);
    let written = decodeXml(inner.slice(element.innerStart, element.innerEnd));
    let kept = attributes;
    const group = attribute(attributes, "si");
    if (attribute(attributes, "t") === "shared" && group !== null) {
      if (written !== "") this.groups.set(group, translateFormulaToR1C1(`=${written}`, before));
      else written = translateFormulaToA1(this.groups.get(group) ?? "", before).replace(/^=/, "");
      for (const name of ["t", "si", "ref"]) kept = withAttribute(kept, name, null);
    }
    for (const name of ["ref", "r1", "r2"]) {
      const range = attribute(kept, name);
      if (range !== null) kept = withAttribute(kept, name, shiftRanges(range, this.shift) ?? before);
    }
    const formula = encodeXml(shiftFormula(written, this.name, this.shifts));
    return `${inner.slice(0, element.start)}<${prefix}f${kept}>${formula}</${prefix}f>${inner.slice(element.end)}`;
  }
}
