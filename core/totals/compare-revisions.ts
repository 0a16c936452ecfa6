import type { Severity } from "../audit/finding";
import type { BarRow, ColumnKind, ScheduleReading } from "../schedule/bar-row";
import { type Cell, isCellError } from "../schedule/sheet";
import { DIMENSION_LETTERS } from "../standards/dimension-letters";
import { Memo } from "../units/memo";
import { shorten } from "../units/shorten";

/** A cell of the newer schedule that says something else than the older one did. */
export interface ChangedCell {
  readonly field: ColumnKind;
  /** within the newer sheet's used range; null where the column is not there */
  readonly column: number | null;
  readonly before: string | number | null;
  readonly after: string | number | null;
}

/** What became of one bar mark of one member. */
export interface BarChange {
  readonly kind: "added" | "removed" | "changed";
  readonly member: string | null;
  readonly mark: string | null;
  readonly pour: string | null;
  readonly before: BarRow | null;
  readonly after: BarRow | null;
  /** sheet of `after`, or of `before` where the bar was removed */
  readonly sheet: string;
  readonly cells: readonly ChangedCell[];
  /** bars; null where a count could not be read */
  readonly countBefore: number | null;
  readonly countAfter: number | null;
  /** kg; null where a mass could not be worked out */
  readonly massBefore: number | null;
  readonly massAfter: number | null;
  /** Already released for cutting, so steel may have been cut: then `severity` is `unsafe`. */
  readonly released: boolean;
  readonly severity: Severity;
}

export interface PourChange {
  /** null gathers the bars without a pour */
  readonly pour: string | null;
  readonly barsBefore: number;
  readonly barsAfter: number;
  /** kg */
  readonly massBefore: number;
  readonly massAfter: number;
}

export interface RevisionComparison {
  /** released bars first, then in schedule order */
  readonly changes: readonly BarChange[];
  readonly pours: readonly PourChange[];
  readonly unchanged: number;
  /** bars that differ in no cell that could be compared, but hold formulas without a result on one side */
  readonly notCompared: number;
}

export interface ComparisonQuestion {
  readonly before: readonly ScheduleReading[];
  readonly after: readonly ScheduleReading[];
  /** Which schedule a reading is, where marks start again in each of several; all are one where this is not said. */
  scheduleOf?(reading: ScheduleReading): string;
  /** Whether a bar is asked for, as all are where this is not said; one that either revision asks for is told. */
  isAsked?(bar: BarRow): boolean;
  /** kg of all bars of a row; null where it cannot be worked out */
  massOf(bar: BarRow): number | null;
  /** marks released, beyond those that a column of the schedules says are */
  readonly released: ReadonlySet<string>;
}

interface Placed {
  readonly bar: BarRow;
  readonly sheet: string;
}

/**
 * What a newer revision of a schedule changes, bar by bar, matched by mark and member. A mark that
 * stands several times under a member is matched in order. Struck-through and superseded rows are
 * not part of a revision. Steel of a changed bar that was released may be cut already, so it comes first.
 */
export function compareRevisions(question: ComparisonQuestion): RevisionComparison {
  const before = byKey(question.before, question);
  const after = byKey(question.after, question);
  const changes: BarChange[] = [];
  let unchanged = 0;
  let notCompared = 0;
  const isAsked = (...sides: readonly (Placed | null)[]): boolean =>
    sides.some((side) => side !== null && (question.isAsked?.(side.bar) ?? true));
  for (const [key, news] of after) {
    const olds = before.get(key) ?? [];
    news.forEach((placed, place) => {
      const old = olds[place] ?? null;
      if (!isAsked(old, placed)) return;
      const change = barChange(old, placed, question);
      if (change === null && [old, placed].some((one) => one !== null && uncalculated(one.bar).length > 0))
        notCompared += 1;
      else if (change === null) unchanged += 1;
      else changes.push(change);
    });
  }
  for (const [key, olds] of before) {
    for (const placed of olds.slice(after.get(key)?.length ?? 0).filter((one) => isAsked(one)))
      changes.push(barChange(placed, null, question)!);
  }
  const releasedFirst = [...changes.filter((c) => c.released), ...changes.filter((c) => !c.released)];
  return {
    changes: releasedFirst,
    pours: pourChanges([before, after], question),
    unchanged,
    notCompared,
  };
}

