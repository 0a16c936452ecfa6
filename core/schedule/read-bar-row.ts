import type { DimLetter, SizeReading, Standard } from "../standards/port";
import type { BarRow, CellProblem, ColumnKind, GuessCode, RemarkReading, VaryingSet } from "./bar-row";
import { cleanText } from "./clean-text";
import type { TableLayout } from "./decide-columns";
import { type CountReading, readCountText, whole } from "./read-count-text";
import { type LengthColumn, type LengthReading, readLengthText, shortened } from "./read-length-text";
import { readNumberText } from "./read-number-text";
import { readOddNumber } from "./read-odd-number";
import { readRemark } from "./read-remark";
import { shapeCellReader } from "./read-shape-cell";
import { type SizeCell, sizeCellReader } from "./read-size-cell";
import { beginsWithWord, isWord, plainWords } from "./row-words";
import { type Cell, isCellError, type Sheet } from "./sheet";

/** What carries over from the rows above. */
export interface Carried {
  member: string | null;
  /** number of members that a sub-header row gave */
  members: number | null;
  /** typed beside the carried member */
  membersTyped: number | null;
  grade: string | null;
}

export interface BarRowReader {
  readonly layout: TableLayout;
  /** True where the row is a bar at first sight, so that no word of it has to be looked at. */
  isPlainBar(cells: readonly Cell[]): boolean;
  /** How many of size, shape, count, length and dimensions the row holds. */
  fieldsFilled(cells: readonly Cell[]): number;
  read(cells: readonly Cell[], row: number, carried: Carried): BarRow;
}

/** What the reader asks of the sheet beside its cells. */
export interface BarSource {
  readonly sheet: Sheet;
  readonly standard: Standard;
  isConfirmed(code: string, row: number, column: number): boolean;
  /** the typed row of a mark read before, for "same as B1" */
  barOfMark(mark: string): BarRow | null;
}

const DIM_LETTERS: readonly DimLetter[] = ["A", "B", "C", "D", "E", "F", "G", "H", "J", "K"];
const MOST_REMEMBERED = 50_000;

interface DimColumn {
  readonly letter: DimLetter;
  readonly place: number;
  readonly field: LengthField;
  /** "E/R": a radius where the shape takes one */
  readonly orRadius: boolean;
}

interface LengthField {
  readonly kind: ColumnKind;
  readonly column: number;
  readonly how: LengthColumn;
  /** numbers between these are taken as they stand */
  readonly least: number;
  readonly most: number;
  readonly texts: Map<string, LengthReading>;
  /** the column's unit waits for the user */
  readonly asks: string | null;
}

