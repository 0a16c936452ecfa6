import { type AuditSettings, correctionWords, readAsCorrected, settingsFromText } from "../audit";
import { isPointedAt } from "../audit/is-pointed-at";
import { markSuperseded } from "../audit/mark-superseded";
import type { RowsHelper } from "../audit/rows-apart";
import { inForceBy, standardNamed } from "../audit/standard-named";
import { hasOwnName, ownNotes, ownSheetOf, standardOfBook } from "../own";
import { isFindingsSheet } from "../own/own-papers";
import type { ScheduleReading } from "../schedule/bar-row";
import { cellAddress } from "../schedule/cell-address";
import type { ColumnsSaid } from "../schedule/columns-said";
import { doubtedResults, doubtedWords } from "../schedule/doubted-results";
import { hiddenColumnWords } from "../schedule/hidden-columns";
import type { ColumnCorrection } from "../schedule/read-options";
import { sumsAlone } from "../schedule/rows/sums-alone";
import type { Sheet } from "../schedule/sheet";
import { sheetsOfBook } from "../schedule/sheets-of-book";
import { uprightSheet } from "../schedule/turned-sheet";
import { hasShopName } from "../shop/has-shop-name";
import { isShopSheet } from "../shop/is-shop-sheet";
import { Workshop } from "../shop/workshop";
import { type OwnStandard, resolveStandard } from "../standards/index";
import type { Standard } from "../standards/port";
import type { ReadSheet } from "../totals/reckon-tonnage";
import { defineRefusal, isRefusal, type Refusal, refusalText } from "../units/refusal";
import type { Book } from "./book";

/** What a job is asked about its books. */
export interface JobQuestion {
  /** the one sheet to look at, hidden or not; null for every sheet that is seen */
  readonly sheet: string | null;
  /** an id; null for the one that each book names, else the default */
  readonly standard: string | null;
  /** what was looked up in a file kept beside the books; a book's own sheet Standard stands before it */
  readonly own?: OwnStandard;
  /** columns pointed at by hand, before what the book keeps of them */
  readonly columns?: readonly ColumnsSaid[];
  /** who judges rows of long sheets at the same time */
  readonly helper?: RowsHelper;
}

/** A book opened for a job: what stands on its sheets, not yet what it means. */
export interface OpenedBook {
  readonly book: Book;
  readonly only: string | null;
  readonly standard: Standard;
  /** neither the question nor the book names a standard */
  readonly isStandardAssumed: boolean;
  /** neither does, and the sheets themselves name it */
  readonly isStandardNamed: boolean;
  readonly settings: AuditSettings;
  readonly workshop: Workshop;
  /** the sheets asked for */
  readonly sheets: readonly Sheet[];
  /** those, the Shop sheet and the others that are seen, in the book's order: one may supersede another */
  readonly all: readonly Sheet[];
  /** a sentence each, for the user */
  readonly notes: readonly string[];
}

/** A book with its schedules read. */
export interface ReadBook extends OpenedBook {
  readonly schedules: readonly ReadSheet[];
}

/** The names under which a workbook keeps what its user decided. */
const STANDARD_NAME = "Barwright.Standard";
const SETTINGS_NAME = "Barwright.Audit";

const noSuchSheet = defineRefusal(
  "job-sheet-missing",
  "value",
  'there is no sheet "{sheet}": the book has {sheets}',
);
const onlyShop = defineRefusal(
  "job-sheet-is-shop",
  "value",
  'sheet "{sheet}" says what the yard owns and is no schedule',
);
const onlyOwn = defineRefusal(
  "job-sheet-is-own",
  "value",
  'sheet "{sheet}" says what was looked up in the documents and is no schedule',
);
const allHidden = defineRefusal(
  "job-sheets-hidden",
  "value",
  "every sheet is hidden ({sheets}): name the one to be read, or show it",
);
const standardNotHeld = defineRefusal("job-standard", "value", "{whose}{reason}");
const noSchedule = defineRefusal("job-no-schedule", "value", "{reason}");

