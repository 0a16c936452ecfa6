import { existsSync, readdirSync, statSync } from "node:fs";
import { basename, join } from "node:path";
import { globSync, isDynamicPattern } from "tinyglobby";
import { counted } from "../../../core/units/counted";
import { InputRefused } from "../input-refused";
import { isSameFile } from "../write-copy";

/** The files that a command's arguments name. */
export interface BooksNamed {
  readonly paths: readonly string[];
  /** a folder, a pattern or several files are a job, even where it has one book */
  readonly isJob: boolean;
  /** the folders among what was given */
  readonly folders: readonly string[];
  readonly notes: readonly string[];
}

const IN_FOLDER = "**/*.{xlsx,xlsm,xltx,xltm,csv,tsv}";
/** Files that Excel and LibreOffice put beside an open workbook, and hidden ones. */
const BESIDE = /^(?:~\$|\.)/;

/** Files, folders with all below them, and patterns such as "north/*.xlsx", in order and each once. */
export function booksNamed(given: readonly string[], targets: readonly string[] = []): BooksNamed {
  if (given.length === 0) throw new InputRefused("name a .xlsx or .csv file, a folder or a pattern");
  const notes: string[] = [];
  const found: string[] = [];
  const folders: string[] = [];
  let isJob = given.length > 1;
  for (const name of given) {
    const kind = kindOf(name);
    if (kind === "file") {
      found.push(name);
      continue;
    }
    isJob = true;
    if (kind === "folder") {
      folders.push(name);
      notes.push(...passedOver(name));
    }
    const paths = (kind === "folder" ? inFolder(name) : matching(name)).filter((path) => {
      const isTarget = targets.some((target) => existsSync(target) && isSameFile(target, path));
      if (isTarget) notes.push(`${path} is to be written and is not read`);
      return !isTarget && !BESIDE.test(basename(path));
    });
    if (paths.length === 0)
      throw new InputRefused(`${name} ${kind === "folder" ? "holds" : "names"} no .xlsx, .xlsm or .csv file`);
    found.push(...paths);
  }
  return { paths: [...new Set(found)], isJob, folders, notes };
}

/** Whether a name stands for a job and not for one file. */
export function isFolderOrPattern(name: string): boolean {
  return kindOf(name) !== "file";
}

function kindOf(name: string): "file" | "folder" | "pattern" {
  const stat = statSync(name, { throwIfNoEntry: false });
  if (stat !== undefined) return stat.isDirectory() ? "folder" : "file";
  // a file that is not there is told by name where it is opened
  return isDynamicPattern(name) ? "pattern" : "file";
}

function inFolder(folder: string): string[] {
  try {
    readdirSync(folder);
  } catch (error) {
    throw new InputRefused(`${folder} cannot be read (${(error as NodeJS.ErrnoException).code})`);
  }
  return globSync(IN_FOLDER, { cwd: folder, caseSensitiveMatch: false })
    .sort(inOrder)
    .map((path) => join(folder, path));
}

/** Says which files of a folder are not read for their kind, other spreadsheets first. */
function passedOver(folder: string): string[] {
  const others = globSync("**/*", { cwd: folder, ignore: IN_FOLDER, caseSensitiveMatch: false })
    .filter((path) => !BESIDE.test(basename(path)))
    .sort(inOrder);
  if (others.length === 0) return [];
  const sheets = others.filter((path) => OTHER_SHEET.test(path));
  const named = [...sheets, ...others.filter((path) => !sheets.includes(path))].slice(0, MOST_NAMED);
  const more = others.length > named.length ? ` and ${others.length - named.length} more` : "";
  const remedy = sheets.length === 0 ? "" : "; a list among them is read once it is saved as .xlsx";
  const are = others.length === 1 ? "is" : "are";
  return [
    `${folder}: ${counted(others.length, "file")} of another kind ${are} not read: ${named.join(", ")}${more}${remedy}`,
  ];
}

const OTHER_SHEET = /\.(?:xls|xlsb|xlw|ods|fods|numbers)$/i;
const MOST_NAMED = 5;

function matching(pattern: string): string[] {
  return globSync(pattern.replaceAll("\\", "/"), { cwd: process.cwd(), expandDirectories: false }).sort(
    inOrder,
  );
}

/** The same on every machine: by characters, and by no language. */
function inOrder(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
