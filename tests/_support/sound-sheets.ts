import { type Cell, type Sheet, sheetFromRows } from "../../core/schedule/sheet";
import { type Random, seededRandom } from "./random-schedule";
import type { CountryHabit, SoundBar } from "./sound-bars";

/** A list without a mistake, in the ways of one country, with the bars that it holds. */
export interface SoundSheet {
  readonly habit: string;
  /** which of the habit's ways it keeps, to be found again */
  readonly ways: string;
  readonly sheet: Sheet;
  readonly bars: number;
  /** kg, of the unrounded masses */
  readonly mass: number;
}

/** The ways that one list chooses for itself. */
interface Ways {
  readonly lengths: number;
  readonly step: number;
  readonly nearest: boolean;
  readonly massPlaces: number;
  readonly table: number;
  readonly counts: "total" | "each and total" | "each" | "product in a cell";
  readonly sums: "none" | "of each member" | "of the list" | "both";
  readonly summary: boolean;
  readonly memberIn: "column" | "heading" | "first row only";
  readonly totalLength: boolean;
  readonly unitMass: boolean;
  readonly isMassOfTotalLength: boolean;
}

/** The sheet of a seed: habit by habit, each with ways of its own. */
export function soundSheet(habit: CountryHabit, seed: number): SoundSheet {
  const random = seededRandom(seed * 7919 + letters(habit.name) * 104729 + 17);
  for (let warm = 0; warm < 5; warm += 1) random.next();
  const ways = waysOf(habit, random);
  const written = new Written(habit, ways);
  const members = random.whole(3, 6);
  for (let member = 0; member < members; member += 1) {
    written.startMember(`${random.pick(habit.members)}${member + 1}`, random.whole(1, 8));
    const bars = random.whole(3, 7);
    for (let bar = 0; bar < bars; bar += 1) written.bar(habit.bar(random, member * 10 + bar));
    written.endMember();
  }
  written.end();
  return {
    habit: habit.name,
    ways: JSON.stringify(ways),
    sheet: sheetFromRows(habit.sheet, written.rows),
    ...{ bars: written.bars, mass: written.exactMass },
  };
}

const letters = (name: string): number =>
  [...name].reduce((so, letter) => so * 31 + letter.charCodeAt(0), 7) % 9973;

function waysOf(habit: CountryHabit, { pick, next, whole }: Random): Ways {
  return {
    lengths: whole(0, habit.lengths.length - 1),
    step: pick(habit.steps),
    nearest: next() < 0.5,
    massPlaces: pick(habit.massPlaces),
    table: whole(0, habit.tables.length - 1),
    counts: pick(habit.counts ?? ["total", "each and total", "each", "product in a cell"]),
    sums: pick(["none", "of each member", "of the list", "both"]),
    summary: next() < 0.4,
    memberIn: pick(["column", "heading", "first row only"]),
    totalLength: next() < 0.5,
    unitMass: next() < 0.4,
    isMassOfTotalLength: next() < 0.5,
  };
}

function rounded(value: number, places: number): number {
  return Number((Math.round(value * 10 ** places + 1e-7) / 10 ** places).toFixed(places));
}

class Written {
  readonly rows: Cell[][] = [];
  bars = 0;
  exactMass = 0;
  #mark = 0;
  #member = "";
  #members = 1;
  #isFirst = true;
  #masses: number[] = [];
  readonly #all: number[] = [];
  readonly #bySize = new Map<string, { metres: number; kilograms: number; each: number }>();
  readonly #columns: readonly (readonly [string, string])[];

  constructor(
    private readonly habit: CountryHabit,
    private readonly ways: Ways,
  ) {
    this.#columns = columnsOf(habit, ways);
    for (const title of habit.titles) this.rows.push([title]);
    this.rows.push(
      [],
      this.#columns.map(([, words]) => words),
    );
  }

  startMember(name: string, members: number): void {
    const { words } = this.habit;
    this.#member = name;
    this.#members = this.ways.counts === "total" ? 1 : members;
    this.#isFirst = true;
    this.#masses = [];
    if (this.ways.memberIn === "heading")
      this.rows.push([this.ways.counts === "total" ? name : `${name} (${members} ${words.pieces})`]);
  }

