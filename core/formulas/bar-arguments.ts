import { findGrade } from "../bars/find-grade";
import { type Cell, isCellError } from "../schedule/sheet";
import { type ResolvedShape, resolveShape } from "../shapes/resolve-shape";
import { shapeNamed } from "../shapes/shape-named";
import { resolveStandard } from "../standards";
import { DIMENSION_LETTERS } from "../standards/dimension-letters";
import type { SizeReading, Standard, Use } from "../standards/port";
import { parseLength } from "../units/parse-length";
import { defineRefusal, isRefusal, type Refusal } from "../units/refusal";
import type { RowReader } from "./lift";
import type { FunctionArgument } from "./worksheet-function";

const argumentBlank = defineRefusal("argument-blank", "value", "{name} is blank: give {wanted}");
const argumentNoText = defineRefusal("argument-no-text", "value", `{name} is "{typed}": give {wanted}`);
const useUnknown = defineRefusal(
  "use-unknown",
  "value",
  `use "{typed}" is none of {standard}: it distinguishes {held}`,
);
const dimUnread = defineRefusal(
  "dim-unread",
  "value",
  `"{typed}" in column {column} of the dims is no length: give a number in {unit}, or a text with its unit`,
);
const lengthNotPositive = defineRefusal(
  "former-not-length",
  "value",
  `{name} is "{typed}": give a length over 0, in {unit}`,
);

export const SHAPE_ARGUMENT: FunctionArgument = {
  name: "shape",
  description: "Shape code of the standard, or a path of legs and turns such as 500 +90 1200 -45 300",
  optional: false,
  lifts: "column",
};
export const SIZE_ARGUMENT: FunctionArgument = {
  name: "size",
  description: "Bar size, such as 16, H16, #5 or 15M",
  optional: false,
  lifts: "column",
};
export const DIMS_ARGUMENT: FunctionArgument = {
  name: "dims",
  description: "Dimensions by letter: the first column is A, the second B, and so on; empty for a path",
  optional: true,
  lifts: "dims",
};
export const STANDARD_ARGUMENT: FunctionArgument = {
  name: "standard",
  description: "Standard and edition, such as BS8666:2005; the workbook's own where it is left out",
  optional: true,
  lifts: "column",
};
export const FORMER_ARGUMENT: FunctionArgument = {
  name: "former",
  description: "Former diameter in the standard's unit; the standard's least where it is left out",
  optional: true,
  lifts: "column",
};
export const USE_ARGUMENT: FunctionArgument = {
  name: "use",
  description: "main or link, or another use that the standard distinguishes",
  optional: true,
  lifts: "column",
};

/** What the functions of one bar's lengths take. */
export const BAR_ARGUMENTS: readonly FunctionArgument[] = [
  SHAPE_ARGUMENT,
  SIZE_ARGUMENT,
  DIMS_ARGUMENT,
  STANDARD_ARGUMENT,
  FORMER_ARGUMENT,
  USE_ARGUMENT,
];

/** Where they stand among the arguments. */
export const BAR_PLACES = { shape: 0, size: 1, dims: 2, standard: 3, former: 4, use: 5 };

/** The standard of a cell, or the workbook's where it is blank. */
export function readStandard(cell: Cell, row: RowReader): Standard | Refusal {
  const { defaultStandard, own } = row.environment;
  if (cell === null) return resolveStandard(defaultStandard, own);
  if (typeof cell === "string") return resolveStandard(cell, own);
  return argumentNoText({ name: "standard", typed: shown(cell), wanted: "an id such as BS8666:2005" });
}

/** The size of a cell, read by the standard. */
export function readSize(cell: Cell, standard: Standard): SizeReading | Refusal {
  if (typeof cell === "string" || typeof cell === "number") return standard.readSize(cell);
  const wanted = `a size of ${standard.id} such as ${standard.bars[0]?.size ?? "16"}`;
  if (cell === null) return argumentBlank({ name: "size", wanted });
  return argumentNoText({ name: "size", typed: shown(cell), wanted });
}

/** The use of a cell; undefined where it is blank. */
export function readUse(cell: Cell, standard: Standard): Use | undefined | Refusal {
  if (cell === null) return undefined;
  const use = typeof cell === "string" ? cell.trim().toLowerCase() : "";
  if (standard.uses.includes(use)) return use;
  return useUnknown({ typed: shown(cell), standard: standard.id, held: standard.uses.join(", ") });
}

/** mm of a former's cell in the standard's unit; null where it is blank. */
export function readFormer(cell: Cell, standard: Standard): number | null | Refusal {
  if (cell === null) return null;
  const { unit } = standard;
  const length = typeof cell === "number" || typeof cell === "string" ? parseLength(cell, unit) : 0;
  return isRefusal(length) || length > 0
    ? length
    : lengthNotPositive({ name: "former", typed: shown(cell), unit });
}

