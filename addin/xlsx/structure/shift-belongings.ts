import type { PackageEdit } from "../patch/package-edit";
import { UnreadableWorkbook } from "../unreadable-workbook";
import { writeNodes, type XmlNode, xmlNodes } from "../xml/xml-nodes";
import { attribute, withAttribute } from "../xml/xml-text";
import type { LineMap } from "./line-map";
import { shiftNodes } from "./shift-nodes";
import { type SheetShift, type Shifts, shiftRanges } from "./shift-references";

/** Notes, tables and drawings of a sheet follow its rows and columns. */
export function shiftBelongings(
  edit: PackageEdit,
  sheetPart: string,
  name: string,
  shift: SheetShift,
  shifts: Shifts,
): void {
  const own = { sheet: name, shift };
  for (const { type, target } of edit.parts.relationships(sheetPart)) {
    const part = edit.parts.nameOf(target);
    if (part === null) continue;
    if (type === "vmlDrawing") edit.set(part, shiftShapes(edit.text(part), shift));
    else if (type === "drawing") edit.set(part, shiftAnchors(edit.text(part), shift));
    else if (type === "table") edit.set(part, shiftTable(edit.text(part), own, shifts));
    else if (type === "comments" || type === "threadedComment" || type === "pivotTable") {
      edit.set(part, writeNodes(shiftNodes(xmlNodes(edit.text(part)), own, shifts)));
    }
  }
}

function shiftTable(
  xml: string,
  own: { readonly sheet: string; readonly shift: SheetShift },
  shifts: Shifts,
): string {
  const nodes = xmlNodes(xml);
  const table = nodes.find((node): node is XmlNode => typeof node !== "string" && node.name === "table");
  const range = attribute(table?.attributes ?? "", "ref");
  if (table === undefined || range === null) return xml;
  const name = attribute(table.attributes, "displayName") ?? "";
  const now = shiftRanges(range, own.shift);
  if (now === null) {
    throw new UnreadableWorkbook(
      `the rows of the table ${name} were all removed, which can only be written by Excel: undo that and save again`,
    );
  }
  if (widthOf(now) !== widthOf(range)) {
    throw new UnreadableWorkbook(
      `columns were put into the table ${name} or taken out of it, which can only be written by Excel: undo that and save again`,
    );
  }
  return writeNodes(shiftNodes(nodes, own, shifts));
}

function widthOf(range: string): number {
  const [first = "", last = first] = range.split(":").map((cell) => cell.replace(/[^A-Z]/gi, ""));
  const number = (letters: string) => [...letters].reduce((sum, one) => sum * 26 + one.charCodeAt(0) - 64, 0);
  return number(last) - number(first);
}

/** The line where a picture's edge lies: the next that is left where its own was taken out. */
function edge(map: LineMap, line: number): number {
  return map.to(line) ?? map.range(line, 1_048_575)?.first ?? line;
}

function shiftAnchors(xml: string, shift: SheetShift): string {
  const nodes = xmlNodes(xml);
  const visit = (list: readonly (XmlNode | string)[]): void => {
    for (const node of list) {
      if (typeof node === "string") continue;
      if (node.name !== "from" && node.name !== "to") {
        visit(node.inside);
        continue;
      }
      for (const line of node.inside) {
        if (typeof line === "string" || (line.name !== "row" && line.name !== "col")) continue;
        const map = line.name === "row" ? shift.rows : shift.columns;
        line.inside.splice(0, line.inside.length, String(edge(map, Number(line.inside.join("")))));
      }
    }
  };
  visit(nodes);
  return writeNodes(nodes);
}

/** The old drawing language of notes is not always well-formed, so only its numbers are touched. */
function shiftShapes(vml: string, shift: SheetShift): string {
  return vml.replace(/<v:shape\b(?:(?!<\/v:shape>)[\s\S])*<\/v:shape>/g, (shape) => {
    const row = /<x:Row>\s*(\d+)\s*<\/x:Row>/.exec(shape);
    const column = /<x:Column>\s*(\d+)\s*<\/x:Column>/.exec(shape);
    if (row === null || column === null) return shape;
    const now = { row: shift.rows.to(Number(row[1])), column: shift.columns.to(Number(column[1])) };
    if (now.row === null || now.column === null) return "";
    return shape
      .replace(row[0], `<x:Row>${now.row}</x:Row>`)
      .replace(column[0], `<x:Column>${now.column}</x:Column>`)
      .replace(/(<x:Anchor>)([\d\s,]*)(<\/x:Anchor>)/, (_, open: string, list: string, close: string) => {
        const at = list.split(",").map(Number);
        if (at.length !== 8) return open + list + close;
        const [left = 0, , top = 0, , right = 0, , bottom = 0] = at;
        at[0] = edge(shift.columns, left);
        at[2] = edge(shift.rows, top);
        at[4] = edge(shift.columns, right);
        at[6] = edge(shift.rows, bottom);
        return open + at.join(", ") + close;
      });
  });
}

/** A chart's or a pivot table's words on where its numbers stand. */
export function shiftSources(xml: string, shifts: Shifts): string {
  const nodes = shiftNodes(xmlNodes(xml), { sheet: "", shift: null }, shifts);
  const visit = (list: readonly (XmlNode | string)[]): void => {
    for (const node of list) {
      if (typeof node === "string") continue;
      if (node.name === "worksheetSource") shiftSource(node, shifts);
      visit(node.inside);
    }
  };
  visit(nodes);
  return writeNodes(nodes);
}

function shiftSource(node: XmlNode, shifts: Shifts): void {
  const shift = shifts.get((attribute(node.attributes, "sheet") ?? "").toLowerCase());
  if (shift === undefined || shift.name === null) return;
  const range = attribute(node.attributes, "ref");
  const now = range === null ? null : shiftRanges(range, shift);
  node.attributes = withAttribute(node.attributes, "sheet", shift.name);
  if (now !== null) node.attributes = withAttribute(node.attributes, "ref", now);
}
