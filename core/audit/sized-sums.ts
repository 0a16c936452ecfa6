import type { BarFacts } from "../bar/bar-facts";
import type { SheetFacts } from "../bar/sheet-facts";
import type { TotalRow } from "../schedule/bar-row";
import { sizeCellReader } from "../schedule/cells/read-size-cell";
import { plainWords } from "../schedule/cells/row-words";
import { sizeBand } from "../schedule/cells/size-band";
import { type SizeAlone, type SumsAlone, sumsAlone } from "../schedule/rows/sums-alone";
import type { Standard } from "../standards/port";

/** One sum of a bar size: where it stands and what it says. */
export interface SizedSum {
  readonly diameter: number;
  readonly size: string;
  /** letters of the bar type before it, in capitals; none where only the diameter is named */
  readonly prefix: string;
  /** of a sum over several sizes, such as 10 < \u00d8 <= 18: which diameters it takes in */
  readonly takesIn?: (diameter: number) => boolean;
  /** the same less what the band before it takes in: "\u00d8 <= 10", "\u00d8 <= 18" often means 10 < \u00d8 <= 18 */
  readonly takesInBeyond?: (diameter: number) => boolean;
  /** of sums of one diameter that are parted by grade */
  readonly grade?: string;
  readonly row: number;
  readonly column: number;
  readonly typed: number;
}

/** Sums of one kind by size: a line of a summary, a column of one, or a line under columns by size. */
export interface SizedLine {
  readonly sums: readonly SizedSum[];
  /** the bars it stands for: since the summary before it, and all so far */
  readonly stretches: readonly (readonly BarFacts[])[];
  /** lines of sums between the last bar and this one, nearest first; none where it stands under no columns by size */
  readonly above: readonly TotalRow[] | null;
}

/** Every line or column of a sheet that gives sums by size. */
export function sizedLines(sheet: SheetFacts, standard: Standard): readonly SizedLine[] {
  const alone = tablesAlone(sheet, standard);
  if (alone.length > 0) return alone.flatMap((table) => linesAlone(table, sheet, standard));
  return [
    ...acrossSummaries(sheet, standard),
    ...downSummaries(sheet, standard),
    ...underColumns(sheet, standard),
  ];
}

const known = new WeakMap<SheetFacts, readonly SumsAlone[]>();

/** Tables of sums on a sheet that lists no bars, in a book in which another one does. */
export function tablesAlone(facts: SheetFacts, standard: Standard): readonly SumsAlone[] {
  if (facts.bars.length > 0) return [];
  let tables = known.get(facts);
  if (tables === undefined) {
    tables = sumsAlone(facts.sheet, standard);
    known.set(facts, tables);
  }
  return tables;
}

/** Each row or column of such a table, over the bars of the whole book or of one of its sheets. */
function linesAlone(table: SumsAlone, { book }: SheetFacts, standard: Standard): readonly SizedLine[] {
  const { rows, columns, sizesOfColumns, sizesOfRows } = table;
  const sized = (named: SizeAlone | undefined, row: number, column: number, typed?: number): SizedSum[] => {
    const bar = named === undefined || typed === undefined ? null : sizeOf(named.size, standard);
    if (named === undefined || typed === undefined || bar === null) return [];
    return [{ ...bar, size: named.size, grade: named.grade, row, column, typed }];
  };
  const ofSheets = book.sheets.map(({ bars }) => bars).filter((bars) => bars.length > 0);
  const stretches = ofSheets.length > 1 ? [ofSheets.flat(), ...ofSheets] : ofSheets;
  const along = rows.map(({ row, values }) =>
    columns.flatMap(({ column }) => sized(sizesOfColumns.get(column), row, column, values.get(column))),
  );
  const down = columns.map(({ column }) =>
    rows.flatMap(({ row, values }) => sized(sizesOfRows.get(row), row, column, values.get(column))),
  );
  const labels = new Map(rows.map(({ row, label }) => [row, label]));
  return [...along, ...down]
    .filter((sums) => sums.length > 0)
    .map((sums) => ({
      sums: sums.map((sum) => withoutGrade(sum, sums)),
      stretches: [...ofMember(labels.get(oneRow(sums)) ?? "", stretches), ...stretches],
      above: null,
    }));
}

/** The row in which all of the sums stand; none where they stand one below another. */
function oneRow(sums: readonly SizedSum[]): number {
  const row = sums[0]?.row ?? -1;
  return sums.every((sum) => sum.row === row) ? row : -1;
}

/** Where a diameter stands once, its sum is of all its bars, whatever their grade. */
function withoutGrade(sum: SizedSum, all: readonly SizedSum[]): SizedSum {
  const { grade: _, ...own } = sum;
  return all.some((one) => one !== sum && one.diameter === sum.diameter) ? sum : own;
}

const LONGEST_SIZE = 60;
const readers = new WeakMap<Standard, ReturnType<typeof sizeCellReader>>();

