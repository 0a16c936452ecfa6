import type { AddedSheet } from "../../workbook/added-sheet";
import type { SheetChanges } from "../../workbook/sheet-changes";
import { withDefinedNames } from "../read/defined-names";
import type { Workbook } from "../read/open-workbook";
import { UnreadableWorkbook } from "../unreadable-workbook";
import { DYNAMIC_ARRAY_METADATA } from "../write/new-workbook";
import { encodedPieces } from "../xml/encoded-pieces";
import { joined } from "../xml/plain-bytes";
import { attribute, findElement, lastClosingTag, rootTag, withAttribute, xmlTags } from "../xml/xml-text";
import { type ZipHost, ZipWriter } from "../zip/write-zip";
import type { BegunSheet } from "./begun-sheet";
import { withFilterName } from "./filter-name";
import { SPREADSHEET_KIND as KIND, PackageEdit } from "./package-edit";
import { RowPatch } from "./patch-rows";
import { columnStyles, patchedSheet } from "./patched-sheet";
import { putSheet } from "./put-sheet";
import { changedFrame } from "./sheet-frame";
import { SheetNotes } from "./sheet-notes";
import { PLAIN_STYLES, StylePatch } from "./style-patch";

/** What is to become of a workbook. What is not named keeps its bytes. */
export interface WorkbookChanges {
  /** by sheet name */
  readonly sheets?: ReadonlyMap<string, SheetChanges>;
  /** workbook-wide names: formula without the equals sign, null takes the name out */
  readonly names?: ReadonlyMap<string, string | null>;
  /** sheets put behind the others, or in the place of the sheet that `replaces` names */
  readonly added?: readonly (AddedSheet & { readonly replaces?: string })[];
  /** The results stored in the file hold although values are written: no recalculation at opening. */
  readonly keepsResults?: boolean;
}

/**
 * Bytes of the workbook with the changes made. Parts that no change concerns are copied as they lie in
 * the file, without being unpacked. Throws `UnreadableWorkbook` where a change cannot be made.
 */
export function patchWorkbook(workbook: Workbook, changes: WorkbookChanges, host?: ZipHost): Uint8Array {
  const pieces = [...patchInPieces(workbook, changes, host)];
  return joined(
    pieces,
    pieces.reduce((sum, piece) => sum + piece.length, 0),
  );
}

/** The same bytes in pieces, for a file too large to stand in memory twice; they can be gone through once. */
export function patchInPieces(
  workbook: Workbook,
  changes: WorkbookChanges,
  host?: ZipHost,
  /** a sheet of them that another thread rewrites already */
  begun: BegunSheet | null = null,
): Iterable<Uint8Array> {
  const { parts, workbookPart, stylesPart } = workbook;
  const edit = new PackageEdit(parts, workbookPart);
  const styles = begun?.styles ?? new StylePatch(stylesPart === null ? PLAIN_STYLES : parts.text(stylesPart));
  const zip = new ZipWriter({ checkSum: parts.archive.native?.crc32, ...host });
  const arrayMark = dynamicArrayMark(edit, workbookPart);
  let wroteValues = false;
  let removedFormula = false;
  const rewritten = new Set<string>();
  let takeBegun: (() => void) | null = null;
  for (const [name, change] of changes.sheets ?? []) {
    const listing = workbook.sheet(name);
    if (listing === undefined) throw new UnreadableWorkbook(`the workbook has no sheet "${name}"`);
    const layout = changedFrame(workbook.layout(listing), change, styles);
    const notes = new SheetNotes(edit, listing.part, layout.tail);
    if (change.clear === true) notes.removeOurs();
    const drawing = notes.add(change.notes ?? []);
    const patch = new RowPatch(change, styles, columnStyles(layout.head), arrayMark);
    const root = rootTag(layout.head);
    const tail =
      drawing === null || root === null
        ? layout.tail
        : withDrawing(layout.tail, root.prefix, edit.relationshipAttribute([root.attributes], drawing));
    if (change.filter !== undefined)
      edit.set(workbookPart, withFilterName(edit.text(workbookPart), name, change.filter));
    rewritten.add(listing.part);
    const rewrite = (): void =>
      zip.add(listing.part, patchedSheet(parts.pieces(listing.part), patch, { head: layout.head, tail }));
    if (begun?.sheet !== name) rewrite();
    else
      takeBegun = () => {
        const packed = begun.finish(tail);
        if (packed === null) rewrite();
        else zip.addPacked(listing.part, packed);
      };
    wroteValues ||= patch.wroteValues;
    removedFormula ||= patch.removedFormula;
  }
  for (const sheet of changes.added ?? []) {
    removedFormula ||= sheet.replaces !== undefined && holdsFormula(workbook, sheet.replaces);
    putSheet(edit, workbook, sheet, styles, arrayMark, sheet.replaces ?? null);
  }
  if (changes.names !== undefined && changes.names.size > 0) {
    edit.set(workbookPart, withDefinedNames(edit.text(workbookPart), changes.names));
  }
  if (wroteValues && changes.keepsResults !== true)
    edit.set(workbookPart, withFullCalculation(edit.text(workbookPart)));
  if (removedFormula) dropCalculationChain(edit, workbookPart);
  if (styles.isChanged && begun === null) putStyles(edit, workbook, styles);
  const texts = edit.changedTexts();
  const removed = edit.removedParts();
  for (const [name, entry] of parts.archive.entries) {
    if (!texts.has(name) && !rewritten.has(name) && !removed.has(name)) zip.copy(entry);
  }
  for (const [name, text] of texts) {
    zip.add(name, encodedPieces(text));
    // notes and findings of a long sheet are large: each goes once it is packed
    texts.delete(name);
  }
  if (begun !== null && stylesPart !== null) {
    takeBegun?.();
    if (styles.isChanged) zip.add(stylesPart, encodedPieces(styles.text()));
  }
  return zip.finishInPieces(parts.archive.entries.keys());
}

