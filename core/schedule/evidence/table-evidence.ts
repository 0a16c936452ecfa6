import { type BarReading, barReadings } from "./bar-readings";
import { bySizeGroups } from "./by-size-groups";
import { countCandidates, countColumns, lengthColumns, numberColumns, sizeCandidates } from "./candidates";
import { CANDIDATE, GRADE, LOOK, TRIPLE, WEIGH } from "./evidence.data";
import { type LegSet, legSets } from "./legs";
import type { MassTable } from "./mass-tables";
import { type ProductSearch, products } from "./products";
import { type SettledRole, type SettledRoles, type Settling, settleRoles } from "./settle-roles";
import { countTriples } from "./triples";
import { unitMassFits } from "./unit-mass";
import { feetBesideInches, groupedBySize, type ValueColumn } from "./value-column";
import type { EvidenceRole, Words } from "./word-reading";

/** `proof`: a mass fixes role and unit; `ratio`: another column fixes the role, the unit only against it; `looks`: neither. */
export type Grade = "proof" | "ratio" | "looks";

/** What arithmetic says of one column. */
export interface RoleEvidence extends SettledRole {
  readonly column: number;
  readonly grade: Grade;
}

export type IdentityName =
  | "mass"
  | "totalLength"
  | "bySize"
  | "members"
  | "legs"
  | "run"
  | "unitMass"
  | "pieceMass";

/** An identity that the reading claims, with the rows that keep it. */
export interface Proof {
  readonly identity: IdentityName;
  readonly kept: number;
  readonly tested: number;
  readonly columns: readonly number[];
  /** by place among the rows looked at */
  readonly brokenRows: readonly number[];
}

/** What arithmetic alone, words only breaking ties, makes of a table's columns. */
export interface TableEvidence {
  readonly roles: ReadonlyMap<number, RoleEvidence>;
  readonly proofs: readonly Proof[];
  /** distance to the next reading with another length, unit or count, natural logarithm of odds */
  readonly margin: number;
  /** the next reading differs by the unit only, and hardly worse */
  readonly unitIsWeak: boolean;
  /** count and length may be exchanged */
  readonly isSymmetric: boolean;
  readonly lengthColumn: number | null;
  readonly countColumns: readonly number[];
  /** table of masses that the masses keep, and the waste in them, per cent */
  readonly massTable: MassTable["name"] | null;
  readonly waste: number;
  readonly membersInHeading: boolean;
  readonly score: number;
}

/** Reads a table's columns from the arithmetic of its rows; null where no column can be a length. */
export function tableEvidence(
  columns: readonly ValueColumn[],
  tables: readonly MassTable[],
  words: Words | null,
): TableEvidence | null {
  return evidenceFrom(candidatesOf(columns, tables, words), words);
}

/**
 * The same with every role as words have it: which units make the products hold. Null where none does, so that
 * another reading has to be looked for.
 */
export function evidenceAsWorded(
  columns: readonly ValueColumn[],
  tables: readonly MassTable[],
  words: Words,
): TableEvidence | null {
  const evidence = evidenceFrom(worded(columns, tables, words), words);
  const { confirms, leastBars } = WEIGH.value;
  const isProved = evidence?.proofs.some(
    ({ identity, kept, tested }) =>
      (identity === "mass" || identity === "totalLength" || identity === "bySize") &&
      tested >= leastBars &&
      kept >= confirms * tested,
  );
  return isProved === true ? evidence : null;
}

/** The columns that may play each part. */
interface Candidates
  extends Omit<ProductSearch, "rowCount">,
    Omit<Settling, "words" | "rows" | "sizes" | "counts"> {
  readonly countColumns: readonly ValueColumn[];
  readonly grouped: ReadonlySet<ValueColumn>;
  readonly legs: readonly LegSet[];
}

function candidatesOf(
  columns: readonly ValueColumn[],
  tables: readonly MassTable[],
  words: Words | null,
): Candidates {
  const rowCount = columns[0]?.rowCount ?? 0;
  const rows = testedRows(rowCount);
  const numbers = numberColumns(columns);
  const groups = bySizeGroups(columns, rows);
  const grouped = new Set(groups.flatMap(({ bySize }) => bySize));
  const sizes = sizeCandidates(columns, tables, words);
  const countable = countColumns(numbers, grouped);
  const triples = countTriples(countable, rows);
  const sure = triples.filter(({ worth }) => worth > TRIPLE.value.sure);
  const counting = new Set(sure[0] === undefined ? [] : [sure[0].total, ...sure[0].factors]);
  const lengths = lengthColumns(columns, numbers, grouped).filter((column) => !counting.has(column));
  const isCovered = (one: ValueColumn, other: ValueColumn): boolean =>
    sure.some(({ factors }) => factors.includes(one) && factors.includes(other));
  return {
    columns,
    rows,
    numbers,
    groups,
    grouped,
    sizes,
    lengths,
    triples,
    countColumns: countable,
    counts: countCandidates(countable, sizes, isCovered, rowCount),
    answers: [...numbers.filter((column) => !grouped.has(column)), ...groups],
    legs: legSets(columns, grouped, lengths, rows),
    unitMasses: unitMassFits(sizes, numbers, grouped, rows),
  };
}

