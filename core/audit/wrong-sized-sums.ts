import type { BarFacts } from "../bar/bar-facts";
import { perMetreOf } from "../bar/row-identities";
import type { SheetFacts } from "../bar/sheet-facts";
import { plainGrade } from "../bars/plain-grade";
import { MOST_MM } from "../schedule/cells/read-length-text";
import { beginsWithWord, plainWords } from "../schedule/cells/row-words";
import { massPerMetreOf } from "../schedule/cells/size-elsewhere";
import type { Standard } from "../standards/port";
import { KG_PER_UNIT, MM_PER_UNIT } from "../units/unit-table";
import { type SizedLine, type SizedSum, sizedLines, tablesAlone } from "./sized-sums";
import { isTakenOut, type SummedField } from "./sum-lines";
import { offCells } from "./sums-of-sums";
import { rounding, wrongTotalsBelow } from "./totals-below";
import type { SumWay, WrongSum } from "./wrong-sum";

/** share of a line's sums that must agree before the others are wrong, and how many */
const SHARE = 0.6;
const FEWEST = 2;
/** sums of rounded figures against figures rounded once; printed masses per metre of one size against each other */
const ROUNDED = 0.0005;
const OTHER_TABLE = 0.012;
const MM_PER_METRE = 1000;

interface WrongSizedSum extends WrongSum {
  readonly what: string;
  readonly size: string;
}

/** Sums by size that are not those of the bars of that size. */
export function wrongSizedSums(sheet: SheetFacts, standard: Standard): readonly WrongSizedSum[] {
  const lines = sizedLines(sheet, standard).map((line) => ({ line, own: measureOf(line, sheet) }));
  const adding = addingLines(lines, sheet);
  return lines.flatMap(({ line, own: found }) => {
    const measure = found ?? measureOfSisters(line, sheet, adding) ?? measureOfProducts(line, lines);
    if (measure === null) return [];
    return line.sums.flatMap((sum) => {
      if (isNear(sum, measure) || isOpen(measure.bars, sum)) return [];
      const { also, within } = measure;
      if (also !== undefined && isNear(sum, { within, values: also })) return [];
      const own = nearest(measure.values(sum), sum.typed);
      // what a metre of a size weighs, only a bar of it can tell
      if (own === undefined && measure.isPerMetre === true) return [];
      const { row, column, size, typed } = sum;
      return [
        { row, column, size, typed, what: measure.what, sums: [own ?? 0], ways: waysOf(line, measure, sum) },
      ];
    });
  });
}

/** The bars that a sum may stand for; a line that goes by what is typed above it may as well go by the bars. */
function waysOf(line: SizedLine, measure: Measure, sum: SizedSum): readonly SumWay[] {
  const { figure, per, within, bars } = measure;
  if (measure.isPerMetre === true) return [];
  const figures = figure === undefined ? OF_COLUMNS : [{ figure, per }];
  return (bars === undefined ? line.stretches : [bars]).flatMap((stretch) => {
    const taken = new Set(ofSize(stretch, sum));
    const takes = (facts: BarFacts): boolean => taken.has(facts);
    return figures.map((one) => ({ ...one, bars: stretch, within, isOfSize: true, takes }));
  });
}

/** What columns by size may hold: metres or kg. */
const OF_COLUMNS = [
  { figure: "totalLength", per: MM_PER_METRE },
  { figure: "mass", per: 1 },
] as const;

/** Totals beside sizes that stand side by side, and are not what those add up to. */
function wrongRowTotals({ sheet, reading }: SheetFacts): readonly WrongSum[] {
  return (reading.summaries ?? []).flatMap(({ rows, sizes, headerRow }) => {
    const last = sizes.at(-1)?.column;
    if (last === undefined || sizes.length < FEWEST_BESIDE) return [];
    const head = sheet.cell(headerRow, last + 1);
    if (typeof head !== "string" || !beginsWithWord("total", plainWords(head))) return [];
    return rows.flatMap(({ row, cells }) => {
      const parts = cells.filter((one) => sizes.some(({ column }) => column === one.column));
      const total = cells.find(({ column }) => column === last + 1);
      if (total === undefined || parts.length < FEWEST_BESIDE) return [];
      const sum = parts.reduce((all, { value }) => all + value, 0);
      const isSum = Math.abs(sum - total.value) <= parts.length * rounding(total.value) + ROUNDED * sum;
      const places = parts.map(({ column }) => ({ row, column }));
      return isSum
        ? []
        : [{ row, column: total.column, typed: total.value, sums: [sum], ways: [], parts: places }];
    });
  });
}