function holdsFormula({ parts, sheet }: Workbook, name: string): boolean {
  const listing = sheet(name);
  return listing !== undefined && /<(?:[\w.-]+:)?f[\s>]/.test(parts.text(listing.part));
}

/** Elements that stand behind `legacyDrawing` in a worksheet (ECMA-376-1:2016, 18.3.1.99, from memory). */
const BEHIND_DRAWING = [
  "legacyDrawingHF",
  "drawingHF",
  "picture",
  "oleObjects",
  "controls",
  "webPublishItems",
  "tableParts",
  "extLst",
  "AlternateContent",
];

function withDrawing(tail: string, prefix: string, relationship: string): string {
  let at = lastClosingTag(tail, `${prefix}worksheet`)?.start ?? tail.length;
  let depth = 0;
  for (const tag of xmlTags(tail)) {
    if (depth === 0 && tag.kind !== "close" && BEHIND_DRAWING.includes(tag.name)) {
      at = tag.start;
      break;
    }
    // one that leads nowhere makes room
    if (depth === 0 && tag.kind === "empty" && tag.name === "legacyDrawing")
      return `${tail.slice(0, tag.start)}<${prefix}legacyDrawing ${relationship}/>${tail.slice(tag.end)}`;
    if (tag.kind === "open") depth += 1;
    else if (tag.kind === "close" && tag.name !== "sheetData") depth -= 1;
  }
  return `${tail.slice(0, at)}<${prefix}legacyDrawing ${relationship}/>${tail.slice(at)}`;
}

/** Results that depend on a written value are stale: the next program to open the file recalculates. */
function withFullCalculation(xml: string): string {
  const calculation = findElement(xml, "calcPr");
  if (calculation !== null) {
    const attributes = withAttribute(calculation.tag.attributes, "fullCalcOnLoad", "1");
    return `${xml.slice(0, calculation.start)}<${calculation.tag.prefix}calcPr${attributes}/>${xml.slice(calculation.end)}`;
  }
  const before = ["sheets", "functionGroups", "externalReferences", "definedNames"];
  const at = before.reduce((end, name) => Math.max(end, findElement(xml, name)?.end ?? 0), 0);
  const prefix = findElement(xml, "workbook")?.tag.prefix ?? "";
  return `${xml.slice(0, at)}<${prefix}calcPr fullCalcOnLoad="1"/>${xml.slice(at)}`;
}

/** A chain that names a cell without a formula makes Excel call the file damaged; it rebuilds a missing one. */
function dropCalculationChain(edit: PackageEdit, workbookPart: string): void {
  const chain = edit.parts.relationships(workbookPart).find((one) => one.type === "calcChain")?.target;
  if (chain === undefined) return;
  edit.unrelate(workbookPart, chain);
  edit.remove(chain);
}

function putStyles(edit: PackageEdit, workbook: Workbook, styles: StylePatch): void {
  if (workbook.stylesPart !== null) edit.set(workbook.stylesPart, styles.text());
  else {
    const part = edit.add("xl/styles.xml", styles.text(), `${KIND}.styles+xml`);
    edit.relate(workbook.workbookPart, "styles", part);
  }
}

/** Index of the cell metadata that marks a dynamic array, added to the workbook when first asked for. */
function dynamicArrayMark(edit: PackageEdit, workbookPart: string): () => number {
  let mark: number | null = null;
  return () => {
    mark ??= findOrAddMark(edit, workbookPart);
    return mark;
  };
}

function findOrAddMark(edit: PackageEdit, workbookPart: string): number {
  const part = edit.parts.relationships(workbookPart).find((one) => one.type === "sheetMetadata")?.target;
  const name = part === undefined ? null : edit.parts.nameOf(part);
  if (name === null) {
    const xml = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n${DYNAMIC_ARRAY_METADATA}`;
    const added = edit.add("xl/metadata.xml", xml, `${KIND}.sheetMetadata+xml`);
    edit.relate(workbookPart, "sheetMetadata", added);
    return 1;
  }
  const xml = edit.text(name);
  const types = [...xmlTags(xml)].filter((tag) => tag.name === "metadataType" && tag.kind !== "close");
  const type = types.findIndex((tag) => attribute(tag.attributes, "name") === "XLDAPR") + 1;
  const list = findElement(xml, "cellMetadata");
  const records = list === null ? [] : [...xmlTags(xml.slice(list.innerStart, list.innerEnd))];
  const blocks = records.filter((tag) => tag.name === "rc" && tag.kind !== "close");
  const found = blocks.findIndex((tag) => attribute(tag.attributes, "t") === String(type));
  if (type === 0 || found < 0) {
    throw new UnreadableWorkbook(
      "the workbook's cell metadata is of a kind that formulas cannot be added to",
    );
  }
  return found + 1;
}
