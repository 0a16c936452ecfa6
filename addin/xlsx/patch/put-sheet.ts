import type { AddedSheet } from "../../workbook/added-sheet";
import { freeSheetName } from "../../workbook/free-sheet-name";
import type { StackedBars } from "../../workbook/stacked-bars";
import { chartDrawingXml, chartXml } from "../chart/chart-xml";
import { withDefinedNames } from "../read/defined-names";
import { sheetTags, type Workbook } from "../read/open-workbook";
import { relationshipsPart } from "../read/package-parts";
import { UnreadableWorkbook } from "../unreadable-workbook";
import { encodeXml } from "../xml/encode-xml";
import { attribute, findElement, insertInto, rootTag } from "../xml/xml-text";
import { addedSheetText } from "./added-sheet-xml";
import { type PackageEdit, SPREADSHEET_KIND } from "./package-edit";
import { partsOnlyOf } from "./parts-only-of";
import type { StylePatch } from "./style-patch";

const DRAWING = "application/vnd.openxmlformats-officedocument.drawing+xml";
const CHART = "application/vnd.openxmlformats-officedocument.drawingml.chart+xml";
/** The highest that a sheet may be numbered (ECMA-376-1:2016, 18.2.19, from memory). */
const LAST_SHEET_ID = 65_534;
const PRINT_NAMES = { area: "_xlnm.Print_Area", titles: "_xlnm.Print_Titles" } as const;

/**
 * Puts a sheet behind the workbook's own, or in the place of the one called `replaces`, whose drawing and
 * other parts of its own go with it.
 */
export function putSheet(
  edit: PackageEdit,
  workbook: Workbook,
  sheet: AddedSheet,
  styles: StylePatch,
  arrayMark: () => number,
  replaces: string | null,
): void {
  const { workbookPart } = workbook;
  const held = sheetNames(edit.text(workbookPart));
  const old = replaces === null ? undefined : workbook.sheet(replaces);
  const name = old?.name ?? freeSheetName(sheet.name, held);
  if (old !== undefined) {
    for (const part of partsOnlyOf(edit.parts, old.part)) {
      edit.remove(part);
      edit.remove(relationshipsPart(part));
    }
    edit.remove(relationshipsPart(old.part));
  }
  // the sheet names its drawing, and the drawing's relationship needs the sheet's part: the part comes first
  const part = old?.part ?? edit.add("xl/worksheets/sheet#.xml", "", `${SPREADSHEET_KIND}.worksheet+xml`);
  const { chart } = sheet;
  const drawing = chart === undefined ? null : addDrawing(edit, part, sheet, chart, name);
  edit.set(part, edit.inDialect(addedSheetText(sheet, name, styles, arrayMark, drawing)));
  if (old === undefined) register(edit, workbookPart, part, name);
  const index = old === undefined ? held.length : held.indexOf(name);
  if (index >= 0) {
    const names = printNames(sheet, name);
    edit.set(workbookPart, withDefinedNames(edit.text(workbookPart), names, index));
  }
}

/** The drawing with the sheet's chart; gives the attribute by which the sheet names it. */
function addDrawing(
  edit: PackageEdit,
  sheetPart: string,
  sheet: AddedSheet,
  chart: StackedBars,
  name: string,
): string {
  const cell = (row: number, column: number) => sheet.rows[row]?.[column]?.value ?? null;
  const chartPart = edit.add("xl/charts/chart#.xml", chartXml(chart, name, cell), CHART);
  const drawingPart = edit.add("xl/drawings/drawing#.xml", "", DRAWING);
  const chartId = edit.relate(drawingPart, "chart", chartPart);
  edit.set(drawingPart, edit.inDialect(chartDrawingXml(chart, chartId)));
  return edit.relationshipAttribute([], edit.relate(sheetPart, "drawing", drawingPart));
}

function register(edit: PackageEdit, workbookPart: string, part: string, name: string): void {
  const id = edit.relate(workbookPart, "worksheet", part);
  const xml = edit.text(workbookPart);
  const list = findElement(xml, "sheets");
  if (list === null) throw new UnreadableWorkbook("the workbook lists no sheets: it is damaged");
  const used = sheetTags(xml).map((tag) => Number(attribute(tag.attributes, "sheetId") ?? 0));
  const next = used.reduce((most, each) => (each > most && each < LAST_SHEET_ID ? each : most), 0) + 1;
  const about = [rootTag(xml)?.attributes ?? "", list.tag.attributes];
  const relationship = edit.relationshipAttribute(about, id);
  const line = `<${list.tag.prefix}sheet name="${encodeXml(name)}" sheetId="${next}" ${relationship}/>`;
  edit.set(workbookPart, insertInto(xml, "sheets", line));
}

/** Names in the order that names of single sheets count by. */
function sheetNames(xml: string): string[] {
  return sheetTags(xml).map((tag) => attribute(tag.attributes, "name") ?? "");
}

/** What is printed of a sheet and repeated on each page stands in names that every spreadsheet knows. */
function printNames({ print }: AddedSheet, name: string): Map<string, string | null> {
  const sheet = `'${name.replaceAll("'", "''")}'!`;
  if (print === undefined) return new Map();
  const fixed = (range: string): string => sheet + range.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
  return new Map([
    [PRINT_NAMES.area, print.areas.map(fixed).join(",")],
    [PRINT_NAMES.titles, `${sheet}$1:$${print.titleRows}`],
  ]);
}
