import type { CheckedBook } from "../../core/jobs";
import type { Workbook } from "../xlsx/read/open-workbook";
import { type AnnotatedCopy, annotatedCopy } from "./annotated-copy";
import { nativeDeflater } from "./native-deflater";

/** The copy of a checked workbook with its findings marked, and what is to be said of it. */
export function markedCopy(workbook: Workbook, checked: CheckedBook): AnnotatedCopy {
  const { pieces, kept } = annotatedCopy(workbook, checked.report, checked.all, {
    newDeflater: nativeDeflater,
    known: checked,
  });
  const words = (name: string): string =>
    `sheet "${name}" has been written on since an earlier check: it stays as it is`;
  return { pieces, kept: kept.map(words) };
}
