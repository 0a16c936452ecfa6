import type { SizeReading, Standard } from "../../standards/port";
import type { BarRow, ColumnKind, RemarkReading } from "../bar-row";
import { type CellPlace, guessed, unread } from "../cells/cell-answer";
import { cleanText } from "../cells/clean-text";
import { formerInDiameters } from "../cells/former-in-diameters";
import { isFilled } from "../cells/is-filled";
import type { LengthField } from "../cells/length-field";
import { pathInUnit } from "../cells/path-in-unit";
import { type CountReading, readCountText } from "../cells/read-count-text";
import { inMillimetres, isPlainLength, readLengthCell } from "../cells/read-length-cell";
import { readMassCell } from "../cells/read-mass-cell";
import { readRemark, withLayers } from "../cells/read-remark";
import { type ShapeCell, settleShape, shapeCellReader } from "../cells/read-shape-cell";
import { type SizeCell, settleSize, sizeCellReader } from "../cells/read-size-cell";
import { readNumberMark, readText, readTextCell, type TextReading } from "../cells/read-text-cell";
import { remember } from "../cells/remember";
import { remarkVoid, saysVoid } from "../cells/says-void";
import { settleUnitErrors } from "../cells/settle-unit-errors";
import { otherReason, typedText } from "../cells/typed-cell";
import type { TableLayout } from "../columns/decide-columns";
import { IN_COLUMN_UNIT } from "../columns/in-column-unit";
import { type DimColumn, type TableColumns, tableColumns } from "../columns/table-columns";
import type { Cell, Sheet } from "../sheet";
import { amountOfSize } from "./amount-of-size";
import type { Carried } from "./carried";
import { lapBeside } from "./lap-beside";
import { lengthByMass, lengthByTotal } from "./length-by-mass";
import { membersNamed } from "./members-named";
import { type DraftRow, RowDraft, type RowSource } from "./row-draft";
import { type RowSigns, rowSigns } from "./row-signs";
import { runningMetres } from "./running-metres";
import { settleCounts } from "./settle-counts";
import { sizeOfHeading } from "./size-heading";
import { StoredBars } from "./stored-bars";
import { takenDims } from "./taken-dims";

const TYPE_LETTERS = /^[A-Z]{1,2}$/i;

interface Remark {
  readonly reading: RemarkReading | null;
  readonly isVoid: boolean;
}

/** Reads the bar rows of one table of one sheet; it keeps what it has read of texts that come again. */
export class BarRowReader {
  readonly signs: RowSigns;
  private readonly columns: TableColumns;
  private readonly readSize: (cell: string | number, type: string) => SizeCell;
  private readonly readShape: (cell: string | number) => ShapeCell;
  private readonly readTyped = remember<string, TextReading>(readText, (failed) => ({
    text: null,
    ditto: false,
    failed,
  }));
  private readonly readCount = remember<string, CountReading>(
    (typed) => {
      const { comma, countWords } = this.layout;
      return readCountText(cleanText(typed), "thousands", comma === "decimal", countWords);
    },
    (reason) => ({ is: "unread", reason }),
  );
  private readonly readRemark = remember<string, Remark>(
    (text) => ({
      reading: readRemark(text),
      isVoid: remarkVoid(text) === "bar",
    }),
    () => ({ reading: null, isVoid: false }),
  );
  private readonly draft: RowDraft;
  private readonly bars: StoredBars;
  /** by place among the dimensions, of the row that is being read */
  private readonly dims: (number | null)[] = [];

  constructor(
    private readonly sheet: Sheet,
    private readonly standard: Standard,
    source: RowSource,
    readonly layout: TableLayout,
  ) {
    this.draft = new RowDraft(source, sheet);
    this.bars = new StoredBars(layout.table);
    this.columns = tableColumns(layout, standard.unit === "in");
    const { softMetric, habitualSizes, signsDiameter, areEighths } = layout;
    this.readSize = sizeCellReader(standard, softMetric, habitualSizes, signsDiameter, areEighths);
    this.readShape = shapeCellReader(standard);
    this.signs = rowSigns(this.columns, this.readSize);
  }

  /** The size that a lone text names for the bars below; null of a table whose rows name their own. */
  sizeInHeading(text: string): string | null {
    const { columns, readSize } = this;
    return columns.size >= 0 || columns.bySize.length > 0 ? null : sizeOfHeading(text, readSize);
  }

