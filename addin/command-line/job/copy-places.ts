import { existsSync, mkdirSync } from "node:fs";
import { dirname, join, relative, resolve, sep } from "node:path";
import { InputRefused } from "../input-refused";
import { isWorkbookName, spelling, statOf, writeCopy } from "../write-copy";
import type { BooksNamed } from "./books-named";

/** The place of each book's copy, by the book's path. */
export type CopyPlaces = ReadonlyMap<string, string>;

/**
 * Places for copies of many books under one folder, each as its book lies below the folder that all have in
 * common. Refuses, before anything is written, a folder that is among the books or holds one, and a copy that
 * would take the place of any book, by whatever path or link it is reached.
 */
export function copyPlaces({ paths, folders }: BooksNamed, out: string): CopyPlaces {
  refuseFolder(out);
  const place = spelling(out);
  for (const folder of folders)
    if (isWithin(place, spelling(folder)))
      throw new InputRefused(`--out ${out} lies in ${folder}, which is read: name a folder beside it`);
  for (const path of paths)
    if (isWithin(spelling(path), place))
      throw new InputRefused(
        `--out ${out} holds ${path}, which is read: name a folder without books of the job`,
      );
  const common = commonFolder(paths);
  const places = new Map(paths.map((path) => [path, join(out, relative(common, resolve(path)))]));
  const nodes = new Set(paths.flatMap((path) => nodeOf(path) ?? []));
  const taken = new Map<string, string>();
  for (const [path, copy] of places) {
    if (nodes.has(nodeOf(copy) ?? ""))
      throw new InputRefused(`${copy}, the copy of ${path}, is one of the books: name another folder`);
    const other = taken.get(spelling(copy));
    if (other !== undefined)
      throw new InputRefused(`the copies of ${other} and ${path} would be one file: copy them apart`);
    taken.set(spelling(copy), path);
  }
  return places;
}

/** Writes a copy in its place; the folders below the one that was named are made. */
export function writeInPlace(copy: string, pieces: Parameters<typeof writeCopy>[1]): void {
  try {
    mkdirSync(dirname(copy), { recursive: true });
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    throw new InputRefused(`${dirname(copy)} cannot be made (${code}): no copy was written`);
  }
  writeCopy(copy, pieces);
}

function refuseFolder(out: string): void {
  const stat = statOf(out);
  if (stat?.isDirectory() === true) return;
  if (stat !== null || isWorkbookName(out))
    throw new InputRefused(`--out ${out}: copies of several books go into a folder: name one`);
  if (!existsSync(dirname(resolve(out))))
    throw new InputRefused(`there is no folder ${dirname(out)} to write to`);
}

const isWithin = (path: string, folder: string): boolean =>
  path === folder || path.startsWith(folder.endsWith(sep) ? folder : folder + sep);

function nodeOf(path: string): string | null {
  const stat = statOf(path);
  return stat === null || stat.ino === 0n ? null : `${stat.dev}:${stat.ino}`;
}

function commonFolder(paths: readonly string[]): string {
  let common = dirname(resolve(paths[0] ?? "."));
  for (const path of paths)
    while (!isWithin(resolve(path), common) && common !== dirname(common)) common = dirname(common);
  return common;
}
