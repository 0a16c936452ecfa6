import type { Worksheet } from "@univerjs/core";
import type { SheetContent } from "../../workbook/workbook-port";

/** What a sheet of the grid remembers of its writing: that it is ours to write whole, and its looks. */
export interface AddedMark {
  readonly barwright: "added";
  readonly content: SheetContent;
}

/** What the pane wrote on a sheet; null where it wrote none of it. */
export function addedContent(worksheet: Worksheet): SheetContent | null {
  const mark = worksheet.getConfig().custom as Partial<AddedMark> | undefined;
  return mark?.barwright === "added" ? (mark.content ?? null) : null;
}

export function addedMark(content: SheetContent): AddedMark {
  return { barwright: "added", content };
}
