import { DIMENSION_LETTERS } from "../../standards/dimension-letters";
import type { DimLetter } from "../../standards/port";
import type { ColumnKind } from "../bar-row";
import { cleanText } from "../cells/clean-text";
import type { LengthField } from "../cells/length-field";
import { type LengthReading, MOST_MM, readLengthText } from "../cells/read-length-text";
import { remember } from "../cells/remember";
import { recogniseHeader } from "../header/recognise-header";
import type { TableLayout } from "./decide-columns";
import { lapColumn } from "./lap-column";

export interface DimColumn {
  readonly letter: DimLetter;
  readonly place: number;
  readonly field: LengthField;
  /** "E/R": a radius where the shape takes one */
  readonly orRadius: boolean;
}

/** Where each field of a bar stands; -1 where the table has no such column. */
export function tableColumns(layout: TableLayout, inInches: boolean) {
  const { columns } = layout.table;
  const at = (kind: ColumnKind): number => columns.get(kind)?.column ?? -1;
  const length = (kind: ColumnKind, place = -1) => lengthField(layout, kind, place, inInches);
  const dims: DimColumn[] = [];
  DIMENSION_LETTERS.forEach((letter, place) => {
    const field = length(letter, place);
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
    totalIsOpen: isTotalOpen(layout, layout.table.columns.has("members")),
    totalIsOpenUnderHeading: isTotalOpen(layout, true),
    membersCarryDown: layout.membersCarryDown,
    shape: at("shape"),
    mass: at("mass"),
    unitMass: at("unitMass"),
    pieceMass: at("pieceMass"),
    coating: at("coating"),
    pour: at("pour"),
    drawing: at("drawing"),
    revision: at("revision"),
    released: at("released"),
    remark: at("remark"),
    length: length("length"),
    radius: length("R"),
    former: length("former"),
    spacing: length("spacing"),
    totalLength: length("totalLength"),
    dims,
    /** what of a length is lap, in the length's unit */
    lap: lapColumn(layout.table) ?? -1,
    bySize: layout.table.bySize ?? [],
  };
}

/** "No. of bars" beside members and without a number in each may count the bars of one member or of all. */
function isTotalOpen({ table: { columns }, countIsSettled }: TableLayout, hasMembers: boolean): boolean {
  if (countIsSettled || !hasMembers) return false;
  const total = columns.get("total");
  if (total === undefined || total.corrected === true || columns.has("each")) return false;
  const meaning = recogniseHeader(total.header);
  // where arithmetic told that it is a count, no word says whose
  return meaning === null || meaning.weak;
}

export type TableColumns = ReturnType<typeof tableColumns>;

function lengthField(
  layout: TableLayout,
  kind: ColumnKind,
  place: number,
  inInches: boolean,
): LengthField | null {
  const reading = layout.table.columns.get(kind);
  const how = layout.lengths.get(kind);
  if (reading === undefined || how === undefined) return null;
  const { column, inches = -1 } = reading;
  const asks = layout.asks.get(kind) ?? null;
  const isOpen = asks !== null || how.feetInches;
  const least = isOpen ? Number.POSITIVE_INFINITY : leastPlain(kind, how.factor);
  const most = mostPlain(kind, how.factor);
  const readText = remember<string, LengthReading>(
    (typed) => readLengthText(kind === "spacing" ? withoutSign(typed) : cleanText(typed), how),
    (reason) => ({ is: "unread", reason }),
  );
  return { kind, column, place, how, least, most, inches, inInches, asks, readText };
}

const SPACED = /^(?:@|c\s*\/\s*c?|\/|#)\s*(?=\d)|(?<=\d)\s*c\s*\/\s*c\.?$/gi;

/** "@200", "c/20" and "150 c/c" under the head of the spacings. */
function withoutSign(typed: string): string {
  return cleanText(typed).replace(SPACED, "");
}

const LEAST_PLAIN_MM = 20;
const LEAST_PLAIN_METRES = 0.001;
/** a length below may be metres among centimetres */
const LEAST_PLAIN_CENTIMETRES = 18;
const MOST_PLAIN_METRES = 30;
/** Serial numbers of dates lie above. */
const MOST_PLAIN = 20_000;

function leastPlain(kind: ColumnKind, factor: number): number {
  if (kind === "former" || kind === "spacing") return Number.MIN_VALUE;
  if (factor === 1) return LEAST_PLAIN_MM;
  if (factor === 10 && kind === "length") return LEAST_PLAIN_CENTIMETRES;
  return factor === 1000 ? LEAST_PLAIN_METRES : Number.MIN_VALUE;
}

function mostPlain(kind: ColumnKind, factor: number): number {
  if (kind === "totalLength") return MOST_MM / 1000;
  return factor === 1000 ? MOST_PLAIN_METRES : MOST_PLAIN;
}
