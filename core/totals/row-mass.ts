import { isLapped } from "../audit/lap-said";
import { AnswersOfBars } from "../bar/answers-of-bars";
import { barCount } from "../bar/bar-count";
import { BarFacts } from "../bar/bar-facts";
import { type BarLength, barLength } from "../bar/bar-length";
import { isMassOfBars, perMetreToWeigh, rowMassOf } from "../bar/bar-mass";
import { lengthsMeant } from "../bar/lengths-meant";
import { metresAlone } from "../bar/metres-alone";
import { perMetreOf } from "../bar/row-identities";
import { rowsTwice } from "../bar/rows-twice";
import { offRuns } from "../bar/run-habit";
import { SheetFacts } from "../bar/sheet-facts";
import { sizeName } from "../bar/size-name";
import type { BarRow, ColumnKind, ScheduleReading } from "../schedule/bar-row";
import { cellAddress } from "../schedule/cell-address";
import { massOfRoundSteel, massPerMetreOf, sizeElsewhere } from "../schedule/cells/size-elsewhere";
import type { Sheet } from "../schedule/sheet";
import type { Standard } from "../standards/port";
import { isRefusal, refusalText } from "../units/refusal";

/** What a bar row weighs. */
export interface RowWeight {
  /** kg */
  readonly mass: number;
  readonly from: "cut length" | "typed length" | "typed mass" | "typed total length" | "metres alone";
  /** mm of one bar */
  readonly cutLength: number | null;
  readonly count: number | null;
  /** kg by another figure of the row, where it makes something else of it; none where it repeats a row above */
  readonly otherwise: {
    readonly mass: number;
    readonly by:
      | "total length"
      | "mass"
      | "members times each"
      | "dimensions"
      | "repeat"
      | "run and spacing"
      | "length that a bar may have"
      | "column by size"
      | "size as round steel";
  } | null;
  /** kg by the length that is cut and loaded, where that is another than the one weighed */
  readonly asTyped: number | null;
}

/** Mass of one bar row and what it rests on. */
export interface RowMass extends RowWeight {
  readonly pour: string | null;
  readonly size: string;
  /** address of the row's first cell of the two */
  readonly cell: string;
}

/** A bar row that is in no total. */
export interface NotInTotal {
  readonly sheet: string;
  /** the sheet's own row number, from 1 */
  readonly row: number;
  /** address of what to look at */
  readonly cell: string;
  readonly why: string;
}

export type RowWeighed = RowMass | NotInTotal;

export function isInTotal<Weight extends RowWeight>(row: Weight | NotInTotal): row is Weight {
  return "mass" in row;
}

/**
 * Mass of each bar row, kg, to weigh: count, mass per metre and the cut length of its shape; the typed
 * length where the shape gives none; the typed mass where neither does, or where the list counts no bars. A row that none of them gives a mass
 * above nought, or whose dimensions contradict each other, is in no total and says why.
 */
export function weighRows(sheet: Sheet, reading: ScheduleReading, standard: Standard): RowWeighed[] {
  return Array.from(weighBars(factsToWeigh(sheet, reading, standard)), (row, place) =>
    isInTotal(row) ? { ...row, ...namesOfWeight(sheet, reading.bars[place] as BarRow) } : row,
  );
}

/** What names a row's mass: pour, size and cell. */
export function namesOfWeight(sheet: Sheet, row: BarRow): Pick<RowMass, "pour" | "size" | "cell"> {
  return {
    pour: row.pour,
    size: sizeName(row),
    cell: cellAddress(sheet, row.row, columnOf(row, [])),
  };
}

/** What `weighRows` says of the bars of a sheet, without their names, one by one. */
export function* weighBars(sheet: SheetFacts): Generator<RowWeight | NotInTotal> {
  const repeats = new Set(rowsTwice(sheet).map(({ again }) => again));
  const runs = new Map(offRuns(sheet).map(({ facts, expected, count }) => [facts, expected / count]));
  for (const facts of sheet.bars) {
    const row = weightOf(facts);
    if (!isInTotal(row) || row.otherwise !== null) yield row;
    else if (repeats.has(facts)) yield { ...row, otherwise: { mass: 0, by: "repeat" } };
    else {
      const times = runs.get(facts) ?? 1;
      const isFar = times > MOST_OFF || times < 1 / MOST_OFF;
      yield isFar ? { ...row, otherwise: { mass: row.mass * times, by: "run and spacing" } } : row;
    }
  }
}

/** The facts of a sheet's bars, to be weighed. */
export function factsToWeigh(sheet: Sheet, reading: ScheduleReading, standard: Standard): SheetFacts {
  const sheetFacts = new SheetFacts(sheet, reading);
  const bars = reading.bars.map((row, place) => new BarFacts(row, sheetFacts, standard, place));
  sheetFacts.answers = new AnswersOfBars(bars);
  return sheetFacts;
}

/** kg of each bar row, one by one; null of one that is in no total. */
export function* massesOfBars(sheet: SheetFacts): Generator<number | null> {
  for (const facts of sheet.bars) yield massOfBar(facts);
}

