import type { BarRow, ScheduleReading, SupersededBy } from "../bar-row";
import { rowWithoutNoise } from "../cells/without-noise";
import type { Cell, Sheet } from "../sheet";
import { type Carried, isSameCarried } from "./carried";
import { laterRevisions, setsOf } from "./finish-reading";
import { BarRowReader } from "./read-bar-row";
import type { Resumable } from "./resumable";
import type { DraftRow } from "./row-draft";
import { isSameBar } from "./same-bar";
import { plainBar } from "./stored-bar";
import { barsOfTitle } from "./title-facts";

const NO_CELLS: readonly Cell[] = [];

/** Bars of which a few were read again. */
export interface RereadBars {
  readonly bars: readonly BarRow[];
  /** places of those whose row changed, and of those that read otherwise */
  readonly changed: readonly number[];
  readonly carriedTo: readonly Carried[];
}

/**
 * The bars after rows of them changed, from place `first` to `last`. What a changed row carries down is followed
 * as far as it reaches. Null where it reaches a row that is no bar, or what only the whole sheet can say.
 */
export function rereadBars(
  before: ScheduleReading,
  kept: Resumable,
  sheet: Sheet,
  first: number,
  last: number,
): RereadBars | null {
  let isMarkAsked = false;
  const barOfMark = (): null => {
    isMarkAsked = true;
    return null;
  };
  const source = { isConfirmed: kept.isConfirmed, barOfMark };
  const { layout } = kept.decision.settled;
  const now = new BarRowReader(sheet, kept.standard, source, layout);
  const then = new BarRowReader(kept.sheet, kept.standard, source, layout);
  const finish = finisher(before, kept);
  const bars: DraftRow[] = before.bars.slice();
  const carriedTo = kept.carriedTo.slice();
  const changed: number[] = [];
  let above = before.bars[first - 1] ?? null;
  let carried = kept.carriedTo[first] as Carried;
  let isDifferent = false;
  for (let index = first; index < bars.length; index += 1) {
    const old = before.bars[index] as BarRow;
    const wasCarried = kept.carriedTo[index] as Carried;
    // one row more than differs: it may repeat what stands above it
    if (index > last && !isDifferent && isSameCarried(carried, wasCarried)) break;
    const oldAbove = before.bars[index - 1] ?? null;
    const cells = rowWithoutNoise(sheet.rowCells?.(old.row) ?? NO_CELLS);
    const isOfMember = index > last && above?.member === oldAbove?.member;
    if (!isOfMember && !now.signs.isPlainBar(cells, above?.member)) return null;
    const was = then.read(
      rowWithoutNoise(kept.sheet.rowCells?.(old.row) ?? NO_CELLS),
      old.row,
      wasCarried,
      oldAbove,
    );
    const is = now.read(cells, old.row, carried, above);
    isDifferent = !isSameBar(is.bar, was.bar);
    // what was typed may be judged where it reads alike
    if (isDifferent || index <= last) {
      if (!finish(is.bar, was.bar, old)) return null;
      bars[index] = is.bar;
      changed.push(index);
    }
    carriedTo[index] = carried;
    carried = is.carried;
    above = bars[index] as BarRow;
    if (isNextRowABar(before, index)) continue;
    // what stands between goes by the bar above it and by what is carried
    if (above.member !== old.member || !isSameCarried(carried, was.carried)) return null;
    carried = kept.carriedTo[index + 1] ?? carried;
  }
  if (isMarkAsked) return null;
  const finished = withWholeSheet(before.bars, bars, changed);
  return finished === null ? null : { ...finished, carriedTo };
}

/** Blank rows alone stand before the next bar. */
function isNextRowABar({ bars, rowClasses }: ScheduleReading, index: number): boolean {
  const end = bars[index + 1]?.row ?? rowClasses.length;
  for (let row = (bars[index] as BarRow).row + 1; row < end; row += 1)
    if (rowClasses[row] !== "blank") return false;
  return true;
}

/** Gives a bar what title, name and notes of the sheet gave it before; false where they may give otherwise now. */
function finisher({ guesses = [], titleFacts, tables }: ScheduleReading, { isGradeNoted }: Resumable) {
  const title = barsOfTitle(titleFacts, tables);
  const isNamedBySheet = guesses.some(({ guess }) => guess === "member-from-sheet");
  return (bar: DraftRow, was: BarRow, old: BarRow): boolean => {
    // a note below the bar was put to its remark
    if (was.remark !== old.remark) return false;
    if (bar.hidden !== old.hidden || bar.struckThrough !== old.struckThrough || bar.fill !== old.fill)
      return false;
    const isMemberGiven = was.member === null && (old.member !== null || isNamedBySheet);
    if (isMemberGiven ? bar.member !== null : bar.member === null && was.member !== null) return false;
    if (isMemberGiven) bar.member = old.member;
    bar.pour ??= title.pour;
    if (!isGradeNoted) return true;
    // how many bars the note gives a grade is told
    if (bar.grade !== was.grade || bar.size?.prefix !== was.size?.prefix) return false;
    bar.grade = old.grade;
    return true;
  };
}

/** Sets of marks and revisions, which bars make of one another; null where a bar no longer gives way. */
function withWholeSheet(
  before: readonly BarRow[],
  bars: DraftRow[],
  changed: readonly number[],
): Pick<RereadBars, "bars" | "changed"> | null {
  const isApart = changed.every((place) => isNamedAlike(bars[place] as BarRow, before[place] as BarRow));
  if (isApart) {
    for (const place of changed) {
      const { setMark, supersededBy } = before[place] as BarRow;
      giveWholeSheet(bars[place] as DraftRow, setMark ?? null, supersededBy ?? null);
    }
    return { bars, changed };
  }
  const members = new Set(changed.flatMap((place) => [bars[place]?.member, before[place]?.member]));
  // marks of another member make no set with these, and give way to none of them
  const places = placesOf(bars, members);
  const theirs = places.map((place) => bars[place] as DraftRow);
  const [sets, later] = [setsOf(theirs), laterRevisions(theirs)];
  const differing = new Set(changed);
  for (const [at, place] of places.entries()) {
    const [bar, set, by] = [theirs[at] as DraftRow, sets.get(at) ?? null, later.get(at) ?? null];
    const isNew = differing.has(place);
    if (!isNew && set === (bar.setMark ?? null) && by?.revision === bar.supersededBy?.revision) continue;
    // whether its own remark says so as well is not known
    if (!isNew && by === null && bar.supersededBy != null) return null;
    if (!isNew) bars[place] = plainBar(bar);
    giveWholeSheet(bars[place] as DraftRow, set, by);
    differing.add(place);
  }
  return { bars, changed: [...differing].sort((one, other) => one - other) };
}

function placesOf(
  bars: readonly BarRow[],
  members: ReadonlySet<string | null | undefined>,
): readonly number[] {
  const places: number[] = [];
  for (let place = 0; place < bars.length; place += 1)
    if (members.has((bars[place] as BarRow).member)) places.push(place);
  return places;
}

function isNamedAlike(bar: BarRow, old: BarRow): boolean {
  return bar.mark === old.mark && bar.member === old.member && bar.revision === old.revision;
}

function giveWholeSheet(bar: DraftRow, setMark: string | null, supersededBy: SupersededBy | null): void {
  bar.setMark = setMark;
  bar.supersededBy = supersededBy;
  if (supersededBy !== null) bar.superseded = true;
}
