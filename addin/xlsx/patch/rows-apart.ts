import type { FlagBand } from "../../workbook/sheet-changes";
import { type Packed, packPieces, type ZipHost } from "../zip/write-zip";
import { inflateEntry, type ZipArchive, type ZipEntry } from "../zip/zip-archive";
import { RowPatch } from "./patch-rows";
import { columnStyles, patchedSheet } from "./patched-sheet";
import { StylePatch } from "./style-patch";

/** A sheet whose rows are only to be coloured, as plain data that another thread can be given. */
export interface RowsTask {
  readonly entry: Omit<ZipEntry, "compressed">;
  /** the part's text before its rows */
  readonly head: string;
  readonly flags: readonly FlagBand[];
  /** the styles part as it was before any of them */
  readonly styles: string;
}

/** The sheet's part, rewritten and packed, and what its styles part became. */
export interface RowsDone {
  readonly packed: Packed;
  readonly styles: string;
}

/** Another thread that rewrites and packs a sheet while this one makes what else is to stand in the copy. */
export interface RowsApart {
  /** What it made, given the part's text after its rows; null where it could not, or stopped. */
  finish(tail: string): RowsDone | null;
}

/** What the other thread does; `tail` waits until it is known. */
export function rowsDone(
  { entry, head, flags, styles: before }: RowsTask,
  { archive, compressed, tail }: { archive: ZipArchive; compressed: () => Uint8Array; tail: () => string },
  host: ZipHost,
): { readonly packed: Omit<Packed, "compressed">; readonly styles: string } {
  const styles = new StylePatch(before);
  const noFormula = (): number => {
    throw new Error("a colour is no formula");
  };
  const patch = new RowPatch({ flags }, styles, columnStyles(head), noFormula);
  const layout = {
    head,
    get tail() {
      return tail();
    },
  };
  const part = {
    ...entry,
    get compressed() {
      return compressed();
    },
  };
  const { compressed: _, ...packed } = packPieces(
    patchedSheet(inflateEntry(archive, part), patch, layout),
    host,
  );
  return { packed, styles: styles.text() };
}
