import type { Standard } from "../../standards/port";
import { counted } from "../../units/counted";
import type { BarRow, SheetGuess, SupersededBy, TableReading } from "../bar-row";
import { columnLetters } from "../cell-address";
import { hiddenColumnsRead } from "../hidden-columns";
import { markKey } from "../mark-key";
import { isLaterRevision } from "../revision-order";
import type { Sheet } from "../sheet";
import type { DraftRow } from "./row-draft";

export interface Finished {
  readonly guesses: readonly SheetGuess[];
  readonly lengthStep: number | null;
  /** a note names the grade of bars that name none */
  readonly isGradeNoted: boolean;
}

const STEPS = [50, 25, 20, 10, 5] as const;
const NO_MEMBER_NAME =
  /^(?:sheet|tabelle|feuil|blad|hoja|planilha|foglio|лист|工作表|schedule|bbs|bar ?bending|rebar|bars?|data|list|page|summary|csv)[\s_\-.]*(?:\d*|list|schedule)$/i;

/** What can only be said once all rows are read: sets, revisions, defaults, the step of the lengths. */
export function finishReading(
  sheet: Sheet,
  standard: Standard,
  bars: readonly DraftRow[],
  notes: readonly { readonly row: number; readonly text: string }[],
  isConfirmed: (code: string, row: number, column: number) => boolean,
): Finished {
  const guesses: SheetGuess[] = [];
  nameMemberBySheet(sheet, bars, guesses);
  const isGradeNoted = gradeFromNotes(bars, notes, standard, guesses);
  for (const [place, set] of setsOf(bars)) (bars[place] as DraftRow).setMark = set;
  for (const [place, later] of laterRevisions(bars))
    Object.assign(bars[place] as DraftRow, { superseded: true, supersededBy: later });
  tellFormats(sheet, bars, guesses, isConfirmed);
  return { guesses, lengthStep: lengthStep(bars), isGradeNoted };
}

function nameMemberBySheet(sheet: Sheet, bars: readonly DraftRow[], guesses: SheetGuess[]): void {
  const name = sheet.name.trim();
  if (bars.length === 0 || name === "" || NO_MEMBER_NAME.test(name)) return;
  let named = 0;
  for (const bar of bars) {
    if (bar.member !== null) return;
    named += 1;
  }
  for (const bar of bars) bar.member = name;
  if (named > 0) {
    const reason = `no member is written, so the sheet's name ${name} was taken`;
    guesses.push({ guess: "member-from-sheet", reason, asks: false, row: null, column: null });
  }
}

const GRADE_TALK =
  /\b(?:all|bars?|steel|rebar|reinforcement|grade|stahl|acier|betonstahl|armatures?)\b|钢筋|çelik|\b(?:acero|acciaio|a[çc]o|wapening|betonstaal|stal|celik|armaduras?|ferr[io])\b/i;
const GRADE_NAME =
  /\b(Fe\s?\d{3}\s?[A-Z]{0,2}|BSt\s?\d{3}\s?[A-Z]?|B\s?[45]\d0\s?[A-Z]{0,2}|HRB\s?\d{3}\s?E?|HPB\s?\d{3}|SD\s?\d{3}[A-Z]?|Grade\s?\d{2,3}\s?[A-Z]{0,2}|Gr\.?\s?\d{2,3}|G(?:40|60|75|80|100)|[DRH]?[235]\d0[NELWRP]{1,2})\b/;

/** Names of grades that are no other word: they need no word for steel beside them. */
const GRADE_ALONE = /\b(?:B\s?[45]\d0\s?[ABC]|B[45]\d0SD?|BSt\s?\d{3}|FeB\s?\d{2}\s?[Kk]|FeE\s?\d{3})\b/;
/** of older sheets (common practice): Italian and Dutch FeB44k, French FeE500, Turkish S420 */
const GRADE_ABROAD = /\b(FeB\s?\d{2}\s?[Kk]|FeE\s?\d{3}|S\s?(?:220|420|500))\b/;

function gradeFromNotes(
  bars: readonly DraftRow[],
  notes: readonly { readonly row: number; readonly text: string }[],
  standard: Standard,
  guesses: SheetGuess[],
): boolean {
  for (const { row, text } of notes) {
    const found = GRADE_NAME.exec(text)?.[1] ?? GRADE_ABROAD.exec(text)?.[1];
    if (!GRADE_TALK.test(text) && !GRADE_ALONE.test(text)) continue;
    if (found === undefined) continue;
    const grade = gradeNamed(found, standard);
    let given = 0;
    for (const bar of bars) {
      if (bar.grade !== null || (bar.size !== null && bar.size.prefix !== "")) continue;
      bar.grade = grade;
      given += 1;
    }
    if (given > 0) {
      const reason = `the note "${text.slice(0, 60)}" gives the grade ${grade} to ${given} bars that name none`;
      guesses.push({ guess: "grade-from-note", reason, asks: false, row, column: null });
    }
    return true;
  }
  return false;
}

function gradeNamed(typed: string, standard: Standard): string {
  const bare = typed.replace(/[\s.]/g, "").toUpperCase();
  return (
    standard.grades.find(({ name }) => name.replace(/[\s.]/g, "").toUpperCase() === bare)?.name ??
    typed.trim()
  );
}

