import type { BarFacts } from "../bar/bar-facts";
import { offLegs } from "../bar/legs-in-words";
import { offLengthHabit } from "../bar/length-habits";
import { brokenBy, perMetreOf } from "../bar/row-identities";
import type { SheetFacts } from "../bar/sheet-facts";
import { cellAddress } from "../schedule/cell-address";
import type { Standard } from "../standards/port";
import type { Finding } from "./finding";
import { looseSums } from "./loose-sums";
import { figuresOfDigits, otherFigures } from "./other-figures";
import sumLineDiffers from "./rules/sum-line-differs";
import summaryDiffers from "./rules/summary-differs";
import { massMade } from "./sum-lines";
import { wrongGrandTotals, wrongLines } from "./wrong-lines";
import { wrongSizedSums, wrongTotals } from "./wrong-sized-sums";
import type { SumWay, WrongSum } from "./wrong-sum";

const OF_SUMS: ReadonlySet<string> = new Set([sumLineDiffers.code, summaryDiffers.code]);
/** rows put right at once that are tried for one sum */
const MOST_TOGETHER = 3;
const MOST_TOLD = 8;

/** One sheet's facts and what is told of it. */
export interface ToldSheet {
  readonly facts: SheetFacts;
  readonly told: readonly Finding[];
}

/**
 * What is told of each sheet, with the sums that follow from it as notes: one that comes out once rows that are told of
 * are put right, and one that is off by as much as a sum told before it.
 */
export function withWhatFollows(
  sheets: readonly ToldSheet[],
  standard: Standard,
): readonly (readonly Finding[])[] {
  if (!sheets.some(({ told }) => told.some(isOfSum))) return sheets.map(({ told }) => told);
  const toldBars = new Map<BarFacts, ToldBar>();
  for (const { facts, told } of sheets) for (const one of barsTold(facts, told)) toldBars.set(one.facts, one);
  const differences: Difference[] = [];
  return sheets.map(({ facts, told }) => {
    if (!told.some(isOfSum)) return told;
    const wrong = new Map<string, WrongSum>();
    for (const one of wrongOf(facts, standard)) wrong.set(cellAddress(facts.sheet, one.row, one.column), one);
    const toldCells = new Set(told.filter(isOfSum).map(({ cell }) => cell));
    return told.map((finding) => {
      const sum = isOfSum(finding) ? wrong.get(finding.cell ?? "") : undefined;
      if (sum === undefined) return finding;
      const rows = rowsThatExplain(sum, toldBars);
      if (rows !== null) return followsFrom(finding, rows, facts);
      const parts = (sum.parts ?? [])
        .map((one) => cellAddress(facts.sheet, one.row, one.column))
        .filter((cell) => toldCells.has(cell));
      const [part] = parts;
      if (
        part !== undefined &&
        followsFromParts(
          sum,
          parts.flatMap((cell) => wrong.get(cell) ?? []),
          facts.bars,
        )
      )
        return asNote(finding, `; it sums ${part}, which is told of`);
      const before = differences.find((one) => isSame(one, sum));
      if (before !== undefined) return asNote(finding, `; it is off by as much as ${placeOf(before, facts)}`);
      differences.push({ sum, name: facts.name, cell: finding.cell ?? "" });
      return finding;
    });
  });
}

/**
 * The sum comes out with one of its parts, or all of them, as the bars make it, or is that of the bars; so it may where no
 * more is known of a part, or where it sums other parts than those.
 */
function followsFromParts(
  { typed, sums }: WrongSum,
  parts: readonly WrongSum[],
  bars: readonly BarFacts[],
): boolean {
  if (parts.length === 0) return true;
  const changes = parts.map((part) => part.sums.map((made) => made - part.typed));
  const together = changes.reduce((sum, [first = 0]) => sum + first, 0);
  const meant = sums.flatMap((sum) => [...changes.flat(), together].map((by) => sum + by));
  const ofBars = (figure: (facts: BarFacts) => number | null): number =>
    bars.reduce((sum, bar) => sum + (figure(bar) ?? 0), 0);
  meant.push(
    ofBars((facts) => figureOf(facts, { figure: "mass" })),
    ofBars(massMade),
    ofBars((facts) => figureOf(facts, { figure: "totalLength" })) / MM_PER_METRE,
  );
  return OTHER_UNITS.some((per) => {
    const isNear = (sum: number): boolean => Math.abs(typed * per - sum) <= OF_PARTS * Math.abs(sum);
    const isFar = sums.every((sum) => typed * per > FAR * sum || sum > FAR * typed * per);
    return meant.some(isNear) || (per === 1 && isFar);
  });
}

