import type { SheetReading } from "../../xlsx/read/read-sheet";
import { findElement } from "../../xlsx/xml/xml-text";

/** What stands on a sheet of a file and the grid does not draw, by its element. */
const LEFT_OUT = [
  ["conditionalFormatting", "colours by condition"],
  ["drawing", "charts or pictures"],
] as const;

/** What of a file's sheets is kept in the file and not seen in the grid, with the sheets; blank where all is seen. */
export function notShown(readings: readonly Pick<SheetReading, "name" | "layout">[]): string {
  const parts = LEFT_OUT.flatMap(([element, words]) => {
    const sheets = readings.filter(({ layout }) => findElement(layout.tail, element) !== null);
    return sheets.length === 0 ? [] : [`${words} on ${sheets.map(({ name }) => name).join(", ")}`];
  });
  return parts.length === 0 ? "" : `Kept in the file and not shown here: ${parts.join("; ")}`;
}
