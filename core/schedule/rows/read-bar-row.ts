import type { SizeReading, Standard } from "../../standards/port";
import type { BarRow, CellProblem, ColumnKind, RemarkReading } from "../bar-row";
import { cleanText } from "../cells/clean-text";
import { LONGEST_VALUE, shortened } from "../cells/longest-text";
import { type Carried, countCellsReader } from "../cells/read-count-cells";
import { inMillimetres, lengthCellReader } from "../cells/read-length-cell";
import { readNumberText } from "../cells/read-number-text";
import { readRemark } from "../cells/read-remark";
import { shapeCellReader } from "../cells/read-shape-cell";
import { type SizeCell, sizeCellReader } from "../cells/read-size-cell";
import { textCellReader } from "../cells/read-text-cell";
import { beginsWithWord, isWord, plainWords } from "../cells/row-words";
import type { TableLayout } from "../columns/decide-columns";
import { type DimColumn, isFilled, tableColumns } from "../columns/table-columns";
import { type Cell, cellErrorReason, isCellError, type Sheet } from "../sheet";
import { RowInHand, type RowSource } from "./row-in-hand";

export interface BarRowReader {
  readonly layout: TableLayout;
  /** True where the row is a bar at first sight, so that no word of it has to be looked at. */
  isPlainBar(cells: readonly Cell[]): boolean;
  /** True where the size cell is a size of the standard, a call-off or a ditto. */
  readsSize(cells: readonly Cell[]): boolean;
  /** True where the size, a count or the length can be read at all. */
  namesBar(cells: readonly Cell[]): boolean;
  /** How many of size, shape, count, length and dimensions the row holds. */
  fieldsFilled(cells: readonly Cell[]): number;
  read(cells: readonly Cell[], row: number, carried: Carried): BarRow;
  /** Goes on below a bar that was read before: ditto marks repeat it. */
  resumeAfter(bar: BarRow | null): void;
}

const MOST_REMEMBERED = 50_000;
/** Above it no number is the mass of bars, in any unit. */
const MOST_MASS = 1e9;
const NUMBER_OF = /^\d+(?:\s*[x*+]\s*\d+)*\s*(?:nos?|nr|off|pcs|stk|mm|m)?\.?$/i;
const NO_DIMS: readonly (number | null)[] = [];
const NO_SHAPE = { shape: null, legs: null };

