import { parse } from "csv-parse/sync";
import { type Cell, type Sheet, sheetFromRows } from "../../../core/schedule/sheet";
import { LAST_COLUMN, LAST_ROW } from "../../workbook/cell-address";
import { UnreadableWorkbook } from "../unreadable-workbook";
import { groupedNumber, type NumberSigns, signsOfCsv } from "./signs-of-csv";

/** Bytes of a file and cells in it that are read; a full sheet of seventeen columns is within. */
const LONGEST_FILE = 256 * 1024 * 1024;
const MOST_CELLS = 20_000_000;
const DELIMITERS = [",", ";", "\t", "|"] as const;

/** A schedule kept as text: encoding, delimiter and decimal sign are found by themselves. */
export function readCsv(bytes: Uint8Array, name: string): Sheet {
  refuseTooLong(bytes.length, name);
  if (bytes.includes(0) && !hasUtf16Mark(bytes)) {
    throw new UnreadableWorkbook(`${name} is not a text file: .xlsx and .csv are read`);
  }
  let text = decode(bytes);
  const hint = /^sep=(.)\r?\n/.exec(text);
  // the hint is a row of the sheet in no program, but it is a line of the file: rows keep their numbers
  if (hint !== null) text = `\n${text.slice(hint[0].length)}`;
  const delimiter = hint?.[1] ?? findDelimiter(text);
  const cells = count(text, delimiter) + count(text, "\n");
  if (cells > MOST_CELLS)
    throw new UnreadableWorkbook(
      `${name} has about ${grouped(cells)} cells, and ${grouped(MOST_CELLS)} are read: cut the file`,
    );
  let records: string[][];
  try {
    records = parse(text, {
      delimiter,
      relax_column_count: true,
      relax_quotes: true,
      skip_empty_lines: false,
    });
  } catch (error) {
    const reason = error instanceof Error ? error.message.replace(/\s+/g, " ") : String(error);
    throw new UnreadableWorkbook(`${name} cannot be read as separated values: ${reason}`);
  }
  const columns = records.reduce((most, row) => Math.max(most, row.length), 0);
  if (records.length > LAST_ROW + 1 || columns > LAST_COLUMN + 1) {
    throw new UnreadableWorkbook(
      `${name} has ${records.length} rows and ${columns} columns, and no sheet has more than ${LAST_ROW + 1} and ${LAST_COLUMN + 1}: cut the file`,
    );
  }
  const signs = signsOfCsv(records, delimiter);
  const rows = records.map((row) => row.map((cell) => readCell(cell, signs)));
  return {
    ...sheetFromRows(name, rows),
    name,
    // a mark such as 1.101 stays one
    ...(signs.point !== null && {
      shown: (row: number, column: number) =>
        typeof rows[row]?.[column] === "number" ? records[row]?.[column]?.trim() : undefined,
    }),
  };
}

/** Refuses a text file that is longer than any schedule, before it is read where the caller knows its length. */
export function refuseTooLong(bytes: number, name: string): void {
  if (bytes <= LONGEST_FILE) return;
  const mebibytes = (size: number): string => grouped(Math.ceil(size / (1024 * 1024)));
  throw new UnreadableWorkbook(
    `${name} has ${mebibytes(bytes)} MiB, and at most ${mebibytes(LONGEST_FILE)} MiB are read: cut the file`,
  );
}

function grouped(number: number): string {
  return number.toLocaleString("en");
}

function count(text: string, sign: string): number {
  let found = 0;
  for (let at = text.indexOf(sign); at >= 0; at = text.indexOf(sign, at + 1)) found += 1;
  return found;
}

/** Numbers in their plain spelling become numbers; "007" and "1.50" stay the texts they are. */
function readCell(text: string, { point, decimalComma }: NumberSigns): Cell {
  const trimmed = text.trim();
  if (trimmed === "") return null;
  const grouped = point === null ? null : groupedNumber(trimmed);
  if (grouped !== null) return point === "thousands" ? grouped : Number(trimmed);
  if (String(Number(trimmed)) === trimmed) return Number(trimmed);
  if (decimalComma && /^-?(0|[1-9]\d*),(\d{1,2}|\d{4,})$/.test(trimmed))
    return Number(trimmed.replace(",", "."));
  if (/^#(REF!|N\/A|VALUE!|NAME\?|DIV\/0!|NUM!|NULL!)$/.test(trimmed)) return { error: trimmed };
  return text;
}

function hasUtf16Mark(bytes: Uint8Array): boolean {
  return (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
}

function decode(bytes: Uint8Array): string {
  if (hasUtf16Mark(bytes)) return new TextDecoder(bytes[0] === 0xff ? "utf-16le" : "utf-16be").decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

/** The sign that cuts the first lines into most columns, in most of them alike. */
function findDelimiter(text: string): string {
  const lines = text.split(/\r?\n/, 60).filter((line) => line.trim() !== "");
  let best: { delimiter: string; score: number } = { delimiter: ",", score: 0 };
  for (const delimiter of DELIMITERS) {
    const counts = lines.map((line) => outsideQuotes(line).split(delimiter).length - 1);
    const most = Math.max(0, ...counts);
    const alike = counts.filter((count) => count > 0 && count >= most / 2).length;
    const score = most * alike;
    if (score > best.score) best = { delimiter, score };
  }
  return best.delimiter;
}

function outsideQuotes(line: string): string {
  return line.replace(/"(?:[^"]|"")*"/g, "");
}
