import type { ScheduleReading, TableReading } from "../../../core/schedule/bar-row";
import type { Cell } from "../../../core/schedule/sheet";
import type { Alter, Alteration, AlteredBook, AlteredSheet } from "./altered-books";
import { LANGUAGE_OF, OFFICE_WORDS, type OfficeWords } from "./office-words";

/** A sheet with one list, and where its bars stand. */
interface Listed {
  readonly sheet: AlteredSheet;
  readonly reading: ScheduleReading;
  readonly table: TableReading;
  readonly bars: readonly number[];
}

const DATES = ["12.03.2025", "04.04.2025"];

/** Rows that offices write above, between and after the bars, and lists that stand elsewhere; nothing of a bar changes. */
export const ROWS_AROUND: Readonly<Record<string, Alter>> = {
  "labels above": above((words, { draw }) => [
    [words.project, "Hall 7", null, words.drawing, draw.pick(["S-201", 201])],
    [words.date, draw.pick(DATES), null, words.prepared, "J.K."],
    [],
  ]),
  "revisions above": above((words) => [
    [words.revision, words.date, words.description, words.prepared],
    ["A", DATES[0] as string, words.first, "J.K."],
    ["B", DATES[1] as string, words.amended, "M.L."],
    [],
  ]),
  "shapes above": above((words) => [["00", words.straight, null, "51", words.stirrup], []]),
  "moved right and down": ({ book, draw }) => {
    const columns = draw.between(1, 4);
    for (const sheet of book.sheets.slice(0, 1)) {
      sheet.rows = sheet.rows.map((row) => [...new Array<Cell>(columns).fill(null), ...row]);
      replace(
        sheet,
        (row) => row,
        (column) => column + columns,
      );
      insert(sheet, 0, [[], []]);
    }
    return book;
  },
  "blank rows between": between(({ draw }) => (draw.chance(0.5) ? [[]] : [[], []])),
  "title of a page": between(({ words }) => [[`${words.sheet} 2`, null, null, `${words.project}: Hall 7`]]),
  "member and drawing": between(({ words }) => [[words.walls, null, null, `${words.drawing} S-202`]]),
  "header again": between(({ listed }) => [[], ...headRows(listed)]),
  "header twice": (given) =>
    inList(given, (listed) => {
      insert(listed.sheet, listed.table.headerBottom + 1, headRows(listed));
      return true;
    }),
  "carried over": between(({ listed: { sheet, table, bars }, words, at }) => {
    const column = table.columns.get("mass")?.column ?? -1;
    const masses = bars.map((row) => sheet.rows[row]?.[column]);
    if (column < 1 || masses.some((mass) => typeof mass !== "number")) return null;
    const sum = bars.reduce((so, row, place) => so + (row < at ? (masses[place] as number) : 0), 0);
    const line = (text: string): Cell[] => {
      const cells = new Array<Cell>(column + 1).fill(null);
      cells[table.columns.get("mark")?.column ?? 0] = text;
      cells[column] = Math.round(sum * 1000) / 1000;
      return cells;
    };
    return [line(words.carried), ...headRows({ sheet, table }), line(words.brought)];
  }),
  signatures: below((words) => [
    [words.prepared, null, words.checked, null, words.approved],
    ["J.K.", null, "M.L.", null, "______"],
    [...DATES],
    [words.distribution],
  ]),
  "notes at the end": below((words) => [[words.notes], [1, words.readWith], [2, words.onSite]]),
  "revisions at the end": below((words) => [
    [words.revision, words.date, words.description, words.prepared],
    ["A", DATES[0] as string, words.first, "J.K."],
  ]),
  "cancelled mark": between(({ listed: { sheet, table }, words, at, draw }) => {
    const [mark, size] = [table.columns.get("mark"), table.columns.get("size")];
    const typed = sheet.rows[at - 1]?.[mark?.column ?? -1];
    if (mark === undefined || size === undefined || typed == null) return null;
    const cells: Cell[] = [];
    cells[mark.column] = typeof typed === "number" ? 995 : `${String(typed)}x`;
    cells[size.column] = draw.chance(0.5) ? words.cancelled : words.cancelled.toUpperCase();
    return [Array.from(cells, (cell) => cell ?? null)];
  }),
  "cover sheet": ({ book, readings }) => {
    const words = wordsOf(book, readings);
    const rows: Cell[][] = [
      [null, `${words.project}:`, "Hall 7"],
      [null, words.drawing, words.description, words.revision, words.date],
      [null, "S-201", words.foundations, "A", DATES[0] as string],
      [null, words.revision, words.date, words.description, words.prepared, words.checked],
      [null, "A", DATES[0] as string, words.first, "J.K.", "M.L."],
    ];
    book.sheets.unshift({ name: words.description, rows });
    return book;
  },
  "sheet of shapes": ({ book, readings }) => {
    const words = wordsOf(book, readings);
    const heads = readings.flatMap(({ tables }) =>
      tables.flatMap(({ columns }) => columns.get("shape") ?? []),
    );
    const rows: Cell[][] = [
      [heads[0]?.header ?? "Shape", words.description, "A", "B", "C", "D"],
      ["00", words.straight, "A"],
      ["51", words.stirrup, "A", "B", "C"],
    ];
    book.sheets.push({ name: "Shapes", rows });
    return book;
  },
  "goes on without a header": ({ book, readings, draw }) => {
    const [sheet] = book.sheets;
    const listed = book.sheets.length === 1 ? listsOf(book, readings)[0] : undefined;
    const at = listed === undefined ? 0 : gapOf(listed, draw);
    const rest = listed?.bars.filter((row) => row >= at).length ?? 0;
    if (sheet === undefined || listed === undefined || at === 0 || rest < 4) return null;
    // only where nothing is merged or struck in what moves
    if ((sheet.merges ?? []).length > 0 || (sheet.struck ?? []).length > 0) return null;
    book.sheets.push({ name: "Continued", rows: sheet.rows.slice(at) });
    sheet.rows = sheet.rows.slice(0, at);
    return book;
  },
};

