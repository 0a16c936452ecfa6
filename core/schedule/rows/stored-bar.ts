import type { SizeReading } from "../../standards/port";
import { memoryOfThreads } from "../../units/memory-of-threads";
import type { BarRow, CellProblem, RemarkReading, SupersededBy, TableReading, VaryingSet } from "../bar-row";
import type { DraftRow } from "./row-draft";
import { ValueColumn } from "./value-column";

/** What few bars have; the others share `NOTHING_RARE`. */
interface Rare {
  freeDims: string;
  coating: string | null;
  released: string | null;
  problems: readonly CellProblem[] | null;
  drawing: string | null;
  unitMass: number | null;
  pieceMass: number | null;
  sizedAt: number | null;
  spacing: number | null;
  varying: VaryingSet | null;
  setMark: string | null;
  legs: readonly number[] | null;
  lap: number | null;
  hidden: boolean;
  struckThrough: boolean;
  superseded: boolean;
  supersededBy: SupersededBy | null;
  fill: string | null;
}

const NOTHING_RARE: Readonly<Rare> = {
  freeDims: "",
  coating: null,
  released: null,
  problems: null,
  drawing: null,
  unitMass: null,
  pieceMass: null,
  sizedAt: null,
  spacing: null,
  varying: null,
  setMark: null,
  legs: null,
  lap: null,
  hidden: false,
  struckThrough: false,
  superseded: false,
  supersededBy: null,
  fill: null,
};

/** Places of the numbers of one bar. */
export enum Figure {
  Row = 0,
  Members = 1,
  Each = 2,
  Total = 3,
  Length = 4,
  Mass = 5,
  Former = 6,
  Radius = 7,
  TotalLength = 8,
}
export const FIGURES = 9;

/** Some bars, field by field. NaN stands for null. */
export class Block {
  readonly mark: ValueColumn<string>;
  readonly member: ValueColumn<string>;
  readonly sizeTyped: ValueColumn<string>;
  readonly size: ValueColumn<SizeReading>;
  readonly grade: ValueColumn<string>;
  readonly shape: ValueColumn<string>;
  readonly pour: ValueColumn<string>;
  readonly revision: ValueColumn<string>;
  readonly remark: ValueColumn<string>;
  readonly remarks: ValueColumn<RemarkReading>;
  /** none stands for `NOTHING_RARE` */
  readonly rare: ValueColumn<Readonly<Rare>>;
  readonly figures: Float64Array;
  /** where the dimensions of each bar begin among all; those of the next end them */
  readonly firstDim: Uint32Array;
  dims: Float64Array;
  /** the dimensions last asked for, which are mostly asked for again */
  dimsMade: readonly (number | null)[] = [];
  dimsMadeOf = -1;
  count = 0;

  constructor(
    readonly table: TableReading,
    readonly room: number,
  ) {
    const texts = () => new ValueColumn<string>(room);
    this.mark = texts();
    this.member = texts();
    this.sizeTyped = texts();
    this.size = new ValueColumn(room);
    this.grade = texts();
    this.shape = texts();
    this.pour = texts();
    this.revision = texts();
    this.remark = texts();
    this.remarks = new ValueColumn(room);
    this.rare = new ValueColumn(room);
    this.figures = new Float64Array(memoryOfThreads(room * FIGURES * Float64Array.BYTES_PER_ELEMENT));
    this.firstDim = new Uint32Array(memoryOfThreads((room + 1) * Uint32Array.BYTES_PER_ELEMENT));
    this.dims = roomForDims(room * 4);
  }
}

/** Room for so many dimensions. */
export function roomForDims(count: number): Float64Array {
  return new Float64Array(memoryOfThreads(count * Float64Array.BYTES_PER_ELEMENT));
}

/** A bar as `BarRow` says, of which the fields stand in a block with those of others. */
export class StoredBar implements DraftRow {
  constructor(
    readonly block: Block,
    readonly place: number,
  ) {}

