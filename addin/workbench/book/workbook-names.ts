import type { OpenBook } from "./sheet-now";

/** Names of the whole workbook, and what each stands for. */
export function workbookNames(open: OpenBook): ReadonlyMap<string, string> {
  return new Map(
    open
      .getDefinedNames()
      .filter((name) => name.isWorkbookScope() && !name.getName().startsWith("_xlnm"))
      .map((name) => [name.getName(), name.getFormulaOrRefString().replace(/^=/, "")]),
  );
}
