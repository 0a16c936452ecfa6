import { isRefusal, type Refusal, refusalText } from "../units/refusal";
import { TRIAL_LIMITS } from "./calibration.data";
import type { BarForm, Trial } from "./trial";
import type { TrialProblem } from "./trial-problem";
import * as say from "./trial-problem";

/** A cell of a trial log: a value, blank as null, or a host's error value as an object. */
export type TrialCell = string | number | boolean | null | object;

/** How the standard in force reads what stands in a log. */
export interface TrialLogReader {
  readSize(typed: string | number): { readonly diameter: number; readonly prefix: string } | Refusal;
  /** the grade and its nominal yield, MPa, from the grade's cell or the size's letter */
  readGrade(typed: string | null, prefix: string): { readonly name: string | null; readonly yield: number };
  /** mm; null for what is no length. `unit` is the header's own, null where it names none */
  readLength(typed: string | number, unit: "mm" | "in" | null): number | null;
}

export interface TrialReading {
  readonly trials: readonly Trial[];
  readonly problems: readonly TrialProblem[];
}

type TrialColumn = "machine" | "size" | "former" | "grade" | "form" | "heat" | "date" | "bentTo" | "released";

const WORDS: readonly (readonly [TrialColumn, RegExp])[] = [
  ["bentTo", /\b(bent|bend) to\b/],
  ["released", /\breleased\b/],
  ["former", /\b(former|mandrel)\b/],
  ["machine", /\b(machine|bender)\b/],
  ["grade", /\bgrade\b/],
  ["heat", /\b(heat|cast)\b/],
  ["date", /\bdate\b/],
  ["form", /^(form|bar or coil|bar coil|supplied as)\b/],
  ["size", /\b(size|dia|diameter)\b/],
];
const NEEDED: readonly TrialColumn[] = ["size", "former", "bentTo", "released"];
const NAMES: Readonly<Record<TrialColumn, string>> = {
  machine: "machine",
  size: "size",
  former: "former",
  grade: "grade",
  form: "form",
  heat: "heat",
  date: "date",
  bentTo: "bent to",
  released: "released",
};

/**
 * The trials of a log, a header row with one trial a row below it, recognised by the header's words.
 * Angles are bend angles. A row that cannot be right is rejected, one that could be meant two ways is
 * asked about, and each is said with its row; blank rows are passed over. Refuses a block without a header.
 *
 * @example
 * readTrials([["size", "former", "bent to", "released"], ["H16", 64, 90, 82]], reader);
 */
export function readTrials(
  cells: readonly (readonly TrialCell[])[],
  reader: TrialLogReader,
): TrialReading | Refusal {
  const header = findHeader(cells);
  if (header === null) {
    return say.trialHeaderNotFound({ words: "size, former, grade, bent to, released" });
  }
  const trials: Trial[] = [];
  const problems: TrialProblem[] = [];
  const seen = new Map<string, number>();
  for (let row = header.row + 1; row < cells.length; row += 1) {
    const line = cells[row] ?? [];
    if (line.every(isBlank)) continue;
    const found = readRow(line, row, header, reader);
    if (isProblem(found)) {
      problems.push(found);
      continue;
    }
    const first = seen.get(rowKey(found));
    if (first !== undefined) {
      problems.push({
        row,
        outcome: "rejected",
        reason: say.trialDuplicate({ row: row + 1, first: first + 1 }),
      });
      continue;
    }
    seen.set(rowKey(found), row);
    trials.push(found);
  }
  return { trials, problems };
}

interface Header {
  readonly row: number;
  readonly columns: ReadonlyMap<TrialColumn, number>;
  readonly formerUnit: "mm" | "in" | null;
}

/** The header row of a trial log, by its words; null where the block has none. */
export function findHeader(cells: readonly (readonly TrialCell[])[]): Header | null {
  for (let row = 0; row < cells.length; row += 1) {
    const columns = new Map<TrialColumn, number>();
    let formerUnit: Header["formerUnit"] = null;
    (cells[row] ?? []).forEach((cell, column) => {
      if (typeof cell !== "string") return;
      const words = cell
        .toLowerCase()
        .replace(/[^a-z]+/g, " ")
        .trim();
      const kind = WORDS.find(([name, pattern]) => !columns.has(name) && pattern.test(words))?.[0];
      if (kind === undefined) return;
      columns.set(kind, column);
      if (kind === "former") formerUnit = unitWord(words);
    });
    if (NEEDED.every((kind) => columns.has(kind))) return { row, columns, formerUnit };
  }
  return null;
}

function unitWord(words: string): "mm" | "in" | null {
  if (/\bmm\b/.test(words)) return "mm";
  return /\b(in|inch|inches)\b/.test(words) ? "in" : null;
}