/** masses of a size differ by so much from table to table */
const OF_PARTS = 0.005;
/** kg above, tonnes below */
const OTHER_UNITS = [1, 1000] as const;
/** times more or less than its parts: some of them were not seen */
const FAR = 1.6;

const isOfSum = ({ code, severity }: Finding): boolean => OF_SUMS.has(code) && severity !== "note";

function wrongOf(facts: SheetFacts, standard: Standard): readonly WrongSum[] {
  return [
    ...wrongLines(facts),
    ...looseSums(facts),
    ...wrongGrandTotals(facts),
    ...wrongTotals(facts, standard),
    ...wrongSizedSums(facts, standard),
  ];
}

interface ToldBar {
  readonly facts: BarFacts;
  readonly row: number;
  /** it may be another size, or no bar at all */
  readonly isSizeOpen: boolean;
  readonly isTwice: boolean;
  /** its mass may be a slip by tens */
  readonly isMassOpen: boolean;
  /** mm that its legs make, as those of the other rows do */
  readonly lengths: readonly number[];
}

const OF_SIZE = /^(?:SIZE|MASS|READ10[12])/;
const OF_IDENTITY = "SUM109";
/** of what a bar is made to, and not of how much there is of it */
const OF_NO_AMOUNT = /^(?:SHAPE|BEND|GRADE|STEEL|LIFT|LEN106|MARK(?!105))/;
const OF_READING = /^READ10[12]/;
const AMOUNTS = ["size", "members", "each", "total", "length", "totalLength", "mass", "pieceMass"] as const;

/** What stands in the cell moves the sums. */
function isOfAmount({ code, cell }: Finding, bar: BarFacts, { sheet }: SheetFacts): boolean {
  if (!OF_READING.test(code) || cell === null) return !OF_NO_AMOUNT.test(code);
  const { table, row } = bar.row;
  return AMOUNTS.some((kind) => {
    const column = table.columns.get(kind)?.column;
    return column !== undefined && cellAddress(sheet, row, column) === cell;
  });
}
const OF_MASS = /^(?:MASS|UNIT|SUM|READ)/;
/** it may not belong there at all: entered twice, or noted as superseded */
const TO_BE_LEFT_OUT = /^(?:MARK105|REV)/;

function barsTold(facts: SheetFacts, told: readonly Finding[]): ToldBar[] {
  const bars = new Map<BarFacts, ToldBar>();
  const expected = [
    ...offLengthHabit(facts),
    ...offLegs(facts).map(({ sum, ...off }) => ({ ...off, expected: sum })),
  ];
  for (const finding of told) {
    const { severity, code, row, cell } = finding;
    if (severity === "note" || row === null || OF_SUMS.has(code)) continue;
    const bar = facts.barAt(row - facts.sheet.top - 1, cell);
    if (bar === undefined || !isOfAmount(finding, bar, facts)) continue;
    const isOfSize = code === OF_IDENTITY ? brokenBy(bar)?.suspects.includes("size") : OF_SIZE.test(code);
    const before = bars.get(bar);
    bars.set(bar, {
      facts: bar,
      row,
      isSizeOpen: before?.isSizeOpen === true || isOfSize === true,
      isTwice: before?.isTwice === true || TO_BE_LEFT_OUT.test(code),
      isMassOpen: before?.isMassOpen === true || OF_MASS.test(code),
      lengths: expected.filter((off) => off.facts === bar).map((off) => off.expected),
    });
  }
  return [...bars.values()];
}

/** The rows that are told of and make the sum come out where they are put right; null where none do. */
function rowsThatExplain(sum: WrongSum, toldBars: ReadonlyMap<BarFacts, ToldBar>): readonly ToldBar[] | null {
  for (const way of sum.ways) {
    const inWay = way.bars.flatMap((facts) => toldBars.get(facts) ?? []);
    if (inWay.length === 0 || inWay.length > MOST_TOLD) continue;
    let base = 0;
    for (const facts of way.bars)
      if (way.takes(facts) && !facts.row.struckThrough) base += figureOf(facts, way) ?? 0;
    const changes = inWay.map((told) => ({ told, by: changesOf(told, way) }));
    const found = combined(changes, MOST_TOGETHER, (by) => isNear(sum.typed, (base + by) / way.per, way));
    if (found !== null) return found;
    const exact = { ...way, within: 0 };
    const ofDigits = inWay.find((told) =>
      changesTo(figuresOfDigits(told.facts, way.figure), told, way).some((by) =>
        isNear(sum.typed, (base + by) / way.per, exact),
      ),
    );
    if (ofDigits !== undefined) return [ofDigits];
  }
  return null;
}

