import { execFileSync, spawn } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { openWorkbook } from "../../addin/xlsx/read/open-workbook";
import { copyFaults } from "./copy-faults";

/** What a run of the command line left behind. */
export interface CommandRun {
  readonly exit: number | null;
  readonly out: string;
  readonly err: string;
}

const script = fileURLToPath(new URL("../../addin/command-line/build.mjs", import.meta.url));
let bundle: string | null = null;

/** The command line bundled as a user gets it, made once for the process that asks. */
export function barwrightBundle(): string {
  if (bundle === null) {
    bundle = join(mkdtempSync(join(tmpdir(), "barwright-")), "barwright.mjs");
    execFileSync(process.execPath, [script, bundle]);
  }
  return bundle;
}

/** Runs the bundle as a child process. A workbook that it wrote is held against the one it was made of. */
export function barwright(args: readonly string[], input = ""): Promise<CommandRun> {
  const before = stampOf(outOf(args));
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [barwrightBundle(), ...args]);
    const out: Buffer[] = [];
    const err: Buffer[] = [];
    child.stdout.on("data", (piece: Buffer) => out.push(piece));
    child.stderr.on("data", (piece: Buffer) => err.push(piece));
    child.on("error", reject);
    child.on("close", (exit) => {
      const run = { exit, out: Buffer.concat(out).toString(), err: Buffer.concat(err).toString() };
      refuseFaultyCopy(args, before).then(() => resolve(run), reject);
    });
    child.stdin.end(input);
  });
}

/** Commands that write values into cells of the book's own. */
const WRITES_CELLS = ["recalc", "cutplan"];
/** Beyond this a test that means speed, not shape. */
const LARGEST = 2_000_000;

async function refuseFaultyCopy(args: readonly string[], before: string | null): Promise<void> {
  const out = outOf(args);
  const book = args.slice(1).find((arg, index) => BOOK.test(arg) && args[index] !== "--out");
  if (out === null || book === undefined || stampOf(out) === before || !existsSync(book)) return;
  const original = readFileSync(book);
  if (original.length > LARGEST) return;
  const copy = readFileSync(out);
  // the workbook of a job is no copy of any book
  if (openWorkbook(copy).sheets[0]?.name === "Job") return;
  const sheets = WRITES_CELLS.includes(args[0] ?? "") ? openWorkbook(original).sheets : [];
  const faults = await copyFaults(original, copy, new Set(["Findings", ...sheets.map(({ name }) => name)]));
  if (faults.length > 0)
    throw new Error(`${args.join(" ")} wrote a faulty copy: ${faults.slice(0, 9).join("; ")}`);
}

const BOOK = /\.xls[xm]$/i;

function outOf(args: readonly string[]): string | null {
  const out = args[args.indexOf("--out") + 1] ?? "";
  return args.includes("--out") && BOOK.test(out) ? out : null;
}

/** Changes when the file is written; null where there is none. */
function stampOf(path: string | null): string | null {
  if (path === null || !existsSync(path)) return null;
  const { mtimeMs, ino } = statSync(path);
  return `${mtimeMs} ${ino}`;
}