function byKey(
  readings: readonly ScheduleReading[],
  { scheduleOf }: Pick<ComparisonQuestion, "scheduleOf">,
): Map<string, Placed[]> {
  const found = new Map<string, Placed[]>();
  for (const reading of readings) {
    const schedule = JSON.stringify(scheduleOf?.(reading) ?? "");
    for (const bar of reading.bars) {
      if (bar.struckThrough || bar.superseded === true) continue;
      const key = `${schedule}\n${normal(bar.member)}\n${normal(bar.mark)}`;
      const placed = found.get(key);
      if (placed === undefined) found.set(key, [{ bar, sheet: reading.sheet }]);
      else placed.push({ bar, sheet: reading.sheet });
    }
  }
  return found;
}

/** "01", "1" and " 1" are one mark; so are "B1" and "b1". */
function normal(text: string | null): string {
  return text === null ? "" : normals.of(text, () => normalOf(text));
}

const normals = new Memo<string, string>();

function normalOf(text: string): string {
  const bare = text.trim().toLowerCase().replace(/\s+/g, " ");
  return /^\d+$/.test(bare) ? bare.replace(/^0+(?=\d)/, "") : bare;
}

function barChange(
  before: Placed | null,
  after: Placed | null,
  question: ComparisonQuestion,
): BarChange | null {
  const kind = before === null ? "added" : after === null ? "removed" : "changed";
  const cells = before !== null && after !== null ? changedCells(before.bar, after.bar) : [];
  if (kind === "changed" && cells.length === 0) return null;
  const named = (after ?? before)!;
  const wasReleased = [before, after].some(
    (placed) => placed !== null && isReleased(placed.bar, question.released),
  );
  return {
    kind,
    member: named.bar.member,
    mark: named.bar.mark,
    pour: named.bar.pour,
    before: before?.bar ?? null,
    after: after?.bar ?? null,
    sheet: named.sheet,
    cells,
    countBefore: before === null ? 0 : countOf(before.bar),
    countAfter: after === null ? 0 : countOf(after.bar),
    massBefore: before === null ? 0 : question.massOf(before.bar),
    massAfter: after === null ? 0 : question.massOf(after.bar),
    released: wasReleased && kind !== "added",
    severity: wasReleased && kind !== "added" ? "unsafe" : "note",
  };
}

/** A word for no in the released column, or a blank, is not released. */
function isReleased(bar: BarRow, released: ReadonlySet<string>): boolean {
  if (bar.mark !== null && [...released].some((mark) => normal(mark) === normal(bar.mark))) return true;
  return bar.released !== null && !/^(|-|no?|not yet|hold|false|0)$/i.test(bar.released.trim());
}

function countOf(bar: BarRow): number | null {
  if (bar.total !== null) return bar.total;
  return bar.members !== null && bar.each !== null ? bar.members * bar.each : (bar.each ?? null);
}

const FIELDS = [
  "grade",
  "shape",
  "members",
  "each",
  "total",
  "length",
  "former",
  "coating",
  "pour",
  "remark",
] as const satisfies readonly ColumnKind[];

const COMPARED: ReadonlySet<ColumnKind> = new Set(["size", "drawing", ...FIELDS, ...DIMENSION_LETTERS, "R"]);