/** A size as the list's own cells are read. */
export function sizeOf(size: string, standard: Standard): { diameter: number; prefix: string } | null {
  // "over 18" is a band of sizes, and no size
  if (/[<>\u2264\u2265]/.test(size)) return null;
  let reader = readers.get(standard);
  if (reader === undefined) {
    reader = sizeCellReader(standard, false);
    readers.set(standard, reader);
  }
  const reading = reader(size, "").size;
  return reading === null ? null : { diameter: reading.diameter, prefix: reading.prefix.toUpperCase() };
}

/** Sizes side by side, sums below them. */
function acrossSummaries(sheet: SheetFacts, standard: Standard): SizedLine[] {
  return (sheet.reading.summaries ?? []).flatMap(({ rows, sizes, headerRow }) => {
    if (sizes.length === 0) return [];
    const stretches = stretchesBefore(sheet, headerRow);
    return rows.map((line) => ({
      sums: sizes.flatMap(({ size, column }) => sumAt(sheet, line, column, size, standard)),
      stretches: [...ofMember(line.label, stretches), ...stretches],
      above: null,
    }));
  });
}

/** The bars of the member that a line names, where sums by member stand below one another. */
function ofMember(label: string, stretches: SizedLine["stretches"]): SizedLine["stretches"] {
  const named = plainWords(label);
  if (named === "") return [];
  return stretches.flatMap((bars) => {
    const own = bars.filter(({ row }) => plainWords(row.member ?? "") === named);
    return own.length === 0 ? [] : [own];
  });
}

function sumAt(
  { bars }: SheetFacts,
  line: TotalRow,
  column: number,
  size: string,
  standard: Standard,
): SizedSum[] {
  const cell = line.cells.find((one) => one.column === column);
  if (cell === undefined) return [];
  const place = { size, row: line.row, column, typed: cell.value };
  const takesIn = sizeBand(size);
  if (takesIn !== null) return [{ ...place, diameter: Number.NaN, prefix: "", takesIn }];
  // as the list's own rows were read, "#12" is what it is there
  const alike = bars.find(({ row, diameter }) => diameter !== null && row.sizeTyped?.trim() === size);
  const named = size.startsWith("#") && alike !== undefined ? ofBar(alike) : sizeInList(size, bars, standard);
  return named === null ? [] : [{ ...named, ...place }];
}

/** A size as a list means it: "D22" is 22 mm where its bars are, and 22.2 mm where a standard's bar of that name is. */
function sizeInList(
  size: string,
  bars: readonly BarFacts[],
  standard: Standard,
): { diameter: number; prefix: string } | null {
  const named = sizeOf(size, standard);
  if (named === null || bars.some(({ diameter }) => diameter === named.diameter)) return named;
  const written = Number(/^\D{0,3}(\d{1,2}(?:\.\d)?)(?:\s?mm)?$/.exec(size)?.[1]);
  const isOfList = bars.some(({ diameter }) => diameter === written);
  return isOfList ? { ...named, diameter: written } : named;
}

function ofBar({ diameter, row }: BarFacts): { diameter: number; prefix: string } {
  return { diameter: diameter ?? Number.NaN, prefix: row.size?.prefix.toUpperCase() ?? "" };
}

/** Sizes one below another, sums beside them: each column of numbers is a kind of sum. */
function downSummaries(sheet: SheetFacts, standard: Standard): SizedLine[] {
  return (sheet.reading.summaries ?? []).flatMap(({ rows, sizes, headerRow, left }) => {
    if (sizes.length > 0) return [];
    const named = rows.flatMap((line) => {
      const size = sizeOfLine(sheet, line, standard, left ?? 0);
      return size === null ? [] : [{ line, ...size }];
    });
    const stretches =
      left === undefined ? stretchesBefore(sheet, rows[0]?.row ?? headerRow) : besideStretches(sheet);
    // bands of sizes below the sizes are sums of their own, often in another unit
    const kinds = [
      named.filter(({ size }) => sizeBand(size) === null),
      named.filter(({ size }) => sizeBand(size) !== null),
    ];
    return kinds.flatMap((alike) => {
      const columns = new Set(
        alike.flatMap(({ line, at }) => line.cells.map(({ column }) => column).filter((one) => one !== at)),
      );
      return [...columns].map((column) => ({
        sums: beyondEachOther(
          ofGrades(alike.map(({ line, size }) => [line, sumAt(sheet, line, column, size, standard)])),
        ),
        stretches,
        above: null,
      }));
    });
  });
}

/** Where a diameter comes again, each of its sums is of the grade that its line begins with. */
function ofGrades(lines: readonly (readonly [TotalRow, readonly SizedSum[]])[]): readonly SizedSum[] {
  const times = new Map<number, number>();
  for (const [, sums] of lines)
    for (const { diameter } of sums) times.set(diameter, (times.get(diameter) ?? 0) + 1);
  return lines.flatMap(([{ label }, sums]) =>
    sums.map((sum) =>
      (times.get(sum.diameter) ?? 0) > 1 && sum.prefix === "" && label.trim() !== sum.size
        ? { ...sum, grade: label }
        : sum,
    ),
  );
}

