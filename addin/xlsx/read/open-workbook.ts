import type { DefinedName } from "../../workbook/defined-name";
import { ourNotes } from "../patch/sheet-notes";
import { UnreadableWorkbook } from "../unreadable-workbook";
import { attribute, findElement, isTrue, rootTag, type XmlTag, xmlTags } from "../xml/xml-text";
import type { FileBytes, NativeZip } from "../zip/zip-archive";
import type { ZipLimits } from "../zip/zip-limits";
import { type CellFormat, readCellStyles } from "./cell-styles";
import { readDefinedNames } from "./defined-names";
import { openParts, type PackageParts } from "./package-parts";
import { readSheet, type SheetLayout, type SheetReading } from "./read-sheet";
import { readSharedStrings, type SharedStrings } from "./shared-strings";
import { sheetPieces } from "./sheet-pieces";

/** A worksheet of the workbook and the part that it lies in. */
export interface SheetListing {
  readonly name: string;
  readonly visible: boolean;
  /** its state as the workbook says it; `very hidden` is not even offered to be shown */
  readonly visibility: "visible" | "hidden" | "very hidden";
  readonly part: string;
}

/** A workbook opened from its bytes. Sheets are read when asked for; nothing is written here. */
export interface Workbook {
  readonly bytes: Uint8Array;
  readonly parts: PackageParts;
  readonly workbookPart: string;
  readonly stylesPart: string | null;
  /** worksheets in the order of their tabs; chart and macro sheets are not among them */
  readonly sheets: readonly SheetListing[];
  readonly names: readonly DefinedName[];
  readonly formats: readonly CellFormat[];
  /** Dates count from 1904 instead of 1900. */
  readonly from1904: boolean;
  /** It asks to be calculated when it is opened: what its formulas' results were is not to be relied on. */
  readonly isDoubted: boolean;
  sheet(name: string): SheetListing | undefined;
  read(name: string, options?: { formulas?: boolean }): SheetReading;
  /** What stands about the rows of a sheet; known without a second pass once it was read. */
  layout(listing: SheetListing): SheetLayout;
  /** True where an earlier check left flags in the workbook's styles or notes on the sheet. */
  hasFlags(listing: SheetListing): boolean;
}

/** Opens an .xlsx or .xlsm workbook. Throws `UnreadableWorkbook` with the reason and the remedy. */
export function openWorkbook(of: Uint8Array | FileBytes, limits?: ZipLimits, native?: NativeZip): Workbook {
  const file = of instanceof Uint8Array ? { bytes: of } : of;
  const parts = openParts(file, limits, native);
  const root = parts.has("_rels/.rels") ? parts.relationships("") : [];
  const main = root.find((relationship) => relationship.type === "officeDocument")?.target;
  if (main === undefined || !parts.has(main)) {
    throw new UnreadableWorkbook(
      isOpenDocument(parts)
        ? "an OpenDocument spreadsheet (.ods): save it as .xlsx"
        : "not a workbook: the zip file holds no spreadsheet",
    );
  }
  if (main.endsWith(".bin")) throw new UnreadableWorkbook("a binary workbook (.xlsb): save it as .xlsx");
  const workbookPart = parts.nameOf(main)!;
  const xml = parts.text(workbookPart);
  if (rootTag(xml)?.name !== "workbook") {
    throw new UnreadableWorkbook("not a workbook: the file is an Office document of another kind");
  }
  const relationships = parts.relationships(workbookPart);
  const part = (type: string): string | null => {
    const target = relationships.find((relationship) => relationship.type === type)?.target;
    return target === undefined ? null : parts.nameOf(target);
  };
  const sheets: SheetListing[] = [];
  const isDoubted = asksForCalculation(xml);
  const from1904 = isTrue(attribute(findElement(xml, "workbookPr")?.tag.attributes ?? "", "date1904"));
  for (const tag of sheetTags(xml)) {
    const id = attribute(tag.attributes, "id");
    const relationship = relationships.find((one) => one.id === id);
    if (relationship !== undefined && relationship.type !== "worksheet") continue;
    const target = relationship === undefined ? null : parts.nameOf(relationship.target);
    if (target === null) {
      const name = attribute(tag.attributes, "name") ?? "";
      throw new UnreadableWorkbook(`not a whole workbook: the part of its sheet "${name}" is missing`);
    }
    const state = attribute(tag.attributes, "state");
    sheets.push({
      name: attribute(tag.attributes, "name") ?? "",
      visible: state === null || state === "visible",
      visibility: state === "veryHidden" ? "very hidden" : state === "hidden" ? "hidden" : "visible",
      part: target,
    });
  }
  if (sheets.length === 0) throw new UnreadableWorkbook("the workbook holds no worksheet");
  let strings: SharedStrings | null = null;
  const layouts = new Map<string, SheetLayout>();
  const formats = readCellStyles(parts, part("styles"), part("theme"));
  const sheet = (name: string) => sheets.find((one) => one.name === name);
  return {
    get bytes() {
      return file.bytes;
    },
    parts,
    workbookPart,
    stylesPart: part("styles"),
    sheets,
    formats,
    from1904,
    isDoubted,
    names: readDefinedNames(xml),
    sheet,
    read: (name, options = {}) => {
      const listing = sheet(name);
      if (listing === undefined) throw new UnreadableWorkbook(`the workbook has no sheet "${name}"`);
      strings ??= readSharedStrings(parts, part("sharedStrings"));
      const reading = readSheet({
        name,
        pieces: parts.pieces(listing.part),
        strings,
        formats,
        formulas: options.formulas ?? false,
        from1904,
        isDoubted,
      });
      layouts.set(listing.part, reading.layout);
      return reading;
    },
    layout: (listing) => {
      const known = layouts.get(listing.part);
      if (known !== undefined) return known;
      const layout = { head: "", tail: "" };
      for (const piece of sheetPieces(parts.pieces(listing.part))) {
        if (piece.kind !== "rows") layout[piece.kind] = piece.text;
      }
      layouts.set(listing.part, layout);
      return layout;
    },
    hasFlags: (listing) => {
      if (formats.some((format) => format.flag !== null)) return true;
      const comments = parts.relationships(listing.part).find((one) => one.type === "comments")?.target;
      return comments !== undefined && parts.has(comments) && ourNotes(parts.text(comments)).length > 0;
    },
  };
}

/** True where the file says that its results do not hold: it was written by a program that calculates nothing, or saved before it had. */
function asksForCalculation(workbookXml: string): boolean {
  const attributes = findElement(workbookXml, "calcPr")?.tag.attributes ?? "";
  const says = (name: string, usual: string): boolean => isTrue(attribute(attributes, name) ?? usual);
  if (says("fullCalcOnLoad", "0") || !says("calcCompleted", "1")) return true;
  return attribute(attributes, "calcMode") === "manual" && !says("calcOnSave", "1");
}

function isOpenDocument(parts: PackageParts): boolean {
  return parts.has("mimetype") && /opendocument/.test(parts.text("mimetype").slice(0, 200));
}

/** The sheets that a workbook part lists, in the order of their tabs. */
export function sheetTags(workbookXml: string): XmlTag[] {
  const list = findElement(workbookXml, "sheets");
  if (list === null) return [];
  const inner = workbookXml.slice(list.innerStart, list.innerEnd);
  return [...xmlTags(inner)].filter(({ name, kind }) => name === "sheet" && kind !== "close");
}
