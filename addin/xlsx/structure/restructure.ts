import { PackageEdit } from "../patch/package-edit";
import { partsOnlyOf } from "../patch/parts-only-of";
import type { Workbook } from "../read/open-workbook";
import { relationshipsPart } from "../read/package-parts";
import { UnreadableWorkbook } from "../unreadable-workbook";
import { encodeXml } from "../xml/encode-xml";
import { wholeText } from "../xml/encoded-pieces";
import { writeNodes, type XmlNode, xmlNodes } from "../xml/xml-nodes";
import { attribute, decodeXml, withAttribute } from "../xml/xml-text";
import { ZipWriter } from "../zip/write-zip";
import { LineMap } from "./line-map";
import { shiftBelongings, shiftSources } from "./shift-belongings";
import { type SheetShift, type Shifts, shiftFormula } from "./shift-references";
import { shiftSheet } from "./shift-sheet";

/** One sheet of the file as it is to stand; those that are not named are deleted. */
export interface SheetPlan {
  /** the sheet's name in the file */
  readonly was: string;
  readonly name: string;
  readonly visible: boolean;
  readonly rows: LineMap;
  readonly columns: LineMap;
}

/**
 * Bytes of the workbook after its sheets were renamed, moved, deleted, and rows and columns came or went:
 * formulas, names, formats by condition, notes, tables, charts follow. Throws `UnreadableWorkbook` where a
 * part cannot follow.
 */
export function restructured(workbook: Workbook, plan: readonly SheetPlan[]): Uint8Array {
  const { parts, workbookPart } = workbook;
  const edit = new PackageEdit(parts, workbookPart);
  const shifts: Shifts = new Map(
    workbook.sheets.map(({ name }): [string, SheetShift] => {
      const now = plan.find(({ was }) => was === name);
      const gone = { name: null, rows: LineMap.unchanged, columns: LineMap.unchanged };
      return [name.toLowerCase(), now ?? gone];
    }),
  );
  for (const { name, part } of workbook.sheets) {
    const shift = shifts.get(name.toLowerCase());
    if (shift === undefined || shift.name === null) {
      removeSheet(edit, workbookPart, part);
      continue;
    }
    edit.set(part, shiftSheet(edit.text(part), name, shift, shifts));
    if (!shift.rows.isUnchanged || !shift.columns.isUnchanged)
      shiftBelongings(edit, part, name, shift, shifts);
  }
  for (const part of parts.archive.entries.keys()) {
    if (!edit.has(part) || !/^\/?xl\/(charts\/|pivotCache\/pivotCacheDefinition).*\.xml$/i.test(part))
      continue;
    const text = edit.text(part);
    const shifted = shiftSources(text, shifts);
    if (shifted !== text) edit.set(part, shifted);
  }
  edit.set(workbookPart, workbookXml(edit.text(workbookPart), plan, shifts));
  const chain = parts.relationships(workbookPart).find(({ type }) => type === "calcChain")?.target;
  if (chain !== undefined) {
    edit.unrelate(workbookPart, chain);
    edit.remove(chain);
  }
  return written(workbook, edit);
}

function removeSheet(edit: PackageEdit, workbookPart: string, part: string): void {
  for (const own of partsOnlyOf(edit.parts, part)) {
    edit.remove(own);
    if (edit.parts.has(relationshipsPart(own))) edit.remove(relationshipsPart(own));
  }
  if (edit.parts.has(relationshipsPart(part))) edit.remove(relationshipsPart(part));
  edit.unrelate(workbookPart, part);
  edit.remove(part);
}

function written({ parts }: Workbook, edit: PackageEdit): Uint8Array {
  const zip = new ZipWriter();
  const texts = edit.changedTexts();
  const removed = edit.removedParts();
  for (const [name, entry] of parts.archive.entries) {
    if (!texts.has(name) && !removed.has(name)) zip.copy(entry);
  }
  for (const [name, text] of texts) zip.add(name, new TextEncoder().encode(wholeText(text)));
  return zip.finish(parts.archive.entries.keys());
}

const isElement =
  (name: string) =>
  (node: XmlNode | string): node is XmlNode =>
    typeof node !== "string" && node.name === name;

function workbookXml(xml: string, plan: readonly SheetPlan[], shifts: Shifts): string {
  const nodes = xmlNodes(xml);
  const root = nodes.find(isElement("workbook"));
  const list = root?.inside.find(isElement("sheets"));
  if (root === undefined || list === undefined)
    throw new UnreadableWorkbook("the workbook lists no sheets: it is damaged");
  const before = list.inside.filter(isElement("sheet"));
  const after = sheetList(before, plan, shifts);
  list.inside.splice(0, list.inside.length, ...after);
  const places = new Map(before.map((sheet, index) => [String(index), after.indexOf(sheet)]));
  const names = root.inside.find(isElement("definedNames"));
  if (names !== undefined) {
    const kept = names.inside.filter(isElement("definedName")).filter((name) => {
      const local = attribute(name.attributes, "localSheetId");
      const place = local === null ? 0 : (places.get(local) ?? -1);
      if (place < 0) return false;
      if (local !== null) name.attributes = withAttribute(name.attributes, "localSheetId", String(place));
      const text = decodeXml(name.inside.join(""));
      name.inside.splice(0, name.inside.length, encodeXml(shiftFormula(text, "", shifts)));
      return true;
    });
    names.inside.splice(0, names.inside.length, ...kept);
    if (kept.length === 0) root.inside.splice(root.inside.indexOf(names), 1);
  }
  for (const views of root.inside.filter(isElement("bookViews"))) {
    for (const view of views.inside.filter(isElement("workbookView"))) {
      const active = places.get(attribute(view.attributes, "activeTab") ?? "0") ?? -1;
      view.attributes = withAttribute(view.attributes, "activeTab", active > 0 ? String(active) : null);
      view.attributes = withAttribute(view.attributes, "firstSheet", null);
    }
  }
  return writeNodes(nodes);
}

/** Sheets in their new order; sheets that hold a chart alone stay behind the sheet that they stood behind. */
function sheetList(before: readonly XmlNode[], plan: readonly SheetPlan[], shifts: Shifts): XmlNode[] {
  const names = before.map((sheet) => (attribute(sheet.attributes, "name") ?? "").toLowerCase());
  const after: XmlNode[] = [];
  const putOthers = (from: number): void => {
    for (let at = from; at < before.length; at += 1) {
      const other = before[at];
      if (other === undefined || shifts.has(names[at] ?? "")) return;
      after.push(other);
    }
  };
  putOthers(0);
  for (const { was, name, visible } of plan) {
    const index = names.indexOf(was.toLowerCase());
    const sheet = before[index];
    if (sheet === undefined) continue;
    const state = attribute(sheet.attributes, "state");
    const isVisible = state === null || state === "visible";
    let attributes = withAttribute(sheet.attributes, "name", name);
    if (visible !== isVisible) attributes = withAttribute(attributes, "state", visible ? null : "hidden");
    sheet.attributes = attributes;
    after.push(sheet);
    putOthers(index + 1);
  }
  // those that stood behind a deleted sheet
  const left = before.filter((sheet, at) => !shifts.has(names[at] ?? "") && !after.includes(sheet));
  return [...after, ...left];
}
