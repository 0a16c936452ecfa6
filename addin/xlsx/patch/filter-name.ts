import { addressAt } from "../../../core/schedule/cell-address";
import type { SheetFilter } from "../../workbook/sheet-changes";
import { readDefinedNames, withDefinedNames } from "../read/defined-names";
import { sheetTags } from "../read/open-workbook";
import { attribute } from "../xml/xml-text";

const FILTER_NAME = "_xlnm._FilterDatabase";

/**
 * The workbook part after a sheet's filter was changed or taken away: the hidden name that tells its range
 * beside the sheet, where the file has one, goes with it.
 */
export function withFilterName(workbookXml: string, sheet: string, filter: SheetFilter | null): string {
  const index = sheetTags(workbookXml).findIndex(({ attributes }) => attribute(attributes, "name") === sheet);
  const isNamed = readDefinedNames(workbookXml).some(
    ({ name, sheetIndex }) => name === FILTER_NAME && sheetIndex === index,
  );
  if (!isNamed) return workbookXml;
  return withDefinedNames(workbookXml, new Map([[FILTER_NAME, rangeOf(sheet, filter)]]), index);
}

function rangeOf(sheet: string, filter: SheetFilter | null): string | null {
  if (filter === null) return null;
  const { top, left, bottom, right } = filter.range;
  const corner = (row: number, column: number): string =>
    addressAt(row, column).replace(/([A-Z]+)(\d+)/, "$$$1$$$2");
  return `'${sheet.replaceAll("'", "''")}'!${corner(top, left)}:${corner(bottom, right)}`;
}
