import { parseRange } from "../../workbook/cell-address";
import type { FilteredColumn, SheetFilter } from "../../workbook/sheet-changes";
import { attribute, findElement, findElements, isTrue, xmlTags } from "../xml/xml-text";

/** The filter of a sheet, of what stands behind its rows; null where it has none. */
export function readSheetFilter(tail: string): SheetFilter | null {
  const views = findElement(tail, "customSheetViews");
  const outside = views === null ? tail : tail.slice(0, views.start) + tail.slice(views.end);
  const element = findElement(outside, "autoFilter");
  const range = element === null ? null : parseRange(attribute(element.tag.attributes, "ref") ?? "");
  if (element === null || range === null) return null;
  const inner = outside.slice(element.innerStart, element.innerEnd);
  const columns = [...findElements(inner, "filterColumn")].flatMap((column) =>
    readColumn(
      Number(attribute(column.tag.attributes, "colId")),
      inner.slice(column.innerStart, column.innerEnd),
    ),
  );
  return { range, columns };
}

function readColumn(column: number, xml: string): FilteredColumn[] {
  const custom = findElement(xml, "customFilters");
  const tags = [...xmlTags(xml)].filter(({ kind }) => kind !== "close");
  if (custom !== null) {
    const tests = tags
      .filter(({ name }) => name === "customFilter")
      .map(({ attributes }) => {
        const operator = attribute(attributes, "operator");
        return { value: attribute(attributes, "val") ?? "", ...(operator !== null && { operator }) };
      });
    return [{ column, custom: { and: isTrue(attribute(custom.tag.attributes, "and")), tests } }];
  }
  const filters = findElement(xml, "filters");
  if (filters === null) return [];
  const values = tags
    .filter(({ name }) => name === "filter")
    .map(({ attributes }) => attribute(attributes, "val") ?? "");
  return [{ column, values, ...(isTrue(attribute(filters.tag.attributes, "blank")) && { blank: true }) }];
}
