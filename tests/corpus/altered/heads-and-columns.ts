import type { ColumnReading, ScheduleReading } from "../../../core/schedule/bar-row";
import type { Cell } from "../../../core/schedule/sheet";
import type { Alter, Alteration, AlteredBook, AlteredSheet } from "./altered-books";

/** A plain list of a book: its sheet, and what its columns are. */
interface List {
  readonly sheet: AlteredSheet;
  readonly reading: ScheduleReading;
  readonly top: number;
  readonly bottom: number;
  readonly right: number;
  readonly columns: readonly ColumnReading[];
}

/** Words that point to a note, as offices type them behind a head. */
const NOTE_MARKS = ["*", " *)", "\u00b9", " 1)", " (1)"];
const A_WORD = /\p{L}{3}/u;

/** Heads and columns written in another way, which leaves what each column is. */
export const HEADS_AND_COLUMNS: Readonly<Record<string, Alter>> = {
  "heads with a colon": (given) => eachHead(given, (text) => (isOfWords(text) ? `${text}:` : text)),
  "heads in capitals": (given) =>
    eachHead(given, (text) => text.replace(/\p{L}{4,}/gu, (word) => word.toUpperCase())),
  "heads of many lines": (given) => eachHead(given, (text) => text.replace(/ /g, "\n")),
  "heads parted by soft hyphens": (given) =>
    eachHead(given, (text) => text.replace(/(\p{L}{4})(?=\p{L}{3})/gu, "$1\u00ad")),
  "heads with marks of notes": (given) =>
    eachHead(given, (text) =>
      isOfWords(text) && given.draw.chance(0.2) ? text + given.draw.pick(NOTE_MARKS) : text,
    ),
  "heads in two languages": (given) => withEnglish(given),
  "numbers of the columns under the heads": (given) => withNumbers(given),
  "a column without a head": (given) => withoutHead(given, given.draw.pick(["size", "total", "length"])),
  "a column of ticks": (given) => withTicks(given),
  "bars of one member left out": (given) => withoutCounts(given),
};

/** Lists of one header of several known columns, on sheets that are not turned. */
function listsOf({ book, readings }: Alteration): List[] {
  return readings.flatMap((reading) => {
    const sheet = book.sheets.find(({ name }) => name === reading.sheet);
    const [table, another] = reading.tables;
    if (sheet === undefined || table === undefined || another !== undefined || reading.pasted === true)
      return [];
    const columns = [...table.columns.values()].sort((one, other) => one.column - other.column);
    const { headerTop: top, headerBottom: bottom } = table;
    // the rows of a turned sheet are columns of the book's
    const isInPlace = columns.every(({ column, header }) =>
      sheet.rows.slice(Math.max(top, 0), bottom + 1).some((row) => {
        const cell = row[column];
        return header === "" || (typeof cell === "string" && header.includes(cell.trim().slice(0, 2)));
      }),
    );
    if (top < 0 || columns.length < LEAST_COLUMNS || !isInPlace) return [];
    return [{ sheet, reading, top, bottom, right: table.right ?? 0, columns }];
  });
}

const LEAST_COLUMNS = 4;