/** Opens a book for a job. Hidden sheets are left out unless one is named, and each is told. */
export function openForJob(book: Book, asked: JobQuestion): OpenedBook | Refusal {
  const named = standardOf(book, asked);
  if (isRefusal(named)) return named;
  const shopName = shopSheetOf(book);
  const names = namesAsked(book, asked.sheet, shopName);
  if (isRefusal(names)) return names;
  const settings = withColumnsSaid(settingsFromText(book.setting(SETTINGS_NAME)), asked.columns, names);
  if (isRefusal(settings)) return settings;
  const seen = book.sheets.filter(
    ({ visibility, name }) => visibility === "visible" || name === shopName || hasOwnName(name),
  );
  const read = book.sheets
    .filter((sheet) => seen.includes(sheet) || names.includes(sheet.name))
    .map(({ name }) => {
      const sheet = book.read(name);
      return names.includes(name) && !isPointedAt(settings, name) ? uprightSheet(sheet, named) : sheet;
    });
  const isPaper = (sheet: Sheet): boolean => asked.sheet === null && isFindingsSheet(sheet);
  const all = sheetsOfBook(
    read.filter((sheet) => !isPaper(sheet)),
    ({ name }) => names.includes(name),
  );
  const ownSheet = ownSheetOf(all);
  const isStandardAssumed = asked.standard === null && book.setting(STANDARD_NAME) === null;
  const ofSheets = isStandardAssumed ? standardNamed(all, named) : null;
  const standard = standardOfBook(inForceBy(ofSheets, named), all);
  const workshop = new Workshop(all.find(({ name }) => name === shopName) ?? null, standard);
  const sheets = all.filter((sheet) => names.includes(sheet.name) && sheet !== ownSheet);
  if (sheets.length === 0)
    return ownSheet === null
      ? noSchedule({ reason: "no sheet but those that an earlier check wrote" })
      : onlyOwn({ sheet: ownSheet.name });
  const notes = [
    ...(asked.sheet === null ? hiddenNotes(book, shopName) : []),
    ...read
      .filter(isPaper)
      .map(({ name }) => `sheet "${name}" was written by an earlier check: it is not read`),
    ...settingsNotes(settings, sheets),
    ...sheets.filter(({ isTurned }) => isTurned === true).map(turnedNote),
    ...(ownSheet === null ? [] : ownNotes(ownSheet)),
  ];
  const isStandardNamed = ofSheets !== null;
  return {
    ...{ book, only: asked.sheet, standard, isStandardAssumed, isStandardNamed },
    ...{ settings, workshop, sheets, all, notes },
  };
}

/** The settings with what is said of columns now, which stands before what was kept of the same column. */
function withColumnsSaid(
  settings: AuditSettings,
  said: readonly ColumnsSaid[] = [],
  names: readonly string[],
): AuditSettings | Refusal {
  let { readings } = settings;
  for (const { sheet: named, columns } of said) {
    const meant = names.filter((name) => named === null || name === named);
    if (meant.length === 0) return noSuchSheet({ sheet: named ?? "", sheets: names.join(", ") });
    for (const name of meant) {
      const { columns: kept = [], ...own } = readings.find(({ sheet }) => sheet === name) ?? { sheet: name };
      const isNew = ({ column }: ColumnCorrection): boolean => !columns.some((one) => one.column === column);
      const reading = { ...own, columns: [...kept.filter(isNew), ...columns] };
      readings = [...readings.filter(({ sheet }) => sheet !== name), reading];
    }
  }
  return { ...settings, readings };
}

/** Reads the schedules of an opened book; refuses one in which no sheet has a header. */
export function readSchedules(opened: OpenedBook): ReadBook | Refusal {
  return withSchedules(
    opened,
    newestOf(opened, (sheet) => ({ sheet, reading: readingOf(opened, sheet) })),
  );
}

/** A sheet read as its user corrected it. */
export function readingOf({ standard, settings }: OpenedBook, sheet: Sheet): ScheduleReading {
  return readAsCorrected(sheet, standard, settings);
}

/** The sheets asked for, read, with what a later revision on any sheet of the book replaces marked. */
export function newestOf<Read extends ReadSheet>(
  opened: OpenedBook,
  read: (sheet: Sheet) => Read,
): readonly Read[] {
  const { standard, sheets, all } = opened;
  const own = ownSheetOf(all);
  const schedules = all.filter((sheet) => sheet !== own && !isShopSheet(sheet));
  return markSuperseded(schedules.map(read), standard).filter(({ sheet }) => sheets.includes(sheet));
}

