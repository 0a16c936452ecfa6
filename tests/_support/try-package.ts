import { annotatedCopy } from "../../addin/command-line/annotated-copy";
import { openWorkbook } from "../../addin/xlsx/read/open-workbook";
import { UnreadableWorkbook } from "../../addin/xlsx/unreadable-workbook";
import { runAudit } from "../../core/audit/run-audit";
import { resolveStandard, type Standard } from "../../core/standards";

const standard = resolveStandard("BS8666:2005") as Standard;

/** What came of a check of a package: the copy's bytes, or refused in words. Any other end is thrown on. */
export function tryPackage(bytes: Uint8Array): Uint8Array | "refused" {
  try {
    const workbook = openWorkbook(bytes);
    const sheets = workbook.sheets.map(({ name }) => workbook.read(name));
    const copy = Buffer.concat([...annotatedCopy(workbook, runAudit({ sheets, standard }), sheets).pieces]);
    const again = openWorkbook(copy);
    for (const { name } of again.sheets) again.read(name);
    return copy;
  } catch (error) {
    if (error instanceof UnreadableWorkbook) return "refused";
    throw error;
  }
}