/** A reader of one table's bar rows. It keeps what it has read, so one reader serves one table of one sheet. */
export function barRowReader(source: BarSource, layout: TableLayout): BarRowReader {
  const { sheet, standard } = source;
  const { table } = layout;
  const at = (kind: ColumnKind): number => table.columns.get(kind)?.column ?? -1;
  const field = (kind: ColumnKind): LengthField | null => lengthField(layout, kind);
  const columnOf = {
    member: at("member"),
    mark: at("mark"),
    size: at("size"),
    grade: at("grade"),
    members: at("members"),
    each: at("each"),
    total: at("total"),
    shape: at("shape"),
    mass: at("mass"),
    unitMass: at("unitMass"),
    coating: at("coating"),
    pour: at("pour"),
    revision: at("revision"),
    released: at("released"),
    remark: at("remark"),
  };
  const gradeIsType = /type|typ\b/i.test(table.columns.get("grade")?.header ?? "");
  const lengthColumn = field("length");
  const radiusColumn = field("R");
  const formerColumn = field("former");
  const spacingColumn = field("spacing");
  const totalLengthColumn = field("totalLength");
  const dimColumns: DimColumn[] = [];
  DIM_LETTERS.forEach((letter, place) => {
    const found = field(letter);
    if (found !== null) {
      const orRadius = /r/i.test((table.columns.get(letter)?.header ?? "").replace(/dim\w*|bar|leg/gi, ""));
      dimColumns.push({ letter, place, field: found, orRadius });
    }
  });
  const readSize = sizeCellReader(standard, layout.softMetric);
  const readShape = shapeCellReader(standard);
  const counts = new Map<string, CountReading>();
  const remarks = new Map<string, RemarkReading | null>();
  const voids = new Map<string, boolean>();
  const plainTexts = new Map<string, { text: string; ditto: boolean }>();
  const radiusShapes = new Map<string, { takesRadius: boolean; letters: string } | null>();
  const bySize = table.bySize ?? [];
  let previous: BarRow | null = null;

  // state of the row in hand
  let problems: CellProblem[] | null = null;
  let row = 0;
  let varying: VaryingSet | null = null;
  let lap: number | null = null;
  let free = "";
  let radius: number | null = null;
  let countInHand: number | null = null;
  let slips: { field: LengthField; value: number; place: number }[] | null = null;

  return { layout, isPlainBar, fieldsFilled, read };

  function isPlainBar(cells: readonly Cell[]): boolean {
    const size = columnOf.size < 0 ? null : cells[columnOf.size];
    if (typeof size === "string" ? readSize(size, "").is !== "size" : typeof size !== "number") return false;
    const total = columnOf.total < 0 ? null : cells[columnOf.total];
    const each = columnOf.each < 0 ? null : cells[columnOf.each];
    if (!(typeof total === "number" && total > 0) && !(typeof each === "number" && each > 0)) return false;
    const length = lengthColumn === null ? null : cells[lengthColumn.column];
    const shape = columnOf.shape < 0 ? null : cells[columnOf.shape];
    const isShape =
      typeof shape === "number" || (typeof shape === "string" && shape.length > 0 && shape.length < 5);
    if (!(typeof length === "number" && length > 0) && !isShape) return false;
    const mark = columnOf.mark < 0 ? null : cells[columnOf.mark];
    if (typeof mark === "string") {
      const last = mark.charCodeAt(mark.length - 1);
      if (!(last >= 48 && last <= 57) && mark.length > 2) return false;
    } else if (typeof mark !== "number") return false;
    const member = columnOf.member < 0 ? null : cells[columnOf.member];
    return typeof member !== "string" || member === previous?.member;
  }

  function fieldsFilled(cells: readonly Cell[]): number {
    let filled = 0;
    if (isFilled(cells, columnOf.size)) filled += 1;
    if (isFilled(cells, columnOf.shape)) filled += 1;
    if (
      isFilled(cells, columnOf.members) ||
      isFilled(cells, columnOf.each) ||
      isFilled(cells, columnOf.total)
    )
      filled += 1;
    if (isFilled(cells, lengthColumn?.column ?? -1)) filled += 1;
    if (dimColumns.some(({ field: { column } }) => isFilled(cells, column))) filled += 1;
    if (bySize.some(({ column }) => isFilled(cells, column))) filled += 1;
    return filled;
  }

  function read(cells: readonly Cell[], at: number, carried: Carried): BarRow {
    problems = null;
    varying = null;
    lap = null;
    free = "";
    radius = null;
    slips = null;
    row = at;
    const memberTyped = text("member", columnOf.member, cells, previous?.member ?? null);
    if (memberTyped !== null && memberTyped !== carried.member) {
      carried.member = memberTyped;
      carried.membersTyped = null;
      if (columnOf.member >= 0) carried.members = null;
    }
    const gradeTyped = text("grade", columnOf.grade, cells, previous?.grade ?? null);
    const sizeCell = sizeOf(cells, gradeIsType ? (gradeTyped ?? "") : "");
    let size = sizeCell?.size ?? null;
    if (sizeCell !== null && sizeCell.is !== "size")
      size = sizeCell.is === "ditto" ? (previous?.size ?? null) : null;
    if (
      sizeCell?.is === "unread" &&
      sizeCell.asks &&
      source.isConfirmed(sizeCell.guess ?? "", row, columnOf.size)
    ) {
      size = sizeCell.size;
    }
    if (sizeCell?.is === "same-as")
      size = sameAs("size", columnOf.size, cells, sizeCell.sameAs, (bar) => bar.size);
    const shape = shapeOf(cells);
    const members = count("members", columnOf.members, cells, previous?.members ?? null);
    const each = count("each", columnOf.each, cells, previous?.each ?? null);
    const total = count("total", columnOf.total, cells, previous?.total ?? null);
    const counted = counts3(members, each, total, sizeCell, carried, cells);
    countInHand = counted.each ?? counted.total;
    if (size === null && sizeCell === null) size = sizeBeside(members, each, total, cells);
    const dims = dimsOf(cells, shape.shape);
    const length = lengthColumn === null ? null : lengthOf(lengthColumn, cells, -1, previous?.length ?? null);
    if (radiusColumn !== null) radius = lengthOf(radiusColumn, cells, -1, previous?.radius ?? null) ?? radius;
    const settledLength = slips === null ? length : settleSlips(dims, length);
    const remark = text("remark", columnOf.remark, cells, previous?.remark ?? null);
    const mass = massOf("mass", columnOf.mass, cells);
    const bar: BarRow = {
      table,
      row,
      member: memberTyped ?? carried.member,
      mark: markOf(cells) ?? sizeCell?.mark ?? null,
      sizeTyped: columnOf.size < 0 ? (size?.typed ?? null) : typedText(cells[columnOf.size] ?? null),
      size,
      grade: gradeTyped ?? (size !== null && size.prefix !== "" ? null : carried.grade),
      shape: shape.shape,
      dims,
      radius,
      freeDims: free,
      members: counted.members,
      each: counted.each,
      total: counted.total,
      length: settledLength,
      mass: mass === null ? null : mass * layout.massFactor,
      former: formerColumn === null ? null : lengthOf(formerColumn, cells, -1, previous?.former ?? null),
      coating: text("coating", columnOf.coating, cells, previous?.coating ?? null),
      pour: text("pour", columnOf.pour, cells, previous?.pour ?? null),
      revision: text("revision", columnOf.revision, cells, previous?.revision ?? null),
      released: text("released", columnOf.released, cells, previous?.released ?? null),
      remark,
      hidden: sheet.isHiddenRow?.(row) ?? false,
      struckThrough: isStruck(cells),
      problems: null,
      unitMass: massOf("unitMass", columnOf.unitMass, cells),
      totalLength: totalLengthColumn === null ? null : lengthOf(totalLengthColumn, cells, -1, null),
      spacing:
        (spacingColumn === null ? null : lengthOf(spacingColumn, cells, -1, null)) ??
        sizeCell?.spacing ??
        null,
      varying,
      setMark: null,
      legs: shape.legs,
      lap,
      remarks: remarksOf(remark, sizeCell),
      superseded: remark !== null && isVoid(remark),
      fill: sheet.fill?.(row, Math.max(columnOf.mark, 0)) ?? null,
    };
    eachFace(bar);
    (bar as { problems: readonly CellProblem[] | null }).problems = problems;
    previous = bar;
    return bar;
  }

  function problem(
    kind: ColumnKind,
    column: number,
    typed: Cell,
    outcome: "unread" | "guessed",
    reason: string,
    extra: { asks?: boolean; guess?: GuessCode; proposal?: string | number } = {},
  ): void {
    problems ??= [];
    problems.push({ field: kind, column, typed, outcome, reason, ...extra });
  }

  /** Reports a guess; true where its value may be used. */
  function mayUse(
    kind: ColumnKind,
    column: number,
    typed: Cell,
    guess: { guess: GuessCode; asks: boolean; reason: string; proposal?: string | number },
  ): boolean {
    if (guess.asks && source.isConfirmed(guess.guess, row, column)) {
      problem(kind, column, typed, "guessed", `${guess.reason} (confirmed)`, { guess: guess.guess });
      return true;
    }
    problem(kind, column, typed, "guessed", guess.reason, {
      guess: guess.guess,
      ...(guess.asks ? { asks: true } : {}),
      ...(guess.proposal === undefined ? {} : { proposal: guess.proposal }),
    });
    return !guess.asks;
  }

  function text(
    kind: ColumnKind,
    column: number,
    cells: readonly Cell[],
    above: string | null,
  ): string | null {
    if (column < 0) return null;
    const cell = cells[column];
    if (cell === null || cell === undefined) return null;
    if (typeof cell === "string") {
      if (isPlainMark(cell)) return cell;
      const plain = plainText(cell);
      if (plain.ditto) return above;
      return plain.text === "" ? null : plain.text;
    }
    return otherText(kind, column, cell);
  }

  function otherText(kind: ColumnKind, column: number, cell: Cell): string | null {
    if (isCellError(cell)) {
      problem(kind, column, cell, "unread", `the cell holds the error ${cell.error}`);
      return null;
    }
    return String(cell);
  }

  function plainText(typed: string): { text: string; ditto: boolean } {
    let known = plainTexts.get(typed);
    if (known === undefined) {
      const clean = cleanText(typed);
      const plain = plainWords(clean);
      known = { text: plain === "-" || plain === "--" ? "" : clean, ditto: isWord("ditto", plain) };
      if (plainTexts.size > MOST_REMEMBERED) plainTexts.clear();
      plainTexts.set(typed, known);
    }
    return known;
  }

  function markOf(cells: readonly Cell[]): string | null {
    const column = columnOf.mark;
    const cell = column < 0 ? null : cells[column];
    if (typeof cell !== "number") return text("mark", column, cells, previous?.mark ?? null);
    const seen = sheet.shown?.(row, column);
    if (cell >= 20_000 && sheet.isDate?.(row, column) === true) {
      const reading = monthAndDay(cell);
      mayUse("mark", column, cell, {
        guess: "date-was-mark",
        asks: false,
        reason: `a date stands where the mark belongs: ${reading} was typed and turned into a date`,
      });
      return reading;
    }
    const power = seen === undefined ? null : /^(\d+)(?:\.0*)?E\+?0*(\d+)$/i.exec(seen);
    if (power !== null) {
      const reading = `${power[1]}E${power[2]}`;
      mayUse("mark", column, cell, {
        guess: "number-was-mark",
        asks: false,
        reason: `${seen} stands where the mark belongs: ${reading} was typed and turned into a number`,
      });
      return reading;
    }
    return seen !== undefined && /^0\d*$/.test(seen) ? seen : String(cell);
  }

  function sizeOf(cells: readonly Cell[], type: string): SizeCell | null {
    const column = columnOf.size;
    const cell = column < 0 ? null : cells[column];
    if (cell === null || cell === undefined) return null;
    if (typeof cell !== "string" && typeof cell !== "number") {
      const reason = isCellError(cell)
        ? `the cell holds the error ${cell.error}`
        : `${String(cell)} is no bar size`;
      problem("size", column, cell, "unread", reason);
      return null;
    }
    const reading = readSize(cell, /^[A-Z]{1,2}$/i.test(type) ? type.toUpperCase() : "");
    if (reading.guess !== null) {
      const { guess, asks, reason, proposal } = reading;
      mayUse("size", column, cell, { guess, asks, reason, ...(proposal === null ? {} : { proposal }) });
    } else if (reading.is === "unread") {
      problem("size", column, cell, "unread", reading.reason);
    }
    return reading.is === "blank" ? null : reading;
  }

  /** A size behind the count ("2x3T20") or over the one filled column of lengths by size. */
  function sizeBeside(
    members: CountReading | null,
    each: CountReading | null,
    total: CountReading | null,
    cells: readonly Cell[],
  ): SizeReading | null {
    for (const reading of [total, each, members]) {
      if (reading?.is === "value" && reading.size !== null) return readSize(reading.size, "").size;
    }
    const filled = bySize.filter(
      ({ column }) => typeof cells[column] === "number" && (cells[column] as number) > 0,
    );
    const one = filled.length === 1 ? filled[0] : undefined;
    if (one === undefined) return null;
    const size = readSize(one.size, "").size;
    mayUse("size", one.column, cells[one.column] ?? null, {
      guess: "size-from-column",
      asks: false,
      reason: `the size ${one.size} was taken from the head of the column that is filled`,
    });
    return size;
  }

  function shapeOf(cells: readonly Cell[]): { shape: string | null; legs: readonly number[] | null } {
    const column = columnOf.shape;
    const cell = column < 0 ? null : cells[column];
    if (column < 0) return NO_SHAPE;
    if (cell === null || cell === undefined) {
      if (dimColumns.some(({ field: { column: dim } }) => isFilled(cells, dim))) {
        problem(
          "shape",
          column,
          null,
          "unread",
          "the shape cell is blank beside dimensions: a picture may lie over it",
        );
      }
      return NO_SHAPE;
    }
    if (typeof cell !== "string" && typeof cell !== "number") {
      const reason = isCellError(cell)
        ? `the cell holds the error ${cell.error}`
        : `${String(cell)} is no shape code`;
      problem("shape", column, cell, "unread", reason);
      return NO_SHAPE;
    }
    const reading = readShape(cell);
    if (reading.is === "shape" && reading.guess === null) return reading;
    if (reading.is === "ditto") return { shape: previous?.shape ?? null, legs: previous?.legs ?? null };
    if (reading.is === "same-as") {
      return { shape: sameAs("shape", column, cells, reading.sameAs, (bar) => bar.shape), legs: null };
    }
    if (reading.is === "unread") problem("shape", column, cell, "unread", reading.reason);
    if (reading.guess === null) return NO_SHAPE;
    const { guess, asks, reason, shape } = reading;
    const use = mayUse("shape", column, cell, {
      guess,
      asks,
      reason,
      ...(shape === null ? {} : { proposal: shape }),
    });
    return { shape: use ? shape : null, legs: reading.legs };
  }

  function sameAs<T extends string | number | SizeReading | null>(
    kind: ColumnKind,
    column: number,
    cells: readonly Cell[],
    mark: string | null,
    pick: (bar: BarRow) => T,
  ): T | null {
    const bar = mark === null ? null : source.barOfMark(mark);
    const found = bar === null ? null : pick(bar);
    const typed = cells[column] ?? null;
    if (found === null) {
      problem(kind, column, typed, "unread", `it refers to ${mark ?? "a row"}, which was not found above`);
      return null;
    }
    const proposal = typeof found === "object" ? (found as SizeReading).typed : (found as string | number);
    const reason = `it refers to mark ${mark}, which has ${proposal}`;
    return mayUse(kind, column, typed, { guess: "same-as", asks: true, reason, proposal }) ? found : null;
  }

  function count(
    kind: ColumnKind,
    column: number,
    cells: readonly Cell[],
    above: number | null,
  ): CountReading | null {
    if (column < 0) return null;
    const cell = cells[column];
    if (cell === null || cell === undefined) return null;
    if (typeof cell === "number") {
      if (Number.isSafeInteger(cell) && cell >= 0) return plainCount(cell);
      const reading = Number.isFinite(cell) ? whole(cell, cell) : whole(0.5, String(cell));
      if (reading.is === "unread") problem(kind, column, cell, "unread", reading.reason);
      return null;
    }
    if (typeof cell !== "string") {
      const reason = isCellError(cell)
        ? `the cell holds the error ${cell.error}`
        : `${String(cell)} is no count`;
      problem(kind, column, cell, "unread", reason);
      return null;
    }
    let reading = counts.get(cell);
    if (reading === undefined) {
      reading = readCountText(cleanText(cell), "thousands");
      if (counts.size > MOST_REMEMBERED) counts.clear();
      counts.set(cell, reading);
    }
    if (reading.is === "blank") return null;
    if (reading.is === "ditto") return above === null ? null : plainCount(above);
    if (reading.is === "unread") {
      problem(kind, column, cell, "unread", reading.reason);
      return null;
    }
    if (reading.is === "same-as") {
      const found = sameAs(kind, column, cells, reading.mark, (bar) =>
        kind === "each" ? bar.each : kind === "members" ? bar.members : bar.total,
      );
      return found === null ? null : plainCount(found);
    }
    if (reading.guess === null) return reading;
    const { guess, asks, reason, value } = reading;
    return mayUse(kind, column, cell, { guess, asks, reason, proposal: value }) ? reading : null;
  }

  function counts3(
    members: CountReading | null,
    each: CountReading | null,
    total: CountReading | null,
    size: SizeCell | null,
    carried: Carried,
    cells: readonly Cell[],
  ): { members: number | null; each: number | null; total: number | null } {
    let m = members?.is === "value" ? members.value : null;
    let e = each?.is === "value" ? each.value : null;
    let t = total?.is === "value" ? total.value : null;
    if (total?.is === "value" && total.members !== null && m === null && e === null) {
      m = total.members;
      e = total.each;
    }
    if (each?.is === "value" && each.members !== null && m === null) {
      m = each.members;
      e = each.each;
    }
    if (members?.is === "value" && members.members !== null && e === null) {
      m = members.members;
      e = members.each;
    }
    if (size !== null && size.count !== null && e === null && t === null) {
      t = size.count;
      if (size.members !== null && m === null) {
        m = size.members;
        e = size.each;
      }
    }
    if (m !== null) carried.membersTyped = m;
    const isMembersUnread = columnOf.members >= 0 && isFilled(cells, columnOf.members);
    if (m === null && !isMembersUnread) m = membersBeside(e, t, carried, cells);
    return { members: m, each: e, total: t };
  }

  /** Members not written in the row: a sub-header's, the carried member's, or one where the total says so. */
  function membersBeside(
    each: number | null,
    total: number | null,
    carried: Carried,
    cells: readonly Cell[],
  ): number | null {
    if (carried.members !== null) return carried.members;
    if (each === null) return null;
    const column = Math.max(columnOf.members, columnOf.each);
    if (total !== null) {
      if (total === each) return 1;
      const found = carried.membersTyped;
      return found !== null && found * each === total ? found : null;
    }
    const proposal = carried.membersTyped ?? 1;
    const reason =
      carried.membersTyped === null
        ? "the number of members is blank and no total is typed: 1 may be meant"
        : `the number of members is blank: ${proposal} may carry down from above`;
    const guess = carried.membersTyped === null ? "members-of-one" : "members-carried";
    if (isFilled(cells, columnOf.total)) return null;
    return mayUse("members", column, null, { guess, asks: true, reason, proposal }) ? proposal : null;
  }

  function dimsOf(cells: readonly Cell[], shape: string | null): readonly (number | null)[] {
    const dims: (number | null)[] = [];
    let filled = 0;
    for (let index = 0; index < dimColumns.length; index += 1) {
      const { letter, place, field: how, orRadius } = dimColumns[index] as DimColumn;
      const cell = cells[how.column];
      if (cell === null || cell === undefined) continue;
      let value: number | null;
      if (typeof cell === "number" && cell >= how.least && cell <= how.most) value = cell * how.how.factor;
      else value = lengthOf(how, cells, place, previous?.dims[place] ?? null);
      if (value === null) continue;
      if (orRadius || value === 0) {
        const takes = takesOf(shape);
        if (orRadius && takes?.takesRadius && !takes.letters.includes(letter)) {
          radius = value;
          continue;
        }
        // a formula that points at a blank shows 0 under letters that the shape does not have
        if (value === 0 && takes !== null && !takes.letters.includes(letter)) continue;
      }
      while (dims.length <= place) dims.push(null);
      dims[place] = value;
      filled = place + 1;
    }
    dims.length = filled;
    return dims;
  }

  function takesOf(shape: string | null): { takesRadius: boolean; letters: string } | null {
    if (shape === null) return null;
    let known = radiusShapes.get(shape);
    if (known === undefined) {
      const definition = standard.shapes.get(shape);
      const letters = definition?.dims ?? [];
      known =
        definition === undefined ? null : { takesRadius: letters.includes("R"), letters: letters.join("") };
      if (radiusShapes.size > MOST_REMEMBERED) radiusShapes.clear();
      radiusShapes.set(shape, known);
    }
    return known;
  }

  function lengthOf(
    how: LengthField,
    cells: readonly Cell[],
    place: number,
    above: number | null,
  ): number | null {
    const { kind, column } = how;
    const cell = cells[column];
    if (cell === null || cell === undefined) return null;
    if (typeof cell === "number") {
      if (cell >= how.least && cell <= how.most) return cell * how.how.factor;
      return oddLength(how, cell, place);
    }
    if (typeof cell !== "string") {
      const reason = isCellError(cell)
        ? `the cell holds the error ${cell.error}`
        : `${String(cell)} is no length`;
      problem(kind, column, cell, "unread", reason);
      return null;
    }
    let reading = how.texts.get(cell);
    if (reading === undefined) {
      reading = readLengthText(cleanText(cell), how.how);
      if (how.texts.size > MOST_REMEMBERED) how.texts.clear();
      how.texts.set(cell, reading);
    }
    switch (reading.is) {
      case "blank":
        return null;
      case "ditto":
        return above;
      case "unread":
        problem(
          kind,
          column,
          cell,
          "unread",
          /^#|^err:/i.test(cell) ? `the cell holds the error ${cell}` : reading.reason,
        );
        return null;
      case "same-as":
        return sameAs(kind, column, cells, reading.mark, (bar) =>
          place >= 0 ? (bar.dims[place] ?? null) : bar.length,
        );
      case "varying":
        return varyingOf(how, cell, reading);
      default:
        return lengthOfText(how, cell, reading, place);
    }
  }

  function lengthOfText(
    how: LengthField,
    cell: string,
    reading: Extract<LengthReading, { is: "value" }>,
    place: number,
  ): number | null {
    if (reading.free && place >= 0) free += DIM_LETTERS[place];
    if (reading.lap !== null) lap = reading.lap;
    if (reading.guess !== null) {
      const { guess, asks, reason, value } = reading;
      if (!mayUse(how.kind, how.column, cell, { guess, asks, reason, proposal: value })) return null;
    } else if (reading.plain) {
      const number = reading.value / how.how.factor;
      if (number < how.least || number > how.most) return oddLength(how, number, place, cell);
    }
    if (reading.radius && place >= 0) {
      radius = reading.value;
      return null;
    }
    return reading.value;
  }

  function varyingOf(
    how: LengthField,
    cell: string,
    reading: Extract<LengthReading, { is: "varying" }>,
  ): null {
    const { from, to, step } = reading;
    const lengths =
      from !== null && to !== null && step !== null && step > 0
        ? Math.floor(Math.abs(to - from) / step + 1e-9) + 1
        : null;
    varying = { field: how.kind, from, to, step, lengths };
    const range =
      from === null
        ? "varies"
        : `varies from ${from} to ${to} mm${step === null ? "" : ` in steps of ${step}`}`;
    const many =
      lengths === null
        ? ""
        : `, ${lengths} lengths${countInHand === null || countInHand === lengths ? "" : ` for ${countInHand} bars`}`;
    problem(
      how.kind,
      how.column,
      cell,
      "unread",
      `${how.kind === "length" ? "the length" : how.kind} ${range}${many}: one row a length says it all`,
    );
    return null;
  }

  function oddLength(how: LengthField, number: number, place: number, typed: Cell = number): number | null {
    if (how.asks !== null && Number.isFinite(number)) {
      const proposal = number * how.how.factor;
      mayUse(how.kind, how.column, typed, {
        guess: "unit-of-column",
        asks: true,
        reason: how.asks,
        proposal,
      });
      return null;
    }
    const odd = readOddNumber(number, {
      column: how.how,
      isDate: typeof typed === "number" && number >= 20_000 && sheet.isDate?.(row, how.column) === true,
      shown: number < 0 ? sheet.shown?.(row, how.column) : undefined,
      isDim: place >= 0,
      inInches: standard.unit === "in",
    });
    if (odd.is === "slip") {
      slips ??= [];
      slips.push({ field: how, value: odd.value, place });
      return odd.value;
    }
    if (odd.is === "unread") {
      problem(how.kind, how.column, typed, "unread", odd.reason);
      return null;
    }
    if (odd.free && place >= 0) free += DIM_LETTERS[place];
    if (odd.guess === null) return odd.value;
    const { guess, asks, reason, value } = odd;
    return mayUse(how.kind, how.column, typed, { guess, asks, reason, proposal: value }) ? value : null;
  }

  /** Metres among millimetres: taken where the row's dimensions and length fit only so, else asked. */
  function settleSlips(dims: readonly (number | null)[], length: number | null): number | null {
    let settled = length;
    const sum = dims.reduce<number>((so, dim) => so + (dim ?? 0), 0);
    const ratio = length !== null && length > 0 && sum > 0 ? length / sum : 0;
    const fits = ratio > 0.3 && ratio < 3.2;
    for (const { field: how, value, place } of slips ?? []) {
      const typed = Math.round((value / how.how.factor) * 1e9) / 1e9;
      const other = Math.round(value * 1e6) / 1e6;
      const reason = `${typed * (how.how.factor === 1 ? 1000 : 0.001)} was taken in another unit than its column: ${other} mm`;
      const use = mayUse(how.kind, how.column, typed, {
        guess: "unit-of-cell",
        asks: !fits,
        reason,
        proposal: other,
      });
      if (use) continue;
      if (place >= 0) (dims as (number | null)[])[place] = null;
      else if (how.kind === "length") settled = null;
      else if (how.kind === "R") radius = null;
    }
    return settled;
  }

  function massOf(kind: ColumnKind, column: number, cells: readonly Cell[]): number | null {
    if (column < 0) return null;
    const cell = cells[column];
    if (cell === null || cell === undefined) return null;
    if (typeof cell === "number" && cell >= 0 && cell < Number.POSITIVE_INFINITY) return cell;
    if (typeof cell === "string") {
      const clean = cleanText(cell);
      if (clean === "" || isWord("blank", plainWords(clean))) return null;
      const number = readNumberText(clean.replace(/\s*(?:kgs?|t|mt|lbs?)\.?$/i, ""), layout.comma);
      if (number !== null && number >= 0) return number;
    }
    const reason = isCellError(cell)
      ? `the cell holds the error ${cell.error}`
      : `"${shortened(String(cell))}" is no mass`;
    problem(kind, column, cell, "unread", reason);
    return null;
  }

  function remarksOf(remark: string | null, size: SizeCell | null): RemarkReading | null {
    let reading: RemarkReading | null = null;
    if (remark !== null) {
      const known = remarks.get(remark);
      reading = known === undefined ? readRemark(remark) : known;
      if (known === undefined && remarks.size < MOST_REMEMBERED) remarks.set(remark, reading);
    }
    if (size === null || size.layer === null) return reading;
    const layers = size.layer.split(/\s+/);
    return reading === null
      ? { layers, hand: null, alternate: false, stagger: false }
      : { ...reading, layers: [...layers, ...reading.layers] };
  }

  /** A count on each face may hold both faces or one: it stands as typed and the user is asked. */
  function eachFace(bar: BarRow): void {
    if (bar.remarks === null || bar.remarks === undefined || !bar.remarks.layers.includes("EF")) return;
    const reason = "EF is each face: the count stands as typed, taken to hold both faces";
    mayUse("remark", Math.max(columnOf.remark, columnOf.size), bar.remark, {
      guess: "each-face",
      asks: true,
      reason,
    });
  }

  function isVoid(remark: string): boolean {
    let known = voids.get(remark);
    if (known === undefined) {
      known = beginsWithWord("superseded", plainWords(remark));
      if (voids.size < MOST_REMEMBERED) voids.set(remark, known);
    }
    return known;
  }

  function isStruck(cells: readonly Cell[]): boolean {
    if (sheet.isStruckThrough === undefined) return false;
    const column = [columnOf.mark, columnOf.size, lengthColumn?.column ?? -1].find((one) =>
      isFilled(cells, one),
    );
    return column !== undefined && sheet.isStruckThrough(row, column);
  }
}

