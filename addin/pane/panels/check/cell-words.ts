import type { CellContent } from "../../engine/audit-view";

/** What a cell holds, a text in quotation marks so that it is not taken for the number it looks like. */
export function cellWords(content: CellContent): string {
  if (content === null || content === "") return "blank";
  return typeof content === "string" ? `\u201c${content}\u201d` : String(content);
}
