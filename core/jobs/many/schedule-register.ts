import { plain, revisionInName } from "../../audit/sheet-revision";
import { isLaterRevision } from "../../schedule/revision-order";
import { isCellError, type Sheet } from "../../schedule/sheet";

/** A schedule as a register states it. */
export interface RegisterLine {
  readonly number: string;
  /** null where none is issued yet, or the line says that it is withdrawn */
  readonly revision: string | null;
  /** as it is shown */
  readonly date: string | null;
  /** the sheet's own row number, from 1 */
  readonly row: number;
}

/** A list of the schedules of a job, each with its newest revision. */
export interface ScheduleRegister {
  readonly book: string;
  readonly sheet: string;
  readonly lines: readonly RegisterLine[];
}

const SCHEDULE =
  /^(?:(?:bar|bending|reinforcement|rebar) )*(?:schedule|bbs|list)(?: (?:no|nr|number|ref|reference|id))?$/;
const REVISION = /^(?:(?:current|latest|last) )?(?:rev|revision|issue)(?: (?:no|nr|letter))?$/;
const DATE = /^(?:date(?: of (?:revision|issue))?|(?:revision|rev|issue) date|issued|dated)$/;
/** A head that only a list of bars has. */
const OF_BARS = /^(?:bar )?mark$|^shape\b|^type and size$/;
const NOT_ISSUED = /\b(?:withdrawn|superseded|cancelled|omitted|not (?:yet )?issued|to follow|void)\b/i;
const FEWEST_LINES = 2;
const ROWS_TO_HEAD = 40;

/** The register that a sheet is; null where it is none. Of several lines of one schedule the newest counts. */
export function registerOf(book: string, sheet: Sheet): ScheduleRegister | null {
  const head = headOf(sheet);
  if (head === null) return null;
  const lines = new Map<string, RegisterLine>();
  for (let row = head.row + 1; row < sheet.rowCount; row += 1) {
    const line = lineOf(sheet, row, head);
    if (line === null) continue;
    const key = plain(line.number);
    const known = lines.get(key);
    if (known === undefined || isLaterRevision(line.revision, known.revision)) lines.set(key, line);
  }
  return lines.size < FEWEST_LINES ? null : { book, sheet: sheet.name, lines: [...lines.values()] };
}

interface Head {
  readonly row: number;
  readonly schedule: number;
  readonly revision: number;
  readonly date: number;
}

function headOf(sheet: Sheet): Head | null {
  for (let row = 0; row < Math.min(sheet.rowCount, ROWS_TO_HEAD); row += 1) {
    const words = Array.from({ length: sheet.columnCount }, (_, column) =>
      textAt(sheet, row, column)
        .toLowerCase()
        .replace(/[^\p{L}\p{N}]+/gu, " ")
        .trim(),
    );
    const [schedule, revision, date] = [SCHEDULE, REVISION, DATE].map((word) =>
      words.findIndex((text) => word.test(text)),
    ) as [number, number, number];
    if (schedule >= 0 && revision >= 0 && !words.some((text) => OF_BARS.test(text)))
      return { row, schedule, revision, date };
  }
  return null;
}

function lineOf(sheet: Sheet, row: number, head: Head): RegisterLine | null {
  const written = textAt(sheet, row, head.schedule);
  if (!/\d/.test(written)) return null;
  const said = revisionInName(written);
  const revision = textAt(sheet, row, head.revision)
    .replace(/^rev(?:ision)?\.?\s*/i, "")
    .toUpperCase();
  const isIssued = !Array.from({ length: sheet.columnCount }, (_, column) => textAt(sheet, row, column)).some(
    (text) => NOT_ISSUED.test(text),
  );
  const date = head.date < 0 ? "" : textAt(sheet, row, head.date);
  return {
    number: said === null || said.rest.trim() === "" ? written : said.rest.trim(),
    revision: !isIssued || revision === "" ? null : revision,
    date: date === "" ? null : date,
    row: sheet.top + row + 1,
  };
}

function textAt(sheet: Sheet, row: number, column: number): string {
  const cell = sheet.cell(row, column);
  if (cell === null || isCellError(cell)) return "";
  return (sheet.shown?.(row, column) ?? String(cell)).trim();
}