function worded(columns: readonly ValueColumn[], tables: readonly MassTable[], words: Words): Candidates {
  const rowCount = columns[0]?.rowCount ?? 0;
  const rows = testedRows(rowCount);
  const called = (...roles: EvidenceRole[]): ValueColumn[] =>
    columns.filter(({ column }) => roles.includes(words.get(column)?.role ?? "other"));
  const [group, grouped] = [called("bySize"), new Set(called("bySize"))];
  const groups = group.length > 1 ? [groupedBySize(group)] : [];
  const [members, each, total] = [called("members"), called("each"), called("total")];
  const sizes = sizeCandidates(called("size"), tables, words);
  const factors = total.length > 0 ? [] : [...members, ...each];
  const single = total.length > 0 ? total : members.length > 0 ? [] : each;
  const all = countCandidates([...single, ...factors], sizes, () => false, rowCount);
  const counts = all.filter(({ columns: of }) => of.length === (factors.length > 1 ? 2 : 1));
  const lengths = called("length").map((column) => withInches(column, columns, words));
  const legs = called("leg");
  return {
    columns,
    rows,
    numbers: numberColumns(columns),
    groups,
    grouped,
    sizes,
    lengths,
    triples: countTriples([...members, ...each, ...total], rows),
    countColumns: [...members, ...each, ...total],
    counts,
    answers: [...called("totalLength", "mass"), ...groups],
    legs: legs.length > 0 ? legSets(legs, grouped, lengths, rows) : [],
    unitMasses: unitMassFits(sizes, called("unitMass"), grouped, rows),
  };
}

function withInches(column: ValueColumn, columns: readonly ValueColumn[], words: Words): ValueColumn {
  const inches = columns.find((one) => one.column === words.get(column.column)?.inches);
  const { inchesPerFoot, inchHalf } = CANDIDATE.value;
  return inches === undefined ? column : feetBesideInches(column, inches, inchesPerFoot, inchHalf);
}

function evidenceFrom(candidates: Candidates, words: Words | null): TableEvidence | null {
  const { columns, lengths, triples, legs } = candidates;
  const rowCount = columns[0]?.rowCount ?? 0;
  const found = products({ ...candidates, rowCount });
  const readings = barReadings({ products: found, legs, triples, lengths, words, rowCount });
  const [best] = readings;
  if (best === undefined) return null;
  const settled = settleRoles(best, readings, { ...candidates, counts: candidates.countColumns, words });
  return evidenceOf(best, readings, settled);
}

/** The rows that hypotheses are tested on. */
export function testedRows(rowCount: number): readonly number[] {
  const { tested } = LOOK.value;
  if (rowCount <= tested) return Array.from({ length: rowCount }, (_, row) => row);
  return Array.from({ length: tested }, (_, index) => Math.floor(((index + 1 / 2) * rowCount) / tested));
}

function evidenceOf(best: BarReading, readings: readonly BarReading[], settled: SettledRoles): TableEvidence {
  const rival = readings.find(
    (one) =>
      one !== best && (one.length !== best.length || one.unit !== best.unit || one.count !== best.count),
  );
  const margin = rival === undefined ? GRADE.value.noRival : best.score - rival.score;
  const isClose = rival !== undefined && margin < GRADE.value.margin;
  const [count] = best.count.columns;
  const isSymmetric = isClose && rival.length === count && rival.count.columns[0] === best.length;
  const unitIsWeak = isClose && rival.length === best.length && rival.unit !== best.unit;
  const grades = new Grades(best, settled, isSymmetric);
  const roles = new Map<number, RoleEvidence>();
  for (const [column, { role, unit }] of settled.roles) {
    roles.set(column, { column, role, unit, grade: grades.of(column, role) });
  }
  return {
    roles,
    proofs: proofsOf(best, settled),
    margin,
    unitIsWeak,
    isSymmetric,
    lengthColumn: best.length.column,
    countColumns: best.count.columns.map(({ column }) => column),
    massTable: best.mass?.table.name ?? settled.unitMass?.table.name ?? null,
    waste: best.mass?.waste ?? 0,
    membersInHeading: settled.membersInHeading,
    score: best.score,
  };
}