  /** The bar of a row, with what it carries down. `above` is the bar over it, which ditto marks repeat. */
  read(
    typed: readonly Cell[],
    row: number,
    before: Carried,
    above: BarRow | null,
  ): { readonly bar: DraftRow; readonly carried: Carried } {
    const { columns, layout } = this;
    const { draft } = this;
    const running = runningMetres(typed, columns, layout.comma);
    const cells = running?.cells ?? typed;
    draft.begin(row, above);
    const named = this.text(cells, "member", columns.member, above?.member);
    const isDescription = columns.memberDescribes && before.heading !== null;
    const member = isDescription ? before.heading : named;
    const isOther = member !== null && member !== before.member;
    let carried = isOther
      ? { ...before, member, members: this.membersOf(member, before), membersTyped: null }
      : before;
    const grade = this.text(cells, "grade", columns.grade, above?.grade);
    const sizeCell = this.sizeCell(draft, cells, columns.gradeIsType ? (grade ?? "") : "");
    const behind = settleCounts(draft, cells, sizeCell, carried, columns, this.readCount);
    if (draft.membersTyped !== null && draft.membersTyped !== carried.membersTyped) {
      carried = { ...carried, membersTyped: draft.membersTyped };
    }
    const called = sizeCell ?? (behind === null ? null : this.readSize(behind, ""));
    const size =
      sizeCell === null
        ? (called?.size ?? this.sizeUnder(draft, cells) ?? this.sizeAbove(before.size))
        : this.size(draft, sizeCell, cells);
    const { shape, legs } = this.shape(draft, cells);
    const dimCount = this.readDims(draft, cells, shape);
    let length = this.length(draft, columns.length, cells, above?.length);
    draft.radius = this.length(draft, columns.radius, cells, above?.radius) ?? draft.radius;
    if (draft.unitErrors !== null) length = this.settle(draft, length, size, cells);
    const dims = takenDims(this.dims, dimCount, draft.unitErrors !== null);
    const former =
      formerInDiameters(cells[columns.former?.column ?? -1], size?.diameter ?? null) ??
      this.length(draft, columns.former, cells, above?.former);
    const spacing = this.length(draft, columns.spacing, cells, null);
    const ofSize = amountOfSize(layout.table, cells, layout.comma);
    const sized = ofSize !== null && "problem" in ofSize ? draft.take(ofSize) : ofSize;
    const alone = running === null || running.totalLength === null ? null : running.totalLength;
    const metres = alone === null ? null : alone * (running?.isOfOne === true ? (draft.members ?? 1) : 1);
    const totalLength = this.length(draft, columns.totalLength, cells, null) ?? sized?.totalLength ?? metres;
    const mass = this.mass(draft, "mass", columns.mass, cells);
    const remarkTyped = this.text(cells, "remark", columns.remark, above?.remark);
    const remark = remarkTyped ?? (isDescription && named !== before.heading ? named : null);
    const said = remark === null ? null : this.readRemark(remark);
    const bar: DraftRow = {
      table: layout.table,
      row,
      member: member ?? carried.member,
      mark: this.mark(cells) ?? called?.mark ?? null,
      sizeTyped: columns.size < 0 ? (size?.typed ?? null) : typedText(cells[columns.size]),
      size,
      grade: grade ?? called?.grade ?? (size !== null && size.prefix !== "" ? null : carried.grade),
      shape: shape === null ? null : pathInUnit(shape, length, this.standard.unit, layout.pathUnit),
      dims,
      radius: draft.radius,
      freeDims: draft.free,
      members: draft.members,
      each: draft.each,
      total: draft.total,
      length,
      mass: mass === null ? (sized?.mass ?? null) : mass * layout.massFactor,
      former,
      coating: this.text(cells, "coating", columns.coating, above?.coating),
      pour: this.text(cells, "pour", columns.pour, above?.pour),
      ...(columns.drawing < 0
        ? {}
        : { drawing: this.text(cells, "drawing", columns.drawing, above?.drawing) }),
      revision: this.text(cells, "revision", columns.revision, above?.revision),
      released: this.text(cells, "released", columns.released, above?.released),
      remark,
      hidden: this.sheet.isHiddenRow?.(row) ?? false,
      struckThrough: this.isStruck(cells, row),
      problems: null,
      unitMass: this.mass(draft, "unitMass", columns.unitMass, cells),
      ...(columns.pieceMass < 0 ? {} : { pieceMass: this.pieceMass(draft, cells) }),
      totalLength,
      sizedAt: sized === null ? null : sized.column,
      spacing: spacing ?? called?.spacing ?? null,
      varying: draft.varying,
      setMark: null,
      legs,
      lap: draft.lap ?? lapBeside(columns, cells, layout.comma),
      remarks: withLayers(said?.reading ?? null, called?.layer ?? null),
      superseded: (said?.isVoid ?? false) || saysVoid(cells[columns.size]),
      supersededBy: null,
      fill: this.sheet.fill?.(row, Math.max(columns.mark, 0)) ?? null,
    };
    this.askEachFace(draft, bar);
    draft.tellOfBeside(typed, this.sheet.left, this.layout, this.signs);
    bar.problems = draft.problems;
    return { bar: this.bars.keep(bar), carried };
  }

