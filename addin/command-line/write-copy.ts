import { createHash, randomBytes } from "node:crypto";
import {
  accessSync,
  type BigIntStats,
  closeSync,
  constants,
  existsSync,
  fchmodSync,
  fsyncSync,
  openSync,
  readdirSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from "node:fs";
import { hostname } from "node:os";
import { basename, dirname, extname, join, resolve } from "node:path";
import type { Workbook } from "../xlsx/read/open-workbook";
import { InputRefused } from "./input-refused";

/**
 * Refuses a copy that would take its original's place, by whatever path, link or spelling it is reached,
 * or that has no folder to lie in.
 */
export function refuseTarget(path: string, out: string): void {
  const folder = dirname(resolve(out));
  if (!existsSync(folder)) throw new InputRefused(`there is no folder ${dirname(out)} to write to`);
  if (isSameFile(path, out)) throw new InputRefused("--out names the book itself: name another file");
  if (statOf(out)?.isDirectory() === true)
    throw new InputRefused(`--out ${out} is a folder: name a file in it`);
  if (spelling(path) === spelling(out))
    throw new InputRefused(
      "--out differs from the book's own name in case alone, which is the same file on many disks: name another file",
    );
}

/** One and the same file, under two names or one: links lead to the same place, hard links to the same node. */
export function isSameFile(one: string, other: string): boolean {
  const [a, b] = [statOf(one), statOf(other)];
  if (a !== null && b !== null && a.ino !== 0n) return a.dev === b.dev && a.ino === b.ino;
  return resolve(one) === resolve(other);
}

export function statOf(path: string): BigIntStats | null {
  return statSync(path, { bigint: true, throwIfNoEntry: false }) ?? null;
}

/** Where a file lies, as a disk reads it that tells neither case nor how an accent is written. */
export function spelling(path: string): string {
  const folder = dirname(resolve(path));
  const whole = existsSync(path)
    ? realpathSync(path)
    : join(existsSync(folder) ? realpathSync(folder) : folder, basename(path));
  return whole.normalize("NFC").toLowerCase();
}

/** Words of a content type, and how a file of it is named. */
const KINDS = [
  ["template.macroEnabled", ".xltm"],
  ["template.main", ".xltx"],
  ["macroEnabled", ".xlsm"],
] as const;

/** Refuses a copy's name that says another kind of file than the book is: Excel would not open it. */
export function refuseKind(workbook: Workbook, out: string): void {
  const type = workbook.parts.contentType(workbook.workbookPart);
  const kind = KINDS.find(([word]) => type.includes(word))?.[1] ?? ".xlsx";
  if (extname(out).toLowerCase() === kind) return;
  throw new InputRefused(`--out ${out}: the copy is of the book's own kind, so name it ${kind}`);
}

/**
 * Writes a file beside its place and moves it there when it is whole: what stood there before is there
 * still where the disk is full or the program is stopped.
 */
export function writeCopy(path: string, content: Uint8Array | Iterable<Uint8Array>): void {
  const pieces = content instanceof Uint8Array ? [content] : content;
  try {
    const old = statOf(path);
    // a pipe or device has nothing to lose
    if (old !== null && !old.isFile()) {
      writePieces(openSync(path, "w"), pieces);
      return;
    }
    if (old !== null) accessSync(path, constants.W_OK);
    const place = old === null ? resolve(path) : realpathSync(path);
    const folder = dirname(place);
    takeAwayLeftovers(folder);
    const beside = partName(folder);
    try {
      writeWhole(beside, pieces, old === null ? null : Number(old.mode) & 0o777);
      renameSync(beside, place);
    } catch (error) {
      rmSync(beside, { force: true });
      throw error;
    }
  } catch (error) {
    throw new InputRefused(
      `${path} cannot be written (${(error as NodeJS.ErrnoException).code}): nothing was changed`,
    );
  }
}

/** Where what is being written lies until it is whole; one that was left behind is known by its name. */
export function partName(folder: string): string {
  return join(folder, `${OWN_PARTS}${process.pid}-${randomBytes(4).toString("hex")}.part`);
}

/** A folder may be shared: another machine's numbers of what runs say nothing here. */
const OWN_PARTS = `.barwright-${createHash("sha256").update(hostname()).digest("hex").slice(0, 8)}-`;

/** What a command that was stopped in the middle of its writing left behind; one that still runs writes on. */
function takeAwayLeftovers(folder: string): void {
  for (const name of readdirSync(folder)) {
    if (!name.startsWith(OWN_PARTS)) continue;
    const pid = Number(/^(\d{1,10})-[0-9a-f]{8}\.part$/.exec(name.slice(OWN_PARTS.length))?.[1]);
    if (Number.isNaN(pid) || isRunning(pid)) continue;
    try {
      rmSync(join(folder, name), { force: true });
    } catch {
      // somebody else's: it takes up room and does no harm
    }
  }
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code !== "ESRCH";
  }
}

function writeWhole(path: string, pieces: Iterable<Uint8Array>, mode: number | null): void {
  const file = openSync(path, "wx", 0o666);
  if (mode !== null) fchmodSync(file, mode);
  writePieces(file, pieces, true);
}

function writePieces(file: number, pieces: Iterable<Uint8Array>, isKept = false): void {
  try {
    for (const bytes of pieces) for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at);
    if (isKept) fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** Whether a file's name says a workbook that can be written. */
export const isWorkbookName = (path: string): boolean => /\.xls[xm]$/i.test(path);