const SET_MARK = /^(.*\d)[-.]?([a-z])$/;

/** By place the set of each bar of one: 12a and 12b are of the set 12 where two of its letters stand in the table. */
export function setsOf(bars: readonly BarRow[]): ReadonlyMap<number, string> {
  const sets = new Map<string, number[]>();
  bars.forEach(({ mark, member }, place) => {
    if (mark === null || mark.length > 20) return;
    const last = mark.charCodeAt(mark.length - 1);
    if (last < 97 || last > 122) return;
    const stem = SET_MARK.exec(mark)?.[1];
    if (stem === undefined) return;
    const key = `${member ?? ""}\u0000${stem}`;
    const set = sets.get(key);
    if (set === undefined) sets.set(key, [place]);
    else set.push(place);
  });
  const named = new Map<number, string>();
  for (const [key, set] of sets)
    if (set.length > 1) for (const place of set) named.set(place, key.slice(key.indexOf("\u0000") + 1));
  return named;
}

/** By place the bar that a bar gives way to: the latest revision of a member's mark counts; in no order, all do. */
export function laterRevisions(bars: readonly BarRow[]): ReadonlyMap<number, SupersededBy> {
  const later = new Map<number, SupersededBy>();
  const first = bars.find(({ revision }) => revision !== null)?.revision;
  if (first === undefined || !bars.some(({ revision }) => revision !== first)) return later;
  const giveWay = (older: number, { revision }: BarRow): void =>
    void later.set(older, { revision: revision?.trim() ?? "", sheet: null });
  const latest = new Map<string, number>();
  bars.forEach((bar, place) => {
    if (bar.mark === null || bar.struckThrough) return;
    const key = `${bar.member ?? ""}\u0000${markKey(bar.mark, bar.member)}`;
    const other = latest.get(key);
    const known = other === undefined ? undefined : bars[other];
    if (other === undefined || known === undefined) latest.set(key, place);
    else if (isLaterRevision(bar.revision, known.revision)) {
      giveWay(other, bar);
      latest.set(key, place);
    } else if (isLaterRevision(known.revision, bar.revision)) giveWay(place, known);
  });
  return later;
}

function tellFormats(
  sheet: Sheet,
  bars: readonly DraftRow[],
  guesses: SheetGuess[],
  isConfirmed: (code: string, row: number, column: number) => boolean,
): void {
  const hidden: BarRow[] = [];
  const struck: BarRow[] = [];
  const filled: BarRow[] = [];
  const fills = new Set<string>();
  const tables = new Set<TableReading>();
  for (const bar of bars) {
    tables.add(bar.table);
    if (bar.hidden) hidden.push(bar);
    if (bar.struckThrough) struck.push(bar);
    if (bar.fill !== null && bar.fill !== undefined) {
      filled.push(bar);
      fills.add(bar.fill);
    }
  }
  const tell = (guess: SheetGuess["guess"], reason: string, asks: boolean): void => {
    guesses.push({ guess, reason, asks: asks && !isConfirmed(guess, -1, -1), row: null, column: null });
  };
  const say = (of: readonly BarRow[], what: string): string =>
    `${counted(of.length, "bar row")} ${of.length === 1 ? "is" : "are"} ${what} (${placesOf(sheet, of)})`;
  if (hidden.length > 0)
    tell("hidden-rows", `${say(hidden, "hidden")}: read all the same, and marked hidden`, true);
  const columns = hiddenColumnsRead(sheet, { tables: [...tables] });
  if (columns !== null) tell("hidden-columns", columns, false);
  if (struck.length > 0)
    tell("struck-rows", `${say(struck, "struck through")}: taken as deleted, not to be cut`, false);
  if (filled.length > 0 && filled.length < bars.length) {
    const colours = `coloured, ${[...fills].slice(0, 4).join(", ")}`;
    tell("coloured-rows", `${say(filled, colours)}, and the sheet does not say why`, true);
  }
}

const MOST_PLACES = 12;

/** The sheet's own names of the rows, or of the columns where bars stand in columns. */
function placesOf(sheet: Sheet, bars: readonly BarRow[]): string {
  const isTurned = sheet.isTurned === true;
  const rows = [...new Set(bars.map(({ row }) => row))];
  const names = rows
    .slice(0, MOST_PLACES)
    .map((row) => (isTurned ? columnLetters(sheet.top + row) : String(sheet.top + row + 1)));
  const what = isTurned ? "column" : "row";
  const more = rows.length > MOST_PLACES ? ` and ${rows.length - MOST_PLACES} more` : "";
  return `${what}${rows.length === 1 ? "" : "s"} ${names.join(", ")}${more}`;
}

/** The largest step that at least 95 % of the typed lengths keep, mm. */
export function lengthStep(bars: readonly BarRow[]): number | null {
  const lengths: number[] = [];
  for (const { length } of bars) {
    if (length !== null && length > 0) lengths.push(length);
    if (lengths.length >= 500) break;
  }
  if (lengths.length < 5) return null;
  for (const step of STEPS) {
    const kept = lengths.filter(
      (length) => Math.abs(length / step - Math.round(length / step)) < 1e-6,
    ).length;
    if (kept >= lengths.length * 0.95) return step;
  }
  return null;
}
