import { existsSync, writeFileSync } from "node:fs";
import { dirname, extname, resolve } from "node:path";
import type { Workbook } from "../xlsx/read/open-workbook";
import { InputRefused } from "./input-refused";

/** Refuses a copy that would take its original's place, or has no folder to lie in. */
export function refuseTarget(path: string, out: string): void {
  if (resolve(path) === resolve(out))
    throw new InputRefused("--out names the book itself: name another file");
  if (!existsSync(dirname(resolve(out))))
    throw new InputRefused(`there is no folder ${dirname(out)} to write to`);
}

/** Refuses a copy's name that says another kind of file than the book is: Excel would not open it. */
export function refuseKind(workbook: Workbook, out: string): void {
  const isMacro = workbook.parts.text("[Content_Types].xml").includes("macroEnabled");
  const kind = isMacro ? ".xlsm" : ".xlsx";
  if (extname(out).toLowerCase() === kind) return;
  throw new InputRefused(`--out ${out}: the copy is of the book's own kind, so name it ${kind}`);
}

export function writeCopy(path: string, bytes: Uint8Array): void {
  try {
    writeFileSync(path, bytes);
  } catch (error) {
    throw new InputRefused(`${path} cannot be written (${(error as NodeJS.ErrnoException).code})`);
  }
}