  get table(): TableReading {
    return this.block.table;
  }
  get row(): number {
    return this.block.figures[this.place * FIGURES + Figure.Row] as number;
  }
  get member(): string | null {
    return this.block.member.get(this.place);
  }
  set member(member) {
    this.block.member.set(this.place, member);
  }
  get mark(): string | null {
    return this.block.mark.get(this.place);
  }
  get sizeTyped(): string | null {
    return this.block.sizeTyped.get(this.place);
  }
  get size(): SizeReading | null {
    return this.block.size.get(this.place);
  }
  get grade(): string | null {
    return this.block.grade.get(this.place);
  }
  set grade(grade) {
    this.block.grade.set(this.place, grade);
  }
  get shape(): string | null {
    return this.block.shape.get(this.place);
  }
  get dims(): readonly (number | null)[] {
    const { block, place } = this;
    return block.dimsMadeOf === place ? block.dimsMade : dimsOf(block, place);
  }
  get members(): number | null {
    return figure(this.block, this.place, Figure.Members);
  }
  get each(): number | null {
    return figure(this.block, this.place, Figure.Each);
  }
  get total(): number | null {
    return figure(this.block, this.place, Figure.Total);
  }
  get length(): number | null {
    return figure(this.block, this.place, Figure.Length);
  }
  get mass(): number | null {
    return figure(this.block, this.place, Figure.Mass);
  }
  get former(): number | null {
    return figure(this.block, this.place, Figure.Former);
  }
  get pour(): string | null {
    return this.block.pour.get(this.place);
  }
  set pour(pour) {
    this.block.pour.set(this.place, pour);
  }
  get revision(): string | null {
    return this.block.revision.get(this.place);
  }
  get remark(): string | null {
    return this.block.remark.get(this.place);
  }
  set remark(remark) {
    this.block.remark.set(this.place, remark);
  }
  get remarks(): RemarkReading | null {
    return this.block.remarks.get(this.place);
  }
  set remarks(remarks) {
    this.block.remarks.set(this.place, remarks ?? null);
  }
  get radius(): number | null {
    return figure(this.block, this.place, Figure.Radius);
  }
  get freeDims(): string {
    return this.rare().freeDims;
  }
  get coating(): string | null {
    return this.rare().coating;
  }
  get released(): string | null {
    return this.rare().released;
  }
  get problems(): readonly CellProblem[] | null {
    return this.rare().problems;
  }
  get drawing(): string | null {
    return this.rare().drawing;
  }
  get unitMass(): number | null {
    return this.rare().unitMass;
  }
  get pieceMass(): number | null {
    return this.rare().pieceMass;
  }
  get totalLength(): number | null {
    return figure(this.block, this.place, Figure.TotalLength);
  }
  get sizedAt(): number | null {
    return this.rare().sizedAt;
  }
  get spacing(): number | null {
    return this.rare().spacing;
  }
  get varying(): VaryingSet | null {
    return this.rare().varying;
  }
  get setMark(): string | null {
    return this.rare().setMark;
  }
  set setMark(setMark) {
    this.change({ setMark });
  }
  get legs(): readonly number[] | null {
    return this.rare().legs;
  }
  get lap(): number | null {
    return this.rare().lap;
  }
  get hidden(): boolean {
    return this.rare().hidden;
  }
  get struckThrough(): boolean {
    return this.rare().struckThrough;
  }
  get superseded(): boolean {
    return this.rare().superseded;
  }
  set superseded(superseded) {
    this.change({ superseded });
  }
  get supersededBy(): SupersededBy | null {
    return this.rare().supersededBy;
  }
  set supersededBy(supersededBy) {
    this.change({ supersededBy });
  }
  get fill(): string | null {
    return this.rare().fill;
  }

  toJSON(): BarRow {
    return plainBar(this);
  }

  // no name with #: each bar of a full sheet would hold a word more
  private rare(): Readonly<Rare> {
    return this.block.rare.get(this.place) ?? NOTHING_RARE;
  }