/** What `weightOf` says, without holding it against the row's other figures. */
function massOfBar(facts: BarFacts): number | null {
  const made = facts.row.superseded === true ? null : rowMassOf(facts, barLength(facts, "to weigh"));
  if (made !== null && !isRefusal(made)) return made;
  const row = weightOf(facts);
  return isInTotal(row) ? row.mass : null;
}

function weightOf(facts: BarFacts): RowWeight | NotInTotal {
  const { row, standard } = facts;
  if (row.superseded === true)
    return { ...placeOf(facts.sheet.sheet, facts.row, ["mark", "size"]), why: supersededWords(row) };
  const length = barLength(facts, "to weigh");
  const count = barCount(facts);
  const made = {
    cutLength: isRefusal(length) ? null : length.length,
    count: isRefusal(count) ? null : count,
  };
  const why = rowMassOf(facts, length);
  if (!isRefusal(why)) {
    const isComputed = !isRefusal(length) && length.from === "computed";
    const otherwise = weighedOtherwise(facts, why, !isComputed);
    const asTyped = isComputed ? massAsTyped(facts, length, why) : null;
    return { mass: why, from: isComputed ? "cut length" : "typed length", ...made, otherwise, asTyped };
  }
  const metres = metresAlone(facts);
  const perMetre = metres === null ? null : perMetreToWeigh(facts);
  if (metres !== null && perMetre !== null) {
    const mass = (metres / MM_PER_METRE) * perMetre;
    return {
      mass,
      from: "metres alone",
      ...made,
      otherwise: weighedOtherwise(facts, mass, false),
      asTyped: null,
    };
  }
  // a bar that is not counted cannot be cut, so it is not weighed either
  const isUncounted = why.code === "bar-count-missing" && COUNTS.some((kind) => facts.has(kind));
  if (row.mass !== null && isMassOfBars(row.mass) && !FINAL.has(why.code) && !isUncounted)
    return {
      mass: row.mass,
      from: "typed mass",
      ...made,
      otherwise: ofSizeTyped(facts, row.mass),
      asTyped: null,
    };
  const isOpen = LENGTH_WANTING.has(why.code) && isAsked(row);
  const isUnused = isOpen || why.code === "length-open";
  const inAll = isUnused && !isUncounted ? massOfTotalLength(facts) : null;
  if (inAll !== null)
    return { mass: inAll, from: "typed total length", ...made, otherwise: null, asTyped: null };
  const words = isOpen ? LENGTH_OPEN : refusalText(why, standard.unit);
  return { ...placeOf(facts.sheet.sheet, facts.row, LOOK_AT[why.code] ?? []), why: words };
}

/** kg of the length that all bars of the row have together, where that of one is not used. */
function massOfTotalLength(facts: BarFacts): number | null {
  const { totalLength = null, problems } = facts.row;
  const perMetre = perMetreToWeigh(facts);
  const isUnread = problems?.some(({ field }) => field === "totalLength") === true;
  if (totalLength === null || !(totalLength > 0) || perMetre === null || isUnread) return null;
  return (totalLength / MM_PER_METRE) * perMetre;
}

/** A size that no table has, beside a mass that is not that of a round bar of its number: the size or the mass is wrong. */
function ofSizeTyped({ row, count, diameter }: BarFacts, typed: number): RowMass["otherwise"] {
  const number = diameter ?? Number(ONE_NUMBER.exec(row.sizeTyped ?? "")?.[1]?.replace(",", ".") ?? 0);
  const metres = ((row.length ?? 0) / MM_PER_METRE) * (count ?? 0);
  const mass = metres * massOfRoundSteel(number);
  return mass > 0 && (mass / typed > MOST_OFF || typed / mass > MOST_OFF)
    ? { mass, by: "size as round steel" }
    : null;
}

const ONE_NUMBER = /^\D{0,3}(\d{1,2}(?:[.,]\d)?)\D{0,3}$/;

/** kg by the length that is cut; null where it makes no other mass. */
function massAsTyped(facts: BarFacts, weighed: BarLength, mass: number): number | null {
  const toCut = barLength(facts, "to cut");
  if (isRefusal(toCut) || toCut.length === weighed.length) return null;
  const other = rowMassOf(facts, toCut);
  return isRefusal(other) || other === mass ? null : other;
}

const LENGTH_OPEN = "a length is written, but is not used until what is asked of it is answered";

/** A length stands in the row, and a finding on it tells why it is not used. */
function isAsked({ length, problems }: BarFacts["row"]): boolean {
  return length === null && problems?.some(({ field }) => field === "length") === true;
}

/** Why a bar of an older revision, or one that says so itself, is in no total. */
export function supersededWords({ supersededBy }: BarRow): string {
  if (supersededBy == null) return "superseded, as its own remark says";
  const { revision, sheet } = supersededBy;
  return `superseded: revision ${revision} of it${sheet === null ? "" : ` on sheet ${sheet}`} counts`;
}

/** A row that is struck through, in no total. */
export function struckRow(sheet: Sheet, bar: BarRow): NotInTotal {
  return { ...placeOf(sheet, bar, ["mark"]), why: "struck through" };
}