const FEWEST_BESIDE = 3;

/** Totals straight under sizes, or beside them, that are not what those add up to. */
export function wrongTotals(facts: SheetFacts, standard: Standard): readonly WrongTotal[] {
  const alone = tablesAlone(facts, standard);
  if (alone.length === 0) return [...wrongTotalsBelow(facts), ...wrongRowTotals(facts)];
  const off = alone.flatMap(offCells);
  // what the bars themselves tell is told by them
  const bySize = off.length === 0 ? [] : wrongSizedSums(facts, standard);
  return off
    .filter(({ row, column }) => !bySize.some((one) => one.row === row && one.column === column))
    .map(({ sum, ...own }) => ({ ...own, sums: [sum], ways: [] }));
}

interface WrongTotal extends WrongSum {
  readonly isCrossing?: boolean;
}

interface Measure {
  readonly what: string;
  /** as a share of the sum: what is right all the same */
  readonly within: number;
  /** it goes by what is typed above it, whether or not the bars are whole */
  readonly isTyped?: boolean;
  readonly isPerMetre?: boolean;
  /** what it sums of each bar, and how many mm, kg or bars are one of its unit; none where it sums nothing of a bar */
  readonly figure?: SummedField;
  readonly per: number;
  /** the bars that it goes by */
  readonly bars?: readonly BarFacts[];
  /** what a sum may be */
  values(sum: SizedSum): readonly number[];
  /** what it may be as well, though no line shows its measure by it */
  also?(sum: SizedSum): readonly number[];
}

/** What a line gives: the measure that most of its sums agree with. */
function measureOf(line: SizedLine, sheet: SheetFacts): Measure | null {
  let best: Measure | null = null;
  let most = 0;
  const ofBars = line.stretches.flatMap((bars) => measures(bars));
  for (const measure of [...typedMeasures(line, sheet), ...ofBars]) {
    const agreeing = line.sums.filter((sum) => isNear(sum, measure)).length;
    if (agreeing <= most) continue;
    best = measure;
    most = agreeing;
  }
  const of = line.sums.length;
  return (most >= FEWEST && most >= SHARE * of) || (most > FEWEST && most * 2 >= of) ? best : null;
}

/** A line of too few sums to show it adds up its columns as those of its label do: one "Sub-total" among others. */
function measureOfSisters(line: SizedLine, sheet: SheetFacts, adding: Adding): Measure | null {
  const [added, mass] = typedMeasures(line, sheet);
  const sisters = adding.lines.get(adding.labelOf(line)) ?? 0;
  if (added === undefined || mass?.also === undefined || sisters < FEWEST) return null;
  return line.sums.some((sum) => isNear(sum, added)) ? { ...added, also: mass.also } : null;
}

/** A column of masses that most rows of a summary make of their length and their mass per metre. */
function measureOfProducts(line: SizedLine, lines: readonly { readonly line: SizedLine }[]): Measure | null {
  if (line.sums.length < FEWEST_PRODUCTS) return null;
  const inRow = (other: SizedLine, { row }: SizedSum) => other.sums.find((one) => one.row === row)?.typed;
  const beside = lines
    .map((one) => one.line)
    .filter((other) => other !== line && line.sums.every((sum) => inRow(other, sum) !== undefined));
  for (const [at, one] of beside.entries())
    for (const other of beside.slice(at + 1)) {
      const values = (sum: SizedSum): readonly number[] => [
        (inRow(one, sum) ?? 0) * (inRow(other, sum) ?? 0),
      ];
      const measure = { what: "mass", within: OTHER_TABLE, per: 1, isTyped: true, values } as const;
      const off = line.sums.filter((sum) => !isNear(sum, measure)).length;
      if (off === 1) return measure;
    }
  return null;
}

const FEWEST_PRODUCTS = 4;

/** How many lines under columns by size do nothing but add those up, by their words. */
interface Adding {
  readonly lines: ReadonlyMap<string, number>;
  labelOf(line: SizedLine): string;
}