/** Cells that move steel or say what else is done to it; a revision letter alone is no change of a bar. */
function changedCells(before: BarRow, after: BarRow): ChangedCell[] {
  const cells: ChangedCell[] = [];
  const waiting = [...uncalculated(before), ...uncalculated(after)];
  const compare = (field: ColumnKind, old: string | number | null, now: string | number | null): void => {
    if (old === now || normalValue(old) === normalValue(now) || waiting.includes(field)) return;
    cells.push({ field, column: after.table.columns.get(field)?.column ?? null, before: old, after: now });
  };
  if (before.size !== after.size || before.size === null) compare("size", sizeText(before), sizeText(after));
  for (const field of FIELDS) compare(field, asked(before, field), asked(after, field));
  const [drawnOn, drawing] = [before.drawing ?? null, after.drawing ?? null];
  // a column that one of the two lists does not have changes no bar
  if (drawnOn !== null && drawing !== null) compare("drawing", drawnOn, drawing);
  for (let i = 0; i < Math.max(before.dims.length, after.dims.length); i += 1) {
    const letter = DIMENSION_LETTERS[i] ?? "K";
    compare(letter, before.dims[i] ?? unread(before, letter), after.dims[i] ?? unread(after, letter));
  }
  compare("R", before.radius ?? unread(before, "R"), after.radius ?? unread(after, "R"));
  return cells;
}

function asked(bar: BarRow, field: (typeof FIELDS)[number]): string | number | null {
  const isProduct = field === "total" && bar.total === null && bar.members !== null && bar.each !== null;
  const product = isProduct && unread(bar, field) !== null ? countOf(bar) : null;
  return bar[field] ?? product ?? unread(bar, field);
}

/** What is typed where nothing could be read: such a cell is not blank. */
function unread(bar: BarRow, field: ColumnKind): string | null {
  const problem = bar.problems?.find((one) => one.field === field && one.outcome === "unread");
  return problem === undefined ? null : `"${shorten(wordsOf(problem.typed), MOST_QUOTED)}" (not read)`;
}

const wordsOf = (typed: Cell): string => (isCellError(typed) ? typed.error : String(typed ?? ""));

const MOST_QUOTED = 40;

/** Fields that hold a formula which no program has calculated: what they say is not known. */
function uncalculated(bar: BarRow): readonly ColumnKind[] {
  if (bar.problems === null) return [];
  const isCounted = bar.members !== null && bar.each !== null;
  const waiting = bar.problems.filter(({ typed }) => isCellError(typed) && typed.uncalculated === true);
  // a total that is not worked out yet is what members and bars in each make
  return waiting
    .map(({ field }) => field)
    .filter((field) => COMPARED.has(field) && !(field === "total" && isCounted));
}

const normalValue = (value: string | number | null): string | number =>
  typeof value === "string" ? normal(value) : (value ?? "");

function sizeText(bar: BarRow): string | null {
  return bar.size === null ? bar.sizeTyped : `${bar.size.prefix}${bar.size.bar?.size ?? bar.size.diameter}`;
}

/** What is said of bars that could not be compared; null where all could. */
export function notComparedWords(bars: number): string | null {
  if (bars === 0) return null;
  const say = bars === 1 ? "1 bar holds formulas" : `${bars} bars hold formulas`;
  const were = bars === 1 ? "was" : "were";
  return `${say} without a result and ${were} not compared: open the workbook in a spreadsheet program, save it, and compare again`;
}

function pourChanges(
  sides: readonly ReadonlyMap<string, readonly Placed[]>[],
  question: ComparisonQuestion,
): PourChange[] {
  const pours = new Map<string | null, { bars: [number, number]; mass: [number, number] }>();
  sides.forEach((byMark, side) => {
    for (const alike of byMark.values()) {
      for (const { bar } of alike) {
        if (question.isAsked?.(bar) === false) continue;
        let sums = pours.get(bar.pour);
        if (sums === undefined) {
          sums = { bars: [0, 0], mass: [0, 0] };
          pours.set(bar.pour, sums);
        }
        sums.bars[side as 0 | 1] += countOf(bar) ?? 0;
        sums.mass[side as 0 | 1] += question.massOf(bar) ?? 0;
      }
    }
  });
  return [...pours].map(([pour, { bars, mass }]) => ({
    pour,
    barsBefore: bars[0],
    barsAfter: bars[1],
    massBefore: mass[0],
    massAfter: mass[1],
  }));
}
