import type { DimLetter } from "../../standards/port";
import type { ColumnKind } from "../bar-row";
import { type LengthColumn, type LengthReading, MOST_MM } from "../cells/read-length-text";
import { recogniseHeader } from "../header/recognise-header";
import type { Cell } from "../sheet";
import type { TableLayout } from "./decide-columns";

/** Dimension letters in the order of a row's `dims`; R stands apart. */
export const DIM_LETTERS: readonly DimLetter[] = ["A", "B", "C", "D", "E", "F", "G", "H", "J", "K"];

/** A column of lengths and what was read of its texts before. */
export interface LengthField {
  readonly kind: ColumnKind;
  readonly column: number;
  readonly how: LengthColumn;
  /** numbers between these are taken as they stand */
  readonly least: number;
  readonly most: number;
  readonly texts: Map<string, LengthReading>;
  /** where the inches of a length in feet stand; -1 where they do not stand apart */
  readonly inches: number;
  /** the column's unit waits for the user: what is asked */
  readonly asks: string | null;
}

export interface DimColumn {
  readonly letter: DimLetter;
  readonly place: number;
  readonly field: LengthField;
  /** "E/R": a radius where the shape takes one */
  readonly orRadius: boolean;
}

/** Where each field of a bar stands; -1 where the table has no such column. */
export function tableColumns(layout: TableLayout) {
  const { columns } = layout.table;
  const at = (kind: ColumnKind): number => columns.get(kind)?.column ?? -1;
  const dims: DimColumn[] = [];
  DIM_LETTERS.forEach((letter, place) => {
    const field = lengthField(layout, letter);
    if (field === null) return;
    const orRadius = /\br\b/i.test((columns.get(letter)?.header ?? "").replace(/[^A-Za-z]/g, " "));
    dims.push({ letter, place, field, orRadius });
  });
  return {
    member: at("member"),
    /** a column that describes the bar where a heading names the member */
    memberDescribes: /descr|particular|location|designation/i.test(columns.get("member")?.header ?? ""),
    mark: at("mark"),
    size: at("size"),
    grade: at("grade"),
    /** "Type" beside "Size": its letters belong before the size */
    gradeIsType: /typ/i.test(columns.get("grade")?.header ?? ""),
    members: at("members"),
    each: at("each"),
    total: at("total"),
    totalIsOpen: isTotalOpen(layout),
    shape: at("shape"),
    mass: at("mass"),
    unitMass: at("unitMass"),
    coating: at("coating"),
    pour: at("pour"),
    revision: at("revision"),
    released: at("released"),
    remark: at("remark"),
    length: lengthField(layout, "length"),
    radius: lengthField(layout, "R"),
    former: lengthField(layout, "former"),
    spacing: lengthField(layout, "spacing"),
    totalLength: lengthField(layout, "totalLength"),
    dims,
    bySize: layout.table.bySize ?? [],
  };
}

/** "No. of bars" beside members and without a number in each may count the bars of one member or of all. */
function isTotalOpen({ table: { columns }, countIsSettled }: TableLayout): boolean {
  if (countIsSettled) return false;
  const total = columns.get("total");
  if (total === undefined || total.corrected === true || !columns.has("members") || columns.has("each"))
    return false;
  return recogniseHeader(total.header)?.weak === true;
}

export type TableColumns = ReturnType<typeof tableColumns>;

/** True where something stands in the cell. */
export function isFilled(cells: readonly Cell[], column: number): boolean {
  if (column < 0) return false;
  const cell = cells[column];
  return cell !== null && cell !== undefined && (typeof cell !== "string" || cell.trim() !== "");
}

function lengthField(layout: TableLayout, kind: ColumnKind): LengthField | null {
  const reading = layout.table.columns.get(kind);
  const how = layout.lengths.get(kind);
  if (reading === undefined || how === undefined) return null;
  const { column, inches = -1 } = reading;
  const asks = layout.asks.get(kind) ?? null;
  const isOpen = asks !== null || how.feetInches;
  const least = isOpen ? Number.POSITIVE_INFINITY : leastPlain(kind, how.factor);
  return { kind, column, how, least, most: mostPlain(kind, how.factor), texts: new Map(), inches, asks };
}

const LEAST_PLAIN_MM = 20;
const LEAST_PLAIN_METRES = 0.001;
const MOST_PLAIN_METRES = 30;
/** Serial numbers of dates lie above. */
const MOST_PLAIN = 20_000;

function leastPlain(kind: ColumnKind, factor: number): number {
  if (kind === "former" || kind === "spacing") return Number.MIN_VALUE;
  if (factor === 1) return LEAST_PLAIN_MM;
  return factor === 1000 ? LEAST_PLAIN_METRES : Number.MIN_VALUE;
}

function mostPlain(kind: ColumnKind, factor: number): number {
  if (kind === "totalLength") return MOST_MM / 1000;
  return factor === 1000 ? MOST_PLAIN_METRES : MOST_PLAIN;
}
