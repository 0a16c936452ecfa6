import { confirms } from "./confirms";
import { differingRows } from "./differing-rows";
import { divides } from "./divides";
import { type LengthName, METRES, WEIGH } from "./evidence.data";
import { isExchangedWithTotal } from "./exchanged-counts";
import { followsLength } from "./follows-length";
import { heldBy } from "./held-by";
import { isInFeet } from "./magnitude";
import { type AmountsOfMember, amountsOfMember, countsMembers } from "./of-member";
import { type Agreement, readingAgreement, type TakenColumn } from "./reading-agreement";
import { holdSame } from "./same-values";
import { shareOf, surest } from "./surest-share";
import type { IdentityName, RoleEvidence, TableEvidence } from "./table-evidence";
import type { ValueColumn } from "./value-column";
import type { ColumnDecision, Weighed, Weighing } from "./weighed";
import { type EvidenceRole, QUANTITIES, type WordReading } from "./word-reading";

const LEG_UNITS = Object.keys(METRES.value) as LengthName[];
const AMOUNTS: ReadonlySet<IdentityName> = new Set<IdentityName>(["mass", "totalLength", "bySize"]);
const COUNTS: ReadonlySet<EvidenceRole> = new Set<EvidenceRole>(["members", "each", "total"]);

/** Words stand unless arithmetic proves another reading; it fills what words leave open. */
export function weighWords(weighing: Weighing): Weighed {
  const ofMember = amountsOfMember(weighing);
  if (ofMember !== null) return weighOneMembers(weighing, ofMember);
  const taken = new Taken(weighing);
  const { asWorded, evidence } = weighing;
  if (asWorded !== null) taken.weighUnits(asWorded);
  if (evidence !== null && evidence !== asWorded) taken.weighAll(evidence, asWorded !== null);
  taken.weighPieces();
  taken.weighLegs();
  return taken.result();
}

/** The count is as the words have it, and what the amounts of one member tell of lengths and sizes holds. */
function weighOneMembers(weighing: Weighing, { words, agreement, decisions }: AmountsOfMember): Weighed {
  const taken = new Taken({ ...weighing, words, agreement, asWorded: null, evidence: null });
  taken.weighLegs();
  const own = taken.result();
  return { ...own, decisions: [...decisions, ...own.decisions] };
}

class Taken {
  private readonly columns = new Map<number, TakenColumn & { by: "words" | "arithmetic" | "user" }>();
  private readonly decided: Omit<ColumnDecision, "words" | "arithmetic">[] = [];
  private readonly byPlace: ReadonlyMap<number, ValueColumn>;
  private readonly ofWords: readonly Agreement[];

  constructor(private readonly weighing: Weighing) {
    for (const [column, word] of weighing.words) {
      this.columns.set(column, { ...word, by: word.by === "user" ? "user" : "words" });
    }
    this.byPlace = new Map(weighing.columns.map((column) => [column.column, column]));
    this.ofWords = weighing.agreement;
  }

  /** The words' roles hold under some units: only those are weighed. */
  weighUnits(evidence: TableEvidence): void {
    for (const found of evidence.roles.values()) {
      const word = this.weighing.words.get(found.column);
      if (word === undefined || word.by === "user" || found.grade === "looks") continue;
      if (QUANTITIES.has(found.role) && QUANTITIES.has(word.role)) this.weighUnit(found, word, evidence);
    }
  }

  /** `onlyFills`: what words say of their own columns holds, arithmetic only adds what they left open. */
  weighAll(evidence: TableEvidence, onlyFills: boolean): void {
    for (const found of evidence.roles.values()) {
      const word = this.weighing.words.get(found.column);
      const isOpen = word === undefined || (word.role === "leg" && COUNTS.has(found.role));
      if (!onlyFills || isOpen) this.weigh(found, evidence);
    }
    if (onlyFills) return;
    for (const [column, taken] of this.columns) {
      if (taken.by === "words") this.giveUp(column, taken, evidence);
    }
  }

