import { execFileSync, spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { annotatedCopy } from "../../addin/command-line/annotated-copy";
import { openWorkbook } from "../../addin/xlsx/read/open-workbook";
import { UnreadableWorkbook } from "../../addin/xlsx/unreadable-workbook";
import { runAudit } from "../../core/audit/run-audit";
import { resolveStandard, type Standard } from "../../core/standards";
import { copyFaults } from "../_support/copy-faults";
import { findOffice } from "../_support/libre-office";
import { gatherBooks } from "./gather-books";
import { putSchedule } from "./put-schedule";

const standard = resolveStandard("BS8666:2005") as Standard;
/** Beyond this the oracle's own parser takes minutes; the other programs look at larger ones too. */
const LARGEST = 100_000;
const BATCH = 40;

/**
 * Puts a schedule into each foreign workbook of a folder, checks it, and holds every copy against the
 * original: by the oracle, a second check, openpyxl and LibreOffice. Gives the faults.
 */
export async function soakForeignBooks(folder: string, most: number): Promise<string[]> {
  const faults: string[] = [];
  const tell = (...found: string[]): void => {
    for (const fault of found) console.log(fault);
    faults.push(...found);
  };
  const refusals = new Map<string, number>();
  const work = mkdtempSync(join(tmpdir(), "barwright-soak-"));
  const written: string[] = [];
  let large = 0;
  for (const name of ["before", "after"]) mkdirSync(join(work, name));
  const books = gatherBooks(folder).slice(0, most);
  for (const [index, path] of books.entries()) {
    if (index % 100 === 0)
      console.log(`${index} of ${books.length}, ${written.length} copies, ${faults.length} faults`);
    const refuse = (why: string): number => Number(refusals.set(why, (refusals.get(why) ?? 0) + 1).size);
    const bytes = new Uint8Array(readFileSync(path));
    let planted: ReturnType<typeof putSchedule>;
    try {
      planted = putSchedule(bytes);
    } catch {
      planted = null;
    }
    if (planted === null) {
      refuse("no sheet to put a schedule in");
      continue;
    }
    try {
      const once = checkedCopy(planted.bytes);
      const twice = checkedCopy(once.bytes);
      if (once.findings === twice.findings && once.isFound) {
        if (planted.size > LARGEST) large += 1;
        else for (const fault of await copyFaults(planted.bytes, once.bytes)) tell(`${path}: ${fault}`);
      } else tell(`${path}: ${once.isFound ? "a second check says otherwise" : "the schedule is not found"}`);
      const name = `${written.push(path) - 1}.${path.slice(-4)}`;
      writeFileSync(join(work, "before", name), planted.bytes);
      writeFileSync(join(work, "after", name), once.bytes);
    } catch (error) {
      if (error instanceof UnreadableWorkbook) refuse(error.message.replace(/\d+|"[^"]*"|xl\/\S+/g, "#"));
      else tell(`${path}: ${(error as Error).stack?.split("\n").slice(0, 3).join(" ")}`);
    }
  }
  console.log(
    `${books.length} workbooks, ${written.length} copies, ${large} too large for the oracle; refused:`,
    Object.fromEntries(refusals),
  );
  faults.push(...openpyxlFaults(work, written), ...officeFaults(work, written));
  return faults;
}

function checkedCopy(bytes: Uint8Array): { bytes: Uint8Array; findings: string; isFound: boolean } {
  const workbook = openWorkbook(bytes);
  const sheets = workbook.sheets.map(({ name }) => workbook.read(name));
  const report = runAudit({ sheets, standard });
  const findings = report.findings.map(
    ({ code, sheet, cell, message }) => `${code} ${sheet} ${cell} ${message}`,
  );
  return {
    bytes: new Uint8Array(Buffer.concat([...annotatedCopy(workbook, report, sheets).pieces])),
    findings: findings.join("\n"),
    isFound: findings.some((each) => each.startsWith("BEND101") && each.includes("least 64 mm")),
  };
}

const OPENS = `import sys, os, warnings
warnings.simplefilter("ignore")
import openpyxl
folder = sys.argv[1]
def opened(path):
    try:
        book = openpyxl.load_workbook(path)
        return [[s.title, [[c.value if not hasattr(c.value, "text") else c.value.text for c in r] for r in s.iter_rows()]] for s in book.worksheets]
    except Exception as error:
        return "cannot: " + type(error).__name__
for name in sorted(os.listdir(folder + "/after")):
    before, after = opened(folder + "/before/" + name), opened(folder + "/after/" + name)
    # of a strict file it reads no sheet
    if isinstance(before, str) or not before: continue
    if isinstance(after, str): print(name, after)
    else:
        kept = dict((t, v) for t, v in after)
        for title, values in before:
            now = kept.get(title)
            if now is None or [r for r in map(tuple, values)] != [tuple(r[:len(values[0])]) for r in now[:len(values)]]: print(name, "values of", title, "differ")
`;

/** Workbooks that openpyxl opens before and not after, or with other values. */
function openpyxlFaults(work: string, written: readonly string[]): string[] {
  const out = execFileSync("/usr/bin/python3", ["-c", OPENS, work], { maxBuffer: 1e9 }).toString();
  return out
    .split("\n")
    .filter(Boolean)
    .map((line) => `${written[Number.parseInt(line, 10)]}: openpyxl ${line}`);
}

/** Workbooks that LibreOffice converts before and not after. */
function officeFaults(work: string, written: readonly string[]): string[] {
  const office = findOffice();
  if (office === null) throw new Error("LibreOffice is not installed: apt-get install libreoffice-calc");
  const converted = (name: string, of: readonly string[]): Set<string> => {
    const out = join(work, `${name}-csv`);
    for (let at = 0; at < of.length; at += BATCH) {
      const files = of.slice(at, at + BATCH).map((each) => join(work, name, each));
      spawnSync(
        office,
        [
          `-env:UserInstallation=file://${join(work, "profile")}`,
          "--headless",
          "--norestore",
          "--convert-to",
          "csv",
          "--outdir",
          out,
          ...files,
        ],
        { timeout: 600_000, stdio: "ignore" },
      );
    }
    return new Set(of.filter((each) => existsSync(join(out, each.replace(/\w+$/, "csv")))));
  };
  const names = written.map((path, index) => `${index}.${path.slice(-4)}`);
  const after = converted("after", names);
  const missing = names.filter((name) => !after.has(name));
  const before = converted("before", missing);
  return missing
    .filter((name) => before.has(name))
    .map((name) => `${written[Number.parseInt(name, 10)]}: LibreOffice does not open the copy`);
}
