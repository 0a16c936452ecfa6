import type { Cell } from "../sheet";
import { commaHabits } from "./comma-habit";
import { LOOK } from "./evidence.data";
import { type CellValue, valueReader } from "./read-value";

/** Rows of a table as values, and which rows of the sheet they are. */
export interface PickedRows {
  readonly rows: readonly number[];
  readonly values: readonly (readonly CellValue[])[];
  readonly decimalComma: boolean;
}

/** Where rows come from. */
export interface RowSource {
  cells(row: number): readonly Cell[];
  /** the first row that may hold a bar, and the one after the last */
  readonly from: number;
  readonly to: number;
  readonly left: number;
  readonly right: number;
}

/**
 * Rows that hold bars, a sample of stretches where they are many, for every habit of decimals that the texts allow.
 * Rows that fill few of the columns that most rows fill are totals or notes.
 */
export function pickRows(source: RowSource): PickedRows[] {
  const rows = sampledRows(source.from, source.to);
  const cells = rows.map((row) => source.cells(row).slice(0, source.right + 1));
  return commaHabits(cells).map((decimalComma) => {
    const read = valueReader(decimalComma);
    const values = cells.map((line) =>
      line.map((cell, column) => (column < source.left ? read(null) : read(cell))),
    );
    const kept = barRows(values);
    return {
      rows: kept.map((index) => rows[index] as number),
      values: kept.map((index) => values[index] as CellValue[]),
      decimalComma,
    };
  });
}

/** The rows that are looked at between two rows of a sheet, in order. */
export function sampledRows(from: number, to: number): number[] {
  const { mostRows, sampled, stretches } = LOOK.value;
  const end = Math.min(to, from + mostRows);
  const count = end - from;
  if (count <= sampled) return Array.from({ length: Math.max(0, count) }, (_, index) => from + index);
  const long = sampled / stretches;
  const step = (count - long) / (stretches - 1);
  return Array.from({ length: sampled }, (_, index) => {
    const stretch = Math.floor(index / long);
    return from + Math.floor(stretch * step) + (index % long);
  });
}

/** Rows with the values of a bar, by place; a second table of other columns below is left out. */
function barRows(values: readonly (readonly CellValue[])[]): number[] {
  const { leastRows } = LOOK.value;
  const segments = segmentsOf(values);
  const first = segments.find(({ rows }) => rows.length >= leastRows) ?? segments[0];
  if (first === undefined) return [];
  return keptRows(values, first);
}

/** A segment's rows without the totals and notes among them. */
export function keptRows(values: readonly (readonly CellValue[])[], first: Segment): number[] {
  const { rounds, leastRows } = LOOK.value;
  const all = first.rows;
  let rows = all;
  for (let round = 0; round < rounds; round += 1) {
    const kept = withKeys(values, all, first.width, rows);
    if (kept.length < Math.min(2, leastRows)) break;
    rows = kept;
  }
  return rows;
}

/** One table's rows: stretches between headers whose columns hold the same kinds. */
export interface Segment {
  rows: number[];
  profile: readonly ColumnProfile[];
  readonly width: number;
}

export interface ColumnProfile {
  readonly filled: number;
  readonly kind: "blank" | "number" | "size" | "feetInches" | "text";
}

/** The stretches of rows with values between headers, alike ones as one. */
export function segmentsOf(values: readonly (readonly CellValue[])[]): Segment[] {
  const width = values.reduce((widest, line) => Math.max(widest, line.length), 0);
  const runs: number[][] = [];
  let run: number[] = [];
  values.forEach((line, row) => {
    if (isHeader(line)) {
      if (run.length > 0) runs.push(run);
      run = [];
    } else if (valuesIn(line) >= LOOK.value.valuesOfBar) run.push(row);
  });
  if (run.length > 0) runs.push(run);
  const segments: Segment[] = [];
  for (const rows of runs) {
    const profile = profileOf(values, rows, width);
    const alike =
      rows.length < 2
        ? undefined
        : segments.find((one) => likeness(one.profile, profile) >= LOOK.value.alike);
    if (alike === undefined) segments.push({ rows: [...rows], profile, width });
    else {
      alike.rows.push(...rows);
      alike.profile = profileOf(values, alike.rows, width);
    }
  }
  return segments;
}