  private weigh(found: RoleEvidence, evidence: TableEvidence): void {
    if (!QUANTITIES.has(found.role) || found.grade === "looks") return;
    const word = this.weighing.words.get(found.column);
    if (word?.by === "user") return;
    if (word === undefined || !QUANTITIES.has(word.role)) this.fill(found, word);
    else if (this.isSameRole(found, word, evidence)) this.weighUnit(found, word, evidence);
    else this.weighRole(found, word, evidence);
  }

  /** No word, or one that means no amount. */
  private fill(found: RoleEvidence, word: WordReading | undefined): void {
    if (word !== undefined && found.grade !== "proof") return;
    if (this.isTwin(found.column, found.role)) return;
    if (found.role !== "bySize" && this.isTakenElsewhere(found)) return;
    const isCountAmongLegs = word?.role === "leg" && COUNTS.has(found.role);
    if (word !== undefined && !isCountAmongLegs && !this.mayContradict()) return;
    // a column that words leave without an amount is filled, not contradicted
    this.take(
      found,
      word ?? null,
      "role",
      word === undefined || word.role === "other" ? "fills" : "contradicts",
    );
  }

  private isTakenElsewhere({ column, role }: RoleEvidence): boolean {
    for (const [other, taken] of this.columns) {
      if (other === column || taken.role !== role) continue;
      if (taken.by === "user" || !this.isMisread(other, role)) return true;
    }
    return false;
  }

  /** The column that words name so is something else by proof. */
  private isMisread(column: number, role: EvidenceRole): boolean {
    const found = this.weighing.evidence?.roles.get(column);
    if (found === undefined || found.role === role) return false;
    const isNothing = found.role === "other" || found.role === "run" || found.role === "leg";
    const isOtherCount = COUNTS.has(role) && COUNTS.has(found.role);
    return this.mayContradict() && (isNothing || isOtherCount || found.grade === "proof");
  }

  private isSameRole(found: RoleEvidence, word: WordReading, evidence: TableEvidence): boolean {
    if (word.role === found.role) return true;
    if (!COUNTS.has(word.role) || !COUNTS.has(found.role)) return false;
    const roles = [...evidence.roles.values()];
    const hasMembers = roles.some(({ role }) => role === "members");
    const wordMembers = [...this.weighing.words.values()].some(({ role }) => role === "members");
    if (word.role === "each" && found.role === "total")
      return !hasMembers && !wordMembers && !this.isTotalElsewhere(found.column, evidence);
    if (word.role === "total" && found.role === "each") return !wordMembers && !hasMembers;
    return word.role !== "total" && found.role !== "total";
  }

  /** Words give the total to another column, which is no count by the rows, or one of one member's bars. */
  private isTotalElsewhere(column: number, evidence: TableEvidence): boolean {
    const { roles } = evidence;
    for (const [other, word] of this.weighing.words) {
      const own = roles.get(other)?.role;
      if (other !== column && word.role === "total" && (own === undefined || !COUNTS.has(own))) return true;
    }
    return isExchangedWithTotal(column, this.weighing.words, this.ofWords, evidence);
  }

  private weighRole(found: RoleEvidence, word: WordReading, evidence: TableEvidence): void {
    // "No. of bars" beside members means one member's bars or all: arithmetic tells which
    const isBare = word.role === "total" && found.role === "each";
    if (found.grade !== "proof" || !(isBare ? this.mayRefine() : this.mayContradict())) return;
    // a column that is named for something else is no amount
    if (word.role === "other" && word.by === "written") return;
    if (this.isTwin(found.column, word.role) || this.isExchanged(found.column, word.role, evidence)) return;
    // members and the bars in each are counted by the header: no arithmetic leaves the members out
    if (word.role === "each" && found.role === "total" && countsMembers(this.weighing.words)) return;
    if (!this.isKept(found.column, evidence)) return;
    this.take(
      found,
      word,
      "role",
      isBare ? "refines" : this.isOpenWord(found, word) ? "fills" : "contradicts",
    );
  }

