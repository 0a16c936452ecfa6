import { settingsToText } from "../../core/audit/settings-text";
import type { CheckedBook } from "../../core/jobs";
import { textConstant } from "../workbook/defined-name";
import { SETTING_NAMES } from "../workbook/setting-names";
import { settingPieces } from "../workbook/setting-pieces";
import type { Workbook } from "../xlsx/read/open-workbook";
import { type AnnotatedCopy, annotatedCopy } from "./annotated-copy";
import { copyThread } from "./copy-thread";
import { nativeDeflater } from "./native-deflater";
import { pieceSpool } from "./piece-spool";
import type { FileThere } from "./unpacking-thread";

/**
 * The copy of a checked workbook with its findings marked, to be written to `out`, and what is to be said of it;
 * columns that were pointed at stay in it.
 */
export function markedCopy(
  workbook: Workbook,
  checked: CheckedBook,
  out: string,
  {
    keepsSettings = false,
    onCellsRead,
    there = null,
  }: {
    readonly keepsSettings?: boolean;
    readonly onCellsRead?: () => void;
    /** the workbook's file, where another thread may read it again */
    readonly there?: FileThere | null;
  } = {},
): AnnotatedCopy {
  const { pieces, kept } = annotatedCopy(workbook, checked.report, checked.all, {
    host: { newDeflater: nativeDeflater, newStore: () => pieceSpool(out) },
    known: checked,
    ...(there !== null && { beginRows: copyThread(there, out) }),
    ...(onCellsRead !== undefined && { onCellsRead }),
    ...(keepsSettings && { names: settingNames(checked.settings) }),
  });
  const words = (name: string): string =>
    `sheet "${name}" has been written on since an earlier check: it stays as it is`;
  return { pieces, kept: kept.map(words) };
}

/** As every surface keeps what a workbook's user decided. */
function settingNames(settings: CheckedBook["settings"]): ReadonlyMap<string, string> {
  const text = settingsToText(settings);
  const pieces = text === null ? [] : [...settingPieces(SETTING_NAMES.audit, text)];
  return new Map(pieces.map(([name, piece]) => [name, textConstant(piece)]));
}
