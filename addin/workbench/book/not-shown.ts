import { counted } from "../../../core/units/counted";
import { othersNotes } from "../../xlsx/patch/sheet-notes";
import type { Workbook } from "../../xlsx/read/open-workbook";
import type { SheetReading } from "../../xlsx/read/read-sheet";
import { findElement } from "../../xlsx/xml/xml-text";

/** What stands on a sheet of a file and the grid does not draw, by its element. */
const LEFT_OUT = [
  ["conditionalFormatting", "colours by condition"],
  ["drawing", "charts or pictures"],
] as const;

/** What of a file's sheets is kept in the file and not seen in the grid, with the sheets; blank where all is seen. */
export function notShown(
  readings: readonly Pick<SheetReading, "name" | "layout">[],
  notesOn: (sheet: string) => number,
): string {
  const parts = LEFT_OUT.flatMap(([element, words]) => {
    const sheets = readings.filter(({ layout }) => findElement(layout.tail, element) !== null);
    return sheets.length === 0 ? [] : [`${words} on ${sheets.map(({ name }) => name).join(", ")}`];
  });
  const notes = readings.flatMap(({ name }) => {
    const count = notesOn(name);
    return count === 0 ? [] : [`${counted(count, "note")} on ${name}`];
  });
  if (notes.length > 0) parts.push(`notes and comments in cells (${notes.join(", ")})`);
  return parts.length === 0 ? "" : `Kept in the file and not shown here: ${parts.join("; ")}`;
}

/** Cells of a sheet with a note or a comment that others wrote: those of ours are told where their row is coloured. */
export function notesOf({ parts, sheet }: Pick<Workbook, "parts" | "sheet">): (name: string) => number {
  return (name) => {
    const part = sheet(name)?.part;
    const comments =
      part === undefined
        ? undefined
        : parts.relationships(part).find(({ type }) => type === "comments")?.target;
    return comments === undefined || !parts.has(comments) ? 0 : othersNotes(parts.text(comments));
  };
}