function readRow(
  line: readonly TrialCell[],
  row: number,
  header: Header,
  reader: TrialLogReader,
): Trial | TrialProblem {
  const cell = (kind: TrialColumn): TrialCell => line[header.columns.get(kind) ?? -1] ?? null;
  const text = (kind: TrialColumn): string | null => textOf(cell(kind));
  const unread = (kind: TrialColumn): TrialProblem =>
    rejected(row, say.trialCellUnread, {
      column: NAMES[kind],
      typed: shown(cell(kind)),
    });

  const sizeCell = cell("size");
  if (typeof sizeCell !== "string" && typeof sizeCell !== "number") return unread("size");
  if (isBlank(sizeCell)) return unread("size");
  const size = reader.readSize(sizeCell);
  if (isRefusal(size)) return rejected(row, say.trialSizeUnread, { reason: refusalText(size) });

  const formerCell = cell("former");
  const former = isReadable(formerCell) ? reader.readLength(formerCell, header.formerUnit) : null;
  if (former === null) return unread("former");
  if (former <= 0) return rejected(row, say.trialFormerZero, { former: shown(formerCell) });

  const bentTo = angleOf(cell("bentTo"));
  if (bentTo === null) return unread("bentTo");
  const released = angleOf(cell("released"));
  if (released === null) return unread("released");
  const wrong = judgeAngles(row, bentTo, released);
  if (wrong !== null) return wrong;

  const grade = reader.readGrade(text("grade"), size.prefix);
  return {
    row,
    machine: text("machine"),
    size: String(sizeCell).trim(),
    diameter: size.diameter,
    former,
    grade: grade.name,
    yield: grade.yield,
    form: formOf(text("form")),
    heat: text("heat"),
    date: text("date"),
    bentTo,
    released,
  };
}

function judgeAngles(row: number, bentTo: number, released: number): TrialProblem | null {
  const limits = TRIAL_LIMITS.value;
  if (isUsual(bentTo, released)) return null;
  // 180 less the angle between the legs is the bend angle: does the row make sense that way round?
  if (isUsual(bentTo, 180 - released)) {
    return released > bentTo ? asksAbove(row, bentTo, released) : asks(row, "released", released);
  }
  if (bentTo < 180 && isUsual(180 - bentTo, released)) return asks(row, "bent to", bentTo);
  if (bentTo < limits.leastBentTo)
    return rejected(row, say.trialBentToSmall, { bentTo, least: limits.leastBentTo });
  if (bentTo > limits.largestBentTo)
    return rejected(row, say.trialBentToLarge, { bentTo, most: limits.largestBentTo });
  if (released < 0) return rejected(row, say.trialReleasedNegative, { released });
  if (released > bentTo) return rejected(row, say.trialReleasedAbove, { bentTo, released });
  return rejected(row, say.trialSpringbackLarge, {
    bentTo,
    released,
    share: Math.round(((bentTo - released) / bentTo) * 100),
    most: limits.largestSpringback * 100,
  });
}

function isUsual(bentTo: number, released: number): boolean {
  const limits = TRIAL_LIMITS.value;
  if (bentTo < limits.leastBentTo || bentTo > limits.largestBentTo || released < 0) return false;
  if (released > bentTo + limits.releasedAbove) return false;
  return bentTo - released <= limits.largestSpringback * bentTo;
}

function asks(row: number, column: string, typed: number): TrialProblem {
  const reason = say.trialIncludedAngle({ row: row + 1, column, typed, bend: 180 - typed });
  return { row, outcome: "asks", reason };
}

function asksAbove(row: number, bentTo: number, typed: number): TrialProblem {
  const reason = say.trialReleasedAboveAsks({ row: row + 1, typed, bentTo, bend: 180 - typed });
  return { row, outcome: "asks", reason };
}

type ValuesOf<Name extends string> = Readonly<Record<Name, string | number>>;

function rejected<Name extends string = never>(
  row: number,
  make: (values: ValuesOf<Name | "row">) => Refusal,
  values: ValuesOf<Name>,
): TrialProblem {
  return { row, outcome: "rejected", reason: make({ ...values, row: row + 1 }) };
}

function isProblem(found: Trial | TrialProblem): found is TrialProblem {
  return "outcome" in found;
}

function rowKey(trial: Trial): string {
  const { row: _, ...rest } = trial;
  return JSON.stringify(rest);
}

function isBlank(cell: TrialCell): boolean {
  return cell === null || (typeof cell === "string" && cell.trim() === "");
}

function isReadable(cell: TrialCell): cell is string | number {
  return !isBlank(cell) && (typeof cell === "string" || typeof cell === "number");
}

function textOf(cell: TrialCell): string | null {
  return isReadable(cell) ? String(cell).trim() : null;
}

function angleOf(cell: TrialCell): number | null {
  if (typeof cell === "number") return Number.isFinite(cell) ? cell : null;
  if (typeof cell !== "string") return null;
  const typed = /^\s*(-?\d+(?:[.,]\d+)?)\s*(?:°|deg|degrees)?\s*$/i.exec(cell)?.[1];
  return typed === undefined ? null : Number(typed.replace(",", "."));
}

function formOf(text: string | null): BarForm | null {
  if (text === null) return null;
  if (/coil|decoil/i.test(text)) return "coil";
  return /bar|straight/i.test(text) ? "bar" : null;
}

function shown(cell: TrialCell): string {
  if (isBlank(cell)) return "(blank)";
  if (typeof cell === "object" && cell !== null) return "error" in cell ? String(cell.error) : "(error)";
  return `"${String(cell)}"`;
}