/** a unit, a size or a letter of a dimension is no word of a head */
function isOfWords(text: string): boolean {
  return A_WORD.test(text) && !/^[([]|\d/.test(text.trim());
}

function eachHead(given: Alteration, alter: (text: string) => string): AlteredBook | null {
  let altered = 0;
  for (const { sheet, top, bottom, right } of listsOf(given)) {
    for (const row of sheet.rows.slice(top, bottom + 1)) {
      for (let column = 0; column <= right; column += 1) {
        const cell = row[column];
        if (typeof cell !== "string") continue;
        row[column] = alter(cell);
        altered += Number(row[column] !== cell);
      }
    }
  }
  return altered > 0 ? given.book : null;
}

const ENGLISH: Readonly<Record<string, string>> = {
  ...{
    member: "Member",
    mark: "Bar mark",
    size: "Diameter",
    members: "No. of members",
    each: "No. per member",
  },
  ...{ total: "Total no.", length: "Length", totalLength: "Total length", mass: "Mass", shape: "Shape" },
};

/** "Bauteil / Member", where a head of one cell says in one language and without a unit what its column is. */
function withEnglish(given: Alteration): AlteredBook | null {
  let altered = 0;
  for (const { sheet, top, columns } of listsOf(given)) {
    const heads = sheet.rows[top] as Cell[];
    const isEnglish = columns.some(({ header }) => /\b(?:length|mark|weight|shape|member|bar)/i.test(header));
    for (const { kind, column, header } of isEnglish ? [] : columns) {
      const [own, english] = [heads[column], ENGLISH[kind]];
      if (own !== header || english === undefined || !/^\p{L}[\p{L}. ]+$/u.test(header)) continue;
      heads[column] = `${own} / ${english}`;
      altered += 1;
    }
  }
  return altered > 2 ? given.book : null;
}

/** "1 2 3 4" in a row of its own. */
function withNumbers(given: Alteration): AlteredBook | null {
  const [list, another] = listsOf(given);
  if (list === undefined || another !== undefined || list.bottom - list.top > 1) return null;
  insertRow(
    list.sheet,
    list.bottom + 1,
    Array.from({ length: list.right + 1 }, (_, column) => column + 1),
  );
  return given.book;
}

function insertRow(sheet: AlteredSheet, at: number, row: Cell[]): void {
  sheet.rows.splice(at, 0, row);
  sheet.merges = (sheet.merges ?? []).map((merge) =>
    merge.replace(/\d+/g, (number) => String(Number(number) > at ? Number(number) + 1 : Number(number))),
  );
  sheet.struck = (sheet.struck ?? []).map((number) => (number > at ? number + 1 : number));
}

/** The head of one column is left out where the masses of the rows tell what it is. */
function withoutHead(given: Alteration, kind: string): AlteredBook | null {
  const [list, another] = listsOf(given);
  const kinds = new Set(list?.columns.map((one) => one.kind));
  const proves = ["size", "length", "total"] as const;
  const isProved = proves.every((one) => kinds.has(one)) && (kinds.has("mass") || kinds.has("totalLength"));
  if (list === undefined || another !== undefined || !isProved) return null;
  const column = list.columns.find((one) => one.kind === kind)?.column ?? 0;
  const isSpread = isMergedFrom(list) || list.top !== list.bottom || column === 0;
  if (isSpread || list.reading.bars.length < MANY_BARS) return null;
  (list.sheet.rows[list.top] as Cell[])[column] = null;
  return given.book;
}

const MANY_BARS = 8;

/** Cells of the header or below it are merged. */
function isMergedFrom({ sheet, top }: List): boolean {
  return (sheet.merges ?? []).some((merge) => Number(/\d+$/.exec(merge)?.[0]) > top);
}

/** A column that is no concern of the bars, at the right end. */
function withTicks(given: Alteration): AlteredBook | null {
  const [list, another] = listsOf(given);
  if (list === undefined || another !== undefined) return null;
  const { sheet, reading, top, right } = list;
  // what stands beside the list stays where it is
  if (sheet.rows.some((row) => row.length > right + 1)) return null;
  const put = (row: number, cell: Cell): void => {
    const cells = sheet.rows[row] as Cell[];
    while (cells.length <= right) cells.push(null);
    cells.push(cell);
  };
  put(top, "OK");
  for (const { row } of reading.bars) put(row, given.draw.pick(["x", "ok", null]));
  return given.book;
}

/** Members and the bars in each, where a column of its own has the total of every row. */
function withoutCounts(given: Alteration): AlteredBook | null {
  const [list, another] = listsOf(given);
  const isAlone = list !== undefined && another === undefined;
  if (!isAlone || isMergedFrom(list) || list.top !== list.bottom) return null;
  const at = (kind: string): number => list.columns.find((one) => one.kind === kind)?.column ?? -1;
  const [members, each, total] = [at("members"), at("each"), at("total")];
  const { sheet, reading } = list;
  const isKept = reading.bars.every(
    (bar) => bar.total !== null && bar.total === (bar.members ?? 0) * (bar.each ?? 0),
  );
  if (members < 0 || each < 0 || total < 0 || !isKept) return null;
  const bars = new Set(reading.bars.map(({ row }) => row));
  // a block below that stands in these columns would lose one of its own
  const isTaken = sheet.rows.some(
    (row, index) =>
      index > list.bottom && !bars.has(index) && [members, each].some((column) => row[column] != null),
  );
  if (isTaken) return null;
  sheet.rows = sheet.rows.map((row, index) =>
    index < list.top ? row : row.filter((_, column) => column !== members && column !== each),
  );
  return given.book;
}