interface Gap {
  readonly listed: Listed;
  readonly words: OfficeWords;
  readonly draw: Alteration["draw"];
  /** the row before which they are to stand */
  readonly at: number;
}

function above(rows: (words: OfficeWords, given: Alteration) => Cell[][]): Alter {
  return (given) => {
    const [sheet] = given.book.sheets;
    if (sheet === undefined || given.readings.some(({ pasted }) => pasted === true)) return null;
    insert(sheet, 0, rows(wordsOf(given.book, given.readings), given));
    return given.book;
  };
}

function below(rows: (words: OfficeWords) => Cell[][]): Alter {
  return ({ book, readings }) => {
    book.sheets[0]?.rows.push([], ...rows(wordsOf(book, readings)));
    return book;
  };
}

function between(rows: (gap: Gap) => Cell[][] | null): Alter {
  return (given) =>
    inList(given, (listed) => {
      const at = gapOf(listed, given.draw);
      const words = wordsOf(given.book, given.readings);
      const added = at === 0 ? null : rows({ listed, words, draw: given.draw, at });
      if (added === null) return false;
      insert(listed.sheet, at, added);
      return true;
    });
}

function inList({ book, readings }: Alteration, alter: (listed: Listed) => boolean): AlteredBook | null {
  const [listed] = listsOf(book, readings);
  return listed !== undefined && alter(listed) ? book : null;
}

/** Sheets with one list, each of whose rows is a row of the sheet. */
function listsOf(book: AlteredBook, readings: readonly ScheduleReading[]): readonly Listed[] {
  return book.sheets.flatMap((sheet) => {
    const reading = readings.find((one) => one.sheet === sheet.name);
    const [table, another] = reading?.tables ?? [];
    if (reading === undefined || table === undefined || another !== undefined || reading.pasted === true)
      return [];
    const bars = reading.bars.map(({ row }) => row);
    const isTurned = table.headerBottom < table.headerTop || reading.rowClasses.length !== sheet.rows.length;
    return isTurned || bars.length < 6 ? [] : [{ sheet, reading, table, bars }];
  });
}

/** A row of a bar right under another, at which a member begins and nothing is merged; 0 where there is none. */
function gapOf({ sheet, table, bars }: Listed, draw: Alteration["draw"]): number {
  const member = table.columns.get("member")?.column;
  const merged = (sheet.merges ?? []).map(rowsOf);
  const gaps = bars.filter((row, place) => {
    const isNamed = member === undefined || (sheet.rows[row]?.[member] ?? "") !== "";
    return (
      isNamed && bars[place - 1] === row - 1 && !merged.some(([top, bottom]) => top < row && bottom >= row)
    );
  });
  return gaps.length === 0 ? 0 : draw.pick(gaps);
}

/** The rows of the header, and those above it into which its cells are merged. */
function headRows({ sheet, table }: Pick<Listed, "sheet" | "table">): Cell[][] {
  const over = (sheet.merges ?? []).map(rowsOf).filter(([, bottom]) => bottom >= table.headerTop);
  const top = Math.min(table.headerTop, ...over.map(([row]) => row));
  return sheet.rows.slice(top, table.headerBottom + 1).map((row) => [...row]);
}

function wordsOf({ country }: AlteredBook, readings: readonly ScheduleReading[]): OfficeWords {
  const heads = readings.flatMap(({ tables }) =>
    tables.flatMap(({ columns }) => [...columns.values()].map(({ header }) => header)),
  );
  const isEnglish = heads.some((head) => /\b(?:bars?|length|size|qty|weight|mark)\b/i.test(head));
  const language = LANGUAGE_OF.find(([of]) => of.test(country))?.[1] ?? "en";
  return OFFICE_WORDS[isEnglish ? "en" : language] as OfficeWords;
}

function insert(sheet: AlteredSheet, at: number, rows: readonly Cell[][]): void {
  sheet.rows = [...sheet.rows.slice(0, at), ...rows, ...sheet.rows.slice(at)];
  replace(
    sheet,
    (row) => (row >= at ? row + rows.length : row),
    (column) => column,
  );
}

/** Merges and struck rows go where their cells went. */
function replace(sheet: AlteredSheet, row: (of: number) => number, column: (of: number) => number): void {
  const moved = (address: string): string => {
    const [at, of] = placeOf(address);
    return lettersOf(column(of)) + String(row(at) + 1);
  };
  sheet.merges = (sheet.merges ?? []).map((range) => range.split(":").map(moved).join(":"));
  sheet.struck = (sheet.struck ?? []).map((struck) => row(struck - 1) + 1);
}

function rowsOf(range: string): readonly [number, number] {
  const [from = "A1", to = from] = range.split(":");
  return [placeOf(from)[0], placeOf(to)[0]];
}

function placeOf(address: string): readonly [row: number, column: number] {
  const [, letters = "", digits = ""] = /^([A-Z]+)(\d+)$/.exec(address) ?? [];
  return [Number(digits) - 1, [...letters].reduce((so, one) => so * 26 + one.charCodeAt(0) - 64, 0) - 1];
}

function lettersOf(column: number): string {
  const before = column < 26 ? "" : lettersOf(Math.floor(column / 26) - 1);
  return before + String.fromCharCode(65 + (column % 26));
}