  private change(rare: Partial<Rare>): void {
    const before = this.rare();
    if ((Object.keys(rare) as (keyof Rare)[]).every((name) => rare[name] === before[name])) return;
    this.block.rare.set(this.place, { ...before, ...rare });
  }
}

function figure({ figures }: Block, place: number, which: Figure): number | null {
  const value = figures[place * FIGURES + which] as number;
  return Number.isNaN(value) ? null : value;
}

function dimsOf(block: Block, place: number): readonly (number | null)[] {
  const { dims, firstDim } = block;
  const made: (number | null)[] = [];
  for (let at = firstDim[place] as number; at < (firstDim[place + 1] as number); at += 1) {
    const value = dims[at] as number;
    made.push(Number.isNaN(value) ? null : value);
  }
  block.dimsMade = made;
  block.dimsMadeOf = place;
  return made;
}

// field by field: names looked up in a list cost as much as all else here
export function isRare(bar: Omit<BarRow, "table">): boolean {
  const { freeDims, coating, released, problems, hidden, struckThrough, superseded, fill } = bar;
  const { drawing, unitMass, pieceMass, sizedAt, spacing, varying, setMark, legs, lap, supersededBy } = bar;
  if (freeDims !== "" || hidden || struckThrough || superseded === true) return true;
  return (
    (coating ?? released ?? problems ?? fill ?? drawing ?? unitMass ?? pieceMass ?? sizedAt ?? null) !==
      null || (spacing ?? varying ?? setMark ?? legs ?? lap ?? supersededBy ?? null) !== null
  );
}

export function rareOf(bar: Omit<BarRow, "table">): Rare {
  return {
    freeDims: bar.freeDims,
    coating: bar.coating,
    released: bar.released,
    problems: bar.problems,
    drawing: bar.drawing ?? null,
    unitMass: bar.unitMass ?? null,
    pieceMass: bar.pieceMass ?? null,
    sizedAt: bar.sizedAt ?? null,
    spacing: bar.spacing ?? null,
    varying: bar.varying ?? null,
    setMark: bar.setMark ?? null,
    legs: bar.legs ?? null,
    lap: bar.lap ?? null,
    hidden: bar.hidden,
    struckThrough: bar.struckThrough,
    superseded: bar.superseded ?? false,
    supersededBy: bar.supersededBy ?? null,
    fill: bar.fill ?? null,
  };
}

/** All fields of a bar as an object of its own, to be copied with some of them changed. */
export function plainBar(bar: BarRow): BarRow {
  // field by field: objects spread into one another take ten times as long
  return {
    table: bar.table,
    row: bar.row,
    member: bar.member,
    mark: bar.mark,
    sizeTyped: bar.sizeTyped,
    size: bar.size,
    grade: bar.grade,
    shape: bar.shape,
    dims: bar.dims,
    members: bar.members,
    each: bar.each,
    total: bar.total,
    length: bar.length,
    mass: bar.mass,
    former: bar.former,
    radius: bar.radius,
    totalLength: bar.totalLength ?? null,
    pour: bar.pour,
    revision: bar.revision,
    remark: bar.remark,
    remarks: bar.remarks ?? null,
    freeDims: bar.freeDims,
    coating: bar.coating,
    released: bar.released,
    problems: bar.problems,
    drawing: bar.drawing ?? null,
    unitMass: bar.unitMass ?? null,
    pieceMass: bar.pieceMass ?? null,
    sizedAt: bar.sizedAt ?? null,
    spacing: bar.spacing ?? null,
    varying: bar.varying ?? null,
    setMark: bar.setMark ?? null,
    legs: bar.legs ?? null,
    lap: bar.lap ?? null,
    hidden: bar.hidden,
    struckThrough: bar.struckThrough,
    superseded: bar.superseded ?? false,
    supersededBy: bar.supersededBy ?? null,
    fill: bar.fill ?? null,
  };
}
