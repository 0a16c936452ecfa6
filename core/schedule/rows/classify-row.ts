import type { RowClass } from "../bar-row";
import { shortened } from "../cells/longest-text";
import type { RowEvidence } from "./row-evidence";
import type { RowReasonCode } from "./row-reason";
import type { RowVerdict } from "./row-verdict";

interface RowCase {
  readonly code: RowReasonCode;
  readonly class: RowClass;
  when(row: RowEvidence): boolean;
}

/** In this order: the first that holds is the row's class. */
const CASES: readonly RowCase[] = [
  { code: "beside-the-table", class: "unread", when: (row) => !row.inSummary && row.isBesideTable },
  { code: "left-out-columns", class: "note", when: ({ filled }) => filled.length === 0 },
  { code: "remark-in-summary", class: "note", when: (row) => row.inSummary && row.filled.length === 1 },
  { code: "bar-after-summary", class: "bar", when: isBarAfterSummary },
  { code: "summary-line", class: "total", when: ({ inSummary }) => inSummary },
  { code: "size-count-length", class: "bar", when: ({ isPlainBar }) => isPlainBar },
  { code: "sum-by-size", class: "total", when: (row) => row.isTitledAmount && isSumBySize(row) },
  { code: "sum-word", class: "total", when: (row) => isSum(row) && row.sumKind !== "wastage" },
  { code: "sum-by-size", class: "total", when: isSumBySize },
  { code: "wastage-word", class: "note", when: (row) => isSum(row) && !row.hasSize },
  {
    code: "foot-of-columns",
    class: "total",
    when: (row) => !row.hasSize && !holdsShape(row) && row.isFootOfColumns,
  },
  { code: "behind-the-list", class: "note", when: ({ afterGap, fields }) => afterGap && fields < 3 },
  { code: "title-or-foot", class: "note", when: isTitleOrFoot },
  { code: "group-word", class: "heading", when: (row) => row.isOneText && row.isGroupWord },
  { code: "member-heading", class: "heading", when: isHeading },
  { code: "text-alone", class: "note", when: ({ isOneText }) => isOneText },
  { code: "accessory", class: "note", when: isAccessory },
  { code: "row-cancelled", class: "note", when: isCancelled },
  { code: "title-or-foot", class: "note", when: isOfWords },
  { code: "size-unread", class: "unread", when: (row) => isSizeUnread(row) && !row.hasMark },
  { code: "sum-of-rows", class: "total", when: ({ isSumOfLines }) => isSumOfLines },
  { code: "fields-of-a-bar", class: "bar", when: hasFieldsOfBar },
  { code: "size-and-mark", class: "bar", when: ({ hasSize, hasMark }) => hasSize && hasMark },
  { code: "no-field", class: "note", when: ({ fields, hasMark }) => fields === 0 && !hasMark },
  { code: "numbers-alone", class: "total", when: isNumbersAlone },
  { code: "sum-of-rows", class: "total", when: (row) => row.sumsInWords || row.isSumOfRows },
  { code: "mark-alone", class: "unread", when: ({ hasMark }) => hasMark },
  { code: "size-alone", class: "unread", when: ({ hasSize }) => hasSize },
  { code: "no-name", class: "unread", when: ({ fields }) => fields > 1 },
  { code: "no-field-read", class: "unread", when: () => true },
];

const WITH_WORDS: ReadonlySet<RowReasonCode> = new Set([
  "sum-word",
  "sum-of-rows",
  "wastage-word",
  "title-or-foot",
  "group-word",
  "member-heading",
]);
const VERDICTS = new Map<RowReasonCode, RowVerdict>(
  CASES.map(({ code, class: rowClass }) => [code, { class: rowClass, because: { code } }]),
);

/** What the part of a row under one table is, and why. */
export function classifyRow(row: RowEvidence): RowVerdict {
  const code = CASES.find((one) => one.when(row))?.code ?? "no-field-read";
  const verdict = VERDICTS.get(code) as RowVerdict;
  if (!WITH_WORDS.has(code)) return verdict;
  return { class: verdict.class, because: { code, values: { words: shortened(row.words) } } };
}