/** An opened book beside what was read of its sheets, those without a header told in notes. */
export function withSchedules<Opened extends OpenedBook>(
  opened: Opened,
  read: readonly ReadSheet[],
): (Opened & ReadBook) | Refusal {
  const without = read.filter(({ reading }) => reading.tables.length === 0);
  if (without.length === read.length) {
    const named = new Set(read.map(({ sheet }) => sheet.name));
    const unread = { sheets: opened.book.sheets.filter(({ name }) => !named.has(name)) };
    const reason = [...without.map(noHeaderReason), ...hiddenNotes(unread, shopSheetOf(opened.book))].join(
      "; ",
    );
    return noSchedule({ reason });
  }
  const notes = without.map((one) =>
    sumsAlone(one.sheet, opened.standard).length > 0
      ? `sheet "${one.sheet.name}" lists no bars: it is read for its sums by size alone`
      : `passed over: ${noHeaderReason(one)}`,
  );
  for (const { sheet, reading } of read) {
    for (const { guess, reason } of reading.guesses ?? [])
      if (guess === "amounts-of-member") notes.push(`sheet "${sheet.name}": ${reason}`);
    const doubted = doubtedResults(sheet, reading);
    if (doubted !== null) notes.push(doubtedWords(sheet, doubted));
    const hidden = hiddenColumnWords(sheet, reading);
    if (hidden !== null) notes.push(hidden);
  }
  return {
    ...opened,
    schedules: read.filter(({ reading }) => reading.tables.length > 0),
    notes: [...opened.notes, ...notes],
  };
}

function standardOf(book: Book, { standard: asked, own }: JobQuestion): Standard | Refusal {
  const ofBook = book.setting(STANDARD_NAME);
  const standard = resolveStandard(asked ?? ofBook ?? "", own);
  if (!isRefusal(standard)) return standard;
  const whose = asked === null && ofBook !== null ? `the workbook's name ${STANDARD_NAME}: ` : "";
  return standardNotHeld({ whose, reason: refusalText(standard) });
}

/** The sheet that says what the yard owns. */
function shopSheetOf(book: Book): string | undefined {
  return book.sheets.find(({ name }) => hasShopName(name) && isShopSheet(book.read(name)))?.name;
}

function namesAsked(
  { sheets }: Book,
  only: string | null,
  shop: string | undefined,
): readonly string[] | Refusal {
  const asked = only === null ? sheets : sheets.filter(({ name }) => name === only);
  if (asked.length === 0)
    return noSuchSheet({ sheet: only ?? "", sheets: sheets.map(({ name }) => name).join(", ") });
  const schedules = asked.filter(({ name }) => name !== shop);
  if (schedules.length === 0) return onlyShop({ sheet: asked[0]!.name });
  const seen = schedules.filter(({ visibility }) => only !== null || visibility === "visible");
  if (seen.length === 0) return allHidden({ sheets: schedules.map(({ name }) => name).join(", ") });
  return seen.map(({ name }) => name);
}

function hiddenNotes({ sheets }: Pick<Book, "sheets">, shop: string | undefined): string[] {
  return sheets
    .filter(({ name, visibility }) => visibility !== "visible" && name !== shop)
    .map(
      ({ name, visibility }) =>
        `sheet "${name}" is ${visibility} and is not counted: name it to have it read`,
    );
}

function turnedNote({ name }: Sheet): string {
  return `sheet "${name}" has its bars in columns: they are read one column a bar, and told by the column's letter`;
}

function settingsNotes(settings: AuditSettings, sheets: readonly Sheet[]): string[] {
  const words = sheets.flatMap(({ name }) => correctionWords(settings, name) ?? []);
  if (settings.problem === undefined) return words;
  return [`settings kept in the workbook could not be read: ${settings.problem}`, ...words];
}

/** Cells of the Shop sheet that could not be read. */
export function shopNotes({ sheet, shop }: Workshop): string[] {
  if (sheet === null) return [];
  return shop.problems.map(
    ({ row, column, typed, wanted, isUnused }) =>
      `${sheet.name}!${cellAddress(sheet, row, column)}: ${isUnused === true ? `"${typed}": ${wanted}` : `"${typed}" is not known here: write ${wanted}`}`,
  );
}

function noHeaderReason({ sheet, reading }: ReadSheet): string {
  if (sheet.rowCount === 0) return `sheet "${sheet.name}" is empty`;
  if (reading.noHeader?.isTransposed === true) {
    return `sheet "${sheet.name}" has its bars in columns, one beside the other: paste it turned, with one bar a row, or say what its columns hold`;
  }
  const looked = reading.noHeader?.lookedFor.join(", ") ?? "";
  const nearest = reading.noHeader?.nearestRow ?? null;
  const where = nearest === null ? "no row comes near" : `the nearest is row ${sheet.top + nearest + 1}`;
  return `sheet "${sheet.name}" has no header row: looked for ${looked}; ${where}; where it lists bars, say what its columns hold`;
}