/** The grade that a size's letter means; undefined where it has none. */
export function gradeOfSize(size: SizeReading, standard: Standard): string | undefined {
  if (size.prefix === "") return undefined;
  return findGrade(standard.grades, size.prefix)?.name;
}

/** The grade of a cell as typed, where the standard knows it; a trial log may name others. */
export function gradeHeld(cell: Cell, standard: Standard): string | undefined {
  if (cell === null || typeof cell === "object") return undefined;
  const typed = String(cell).trim();
  return findGrade(standard.grades, typed) === null ? undefined : typed;
}

/** Where a function's arguments about one bar stand. */
export interface BarPlaces {
  readonly shape: number;
  readonly size: number;
  readonly dims: number;
  readonly standard: number;
  readonly former: number;
  readonly use: number;
  /** where a function takes a grade; else the size's letter says it */
  readonly grade?: number;
}

export interface ReadBar {
  readonly standard: Standard;
  readonly size: SizeReading;
  readonly shape: ResolvedShape;
}

/** The bar of a row. Refuses what one of its cells does not say. */
export function readBar(row: RowReader, places: BarPlaces): ReadBar | Refusal {
  const standard = readStandard(row.cell(places.standard), row);
  if (isRefusal(standard)) return standard;
  const size = readSize(row.cell(places.size), standard);
  if (isRefusal(size)) return size;
  const use = readUse(row.cell(places.use), standard);
  if (isRefusal(use)) return use;
  const former = readFormer(row.cell(places.former), standard);
  if (isRefusal(former)) return former;
  const typed = readShape(row.cell(places.shape));
  if (isRefusal(typed)) return typed;
  const dims = readDims(row.dims(places.dims), typed, standard);
  if (isRefusal(dims)) return dims;
  const named = places.grade === undefined ? null : row.cell(places.grade);
  const grade = gradeHeld(named, standard) ?? gradeOfSize(size, standard);
  const { diameter } = size;
  const shape = resolveShape({ standard, shape: typed, dims, diameter, use, former, grade });
  return isRefusal(shape) ? shape : { standard, size, shape };
}

function readShape(cell: Cell): string | number | Refusal {
  const wanted = "a code of the standard such as 21, or a path such as 500 +90 1200";
  if (cell === null) return argumentBlank({ name: "shape", wanted });
  if (typeof cell === "string" || typeof cell === "number") return cell;
  return argumentNoText({ name: "shape", typed: shown(cell), wanted });
}

/** mm by column; a dim that counts something keeps its number. */
function readDims(
  cells: readonly Cell[],
  shape: string | number,
  standard: Standard,
): readonly (number | null)[] | Refusal {
  const inMillimetres = standard.unit === "mm";
  if (inMillimetres && areDims(cells)) return cells;
  const dims: (number | null)[] = [];
  for (let column = 0; column < cells.length; column += 1) {
    const cell = cells[column] ?? null;
    if (typeof cell === "number" && inMillimetres) dims.push(cell);
    else if (cell === null) dims.push(null);
    else {
      const dim = readDim(cell, column, shape, standard);
      if (isRefusal(dim)) return dim;
      dims.push(dim);
    }
  }
  return dims;
}

/** The usual row, numbers and blanks, is dims as it stands. */
function areDims(cells: readonly Cell[]): cells is readonly (number | null)[] {
  for (let column = 0; column < cells.length; column += 1) {
    const cell = cells[column];
    if (typeof cell !== "number" && cell !== null) return false;
  }
  return true;
}

function readDim(
  cell: Cell,
  column: number,
  shape: string | number,
  standard: Standard,
): number | null | Refusal {
  const { unit } = standard;
  if (typeof cell === "number") {
    if (isCount(shape, column, standard)) return cell;
    // a dim below zero is refused by its letter, where the code is known
    if (cell < 0) return cell;
    return parseLength(cell, unit);
  }
  if (typeof cell !== "string") return dimUnread({ typed: shown(cell), column: column + 1, unit });
  const text = /^\s*\((.*)\)\s*$/.exec(cell)?.[1] ?? cell;
  if (text.trim() === "") return null;
  if (isCount(shape, column, standard) && Number(text) > 0) return Number(text);
  const length = parseLength(text, unit);
  return isRefusal(length) ? dimUnread({ typed: cell, column: column + 1, unit }) : length;
}

function isCount(shape: string | number, column: number, standard: Standard): boolean {
  const named = shapeNamed(standard, shape);
  if (isRefusal(named) || named.kind === "path") return false;
  const letter = DIMENSION_LETTERS[column];
  return letter !== undefined && (named.definition.counts?.includes(letter) ?? false);
}

function shown(cell: Cell): string {
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  return isCellError(cell) ? cell.error : String(cell ?? "");
}