function addingLines(
  lines: readonly { readonly line: SizedLine; readonly own: Measure | null }[],
  { reading }: SheetFacts,
): Adding {
  const labels = new Map(reading.totals.map(({ row, label }) => [row, plainWords(label)]));
  const labelOf = ({ sums }: SizedLine): string => labels.get(sums[0]?.row ?? -1) ?? "";
  const found = new Map<string, number>();
  for (const { line, own } of lines) {
    const label = labelOf(line);
    const adds = own?.isTyped === true && own.what === ADDED && line.sums.every((sum) => isNear(sum, own));
    if (adds && label !== "") found.set(label, (found.get(label) ?? 0) + 1);
  }
  return { lines: found, labelOf };
}

/** A bar of the size lacks its count or its length: another rule tells that, and no sum can be told. */
function isOpen(bars: readonly BarFacts[] | undefined, { diameter, grade }: SizedSum): boolean {
  const same = bars?.filter((facts) => facts.diameter === diameter && !isTakenOut(facts.row)) ?? [];
  // nor where bars of one diameter are summed by grade and none of them says which it is
  if (grade !== undefined && !same.some((facts) => isOfGrade(facts, grade))) return true;
  return same.some((facts) => lengthOf(facts) === null);
}

function nearest(values: readonly number[], typed: number): number | undefined {
  return [...values].sort((one, other) => Math.abs(one - typed) - Math.abs(other - typed))[0];
}

function isNear(sum: SizedSum, { values, within }: Pick<Measure, "values" | "within">): boolean {
  const { typed } = sum;
  const half = rounding(typed);
  const sums = values(sum);
  if (sums.length === 0) return typed === 0;
  return sums.some((one) => Math.abs(typed - one) <= half + within * Math.abs(one));
}

/** What a line under columns by size makes of the figures above it: their sums, and those times mass per metre. */
function typedMeasures({ above, stretches }: SizedLine, sheet: SheetFacts): Measure[] {
  if (above === null) return [];
  const inColumn = ({ column }: SizedSum): readonly number[] =>
    stretches.map((bars) => sumInColumn(bars, column, sheet)).filter((one) => one > 0);
  const ofLines = ({ column, diameter }: SizedSum): readonly number[] => {
    const typed = above.flatMap(({ cells }) => cells.filter((one) => one.column === column));
    const perMetre = massPerMetre(sheet, diameter);
    return typed.flatMap(({ value }, at) => {
      const ofLater = typed.slice(at + 1).map((other) => value * other.value);
      if (perMetre === null) return ofLater;
      const isPerMetre = Math.abs(value / perMetre - 1) < IS_PER_METRE;
      return isPerMetre ? ofLater : [...ofLater, value * perMetre];
    });
  };
  // where the line above is wrong, one below may follow from the bars all the same, or from what is typed beside them
  const ofBars = (asked: SizedSum): readonly number[] => {
    const made = stretches.map((bars) => sumOf(ofSize(bars, asked), massOf)).filter((sum) => sum > 0);
    const perMetre = massPerMetre(sheet, asked.diameter);
    return perMetre === null ? made : [...made, ...inColumn(asked).map((sum) => sum * perMetre)];
  };
  return [
    { what: ADDED, within: ROUNDED, per: 1, isTyped: true, values: inColumn },
    {
      what: "mass",
      within: OTHER_TABLE,
      per: 1,
      figure: "mass",
      isTyped: true,
      values: ofLines,
      also: ofBars,
    },
  ];
}

const ADDED = "sum";

/** a line of masses per metre, by whatever table */
const IS_PER_METRE = 0.05;

function sumInColumn(bars: readonly BarFacts[], column: number, { sheet }: SheetFacts): number {
  let sum = 0;
  for (const { row } of bars) {
    const cell = sheet.cell(row.row, column);
    const value =
      typeof cell === "string" ? Number.parseFloat(cell.replace(/\s/g, "").replace(",", ".")) : cell;
    if (typeof value === "number" && Math.abs(value) <= MOST_MM && !isTakenOut(row)) sum += value;
  }
  return sum;
}

function massPerMetre({ bars }: SheetFacts, diameter: number): number | null {
  const facts = bars.find((one) => one.diameter === diameter);
  return facts === undefined ? null : perMetreOf(facts);
}

const PER_LENGTH = { within: OTHER_TABLE, per: 1, isPerMetre: true } as const;