  private weighUnit(found: RoleEvidence, word: WordReading, evidence: TableEvidence): void {
    const column = this.byPlace.get(found.column);
    const { unit } = found;
    if (unit === null || word.unit === null || unit === word.unit || unit === "kg/m" || unit === "lb/ft")
      return;
    if (column !== undefined && isInFeet(column)) return;
    const isGuess = word.by === "guessed";
    // a guess that nothing of what the words say was tested by is not kept by what they keep elsewhere
    const isOpen = isGuess && !this.ofWords.some(({ columns }) => columns.includes(found.column));
    if (word.inches !== undefined || !(isOpen || this.mayContradict())) return;
    const isWeak = evidence.unitIsWeak && !(isGuess && followsLength(found, evidence, this.weighing.words));
    const isSure = !isWeak && (found.grade === "proof" || isGuess);
    const taken = { ...found, role: word.role };
    if (isSure && this.isKept(found.column, evidence))
      this.take(taken, word, "unit", isGuess ? "fills" : "contradicts");
    else this.ask(taken, word, "unit");
  }

  /** A mass that is neither the row's nor a metre's, and that length and size make up, is that of one bar. */
  weighPieces(): void {
    const { wordsKeep, arithmeticKeeps, leastBars } = WEIGH.value;
    const now = this.agreementOf(this.columns.values());
    for (const taken of [...this.columns.values()]) {
      const { column, role, by } = taken;
      const unit = taken.unit === "lb" || taken.unit === "t" ? taken.unit : "kg";
      if ((role !== "mass" && role !== "unitMass") || by === "user") continue;
      const own = now.find(({ identity, columns }) => identity === role && columns.includes(column));
      if (own !== undefined && own.share > wordsKeep) continue;
      const others = [...this.columns.values()].filter((one) => one.column !== column);
      const tried = this.agreementOf([...others, { column, role: "pieceMass", unit }]);
      const found = tried.find(({ identity }) => identity === "pieceMass");
      if (found === undefined || found.bars < leastBars || found.share < arithmeticKeeps) continue;
      const word = this.weighing.words.get(column) ?? null;
      const how = word?.role === "pieceMass" ? "refines" : "fills";
      this.take({ column, role: "pieceMass", unit, grade: "ratio" }, word, "role", how);
    }
  }

  /**
   * Legs follow the length that the amounts of the table prove: where the legs fit it in one other unit only, that is
   * theirs. It is told once, at the first of them.
   */
  weighLegs(): void {
    const { confirms: least, wordsKeep, leastBars } = WEIGH.value;
    const now = this.agreementOf(this.columns.values());
    const legs = now.find(({ identity }) => identity === "legs");
    if (!confirms(now) || legs === undefined || legs.bars < leastBars || legs.share > wordsKeep) return;
    const isOpen = (column: number): boolean => {
      const own = this.byPlace.get(column);
      return own === undefined || !isInFeet(own);
    };
    const open = [...this.columns.values()].filter(
      ({ role, by, column }) => role === "leg" && by !== "user" && isOpen(column),
    );
    const others = [...this.columns.values()].filter(({ role }) => role !== "leg");
    const fits = LEG_UNITS.filter((unit) => {
      const tried = this.agreementOf([...others, ...open.map((leg) => ({ ...leg, unit }))]);
      return (tried.find(({ identity }) => identity === "legs")?.share ?? 0) >= least;
    });
    const [unit, another] = fits;
    if (unit === undefined || another !== undefined) return;
    open.forEach((leg, place) => {
      const word = this.weighing.words.get(leg.column);
      const found: RoleEvidence = { column: leg.column, role: "leg", unit, grade: "ratio" };
      const isWritten = word?.unit !== null && word?.by === "written";
      this.take(found, word ?? null, "unit", place > 0 ? "refines" : isWritten ? "contradicts" : "fills");
    });
  }