  bar(bar: SoundBar): void {
    const { habit, ways } = this;
    const exact = (habit.lengths[ways.lengths] as (typeof habit.lengths)[number])(bar);
    const steps = exact / ways.step;
    const length =
      (ways.nearest && !habit.alwaysUp ? Math.round(steps) : Math.ceil(steps - 1e-6)) * ways.step;
    const total = bar.count * this.#members;
    const perMetre = (habit.tables[ways.table] as (typeof habit.tables)[number])(bar.diameter);
    const metres = (length * total) / 1000;
    const unit = habit.metresIn ?? 1;
    const typed = rounded(metres / unit, 2);
    const kilograms = (ways.totalLength && ways.isMassOfTotalLength ? typed * unit : metres) * perMetre;
    const mass = rounded(kilograms / (habit.massUnit ?? 1), ways.massPlaces);
    this.#mark += 1;
    const cells: Record<string, Cell> = {
      mark: habit.mark(this.#mark),
      member: ways.memberIn === "column" || this.#isFirst ? this.#member : null,
      size: bar.size,
      each: bar.count,
      members: this.#members,
      total: ways.counts === "product in a cell" ? `${this.#members}x${bar.count}` : total,
      length: habit.length(length),
      totalLength: typed,
      unitMass: rounded((perMetre * unit) / (habit.massUnit ?? 1), 4),
      mass,
      shape: bar.shape,
      remark: bar.remark ?? null,
    };
    bar.dims.forEach((dim, index) => {
      cells[`dim${index}`] = dim === null ? null : habit.dim(dim);
    });
    this.rows.push(this.#columns.map(([kind]) => cells[kind] ?? null));
    this.#isFirst = false;
    this.#masses.push(mass);
    this.#all.push(mass);
    this.bars += 1;
    this.exactMass += metres * perMetre;
    const sum = this.#bySize.get(bar.size) ?? { metres: 0, kilograms: 0, each: perMetre };
    sum.metres += typed;
    sum.kilograms += mass;
    this.#bySize.set(bar.size, sum);
  }

  endMember(): void {
    if (this.ways.sums === "of each member" || this.ways.sums === "both")
      this.#sum(`${this.habit.words.subtotal} ${this.#member}`, this.#masses);
  }

  end(): void {
    const { words } = this.habit;
    if (this.ways.sums === "of the list" || this.ways.sums === "both") this.#sum(words.sum, this.#all);
    if (!this.ways.summary) return;
    this.rows.push([], [words.summary], [words.size, words.totalLength, words.mass]);
    for (const [size, { metres, kilograms }] of [...this.#bySize].sort())
      this.rows.push([size, rounded(metres, 2), rounded(kilograms, this.ways.massPlaces)]);
    const all = this.#all.reduce((so, one) => so + one, 0);
    this.rows.push([words.sum, null, rounded(all, this.ways.massPlaces)]);
  }

  #sum(words: string, masses: readonly number[]): void {
    const line: Cell[] = this.#columns.map(() => null);
    line[0] = words;
    line[this.#columns.findIndex(([kind]) => kind === "mass")] = rounded(
      masses.reduce((so, one) => so + one, 0),
      this.ways.massPlaces,
    );
    this.rows.push(line);
  }
}

function columnsOf(
  { words, dims, hasShape, hasRemark }: CountryHabit,
  ways: Ways,
): (readonly [string, string])[] {
  const columns: [string, string][] = [];
  if (ways.memberIn !== "heading") columns.push(["member", words.member]);
  columns.push(["mark", words.mark], ["size", words.size]);
  if (ways.counts === "each") columns.push(["members", words.members], ["each", words.each]);
  if (ways.counts === "each and total") columns.push(["members", words.members], ["each", words.each]);
  if (ways.counts !== "each") columns.push(["total", words.total]);
  if (hasShape) columns.push(["shape", words.shape]);
  dims.forEach((dim, index) => {
    columns.push([`dim${index}`, dim]);
  });
  columns.push(["length", words.length]);
  if (ways.totalLength) columns.push(["totalLength", words.totalLength]);
  if (ways.unitMass) columns.push(["unitMass", words.unitMass]);
  columns.push(["mass", words.mass]);
  if (hasRemark === true) columns.push(["remark", words.remark]);
  return columns;
}
