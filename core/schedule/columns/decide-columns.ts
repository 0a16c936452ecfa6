import type { Standard } from "../../standards/port";
import type { ColumnKind, ColumnReading, ColumnUnit, SheetGuess, TableReading, UnitReason } from "../bar-row";
import type { PathUnit } from "../cells/path-in-unit";
import type { LengthColumn } from "../cells/read-length-text";
import type { CommaUse } from "../cells/read-number-text";
import { areEighths, isSignOfDiameter, isSoftMetric } from "../cells/signs-of-sizes";
import type { Header } from "../header/find-header";
import type { HeaderBlock, HeaderColumn } from "../header/header-blocks";
import { countSaid } from "../rows/count-said";
import { membersInTitle } from "../rows/members-in-title";
import type { Cell, RowElsewhere } from "../sheet";
import {
  commaOf,
  commaOfColumn,
  median,
  type Sample,
  sampleOf,
  sampleRows,
  sizesTyped,
  typedOften,
} from "./column-sample";
import {
  type Decided,
  dimensionUnits,
  isFeetInches,
  massesAreTonnes,
  massUnitOf,
  unitOf,
  unitOfTotals,
} from "./column-units";
import { countBySums } from "./count-by-sums";
import { countUnderHeadings } from "./count-under-headings";
import { countWord } from "./count-word";
import { IN_COLUMN_UNIT } from "./in-column-unit";
import { kgByRow } from "./kg-by-row";
import { LENGTH_KINDS } from "./length-kinds";
import { type ClosingLine, membersBelow } from "./members-below";
import { membersCarryDown } from "./members-carry-down";
import { pathUnitOf } from "./path-unit-of";
import { unitBySize } from "./unit-by-size";
import { unitInTitle } from "./unit-in-title";

/** Everything about a table's columns that is settled once, before its rows are read. */
export interface TableLayout {
  readonly table: TableReading;
  readonly left: number;
  readonly right: number;
  readonly lengths: ReadonlyMap<ColumnKind, LengthColumn>;
  /** kg in one of the mass column's unit */
  readonly massFactor: number;
  readonly comma: CommaUse;
  /** what is counted, as every number of a count column has it behind it */
  readonly countWords: readonly string[];
  readonly softMetric: boolean;
  /** bare numbers are bar numbers, eighths of an inch */
  readonly areEighths: boolean;
  /** "#12" is 12 mm */
  readonly signsDiameter: boolean;
  /** what bare numbers of the paths in its shape column are in; null where its rows do not tell */
  readonly pathUnit: PathUnit | null;
  /** sizes typed in several rows, as they are typed */
  readonly habitualSizes: ReadonlySet<string>;
  /** the sheet's own total lengths tell whether a bare "No. of bars" counts one member's bars or all */
  readonly countIsSettled: boolean;
  /** the amounts tell that a number of members counts for the rows below it too */
  readonly membersCarryDown: boolean;
  /** lines that give the members of the bars above them */
  readonly closings: readonly ClosingLine[];
  /** columns whose unit is a guess that the user has to confirm */
  readonly asks: ReadonlyMap<ColumnKind, string>;
  readonly guesses: readonly SheetGuess[];
  /** columns of serial numbers and the like, which say nothing of a bar */
  readonly ignored: ReadonlySet<number>;
  readonly headerTexts: readonly ReadonlyMap<number, string>[];
}

/** What deciding asks of the sheet. */
export interface ColumnSource {
  readonly rowCount: number;
  readonly standard: Standard;
  cells(row: number): readonly Cell[];
  /** rows of the sums that stand beside the list and are none of its cells */
  readonly beside?: readonly (readonly Cell[])[];
  /** rows of the other short sheets of the book */
  readonly elsewhere?: () => readonly RowElsewhere[];
  isHiddenColumn(column: number): boolean;
  /** the cell shows its number as a date */
  isDateAt(row: number, column: number, number: number): boolean;
  /** whose bars a count under these words counts on the sheet before; null where that does not tell */
  countBefore(header: string): "each" | "total" | null;
  isConfirmed(code: string, row: number, column: number): boolean;
}