/** A reader of one table's bar rows. It keeps what it has read, so one reader serves one table of one sheet. */
export function barRowReader(
  sheet: Sheet,
  standard: Standard,
  source: RowSource,
  layout: TableLayout,
): BarRowReader {
  const { table } = layout;
  const columns = tableColumns(layout);
  const { dims: dimColumns, length: lengthField } = columns;
  const hand = new RowInHand(source);
  const { text, mark } = textCellReader(hand, sheet);
  const lengths = lengthCellReader(hand, sheet, standard.unit === "in");
  const counts = countCellsReader(hand, columns);
  const readSize = sizeCellReader(standard, layout.softMetric);
  const readShape = shapeCellReader(standard);
  const remarks = new Map<string, { readonly reading: RemarkReading | null; readonly isVoid: boolean }>();
  const dimsInHand: (number | null)[] = [];
  return { layout, isPlainBar, readsSize, namesBar, fieldsFilled, read, resumeAfter };

  function resumeAfter(bar: BarRow | null): void {
    hand.previous = bar;
  }

  function isPlainBar(cells: readonly Cell[]): boolean {
    const size = columns.size < 0 ? null : cells[columns.size];
    if (typeof size === "string" ? readSize(size, "").is !== "size" : typeof size !== "number") return false;
    const total = columns.total < 0 ? null : cells[columns.total];
    const each = columns.each < 0 ? null : cells[columns.each];
    if (!(typeof total === "number" && total > 0) && !(typeof each === "number" && each > 0)) return false;
    const length = lengthField === null ? null : cells[lengthField.column];
    const shape = columns.shape < 0 ? null : cells[columns.shape];
    const isShape =
      typeof shape === "number" || (typeof shape === "string" && shape.length > 0 && shape.length < 5);
    const isLength = typeof length === "number" && length > 0;
    // with size, count and shape a row is a bar whatever its words are
    if (isShape) return columns.mark < 0 || isFilled(cells, columns.mark);
    if (!isLength) return false;
    const markCell = columns.mark < 0 ? 0 : cells[columns.mark];
    if (typeof markCell === "string" ? !isMarkAtSight(markCell) : typeof markCell !== "number") return false;
    const member = columns.member < 0 ? null : cells[columns.member];
    return typeof member !== "string" || member === hand.previous?.member;
  }

  function readsSize(cells: readonly Cell[]): boolean {
    const cell = columns.size < 0 ? null : cells[columns.size];
    if (typeof cell !== "string" && typeof cell !== "number") return false;
    const { is, asks } = readSize(cell, "");
    return is === "size" || is === "ditto" || asks;
  }

  function namesBar(cells: readonly Cell[]): boolean {
    if (readsSize(cells)) return true;
    const length = lengthField === null ? null : cells[lengthField.column];
    if (typeof length === "number" || (typeof length === "string" && isNumberOf(length))) return true;
    return [columns.members, columns.each, columns.total].some((column) => {
      const cell = column < 0 ? null : cells[column];
      return typeof cell === "number" || (typeof cell === "string" && isNumberOf(cleanText(cell)));
    });
  }

  function fieldsFilled(cells: readonly Cell[]): number {
    const hasCount =
      isFilled(cells, columns.members) || isFilled(cells, columns.each) || isFilled(cells, columns.total);
    let filled = hasCount ? 1 : 0;
    if (isFilled(cells, columns.size)) filled += 1;
    if (isFilled(cells, columns.shape)) filled += 1;
    if (isFilled(cells, lengthField?.column ?? -1)) filled += 1;
    if (dimColumns.some(({ field: { column } }) => isFilled(cells, column))) filled += 1;
    if (columns.bySize.some(({ column }) => isFilled(cells, column))) filled += 1;
    return filled;
  }

  function read(cells: readonly Cell[], row: number, carried: Carried): BarRow {
    hand.begin(row);
    const above = hand.previous;
    const named = text("member", columns.member, cells, above?.member ?? null);
    const isDescription = columns.memberDescribes && carried.heading !== null;
    const member = isDescription ? carried.heading : named;
    if (member !== null && member !== carried.member) {
      carried.member = member;
      carried.members = null;
      carried.membersTyped = null;
    }
    const grade = text("grade", columns.grade, cells, above?.grade ?? null);
    const sizeCell = sizeOf(cells, columns.gradeIsType ? (grade ?? "") : "");
    const sizeBehind = counts(cells, sizeCell, carried);
    const size = sizeCell === null ? sizeBeside(sizeBehind, cells) : sizeFrom(sizeCell, cells);
    const { shape, legs } = shapeOf(cells);
    const dimCount = readDims(cells, shape);
    let length = lengthField === null ? null : lengths.read(lengthField, cells, -1, above?.length ?? null);
    if (columns.radius !== null) {
      hand.radius = lengths.read(columns.radius, cells, -1, above?.radius ?? null) ?? hand.radius;
    }
    if (hand.slips !== null) length = lengths.settleSlips(dimsInHand, length);
    const dims = takeDims(dimCount);
    const former =
      columns.former === null ? null : lengths.read(columns.former, cells, -1, above?.former ?? null);
    const spacing = columns.spacing === null ? null : lengths.read(columns.spacing, cells, -1, null);
    const totalLength =
      columns.totalLength === null ? null : lengths.read(columns.totalLength, cells, -1, null);
    const mass = massOf("mass", columns.mass, cells);
    const remarkTyped = text("remark", columns.remark, cells, above?.remark ?? null);
    const remark = remarkTyped ?? (isDescription && named !== carried.heading ? named : null);
    const said = remark === null ? null : remarkOf(remark);
    const bar: BarRow = {
      table,
      row,
      member: member ?? carried.member,
      mark: mark(columns.mark, cells, above?.mark ?? null) ?? sizeCell?.mark ?? null,
      sizeTyped: columns.size < 0 ? (size?.typed ?? null) : typedText(cells[columns.size]),
      size,
      grade: grade ?? (size !== null && size.prefix !== "" ? null : carried.grade),
      shape,
      dims,
      radius: hand.radius,
      freeDims: hand.free,
      members: hand.members,
      each: hand.each,
      total: hand.total,
      length,
      mass: mass === null ? null : mass * layout.massFactor,
      former,
      coating: text("coating", columns.coating, cells, above?.coating ?? null),
      pour: text("pour", columns.pour, cells, above?.pour ?? null),
      revision: text("revision", columns.revision, cells, above?.revision ?? null),
      released: text("released", columns.released, cells, above?.released ?? null),
      remark,
      hidden: sheet.isHiddenRow?.(row) ?? false,
      struckThrough: isStruck(cells),
      problems: null,
      unitMass: massOf("unitMass", columns.unitMass, cells),
      totalLength,
      spacing: spacing ?? sizeCell?.spacing ?? null,
      varying: hand.varying,
      setMark: null,
      legs,
      lap: hand.lap,
      remarks: withLayer(said?.reading ?? null, sizeCell),
      superseded: said?.isVoid ?? false,
      fill: sheet.fill?.(row, Math.max(columns.mark, 0)) ?? null,
    };
    askEachFace(bar);
    (bar as { problems: readonly CellProblem[] | null }).problems = hand.problems;
    hand.previous = bar;
    return bar;
  }

  function sizeOf(cells: readonly Cell[], type: string): SizeCell | null {
    const column = columns.size;
    const cell = column < 0 ? null : cells[column];
    if (cell === null || cell === undefined) return null;
    if (typeof cell !== "string" && typeof cell !== "number") {
      hand.unread("size", column, cell, otherReason(cell, "no bar size"));
      return null;
    }
    const reading = readSize(cell, /^[A-Z]{1,2}$/i.test(type) ? type.toUpperCase() : "");
    return reading.is === "blank" ? null : reading;
  }

  function sizeFrom(reading: SizeCell, cells: readonly Cell[]): SizeReading | null {
    const column = columns.size;
    const typed = cells[column] ?? null;
    if (reading.guess !== null) {
      const { guess, asks, reason, proposal } = reading;
      const offered = proposal === null ? {} : { proposal };
      return hand.mayUse("size", column, typed, { guess, asks, reason, ...offered }) ? reading.size : null;
    }
    if (reading.is === "size") return reading.size;
    if (reading.is === "ditto") return hand.previous?.size ?? null;
    if (reading.is === "same-as") {
      return hand.sameAs<SizeReading>("size", column, typed, reading.sameAs, (bar) => bar.size);
    }
    hand.unread("size", column, typed, reading.reason);
    return null;
  }

  /** A size behind the count ("2x3T20"), or over the one filled column of lengths by size. */
  function sizeBeside(behind: string | null, cells: readonly Cell[]): SizeReading | null {
    if (behind !== null) return readSize(behind, "").size;
    if (columns.bySize.length === 0) return null;
    const filled = columns.bySize.filter(({ column }) => isAbove0(cells[column]));
    const one = filled.length === 1 ? filled[0] : undefined;
    if (one === undefined) return null;
    const reason = `the size ${one.size} was taken from the head of the one column that is filled`;
    hand.mayUse("size", one.column, cells[one.column] ?? null, {
      guess: "size-from-column",
      asks: false,
      reason,
    });
    return readSize(one.size, "").size;
  }

  function shapeOf(cells: readonly Cell[]): { shape: string | null; legs: readonly number[] | null } {
    const column = columns.shape;
    if (column < 0) return NO_SHAPE;
    const cell = cells[column];
    if (cell === null || cell === undefined) {
      if (dimColumns.some(({ field }) => isFilled(cells, field.column))) {
        hand.unread(
          "shape",
          column,
          null,
          "the shape cell is blank beside dimensions: a picture may lie over it",
        );
      }
      return NO_SHAPE;
    }
    if (typeof cell !== "string" && typeof cell !== "number") {
      hand.unread("shape", column, cell, otherReason(cell, "no shape code"));
      return NO_SHAPE;
    }
    const reading = readShape(cell);
    if (reading.is === "shape" && reading.guess === null) return reading;
    if (reading.is === "blank") return NO_SHAPE;
    if (reading.is === "ditto")
      return { shape: hand.previous?.shape ?? null, legs: hand.previous?.legs ?? null };
    if (reading.is === "same-as") {
      return {
        shape: hand.sameAs<string>("shape", column, cell, reading.sameAs, (bar) => bar.shape),
        legs: null,
      };
    }
    const { guess, asks, reason, shape, legs } = reading;
    if (guess === null) {
      hand.unread("shape", column, cell, reason);
      return NO_SHAPE;
    }
    const offered = shape === null ? {} : { proposal: shape };
    return {
      shape: hand.mayUse("shape", column, cell, { guess, asks, reason, ...offered }) ? shape : null,
      legs,
    };
  }

  /** Fills `dimsInHand` and gives how many of it are filled. */
  function readDims(cells: readonly Cell[], shape: string | null): number {
    let filled = 0;
    dimsInHand.length = 0;
    for (let index = 0; index < dimColumns.length; index += 1) {
      const { letter, place, field, orRadius } = dimColumns[index] as DimColumn;
      const cell = cells[field.column];
      if (cell === null || cell === undefined) continue;
      const isPlain = typeof cell === "number" && cell >= field.least && cell <= field.most;
      const value = isPlain
        ? inMillimetres(cell, field.how.factor)
        : lengths.read(field, cells, place, hand.previous?.dims[place] ?? null);
      if (value === null) continue;
      if (orRadius || value === 0) {
        const letters = shape === null ? undefined : standard.shapes.get(shape)?.dims;
        if (letters !== undefined && !letters.includes(letter)) {
          if (orRadius && letters.includes("R")) {
            hand.radius = value;
            continue;
          }
          // a formula that points at a blank shows 0 under letters that the shape does not have
          if (value === 0) continue;
        }
      }
      while (dimsInHand.length < place) dimsInHand.push(null);
      dimsInHand[place] = value;
      filled = place + 1;
    }
    return filled;
  }

  // literals, for an array that grows keeps room for sixteen more
  function takeDims(count: number): readonly (number | null)[] {
    const [a = null, b = null, c = null, d = null, e = null] = dimsInHand;
    if (hand.slips !== null || count > 5) return trimmed(dimsInHand.slice(0, count));
    if (count === 0) return NO_DIMS;
    if (count === 1) return [a];
    if (count === 2) return [a, b];
    if (count === 3) return [a, b, c];
    return count === 4 ? [a, b, c, d] : [a, b, c, d, e];
  }

  function massOf(field: ColumnKind, column: number, cells: readonly Cell[]): number | null {
    if (column < 0) return null;
    const cell = cells[column];
    if (cell === null || cell === undefined) return null;
    if (typeof cell === "number" && cell >= 0 && cell <= MOST_MASS) return cell;
    if (typeof cell === "string") {
      const clean = cleanText(cell);
      if (clean === "" || isWord("blank", plainWords(clean))) return null;
      const value = clean.length > LONGEST_VALUE ? "" : clean;
      const number = readNumberText(value.replace(/\s*(?:kgs?|t|mt|lbs?)\.?$/i, ""), layout.comma);
      if (number !== null && number >= 0 && number <= MOST_MASS) return number;
    }
    hand.unread(field, column, cell, otherReason(cell, "no mass"));
    return null;
  }

  function remarkOf(remark: string): { readonly reading: RemarkReading | null; readonly isVoid: boolean } {
    let known = remarks.get(remark);
    if (known === undefined) {
      known = { reading: readRemark(remark), isVoid: beginsWithWord("superseded", plainWords(remark)) };
      if (remarks.size > MOST_REMEMBERED) remarks.clear();
      remarks.set(remark, known);
    }
    return known;
  }

  /** A count on each face may hold both faces or one: it stands as typed and the user is asked. */
  function askEachFace({ remarks: said, remark }: BarRow): void {
    if (said === null || said === undefined || !said.layers.includes("EF")) return;
    const reason = "EF is each face: the count stands as typed, taken to hold both faces";
    const column = columns.remark >= 0 ? columns.remark : columns.size;
    hand.mayUse("remark", column, remark, { guess: "each-face", asks: true, reason });
  }

  function isStruck(cells: readonly Cell[]): boolean {
    if (sheet.isStruckThrough === undefined) return false;
    const column = [columns.mark, columns.size, lengthField?.column ?? -1].find((one) =>
      isFilled(cells, one),
    );
    return column !== undefined && sheet.isStruckThrough(hand.row, column);
  }
}

