import { execFileSync } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** Where LibreOffice is; null where it is not installed. */
export function findOffice(): string | null {
  try {
    return execFileSync("sh", ["-c", "command -v soffice"]).toString().trim();
  } catch {
    return null;
  }
}

/**
 * The command that recalculates a workbook and saves it to `out`. LibreOffice does not recalculate other
 * programs' files unless its profile says so, so the profile in `folder` does.
 */
export function recalculateCommand(office: string, folder: string, file: string, out: string): string[] {
  const profile = join(folder, "profile");
  mkdirSync(join(profile, "user"), { recursive: true });
  writeFileSync(
    join(profile, "user", "registrymodifications.xcu"),
    '<?xml version="1.0" encoding="UTF-8"?><oor:items xmlns:oor="http://openoffice.org/2001/registry">' +
      '<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse">' +
      "<value>0</value></prop></item></oor:items>",
  );
  const convert = ["--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir", out, file];
  const quiet = ["--headless", "--norestore", "--nologo", `-env:UserInstallation=file://${profile}`];
  return [office, ...quiet, ...convert];
}