function placeOf(sheet: Sheet, bar: BarRow, lookAt: readonly ColumnKind[]): Omit<NotInTotal, "why"> {
  const at = cellAddress(sheet, bar.row, columnOf(bar, lookAt));
  const own = sheet.isTurned === true ? Number(/\d+$/.exec(at)?.[0]) : sheet.top + bar.row + 1;
  return { sheet: sheet.name, row: own, cell: at };
}

/** a fifth more or less is no rounding and no other table */
const MOST_OFF = 1.2;
/** masses of a size differ by no more from table to table */
const OF_ONE = 0.02;
const MM_PER_METRE = 1000;

/** What the row's own total length or mass make of it, where that is far from number times length. */
function weighedOtherwise(facts: BarFacts, mass: number, isAsTyped: boolean): RowMass["otherwise"] {
  const { totalLength = null, mass: typed, members, each, total } = facts.row;
  const perBar = mass / (facts.count ?? 1);
  const perMetre = perMetreOf(facts);
  const factor = facts.sheet.habits.massFactor ?? 1;
  const ofLength = totalLength === null || perMetre === null ? null : (totalLength / MM_PER_METRE) * perMetre;
  // where each member's bars are counted the row may sum those of one
  const isOfOne = (other: number) => total === null && Math.abs(mass / (other * (members ?? 1)) - 1) < OF_ONE;
  const isFar = (other: number | null): other is number =>
    other !== null && other > 0 && (mass / other > MOST_OFF || other / mass > MOST_OFF) && !isOfOne(other);
  if (isFar(ofLength)) return { mass: ofLength, by: "total length" };
  const ofMass = typed === null ? null : typed / factor;
  if (isFar(ofMass)) return { mass: ofMass, by: "mass" };
  const ofColumn = massUnderHead(facts, mass);
  if (ofColumn !== null) return { mass: ofColumn, by: "column by size" };
  const ofEach = members === null || each === null ? null : perBar * members * each;
  // counts are whole numbers: any other product contradicts the total
  if (ofEach !== null && total !== null && total !== (members ?? 0) * (each ?? 0))
    return { mass: ofEach, by: "members times each" };
  if (isFar(ofEach)) return { mass: ofEach, by: "members times each" };
  if (!isAsTyped) return null;
  const [meant] = isLapped(facts) || facts.sheet.habits.lapsIncluded ? [] : lengthsMeant(facts);
  if (meant !== undefined)
    return { mass: mass * (meant / (facts.row.length ?? meant)), by: "length that a bar may have" };
  const judged = facts.lengthJudgement;
  const cut = judged.kind === "differs" || judged.kind === "slip" ? judged.cut.length : null;
  const length = facts.row.length ?? 0;
  const ofDimensions = cut === null || !(length > 0) ? null : (mass / length) * cut;
  return isFar(ofDimensions) ? { mass: ofDimensions, by: "dimensions" } : null;
}

/** The row's amount stands under the head of another size: its mass by that one. */
function massUnderHead({ row, sheet, standard }: BarFacts, mass: number): number | null {
  const { size, table } = row;
  const own = massPerMetreOf(size);
  const isFilled = (column: number): boolean => sheet.sheet.cell(row.row, column) !== null;
  const [{ size: head } = { size: undefined }, another] = (table.bySize ?? []).filter((one) =>
    isFilled(one.column),
  );
  if (head === undefined || another !== undefined || size === null || own === null) return null;
  const read = standard.readSize(head);
  const named = isRefusal(read) || read.bar === null ? sizeElsewhere(head) : read;
  const other = massPerMetreOf(named);
  // "19" in one table is 19.1 in another
  if (named === null || other === null || Math.abs(named.diameter - size.diameter) < SAME_SIZE) return null;
  return (mass / own) * other;
}

/** mm */
const SAME_SIZE = 0.5;

/** Refusals that a typed mass does not help over. */
const FINAL: ReadonlySet<string> = new Set([
  "dimensions-contradict",
  "length-beyond-reason",
  "length-not-above-nought",
  "bar-count-nought",
  "bar-count-bad",
]);

const LENGTH_WANTING: ReadonlySet<string> = new Set(["length-not-known", "length-not-scheduled"]);

const COUNTS = ["total", "each", "members"] as const;

const LOOK_AT: Readonly<Record<string, readonly ColumnKind[]>> = {
  "length-open": ["length"],
  "dimensions-contradict": ["A", "shape"],
  "length-beyond-reason": ["A", "shape"],
  "bar-size-not-made": ["size"],
  "bar-count-missing": ["total", "each", "members"],
  "bar-count-nought": ["total", "each", "members"],
  "bar-count-bad": ["total", "each", "members"],
};

function columnOf({ table }: BarRow, lookAt: readonly ColumnKind[]): number {
  const kinds = [...lookAt, "length", "shape", "mark", "size"] as const;
  for (const kind of kinds) {
    const column = table.columns.get(kind)?.column;
    if (column !== undefined) return column;
  }
  return table.left ?? 0;
}