function isNear(typed: number, sum: number, { within }: SumWay): boolean {
  const decimals = /\.(\d+)/.exec(String(typed))?.[1]?.length ?? 0;
  return Math.abs(typed - sum) <= 0.5000001 * 10 ** -decimals + within * Math.abs(sum);
}

interface Changes {
  readonly told: ToldBar;
  readonly by: readonly number[];
}

/** The first rows, one and then several together, of which some changes make it fit. */
function combined(
  changes: readonly Changes[],
  most: number,
  fits: (by: number) => boolean,
): readonly ToldBar[] | null {
  for (let together = 1; together <= most; together += 1) {
    const found = ofSeveral(changes, together, 0, fits);
    if (found !== null) return found;
  }
  return null;
}

function ofSeveral(
  changes: readonly Changes[],
  together: number,
  so: number,
  fits: (by: number) => boolean,
): readonly ToldBar[] | null {
  if (together === 0) return fits(so) ? [] : null;
  for (const [at, { told, by }] of changes.entries()) {
    for (const change of by) {
      const others = ofSeveral(changes.slice(at + 1), together - 1, so + change, fits);
      if (others !== null) return [told, ...others];
    }
  }
  return null;
}

/** By how much the sum would change, with the row as it may be meant. */
function changesOf(told: ToldBar, way: SumWay): readonly number[] {
  return changesTo(otherFigures(told.facts, way.figure, told.lengths, told.isMassOpen), told, way);
}

function changesTo(
  others: readonly number[],
  { facts, isSizeOpen, isTwice }: ToldBar,
  way: SumWay,
): readonly number[] {
  const own = figureOf(facts, way) ?? 0;
  if (!way.takes(facts))
    return isSizeOpen && way.isOfSize ? [...new Set([own, ...others, ...asItsSize(facts, way)])] : [];
  const isElsewhere = isTwice || (isSizeOpen && way.isOfSize);
  const changes = others.map((one) => one - own);
  return [...new Set(isElsewhere ? [-own, ...changes] : changes)].filter((change) => change !== 0);
}

const MM_PER_METRE = 1000;

/** kg that the bar would weigh were it of the size that is summed. */
function asItsSize(facts: BarFacts, way: SumWay): readonly number[] {
  const one = way.figure === "mass" ? way.bars.find((bar) => way.takes(bar)) : undefined;
  const perMetre = one === undefined ? null : perMetreOf(one);
  const length = figureOf(facts, { ...way, figure: "totalLength" });
  return perMetre === null || length === null ? [] : [(length / MM_PER_METRE) * perMetre];
}

function figureOf(facts: BarFacts, { figure }: Pick<SumWay, "figure">): number | null {
  const { row, count, lengthInForce } = facts;
  if (figure === "total") return count;
  const length = row.totalLength ?? (count === null || lengthInForce === null ? null : count * lengthInForce);
  if (figure === "totalLength") return length;
  const perMetre = perMetreOf(facts);
  return row.mass ?? (length === null || perMetre === null ? null : (length / MM_PER_METRE) * perMetre);
}

interface Difference {
  readonly sum: WrongSum;
  readonly name: string;
  readonly cell: string;
}

/** shares of a sum and of a difference by which two differences may be one */
const OTHER_TABLE = 0.002;
const OF_DIFFERENCE = 0.05;

/** Off by as much, up or down: what a wrong line is carried into. */
function isSame({ sum: one }: Difference, other: WrongSum): boolean {
  const decimals = Math.min(...[one, other].map(({ typed }) => String(typed).split(".")[1]?.length ?? 0));
  const first = Math.abs(one.typed - (one.sums[0] ?? 0));
  return other.sums.some((sum) => {
    // masses a metre of two tables make a little of the difference
    const within = Math.max(10 ** -decimals, Math.min(OTHER_TABLE * Math.abs(sum), OF_DIFFERENCE * first));
    return Math.abs(Math.abs(other.typed - sum) - first) <= within;
  });
}

function placeOf({ name, cell }: Difference, facts: SheetFacts): string {
  return name === facts.name ? cell : `${name}!${cell}`;
}

function followsFrom(finding: Finding, bars: readonly ToldBar[], facts: SheetFacts): Finding {
  const places = bars.map(({ facts: bar, row }) =>
    bar.sheet === facts ? `${row}` : `${row} of ${(bar.sheet as SheetFacts).name}`,
  );
  const rows = places.length > 1 ? `rows ${places.join(" and ")} are` : `row ${places[0]} is`;
  return asNote(finding, `; it comes out once ${rows} put right`);
}

function asNote(finding: Finding, more: string): Finding {
  return { ...finding, severity: "note", message: `${finding.message}${more}`, fix: null };
}