/** Bands one below another, each also without what the one before it takes in. */
function beyondEachOther(sums: readonly SizedSum[]): readonly SizedSum[] {
  return sums.map((sum, index) => {
    const { takesIn } = sum;
    const before = sums[index - 1]?.takesIn;
    if (takesIn === undefined || before === undefined) return sum;
    return { ...sum, takesInBeyond: (diameter: number) => takesIn(diameter) && !before(diameter) };
  });
}

/** The first cell of a line that names a bar. */
function sizeOfLine(
  sheet: SheetFacts,
  { row }: TotalRow,
  standard: Standard,
  left: number,
): { size: string; at: number } | null {
  for (let column = left; column < sheet.sheet.columnCount; column += 1) {
    const cell = sheet.sheet.cell(row, column);
    if (cell === null || cell === "") continue;
    if (typeof cell !== "string" && typeof cell !== "number") return null;
    const size = String(cell).trim();
    if (size.length > LONGEST_SIZE) return null;
    if (sizeBand(size) !== null) return { size, at: column };
    // "50 | 12.5": the grade of Brazilian lists before the size
    if (isGradeOf(size, sheet) && !namesBar(size, sheet, standard)) continue;
    // a number with decimals is what a metre weighs, or a sum, unless bars of the list are of that diameter
    if (typeof cell === "number" && !Number.isInteger(cell) && !isDiameter(cell, sheet)) return null;
    if (namesBar(size, sheet, standard)) return { size, at: column };
    if (typeof cell === "number") return null;
  }
  return null;
}

function isGradeOf(typed: string, { bars }: SheetFacts): boolean {
  return bars.some(({ row }) => row.grade === typed);
}

/** 6.3 and 12.5 mm, as Brazil rolls them. */
function isDiameter(value: number, { bars }: SheetFacts): boolean {
  return bars.some(({ diameter }) => diameter === value);
}

/** A size, and of a bar of the list where the block stands beside it: "CA-50" before it is a grade. */
function namesBar(size: string, { bars }: SheetFacts, standard: Standard): boolean {
  const named = sizeInList(size, bars, standard);
  if (named === null) return bars.some(({ sizeName }) => sizeName === size);
  return bars.length === 0 || bars.some(({ diameter }) => diameter === named.diameter);
}

/** Lines under columns by size. */
function underColumns(sheet: SheetFacts, standard: Standard): SizedLine[] {
  return sheet.reading.totals.flatMap((line) => {
    const bySize = line.table?.bySize ?? [];
    if (bySize.length === 0 || line.kind === "summary") return [];
    const sums = bySize.flatMap(({ column, size }) => sumAt(sheet, line, column, size, standard));
    const above = linesAbove(sheet, line);
    return sums.length < 2 ? [] : [{ sums, stretches: stretchesBefore(sheet, line.row), above }];
  });
}

/** Lines of sums of the same table between the last bar and this one, nearest first. */
export function linesAbove({ reading, bars }: SheetFacts, { row, table }: TotalRow): readonly TotalRow[] {
  let last = -1;
  for (const { row: bar } of bars) if (bar.row < row) last = bar.row;
  return reading.totals.filter((one) => one.table === table && one.row > last && one.row < row).reverse();
}

/** All bars of the sheet that a block stands beside, and those of the book where the list goes on over sheets. */
function besideStretches(sheet: SheetFacts): readonly (readonly BarFacts[])[] {
  const { sheets } = sheet.book;
  const upToHere = sheets.slice(0, sheets.indexOf(sheet) + 1).filter(({ bars }) => bars.length > 0);
  const all = sheets.filter(({ bars }) => bars.length > 0);
  const several = [upToHere, all].filter(({ length }) => length > 1);
  return [sheet.bars, ...several.map((some) => some.flatMap(({ bars }) => bars))];
}

/** Since the last line that sums, and all bars above. */
function stretchesBefore(sheet: SheetFacts, before: number): readonly (readonly BarFacts[])[] {
  const above = sheet.bars.filter(({ row }) => row.row < before);
  let last = -1;
  const end = above[above.length - 1]?.row.row ?? 0;
  for (let row = 0; row < end; row += 1) if (sheet.reading.rowClasses[row] === "total") last = row;
  const since = above.filter(({ row }) => row.row > last);
  const sheetsBefore = sheet.book.sheets.slice(0, Math.max(0, sheet.book.sheets.indexOf(sheet)));
  const ofBook = sheetsBefore.length === 0 ? [] : [[...sheetsBefore.flatMap(({ bars }) => bars), ...above]];
  return [above, ...(since.length === above.length ? [] : [since]), ...ofBook];
}