  /** A column that words call so, where arithmetic proves the same of another, is what arithmetic says. */
  private giveUp(column: number, taken: TakenColumn, evidence: TableEvidence): void {
    const own = evidence.roles.get(column);
    if (
      !QUANTITIES.has(taken.role) ||
      taken.role === "bySize" ||
      own === undefined ||
      own.role === taken.role
    )
      return;
    if (taken.role === "members" || taken.role === "each" || !this.mayContradict()) return;
    if (this.isTwin(column, taken.role) || this.isExchanged(column, taken.role, evidence)) return;
    const isElsewhere = [...this.columns.values()].some(
      (one) => one.column !== column && one.role === taken.role && one.by === "arithmetic",
    );
    const word = this.weighing.words.get(column);
    if (!isElsewhere || word === undefined) return;
    const isEach = taken.role === "total" && this.dividesTotal(column);
    this.take(isEach ? { ...own, role: "each", unit: null } : own, word, "role", "contradicts");
  }

  private dividesTotal(column: number): boolean {
    const total = [...this.columns.values()].find((one) => one.role === "total" && one.column !== column);
    const [all, each] = [this.byPlace.get(total?.column ?? -1), this.byPlace.get(column)];
    return all !== undefined && each !== undefined && divides(each, all, this.weighing.rows);
  }

  /** Words that keep their identities are not contradicted. */
  private mayContradict(): boolean {
    const { wordsKeep, leastBars } = WEIGH.value;
    const tested = this.ofWords.filter(({ identity, bars }) => AMOUNTS.has(identity) && bars >= leastBars);
    return tested.length === 0 || tested.some(({ share, byHeading }) => byHeading || share <= wordsKeep);
  }

  /** A word that may mean either: rows of one member agree both ways, so that fewer need disagree. */
  private mayRefine(): boolean {
    const { holdsBelow, leastBars } = WEIGH.value;
    const tested = this.ofWords.filter(({ identity, bars }) => AMOUNTS.has(identity) && bars >= leastBars);
    return tested.every(({ share, byHeading }) => byHeading || share < holdsBelow);
  }

  /** "Total length" over the only lengths of the table is the whole length of a bar. */
  private isOpenWord({ role }: RoleEvidence, word: WordReading): boolean {
    const others = [...this.weighing.words.values()].filter(({ column }) => column !== word.column);
    return role === "length" && word.role === "totalLength" && others.every((one) => one.role !== "length");
  }

  private isKept(column: number, evidence: TableEvidence): boolean {
    const { arithmeticKeeps, leastBars, clearlyKeeps, manyBars } = WEIGH.value;
    return evidence.proofs.some(({ columns, kept, tested }) => {
      if (!columns.includes(column)) return false;
      if (tested >= manyBars && kept >= clearlyKeeps * tested && this.keepsNone()) return true;
      // a short table is proved by all its bars: one that stands there twice makes it no longer
      const bars = differingRows(this.weighing.rows, columns, this.byPlace);
      return kept >= arithmeticKeeps * tested && tested >= Math.min(leastBars, bars);
    });
  }

  /** Words keep next to nothing of what they could be tested on. */
  private keepsNone(): boolean {
    const { leastBars, wordsKeepNone } = WEIGH.value;
    const tested = this.ofWords.filter(({ identity, bars }) => AMOUNTS.has(identity) && bars >= leastBars);
    return tested.some(({ share }) => share <= wordsKeepNone);
  }

  /** Another column holds the same amounts and would do as well for either reading. */
  private isTwin(column: number, role: EvidenceRole): boolean {
    const here = this.byPlace.get(column);
    const own = this.weighing.evidence?.roles.get(column)?.role;
    if (here === undefined) return false;
    for (const other of this.weighing.columns) {
      if (other === here) continue;
      const isOther = this.weighing.evidence?.roles.get(other.column)?.role === role;
      const isNamed = own !== undefined && this.weighing.words.get(other.column)?.role === own;
      if ((isOther || isNamed) && holdSame(other, here)) return true;
    }
    return false;
  }

