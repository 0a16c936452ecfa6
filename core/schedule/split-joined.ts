import type { Standard } from "../standards/port";
import type { ScheduleReading, TableReading } from "./bar-row";
import { cleanText } from "./cells/clean-text";
import { LONGEST_WORDS } from "./cells/longest-text";
import { sizeCellReader } from "./cells/read-size-cell";
import { isWord, plainWords } from "./cells/row-words";
import { UNIT_OF_LENGTHS } from "./columns/unit-in-title";
import { MOST_ROWS } from "./header/find-header";
import { knownWords } from "./header/known-words";
import { type HeaderMeaning, recogniseHeader } from "./header/recognise-header";
import { readHeading } from "./rows/read-heading";
import { isRunning } from "./rows/running-metres";
import { plainBar } from "./rows/stored-bar";
import type { Cell, Sheet } from "./sheet";

const LEAST_ROWS = 5;
const SHARE = 0.6;
const MOST_LOOKED = 400;
/** a count, mark or length that most rows write */
const USUAL = 0.5;

const SIZE =
  /(?:\u00d8|#|(?:(?<![\p{L}\d])|(?<=(?:^|[\s(;,-])\d{1,4}))\p{Lu}{1,3})\s?\d{1,2}(?:[.,]\d)?(?![\d\p{L}])|(?<!\d)\d{2}M(?!\p{L})|(?<![\d.,])\d{1,2}\s?mm(?:\s?(?:\u00d8|dia|\u03c6)(?!\p{L})|(?=\s*[x*]))/gu;
/** "L=210", "C=245" (comprimento): the letter alone, or with its sign where it could be a dimension */
const LENGTH =
  /(?<![\p{L}\d])(?:[Ll]\s*[=:]?|(?:C|Lg|lg|long|compr?)\.?\s*[=:])\s*(\d+(?:[.,]\d+)?)\s*(mm|cm|m)?(?![\p{L}\d])/u;
const LENGTH_BEHIND = /^\s*[x*]\s*(?:(\d+(?:[.,]\d+)?)\s*(mm|cm|m)(?!\p{L})|(\d{3,5})(?![\d.,]))/u;
const COUNT = /(?<!\p{L})(?:n|no|nr|nos|qty)[.\u00b0\u00ba:]*\s*(\d+)(?![\d.,])/iu;
const COUNT_BEFORE = /(?:^|\s)(\d+)\s*[-x*]?\s*$/;
const MARK = /(?<!\p{L})(?:pos|поз|mk|mark|rep)[.:]*\s*([\p{L}\d][\p{L}\d/-]*)/iu;
const MARK_BEHIND = /(?<![\p{L}\d])(\p{Lu}{1,2}\d{1,4}[a-z]?)(?![\p{L}\d])/u;
/** What one text says of a bar, each as it is typed. */
interface JoinedBar {
  readonly mark: string | null;
  readonly size: string;
  readonly count: number | null;
  readonly length: string | null;
}

const FIELDS = ["mark", "size", "count", "length"] as const;
const HEADS: Readonly<Record<(typeof FIELDS)[number], string>> = {
  mark: "Bar mark",
  size: "Size",
  count: "Total no",
  length: "Cut length",
};

/** what heads the joined texts themselves, where their own head would make them one of the parts */
const OF_JOINED = "Serial";
const OF_JOINED_KINDS: ReadonlySet<string> = new Set(["each", "total", "members", "size", "length"]);

/** A sheet whose joined texts stand apart in columns of their own behind the last, and the column that they came from. */
export interface SplitJoined {
  readonly sheet: Sheet;
  readonly from: number;
  readonly width: number;
}

/**
 * The sheet with size, length, count and mark apart, where one column holds them joined in each cell: "Ø12 L=1900",
 * "pos. 3 n. 24 Ø16 L=155", "10-25M x 8200". Null where no column does.
 */
export function splitJoined(
  sheet: Sheet,
  cellsOf: (row: number) => readonly Cell[],
  standard: Standard,
): SplitJoined | null {
  const rows = Array.from({ length: Math.min(sheet.rowCount, MOST_LOOKED) }, (_, row) => cellsOf(row));
  const readSize = sizeCellReader(standard, false);
  const isSize = (text: string): boolean => readSize(text, "").size !== null;
  for (let column = 0; column < sheet.columnCount; column += 1) {
    const texts = rows.map((cells) => cells[column]);
    if (
      texts.filter((cell) => typeof cell === "string" && cell.length > 4 && /\d/.test(cell)).length <
      LEAST_ROWS
    )
      continue;
    const barOf = (cells: readonly Cell[]): JoinedBar | null => {
      const cell = cells[column];
      return typeof cell === "string" ? joinedBar(cell, isSize, () => cells.some(isRunning)) : null;
    };
    const bars = rows.map(barOf);
    const found = bars.filter((bar) => bar !== null);
    const withLength = found.filter(({ length }) => length !== null);
    if (withLength.length < LEAST_ROWS || withLength.length < SHARE * found.length) continue;
    return splitAt(sheet, cellsOf, rows, column, bars, barOf);
  }
  return null;
}

function splitAt(
  sheet: Sheet,
  cellsOf: (row: number) => readonly Cell[],
  looked: readonly (readonly Cell[])[],
  from: number,
  bars: readonly (JoinedBar | null)[],
  barOf: (cells: readonly Cell[]) => JoinedBar | null,
): SplitJoined {
  const width = sheet.columnCount;
  const found = bars.filter((bar) => bar !== null);
  const first = bars.findIndex((bar) => bar !== null);
  const headRow = headerRow(looked, first);
  const headTop = topOfHeader(looked, headRow, from);
  const headed = looked[headRow] ?? [];
  const isHeaded = knownWords(headed) > 1;
  const meanings = headed.map((cell) => (typeof cell === "string" ? recogniseHeader(cell) : null));
  // "No." over 1, 2, 3 numbers the rows and counts no bars
  const named = meanings.map((meaning, column) =>
    meaning?.serial === true && numbersRows(looked.slice(headRow + 1), column) ? "ignored" : meaning?.kind,
  );
  const own = named[from];
  const kinds = new Set(named.filter((_, column) => column !== from));
  // beside a column of members, and no other of counts, the joined count is that of one: so it is where its head says so
  const isOfOne = kinds.has("members") && !kinds.has("each") && (own === "each" || !kinds.has("total"));
  // one that is all members' bars is a total of its own beside members and what each has
  const isOfAll = countsAll(looked, meanings, bars);
  const isCounted = kinds.has("each") || kinds.has("total") || kinds.has("members");
  const isJoinedHead = own !== undefined && OF_JOINED_KINDS.has(own);
  const fields = FIELDS.filter((field) => {
    // a column of its own says it already
    if (isHeaded && (field === "mark" || (field === "count" && isCounted && !isOfOne && !isOfAll)))
      return false;
    return found.filter((bar) => bar[field] !== null).length >= USUAL * found.length;
  });
  // the other heads of the list speak of their own columns
  const heads = looked.slice(headTop, headRow + 1).map((cells) => [cells[from] ?? null]);
  const titles = isHeaded ? [...looked.slice(0, headTop), ...heads] : looked.slice(0, Math.max(first, 0));
  const unit = unitOfLengths(titles);
  const isOfMembers =
    isOfOne ||
    looked.some((cells) => typeof cells[from] === "string" && (readHeading(cells[from]).members ?? 1) > 1);
  const words = isOfMembers ? { ...HEADS, count: "No. in each" } : HEADS;
  const headsOfParts = fields.map(
    (field) => words[field] + (field === "length" && unit !== null ? ` (${unit})` : ""),
  );
  // without words over the list its looks tell the rest, where another column counts the bars
  const hasHeads = isHeaded || fields.includes("count");
  const rowCells = (row: number): readonly Cell[] => {
    const cells = [...cellsOf(row)];
    while (cells.length < width) cells.push(null);
    if (row >= headTop && row <= headRow && hasHeads)
      return [
        ...cells.map((cell, column) => (column === from && isJoinedHead ? OF_JOINED : cell)),
        ...headsOfParts,
      ];
    const bar = row < bars.length ? (bars[row] ?? null) : barOf(cells);
    return bar === null ? cells : [...cells, ...fields.map((field) => bar[field])];
  };
  return {
    from,
    width,
    sheet: {
      name: sheet.name,
      top: sheet.top,
      left: sheet.left,
      rowCount: sheet.rowCount,
      columnCount: width + fields.length,
      cell: (row, column) => rowCells(row)[column] ?? null,
      rowCells,
      // merges downwards are filled already; a head over several columns is still asked for
      ...(sheet.merges === undefined
        ? {}
        : { merges: sheet.merges.filter(({ bottom, right }) => bottom <= headRow && right < width) }),
      ...(sheet.beside === undefined ? {} : { beside: sheet.beside }),
      ...(sheet.elsewhere === undefined ? {} : { elsewhere: sheet.elsewhere }),
      isHiddenRow: (row) => sheet.isHiddenRow?.(row) ?? false,
      isStruckThrough: (row, column) => sheet.isStruckThrough?.(row, Math.min(column, width - 1)) ?? false,
    },
  };
}

/** A run of whole numbers from one row of bars to the next. */
function numbersRows(rows: readonly (readonly Cell[])[], column: number): boolean {
  const numbers = rows.map((cells) => cells[column]).filter((cell) => typeof cell === "number");
  const steps = numbers.filter((number, at) => at > 0 && number === (numbers[at - 1] ?? 0) + 1).length;
  return numbers.length >= LEAST_ROWS && steps >= RUNNING * (numbers.length - 1);
}

/** share of the rows whose number follows that of the row before */
const RUNNING = 0.8;

/** The first of the rows of words that head the list with this one: they stand right above it and name its columns. */
function topOfHeader(rows: readonly (readonly Cell[])[], headRow: number, from: number): number {
  let top = headRow;
  while (top > 0 && headRow - top < MOST_ROWS - 1) {
    const cells = rows[top - 1] ?? [];
    if (knownWords(cells) < 2 || typeof cells[from] !== "string") break;
    top -= 1;
  }
  return top;
}

/** In most rows the joined count is members times what each has. */
function countsAll(
  rows: readonly (readonly Cell[])[],
  meanings: readonly (HeaderMeaning | null)[],
  bars: readonly (JoinedBar | null)[],
): boolean {
  const members = meanings.findIndex((meaning) => meaning?.kind === "members");
  const each = meanings.findIndex((meaning) => meaning?.kind === "each" || meaning?.otherwise === "each");
  if (members < 0 || each < 0) return false;
  const counted = bars.flatMap((bar, row) => (bar === null || bar.count === null ? [] : [{ bar, row }]));
  const kept = counted.filter(({ bar, row }) => {
    const [sets, pieces] = [rows[row]?.[members], rows[row]?.[each]];
    return typeof sets === "number" && typeof pieces === "number" && bar.count === sets * pieces;
  });
  return kept.length > 0 && kept.length >= USUAL * counted.length;
}

/** The row of words over the first bar, else a blank one there, else the one right above. */
function headerRow(rows: readonly (readonly Cell[])[], first: number): number {
  let blank: number | null = null;
  for (let row = first - 1; row >= 0; row -= 1) {
    const cells = rows[row] ?? [];
    if (knownWords(cells) > 1) return row;
    if (blank === null && cells.every((cell) => cell === null || cell === undefined || cell === ""))
      blank = row;
  }
  return blank ?? Math.max(0, first - 1);
}

function unitOfLengths(titles: readonly (readonly Cell[])[]): string | null {
  for (const cells of titles) {
    for (const cell of cells) {
      const unit = typeof cell === "string" ? UNIT_OF_LENGTHS.exec(cell)?.[1] : undefined;
      if (unit !== undefined) return unit;
    }
  }
  return null;
}

/** A size alone is a bar where another cell says that it goes by the metre. */
function joinedBar(
  typed: string,
  isSize: (text: string) => boolean,
  isByMetre: () => boolean,
): JoinedBar | null {
  if (typed.length > LONGEST_WORDS) return null;
  const text = cleanText(typed);
  // a mark may look like a size: "N4 - 3 Ø16"
  const found = [...text.matchAll(SIZE)];
  const signed = found.filter(([size]) => size.startsWith("\u00d8"));
  for (const match of signed.length > 0 ? signed : found) {
    const [size] = match;
    if (!isSize(size)) continue;
    const before = text.slice(0, match.index);
    const behind = text.slice(match.index + size.length);
    const named = LENGTH.exec(behind) ?? LENGTH_BEHIND.exec(behind);
    const unit = named?.[2] === undefined ? "" : ` ${named[2]}`;
    const length = named === null ? metresIn(behind) : (named[1] ?? named[3] ?? "") + unit;
    const [said, near] = [COUNT.exec(before), COUNT_BEFORE.exec(before)];
    // "N1 - 6 Ø10": the letter names the mark where another number stands nearer to the size
    const isMark = said !== null && near !== null && near.index >= said.index + said[0].length;
    const counted = isMark ? near[1] : ((said ?? COUNT.exec(behind))?.[1] ?? near?.[1]);
    const count = counted === undefined ? null : Number(counted);
    if (length === null && count === null && !isByMetre()) continue;
    const mark = MARK.exec(text)?.[1] ?? MARK_BEHIND.exec(behind)?.[1] ?? null;
    return { mark, size, count, length };
  }
  return null;
}

/** "L= п.м.", ", ml": metres in place of a length. */
function metresIn(text: string): string | null {
  const last =
    text
      .split(/[,;=]|\s{2,}/)
      .at(-1)
      ?.trim() ?? "";
  return isWord("running-metres", plainWords(last)) ? last : null;
}

/** The columns behind the last are those of the joined cell. */
export function asJoined(reading: ScheduleReading, { from, width }: SplitJoined): ScheduleReading {
  const place = (column: number): number => (column >= width ? from : column);
  const moved = new Map(
    reading.tables.map((table): [TableReading, TableReading] => {
      const columns = [...table.columns].map(
        ([kind, column]) => [kind, { ...column, column: place(column.column) }] as const,
      );
      return [table, { ...table, columns: new Map(columns) }];
    }),
  );
  const tableOf = (table: TableReading): TableReading => moved.get(table) ?? table;
  return {
    ...reading,
    tables: reading.tables.map(tableOf),
    bars: reading.bars.map((bar) => ({
      ...plainBar(bar),
      table: tableOf(bar.table),
      problems: bar.problems?.map((problem) => ({ ...problem, column: place(problem.column) })) ?? null,
    })),
    totals: reading.totals.map((line) =>
      line.table === undefined ? line : { ...line, table: tableOf(line.table) },
    ),
    guesses: (reading.guesses ?? []).map((guess) =>
      guess.column === null ? guess : { ...guess, column: place(guess.column) },
    ),
    pasted: true,
  };
}