function isHeader(line: readonly CellValue[]): boolean {
  const { textsOfHeader, textsAlone, numbersOfHeader } = LOOK.value;
  let [texts, numbers] = [0, 0];
  for (const { kind } of line) {
    if (kind === "text") texts += 1;
    else if (kind === "number") numbers += 1;
  }
  const least = valuesIn(line) === 0 ? textsAlone : textsOfHeader;
  return texts >= least && numbers <= texts * numbersOfHeader;
}

function valuesIn(line: readonly CellValue[]): number {
  let count = 0;
  for (const { kind } of line) if (kind !== "blank" && kind !== "text" && kind !== "ditto") count += 1;
  return count;
}

function profileOf(
  values: readonly (readonly CellValue[])[],
  rows: readonly number[],
  width: number,
): ColumnProfile[] {
  const step = Math.ceil(rows.length / LOOK.value.window);
  const looked = step === 1 ? rows : rows.filter((_, index) => index % step === 0);
  // row by row, as the values stand
  const counts = new Int32Array(width * PROFILE_KINDS.length);
  for (const row of looked) {
    const line = values[row] as readonly CellValue[];
    for (let column = 0; column < line.length; column += 1) {
      const place = PLACE_OF_KIND[(line[column] as CellValue).kind];
      if (place >= 0) counts[column * PROFILE_KINDS.length + place]! += 1;
    }
  }
  const profile: ColumnProfile[] = [];
  for (let column = 0; column < width; column += 1)
    profile.push(columnProfile(counts, column, looked.length));
  return profile;
}

/** Of as many the first is what a column holds. */
const PROFILE_KINDS = ["number", "size", "feetInches", "text"] as const;
const PLACE_OF_KIND: Readonly<Record<CellValue["kind"], number>> = {
  ...{ blank: -1, number: 0, counted: 0, range: 0, size: 1, feetInches: 2, text: 3, ditto: 3 },
};

function columnProfile(counts: Int32Array, column: number, rowCount: number): ColumnProfile {
  const first = column * PROFILE_KINDS.length;
  let [filled, most] = [0, 0];
  for (let place = 0; place < PROFILE_KINDS.length; place += 1) {
    const count = counts[first + place] as number;
    filled += count;
    if (count > (counts[first + most] as number)) most = place;
  }
  const share = rowCount === 0 ? 0 : filled / rowCount;
  const kind = share < LOOK.value.profileFilled ? "blank" : (PROFILE_KINDS[most] as ColumnProfile["kind"]);
  return { filled: share, kind };
}

function likeness(one: readonly ColumnProfile[], other: readonly ColumnProfile[]): number {
  const { present } = LOOK.value;
  let [same, of] = [0, 0];
  one.forEach(({ filled, kind }, column) => {
    const beside = other[column];
    if (beside === undefined || (kind === "blank" && beside.kind === "blank")) return;
    if (filled < present && beside.filled < present) return;
    of += 1;
    if (kind === beside.kind) same += 1;
  });
  return of === 0 ? 0 : same / of;
}

function withKeys(
  values: readonly (readonly CellValue[])[],
  all: readonly number[],
  width: number,
  rows: readonly number[],
): number[] {
  const { keyFilled, keyOfRow, leastKeys } = LOOK.value;
  const keys: number[] = [];
  profileOf(values, rows, width).forEach(({ filled, kind }, column) => {
    if (filled >= keyFilled && kind !== "text") keys.push(column);
  });
  const least = Math.max(leastKeys, keys.length * keyOfRow);
  return all.filter((row) => {
    let filled = 0;
    for (const column of keys) if ((values[row]?.[column]?.kind ?? "blank") !== "blank") filled += 1;
    return filled >= least;
  });
}