  /** Length and count are factors of one product: it cannot tell them apart. */
  private isExchanged(
    column: number,
    role: EvidenceRole,
    { lengthColumn, countColumns }: TableEvidence,
  ): boolean {
    const roleOf = (at: number | null): EvidenceRole | undefined =>
      at === null ? undefined : this.weighing.words.get(at)?.role;
    const isCount = (one: EvidenceRole | undefined): boolean => one === "total" || one === "each";
    if (role === "length" && countColumns.includes(column)) return isCount(roleOf(lengthColumn));
    return column === lengthColumn && isCount(role) && countColumns.some((at) => roleOf(at) === "length");
  }

  private take(
    found: RoleEvidence,
    word: WordReading | null,
    about: "role" | "unit",
    how: ColumnDecision["how"],
  ): void {
    const { column, role, unit } = found;
    this.columns.set(column, { column, role, unit, by: "arithmetic" });
    this.decided.push({
      column,
      about,
      byWords: word,
      byArithmetic: { column, role, unit },
      grade: found.grade,
      verdict: "arithmetic",
      how,
    });
  }

  private ask({ column, role, unit, grade }: RoleEvidence, word: WordReading, about: "role" | "unit"): void {
    this.decided.push({
      column,
      about,
      byWords: word,
      byArithmetic: { column, role, unit },
      grade,
      verdict: "ask",
      how: "contradicts",
    });
  }

  private agreementOf(taken: Iterable<TakenColumn>): Agreement[] {
    const { columns, tables, rows } = this.weighing;
    return readingAgreement(columns, taken, tables, rows);
  }

  /** A word is not contradicted by what few rows keep. */
  private withoutWeak(): void {
    for (const one of [...this.decided]) {
      if (one.how !== "contradicts" || one.verdict !== "arithmetic" || one.byWords === null) continue;
      const { arithmetic } = this.sharesOf(one, this.agreementOf(this.columns.values()));
      if (arithmetic === null || arithmetic.kept * 2 >= arithmetic.tested) continue;
      this.decided.splice(this.decided.indexOf(one), 1);
      const { column, role, unit } = one.byWords;
      this.columns.set(column, { column, role, unit, by: "words" });
    }
  }

  result(): Weighed {
    this.withoutWeak();
    const agreement = this.decided.length === 0 ? this.ofWords : this.agreementOf(this.columns.values());
    const decisions = this.decided.map((one) => ({ ...one, ...this.sharesOf(one, agreement) }));
    const isConfirmed = agreement.some(
      ({ identity, bars, share }) =>
        identity !== "unitMass" &&
        identity !== "members" &&
        bars >= WEIGH.value.leastBars &&
        share >= WEIGH.value.confirms,
    );
    const { leastBars, holdsBelow } = WEIGH.value;
    const disagreeing = agreement.filter(
      ({ identity, bars, share }) => AMOUNTS.has(identity) && bars >= leastBars && share < holdsBelow,
    );
    const held = heldBy(this.weighing, agreement, decisions);
    return { columns: this.columns, decisions, agreement, held, isConfirmed, disagreeing };
  }

  /** Rows that agree either way: with this column as words have it, and as arithmetic has it. */
  private sharesOf(
    { column, byWords, byArithmetic }: Omit<ColumnDecision, "words" | "arithmetic">,
    settled: readonly Agreement[],
  ): Pick<ColumnDecision, "words" | "arithmetic"> {
    const others = [...this.columns.values()].filter((one) => one.column !== column);
    const arithmetic = surest(this.agreementOf([...others, byArithmetic]), column) ?? surest(settled, column);
    const alternative = byWords === null ? this.ofWords : this.agreementOf([...others, byWords]);
    const same = alternative.find(({ identity }) => identity === arithmetic?.identity);
    return { words: shareOf(same ?? null), arithmetic: shareOf(arithmetic) };
  }
}