/** "12", "B1", "12a" and the like; longer texts that begin as sums do are looked at. */
function isMarkAtSight(mark: string): boolean {
  if (mark.length === 0) return false;
  const first = mark.charCodeAt(0) | 32;
  const beginsAsSum = first === 116 || first === 115 || first === 103; // t, s, g
  if (beginsAsSum && mark.length > 4) return false;
  for (let index = 0; index < mark.length; index += 1) {
    const code = mark.charCodeAt(index);
    if (code >= 48 && code <= 57) return true;
  }
  return false;
}

function withLayer(reading: RemarkReading | null, size: SizeCell | null): RemarkReading | null {
  if (size === null || size.layer === null) return reading;
  const layers = size.layer.split(/\s+/);
  if (reading === null) return { layers, hand: null, alternate: false, stagger: false };
  return { ...reading, layers: [...layers, ...reading.layers] };
}

function isNumberOf(text: string): boolean {
  return text.length <= LONGEST_VALUE && NUMBER_OF.test(text);
}

function trimmed(dims: (number | null)[]): (number | null)[] {
  while (dims.length > 0 && dims[dims.length - 1] === null) dims.pop();
  return dims;
}

function typedText(cell: Cell | undefined): string | null {
  if (cell === null || cell === undefined) return null;
  return isCellError(cell) ? cell.error : String(cell);
}

function otherReason(cell: Cell, isWhat: string): string {
  return isCellError(cell) ? cellErrorReason(cell) : `"${shortened(String(cell))}" is ${isWhat}`;
}

function isAbove0(cell: Cell | undefined): boolean {
  if (typeof cell === "number") return cell > 0;
  return typeof cell === "string" && Number(cleanText(cell).replace(",", ".")) > 0;
}
