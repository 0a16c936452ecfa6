import { parseAddress } from "../../workbook/cell-address";
import { constantText } from "../../workbook/defined-name";
import { settingOfPieces } from "../../workbook/setting-pieces";
import { UnreadableWorkbook } from "../unreadable-workbook";
import type { Workbook } from "./open-workbook";

/**
 * The text that a workbook keeps under a defined name and those that go on from it, as a constant or in
 * the cell that a name points at; null where it keeps none. Refuses a name that stands for anything else.
 */
export function workbookSetting(workbook: Workbook, name: string): string | null {
  return settingOfPieces(name, (piece) => textOfName(workbook, piece));
}

function textOfName(workbook: Workbook, name: string): string | null {
  const wanted = name.toLowerCase();
  const found = workbook.names.find((one) => one.sheetIndex === null && one.name.toLowerCase() === wanted);
  if (found === undefined) return null;
  const text = constantText(found.refersTo);
  if (text !== null) return text;
  const reference = /^=?(?:'((?:[^']|'')+)'|([^'!]+))!(.+)$/.exec(found.refersTo.trim());
  const place = parseAddress(reference?.[3] ?? "");
  const sheet = (reference?.[1] ?? reference?.[2] ?? "").replaceAll("''", "'");
  if (place === null || workbook.sheet(sheet) === undefined) {
    throw new UnreadableWorkbook(
      `the workbook's name ${name} stands for ${found.refersTo}: give it a text such as ="BS8666:2005"`,
    );
  }
  const value = workbook.read(sheet).valueAt(place.row, place.column);
  return typeof value === "string" || typeof value === "number" ? String(value) : null;
}