function isBarAfterSummary(row: RowEvidence): boolean {
  // in a list without marks sizes one below another may stand where those of bars do
  const isNamed =
    row.hasMark || (row.summary === "across" && !row.table.columns.has("mark") && row.isPlainBar);
  const isWhole = isNamed && row.hasSize && row.fields > 2;
  return row.inSummary && isWhole && !row.labelIsSum && !row.namesUnit && !row.isLineOfSums;
}

/** Words of a sum in a row that is no bar for sure. */
function isSum(row: RowEvidence): boolean {
  const hasAll = row.hasMark && row.hasSize && row.hasCount && row.hasLength;
  // a member whose name begins as a sum does, beside a mark of its own
  if (hasAll && (!row.labelIsSum || !row.labelIsMark)) return false;
  return !(row.hasSize && row.hasShape && row.fields > 2) && row.sumKind !== null;
}

/** Words under the shape that name a sum are none of a bar's where no mark, count or length stands beside them. */
function holdsShape(row: RowEvidence): boolean {
  return row.hasShape && (row.hasMark || row.hasCount || row.hasLength);
}

/** A line of an abstract: a size, and what there is of it, in cells of their own. */
function isSumBySize(row: RowEvidence): boolean {
  // "KG" before masses under columns by size is the foot of those columns
  if (row.namesUnit && !row.hasSize && !row.hasCount && row.hasNumber) return !row.isUnderSizes;
  if (!row.isAmountOfSize) return false;
  if (row.boundsSizes) return true;
  const isSize = row.readsSize && !row.sizeIsFraction;
  // a size under the shape, and under the size a sum
  const isNoBar = !row.hasMark && !row.hasCount && !row.hasLength && (!row.hasShape || !isSize);
  return isNoBar || row.namesUnit || row.all.length === 1 || (!row.hasShape && !isSize);
}

function isTitleOrFoot(row: RowEvidence): boolean {
  if (row.isOneText) return row.isTitleOrFoot;
  if (row.areLabelled) return true;
  return !row.hasShape && row.isTitleOrFoot && !row.readsSize;
}

/** A title, a place or a drawing over several cells: words alone, none of them a mark, and nothing of a bar. */
function isOfWords(row: RowEvidence): boolean {
  return (
    row.areWords &&
    (!row.hasShape || row.labelsShape) &&
    !row.namesBar &&
    (!row.hasMark || !row.isMarkLikeOthers)
  );
}

function isHeading(row: RowEvidence): boolean {
  return (row.isOneText || !(row.hasSize || row.hasShape)) && row.heading !== null;
}

/** Something stands under the size, and neither it nor a count nor a length can be read. */
function isSizeUnread(row: RowEvidence): boolean {
  return row.hasSize && !row.hasShape && !row.namesBar;
}

/** Concrete by the cubic metre is ordered by the same list; with a size, a mark or a length it is a bar's place. */
function isAccessory(row: RowEvidence): boolean {
  if (isSizeUnread(row)) return row.holdsAccessory;
  return !row.hasSize && !row.hasMark && !row.hasLength && !row.hasShape && row.holdsConcrete;
}

function isCancelled(row: RowEvidence): boolean {
  // "VOID" under whatever column, and no figure of a bar
  if (row.isVoid && !row.namesBar) return true;
  if (row.hasSize || row.hasCount || row.hasLength) return false;
  return row.hasShape ? row.isVoid : row.saysCancelled;
}

function hasFieldsOfBar(row: RowEvidence): boolean {
  return row.fields >= 2 && (row.hasSize || row.hasMark || row.hasNoNameColumn);
}

function isNumbersAlone(row: RowEvidence): boolean {
  return !row.hasMark && !row.hasSize && !row.hasShape && row.areNumbers;
}