  /** Of another member: as its name says, or as the line below its bars does. */
  private membersOf(member: string, { members }: Carried): number | null {
    return this.layout.closings.length > 0 ? members : membersNamed(member, this.columns);
  }

  private length(
    draft: RowDraft,
    field: LengthField | null,
    cells: readonly Cell[],
    above: number | null | undefined,
  ): number | null {
    if (field === null) return null;
    const cell = cells[field.column];
    if (isPlainLength(cell, field)) return inMillimetres(cell, field.how.factor);
    return draft.takeLength(readLengthCell(field, cells, above ?? null, draft, this.sheet), field);
  }

  private mass(
    draft: RowDraft,
    field: "mass" | "unitMass" | "pieceMass",
    column: number,
    cells: readonly Cell[],
  ): number | null {
    if (column < 0) return null;
    return draft.takeBare<number>(readMassCell(field, column, cells[column], this.layout.comma));
  }

  private pieceMass(draft: RowDraft, cells: readonly Cell[]): number | null {
    const typed = this.mass(draft, "pieceMass", this.columns.pieceMass, cells);
    const unit = this.layout.table.columns.get("pieceMass")?.unit ?? "kg";
    return typed === null ? null : typed * IN_COLUMN_UNIT[unit];
  }

  private text(
    cells: readonly Cell[],
    field: ColumnKind,
    column: number,
    above: string | null | undefined,
  ): string | null {
    if (column < 0) return null;
    const answer = readTextCell(field, column, cells[column], above ?? null, this.readTyped);
    return this.draft.takeBare<string>(answer);
  }

  private mark(cells: readonly Cell[]): string | null {
    const column = this.columns.mark;
    const cell = column < 0 ? null : cells[column];
    if (typeof cell !== "number") return this.text(cells, "mark", column, this.draft.above?.mark);
    return this.draft.takeBare<string>(readNumberMark(cell, column, this.draft, this.sheet));
  }

  private sizeCell(draft: RowDraft, cells: readonly Cell[], type: string): SizeCell | null {
    const column = this.columns.size;
    const cell = column < 0 ? null : cells[column];
    if (cell === null || cell === undefined) return null;
    if (typeof cell !== "string" && typeof cell !== "number") {
      draft.take(unread({ field: "size", column, typed: cell }, otherReason(cell, "no bar size")));
      return null;
    }
    if (saysVoid(cell)) return null;
    const reading = this.readSize(cell, TYPE_LETTERS.test(type) ? type.toUpperCase() : "");
    return reading.is === "blank" ? null : reading;
  }

  private size(draft: RowDraft, reading: SizeCell, cells: readonly Cell[]): SizeReading | null {
    if (reading.is === "size" && reading.guess === null) return reading.size;
    const column = this.columns.size;
    return draft.take(settleSize(reading, { field: "size", column, typed: cells[column] ?? null }, draft));
  }

  /** A size behind the count ("2x3T20"), or over the one filled column of lengths by size. */
  private sizeUnder(draft: RowDraft, cells: readonly Cell[]): SizeReading | null {
    const { bySize } = this.columns;
    if (bySize.length === 0) return null;
    const filled = bySize.filter(({ column }) => isAbove0(cells[column]));
    const one = filled.length === 1 ? filled[0] : undefined;
    if (one === undefined) return null;
    const reason = `the size ${one.size} was taken from the head of the one column that is filled`;
    const said = { guess: "size-from-column", asks: false, reason } as const;
    const place: CellPlace = { field: "size", column: one.column, typed: cells[one.column] ?? null };
    return draft.take(guessed(place, this.readSize(one.size, "").size, said, draft));
  }

  /** The size of the heading above, of a table without a column for it. */
  private sizeAbove(heading: string | null): SizeReading | null {
    return heading === null ? null : this.readSize(heading, "").size;
  }