const NO_SHAPE = { shape: null, legs: null };

/** Short, ending in a digit and without outer blanks: no word, so nothing to clean. */
function isPlainMark(text: string): boolean {
  const last = text.charCodeAt(text.length - 1);
  if (!(last >= 48 && last <= 57)) return false;
  const first = text.charCodeAt(0);
  if (!((first >= 48 && first <= 57) || (first >= 65 && first <= 90) || (first >= 97 && first <= 122)))
    return false;
  for (let index = 1; index < text.length; index += 1) {
    const code = text.charCodeAt(index);
    if (code > 126 || code < 32) return false;
  }
  return true;
}

function typedText(cell: Cell): string | null {
  if (cell === null) return null;
  return isCellError(cell) ? cell.error : String(cell);
}

function isFilled(cells: readonly Cell[], column: number): boolean {
  if (column < 0) return false;
  const cell = cells[column];
  return cell !== null && cell !== undefined && (typeof cell !== "string" || cell.trim() !== "");
}

function plainCount(value: number): CountReading {
  return { is: "value", value, members: null, each: null, size: null, guess: null, asks: false, reason: "" };
}

function lengthField(layout: TableLayout, kind: ColumnKind): LengthField | null {
  const column = layout.table.columns.get(kind);
  const how = layout.lengths.get(kind);
  if (column === undefined || how === undefined) return null;
  const asks = layout.asks.get(kind) ?? null;
  const open = asks !== null || how.feetInches;
  const least = open ? Number.POSITIVE_INFINITY : leastOf(kind, how.factor);
  return { kind, column: column.column, how, least, most: mostOf(how.factor), texts: new Map(), asks };
}

function leastOf(kind: ColumnKind, factor: number): number {
  if (kind === "former" || kind === "spacing") return 1e-9;
  if (factor === 1) return 20;
  if (factor === 1000) return 0.001;
  return 1e-9;
}

function mostOf(factor: number): number {
  return factor === 1000 ? 30 : 20_000;
}

/** "3-4" of the serial number of 4 March. */
function monthAndDay(serial: number): string {
  const date = new Date(Date.UTC(1899, 11, 30) + Math.floor(serial) * 86_400_000);
  return `${date.getUTCMonth() + 1}-${date.getUTCDate()}`;
}