function measures(bars: readonly BarFacts[]): Measure[] {
  const of = (figure: (facts: BarFacts) => number | null, per: number) => (asked: SizedSum) => {
    const { takesInBeyond: takesIn } = asked;
    const ways = takesIn === undefined ? [asked] : [{ ...asked, takesIn }, asked];
    return ways.map((way) => sumOf(ofSize(bars, way), figure) / per).filter((sum) => sum > 0);
  };
  const perMetre = ({ diameter }: SizedSum): readonly number[] => {
    const masses = bars.filter((facts) => facts.diameter === diameter);
    return masses
      .slice(0, 1)
      .flatMap((facts) =>
        [perMetreOf(facts), massPerMetreOf(facts.row.size), typedPerMetre(facts)].filter(
          (one) => one !== null,
        ),
      );
  };
  // what the row itself weighs a metre at, by a table of its country
  const typedPerMetre = ({ row, count }: BarFacts): number | null =>
    row.mass === null || row.length === null || count === null
      ? null
      : (row.mass / count / row.length) * MM_PER_METRE;
  const typedMass = ({ row, count }: BarFacts): number | null => {
    const { mass, pieceMass = null } = row;
    return mass ?? (pieceMass === null || count === null ? null : pieceMass * count);
  };
  const { t, lb } = KG_PER_UNIT;
  const { ft } = MM_PER_UNIT;
  const summed = (
    what: string,
    figure: SummedField,
    own: (facts: BarFacts) => number | null,
    per: number,
    within: number,
  ): Measure => ({ what, figure, per, within, values: of(own, per) });
  const found: Measure[] = [
    summed("mass", "mass", typedMass, 1, ROUNDED),
    summed("mass", "mass", typedMass, t, ROUNDED),
    summed("mass", "mass", typedMass, lb, ROUNDED),
    summed("length", "totalLength", lengthOf, MM_PER_METRE, ROUNDED),
    summed("length", "totalLength", lengthOf, 1, ROUNDED),
    summed("length", "totalLength", lengthOf, ft, ROUNDED),
    summed("number", "total", ({ count }) => count, 1, 0),
    summed("mass", "mass", massOf, 1, OTHER_TABLE),
    summed("mass", "mass", massOf, t, OTHER_TABLE),
    summed("mass", "mass", massOf, lb, OTHER_TABLE),
    { ...PER_LENGTH, what: "mass per metre", values: perMetre },
    {
      ...PER_LENGTH,
      what: "mass per foot",
      values: (sum) => perMetre(sum).map((one) => (one * ft) / MM_PER_METRE / lb),
    },
  ];
  return found.map((measure) => ({ ...measure, bars }));
}

/** Bars of the size; of one bar type where the sum names it and the list has several of the diameter. */
function ofSize(
  bars: readonly BarFacts[],
  { diameter, prefix, takesIn, grade }: SizedSum,
): readonly BarFacts[] {
  if (takesIn !== undefined)
    return bars.filter((facts) => takesIn(facts.diameter ?? 0) && !isTakenOut(facts.row));
  const ofDiameter = bars.filter((facts) => facts.diameter === diameter && !isTakenOut(facts.row));
  const graded = grade === undefined ? [] : ofDiameter.filter((facts) => isOfGrade(facts, grade));
  const same = graded.length === 0 ? ofDiameter : graded;
  const ofType = same.filter(({ row }) => row.size?.prefix.toUpperCase() === prefix);
  return prefix === "" || ofType.length === 0 ? same : ofType;
}

/** The grade said over a sum is that of the bar: in its own cell, or beside its size. */
function isOfGrade({ gradeName, row }: BarFacts, said: string): boolean {
  const wanted = plainGrade(said);
  if (wanted === "") return false;
  if (gradeName !== null && wanted.includes(plainGrade(gradeName))) return true;
  return plainGrade(row.sizeTyped ?? "").includes(wanted);
}

function sumOf(bars: readonly BarFacts[], figure: (facts: BarFacts) => number | null): number {
  let sum = 0;
  for (const facts of bars) {
    const value = figure(facts);
    if (value === null) return Number.NaN;
    sum += value;
  }
  return sum;
}

function lengthOf({ row, count, lengthInForce }: BarFacts): number | null {
  if (row.totalLength !== null && row.totalLength !== undefined) return row.totalLength;
  return count === null || lengthInForce === null ? null : count * lengthInForce;
}

function massOf(facts: BarFacts): number | null {
  const length = lengthOf(facts);
  const perMetre = perMetreOf(facts);
  return length === null || perMetre === null ? null : (length / MM_PER_METRE) * perMetre;
}