  private shape(
    draft: RowDraft,
    cells: readonly Cell[],
  ): { readonly shape: string | null; readonly legs: readonly number[] | null } {
    const column = this.columns.shape;
    if (column < 0) return NO_SHAPE;
    const cell = cells[column];
    const place: CellPlace = { field: "shape", column, typed: cell ?? null };
    if (cell === null || cell === undefined) {
      if (this.columns.dims.some(({ field }) => isFilled(cells, field.column))) {
        draft.take(unread(place, "the shape cell is blank beside dimensions: a picture may lie over it"));
      }
      return NO_SHAPE;
    }
    if (typeof cell !== "string" && typeof cell !== "number") {
      draft.take(unread(place, otherReason(cell, "no shape code")));
      return NO_SHAPE;
    }
    const reading = this.readShape(cell);
    if (reading.is === "shape" && reading.guess === null) return reading;
    const settled = settleShape(reading, place, draft);
    return { shape: draft.take(settled), legs: settled.legs };
  }

  /** Fills `dims` and gives how many of it are filled. */
  private readDims(draft: RowDraft, cells: readonly Cell[], shape: string | null): number {
    const { dims, sheet } = this;
    const columns = this.columns.dims;
    let filled = 0;
    dims.length = 0;
    for (let index = 0; index < columns.length; index += 1) {
      const { letter, place, field, orRadius } = columns[index] as DimColumn;
      const cell = cells[field.column];
      if (cell === null || cell === undefined) continue;
      const value = isPlainLength(cell, field)
        ? inMillimetres(cell, field.how.factor)
        : draft.takeLength(
            readLengthCell(field, cells, draft.above?.dims[place] ?? null, draft, sheet),
            field,
          );
      if (value === null) continue;
      if (orRadius || value === 0) {
        const letters = shape === null ? undefined : this.standard.shapes.get(shape)?.dims;
        if (letters !== undefined && !letters.includes(letter)) {
          if (orRadius && letters.includes("R")) {
            draft.radius = value;
            continue;
          }
          // a formula that points at a blank shows 0 under letters that the shape does not have
          if (value === 0) continue;
        }
      }
      while (dims.length < place) dims.push(null);
      dims[place] = value;
      filled = place + 1;
    }
    return filled;
  }

  /** The length once the row has settled which numbers were written in another unit. */
  private settle(
    draft: RowDraft,
    typed: number | null,
    size: SizeReading | null,
    cells: readonly Cell[],
  ): number | null {
    const mass = readMassCell("mass", this.columns.mass, cells[this.columns.mass], this.layout.comma);
    const kg = mass === null || typeof mass === "object" ? null : mass * this.layout.massFactor;
    const row = { dims: this.dims, length: typed, byMass: this.lengthByAmounts(draft, size, kg, cells) };
    const { problems, open, length } = settleUnitErrors(draft.unitErrors ?? [], row, draft);
    for (const problem of problems) draft.tell(problem);
    for (const { place, kind } of open) {
      if (place >= 0) this.dims[place] = null;
      else if (kind === "R") draft.radius = null;
    }
    return length;
  }

  private lengthByAmounts(
    draft: RowDraft,
    size: SizeReading | null,
    kg: number | null,
    cells: readonly Cell[],
  ) {
    const { totalLength } = this.columns;
    const ofSize = amountOfSize(this.layout.table, cells, this.layout.comma);
    const sized = ofSize === null || "problem" in ofSize ? null : ofSize;
    const cell = totalLength == null ? null : cells[totalLength.column];
    const all = typeof cell === "number" ? inMillimetres(cell, totalLength?.how.factor ?? 1) : null;
    const amounts = { kg: kg ?? sized?.mass ?? null, mm: all ?? sized?.totalLength ?? null };
    return lengthByMass(draft, size, amounts.kg) ?? lengthByTotal(draft, amounts.mm);
  }

  /** A count on each face may hold both faces or one: it stands as typed and the user is asked. */
  private askEachFace(draft: RowDraft, { remarks, remark }: BarRow): void {
    if (remarks === null || remarks === undefined || !remarks.layers.includes("EF")) return;
    const reason = "EF is each face: the count stands as typed, taken to hold both faces";
    const column = this.columns.remark >= 0 ? this.columns.remark : this.columns.size;
    const said = { guess: "each-face", asks: true, reason } as const;
    draft.take(guessed({ field: "remark", column, typed: remark }, null, said, draft));
  }

  private isStruck(cells: readonly Cell[], row: number): boolean {
    const { sheet, columns } = this;
    if (sheet.isStruckThrough === undefined) return false;
    const column = [columns.mark, columns.size, columns.length?.column ?? -1].find((one) =>
      isFilled(cells, one),
    );
    return column !== undefined && sheet.isStruckThrough(row, column);
  }
}

const NO_SHAPE = { shape: null, legs: null };

function isAbove0(cell: Cell | undefined): boolean {
  if (typeof cell === "number") return cell > 0;
  return typeof cell === "string" && Number(cleanText(cell).replace(",", ".")) > 0;
}