/** Settles unit, comma and feet-and-inches of every column of one block from up to 400 rows. */
export function decideColumns(source: ColumnSource, header: Header, block: HeaderBlock): TableLayout {
  const { standard } = source;
  const rows = sampleRows(source, header, block);
  const samples = new Map(block.columns.map((column) => [column.kind, sampleOf(rows, column.column)]));
  const comma = commaOf(block, samples);
  const lengths = new Map<ColumnKind, LengthColumn>();
  const units = new Map<ColumnKind, Decided>();
  const asks = new Map<ColumnKind, string>();
  const guesses: SheetGuess[] = [];
  const said = unitInTitle(source.cells, header.top);
  // a list that goes on without a head is told of in its first row
  const headRow = Math.max(header.bottom, 0);
  const byDimensions = dimensionUnits(block, rows, lengths);
  let oneMm: number | null = null;
  // the length first: dimensions are measured against it
  for (const column of [...block.columns].sort((one, other) => order(one) - order(other))) {
    if (!LENGTH_KINDS.has(column.kind)) continue;
    const sample = samples.get(column.kind) as Sample;
    const own = commaOfColumn(column, sample, comma);
    const byLength = byDimensions(column, own);
    const ofWords = unitOf(column, sample, own, standard, { byLength, said });
    const decided: Decided = column.kind === "totalLength" ? unitOfTotals(ofWords, sample, oneMm) : ofWords;
    if (column.kind === "length")
      oneMm = (median(sample.numbers) ?? Number.NaN) * IN_COLUMN_UNIT[decided.unit];
    const ofLengths = lengths.get("length")?.feetInches === true;
    const feetInches = isFeetInches(sample, { unit: decided.unit, said: column.unit, ofLengths }, standard);
    lengths.set(column.kind, { factor: IN_COLUMN_UNIT[decided.unit], comma: own, feetInches });
    units.set(column.kind, decided);
    note(column, decided);
  }
  function note(column: HeaderColumn, decided: Decided): void {
    if (!decided.isGuess) return;
    const isOpen = decided.asks && !source.isConfirmed("unit-of-column", headRow, column.column);
    if (isOpen) asks.set(column.kind, decided.guess ?? "");
    const { guess, asks: question } = decided;
    const reason = `${called(column)}: ${guess ?? ""}`;
    guesses.push({ guess: "unit-of-column", reason, asks: question, row: headRow, column: column.column });
  }
  const mass = block.columns.find(({ kind }) => kind === "mass");
  const isTonnes =
    mass !== undefined && mass.unit === null && massesAreTonnes(mass, block, rows, lengths, standard);
  const massUnit = isTonnes ? "t" : mass === undefined ? null : massUnitOf(mass, standard);
  if (mass !== undefined && isTonnes) {
    const reason = `${called(mass)}: taken in t, so the masses make up count, length and size`;
    guesses.push({ guess: "unit-of-column", reason, asks: false, row: headRow, column: mass.column });
  }
  const isInFeet = lengths.get("length")?.feetInches === true || units.get("length")?.unit === "ft";
  const columns = new Map<ColumnKind, ColumnReading>();
  const above = [header.top - 2, header.top - 1].filter((row) => row >= 0).map((row) => source.cells(row));
  const isAlone = header.blocks.length === 1;
  const whole = (): readonly (readonly Cell[])[] =>
    isAlone ? sampleRows(source, header, { ...block, right: Number.MAX_SAFE_INTEGER - 1 }) : rows;
  const others = header.blocks.filter(({ left }) => left !== block.left);
  const kgOf = kgByRow(block, lengths, comma, standard);
  const underHeadings = countUnderHeadings(block, () => [...above, ...whole()], comma, {
    others: others.map((other) => ({ block: other, rowsOf: () => sampleRows(source, header, other) })),
    ofList: membersInTitle(source.cells, header.top),
    beside: source.beside ?? [],
    ...(source.elsewhere === undefined ? {} : { elsewhere: source.elsewhere }),
    said: countSaid(source.cells, header.top),
    before: source.countBefore,
    kgOf,
  });
  const bySums = countBySums(block, rows, lengths, comma, kgOf);
  const closings = underHeadings === null ? membersBelow(source, header, block, comma) : [];
  const ofTitles = underHeadings === "open" ? null : underHeadings;
  const counts = closings.length > 0 ? "each" : (bySums ?? ofTitles);
  const kindOf = (named: ColumnKind): ColumnKind =>
    (named === "total" || named === "each") && counts !== null ? counts : named;
  for (const { kind: named, column, header: words, unit, corrected, by, inches } of block.columns) {
    const kind = kindOf(named);
    const decided = units.get(kind);
    columns.set(kind, {
      kind,
      column,
      header: words,
      unit: kind === "mass" ? massUnit : (decided?.unit ?? null),
      guess: kind === "mass" && isTonnes ? "taken in t by count, length and size" : (decided?.guess ?? null),
      by: corrected ? "user" : (by ?? "words"),
      unitBy:
        kind === "mass" ? massReason(unit, corrected, isTonnes ? "arithmetic" : by) : (decided?.by ?? null),
      ...(corrected ? { corrected } : {}),
      ...(inches === undefined ? {} : { inches }),
      ...(source.isHiddenColumn(column) ? { hidden: true } : {}),
    });
  }
  const hasAmount = block.columns.some(({ kind }) => kind === "totalLength");
  const counted = { ...block, columns: block.columns.map((one) => ({ ...one, kind: kindOf(one.kind) })) };
  const bySizeUnit = hasAmount ? null : unitBySize(counted, rows, lengths, comma, standard);
  const table: TableReading = {
    headerTop: header.top,
    headerBottom: header.bottom,
    columns,
    left: block.left,
    right: block.right,
    bySize: block.bySize,
    ...(bySizeUnit === null ? {} : { bySizeUnit }),
    unknownHeaders: block.unknown,
  };
  return {
    table,
    left: block.left,
    right: block.right,
    lengths,
    massFactor: IN_COLUMN_UNIT[massUnit ?? "kg"],
    comma,
    countWords: COUNTS.flatMap((kind) => countWord(samples.get(kind)) ?? []),
    countIsSettled: (block.countIsSettled === true && underHeadings !== "open") || counts !== null,
    closings,
    membersCarryDown: membersCarryDown(block, rows, lengths, comma, standard),
    pathUnit: pathUnitOf(block, rows, lengths),
    softMetric: isSoftMetric(standard, sizesTyped(samples.get("size"))),
    areEighths: areEighths(standard, sizesTyped(samples.get("size")), isInFeet),
    signsDiameter: isSignOfDiameter(standard, sizesTyped(samples.get("size"))),
    habitualSizes: typedOften([samples.get("size"), ...sizesBeside(source, header, block)]),
    asks,
    guesses,
    ignored: new Set(block.ignored),
    headerTexts: headerTexts(source, header, block),
  };
}