class Grades {
  private readonly proved = new Set<number>();
  private readonly related = new Set<number>();

  constructor(best: BarReading, settled: SettledRoles, isSymmetric: boolean) {
    const { mass, total, legs, count, length } = best;
    const g = GRADE.value;
    const bars = [...length.places, ...count.columns.map(({ column }) => column)];
    const isMassProof = mass !== null && mass.kept.share >= g.share && mass.kept.kept >= g.bars;
    const isTotalProof = total !== null && total.kept.share >= g.share && total.kept.kept >= g.bars;
    if (isMassProof)
      this.prove(this.proved, isSymmetric, bars, [...mass.answer.places, mass.size.column.column]);
    if (isTotalProof) {
      this.prove(isMassProof ? this.proved : this.related, isSymmetric, bars, total.answer.places);
      // a count has no unit: the ratio is all that there is to know of it
      if (!isSymmetric)
        this.add(
          this.proved,
          count.columns.map(({ column }) => column),
        );
    }
    if (legs !== null && !isSymmetric)
      this.add(this.related, [...length.places, ...legs.columns.map(({ column }) => column)]);
    const { triple, unitMass, run } = settled;
    if (
      triple !== null &&
      triple.kept >= g.counts &&
      triple.kept >= g.share * (triple.kept + triple.broken)
    ) {
      this.add(this.proved, [triple.total.column, ...triple.factors.map(({ column }) => column)]);
    }
    if (unitMass !== null && unitMass.kept.share >= g.share && unitMass.kept.kept >= g.bars) {
      this.add(this.proved, [unitMass.answer.column, unitMass.size.column.column]);
    }
    if (run !== null) this.add(this.related, [run.run.column, run.spacing.column]);
  }

  of(column: number, role: EvidenceRole): Grade {
    if (role === "other" || role === "mark" || role === "serial") return "looks";
    return this.proved.has(column) ? "proof" : this.related.has(column) ? "ratio" : "looks";
  }

  /** Where count and length may be exchanged neither is known, but the answer is. */
  private prove(
    to: Set<number>,
    isSymmetric: boolean,
    bars: readonly number[],
    answer: readonly number[],
  ): void {
    this.add(to, isSymmetric ? answer : [...bars, ...answer]);
  }

  private add(to: Set<number>, columns: readonly number[]): void {
    for (const column of columns) to.add(column);
  }
}

function proofsOf(best: BarReading, settled: SettledRoles): Proof[] {
  const { mass, total, legs, count, length } = best;
  const { triple, run, unitMass } = settled;
  const bars = [...count.columns.map(({ column }) => column), ...length.places];
  const proofs: Proof[] = [];
  const add = (
    identity: IdentityName,
    kept: number,
    broken: number,
    columns: readonly number[],
    brokenRows: readonly number[],
  ): void => {
    proofs.push({
      identity,
      kept: Math.round(kept),
      tested: Math.round(kept) + Math.round(broken),
      columns,
      brokenRows,
    });
  };
  if (mass !== null) {
    const { kept, broken, brokenRows } = mass.kept;
    add("mass", kept, broken, [...bars, mass.size.column.column, ...mass.answer.places], brokenRows);
  }
  if (total !== null) {
    const { kept, broken, brokenRows } = total.kept;
    const identity = total.answer.bySize.length > 0 ? "bySize" : "totalLength";
    add(identity, kept, broken, [...bars, ...total.answer.places], brokenRows);
  }
  if (triple !== null) {
    const columns = [...triple.factors.map(({ column }) => column), triple.total.column];
    add("members", triple.kept + triple.trivial, triple.broken, columns, triple.brokenRows);
  }
  if (legs !== null) {
    const columns = [...length.places, ...legs.columns.map(({ column }) => column)];
    add("legs", legs.one + legs.several, legs.oneBroken + legs.severalBroken, columns, legs.brokenRows);
  }
  if (run !== null) {
    const columns = [run.run.column, run.spacing.column, run.count.column];
    add("run", run.kept, run.broken, columns, run.brokenRows);
  }
  if (unitMass !== null) {
    const { kept, broken, brokenRows } = unitMass.kept;
    add("unitMass", kept, broken, [unitMass.size.column.column, unitMass.answer.column], brokenRows);
  }
  return proofs;
}