const COUNTS = ["members", "each", "total"] as const;

/** The size columns of the other tables under the same head. */
function sizesBeside(source: ColumnSource, header: Header, block: HeaderBlock): readonly Sample[] {
  return header.blocks.flatMap((other) => {
    const size = other === block ? undefined : other.columns.find(({ kind }) => kind === "size");
    return size === undefined ? [] : [sampleOf(sampleRows(source, header, other), size.column)];
  });
}

function massReason(unit: ColumnUnit | null, corrected: boolean, by: "arithmetic" | undefined): UnitReason {
  if (unit === null) return { code: by ?? "standard" };
  return { code: corrected ? "user" : (by ?? "written") };
}

function order(column: HeaderColumn): number {
  return column.kind === "length" ? 0 : 1;
}

function headerTexts(
  source: ColumnSource,
  header: Header,
  block: HeaderBlock,
): ReadonlyMap<number, string>[] {
  const rows: Map<number, string>[] = [];
  for (let row = header.top; row <= header.bottom; row += 1) {
    const texts = new Map<number, string>();
    const cells = source.cells(row);
    for (let column = block.left; column <= Math.min(block.right, cells.length - 1); column += 1) {
      const cell = cells[column];
      if (typeof cell === "string" && cell.trim() !== "") texts.set(column, cell.trim().toLowerCase());
      else if (typeof cell === "number") texts.set(column, String(cell));
    }
    rows.push(texts);
  }
  return rows;
}

const called = ({ header }: HeaderColumn): string =>
  header === "" ? "a column without a head" : `column "${header}"`;
