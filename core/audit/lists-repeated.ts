import type { BarFacts } from "../bar/bar-facts";
import { rowMass } from "../bar/bar-mass";
import { TWICE } from "../bar/identities.data";
import type { SheetFacts } from "../bar/sheet-facts";
import type { TableReading } from "../schedule/bar-row";
import { cellAddress } from "../schedule/cell-address";
import { cleanText } from "../schedule/cells/clean-text";
import { isRefusal } from "../units/refusal";

/** A list of which nearly all bars stand in other lists too, or that holds nearly all of another. */
export interface ListRepeated {
  /** the address of its header, where it is one of several of its sheet */
  readonly at: string | null;
  /** how many of its rows repeat others */
  readonly of: number;
  readonly again: ReadonlySet<BarFacts>;
  /** where the rows stand that are repeated: sheets, or other lists of the sheet */
  readonly where: string;
  /** kg of the rows that repeat others */
  readonly kg: number;
  /** each repeats a bar of the member that its own row names */
  readonly isOfSameMember: boolean;
}

/** The lists of a sheet that repeat lists of the sheets before it, or those before them on the sheet itself. */
export function listsRepeated(others: readonly SheetFacts[], sheet: SheetFacts): readonly ListRepeated[] {
  const before = new BarsBefore();
  for (const other of others) for (const list of listsOf(other)) before.keep(list);
  const lists = listsOf(sheet);
  return lists.flatMap((list) => {
    const repeated = before.isEmpty ? null : repeatedOf(list, lists.length > 1, before);
    before.keep(list);
    return repeated === null ? [] : [repeated];
  });
}

/** True where a sheet holds one list alone: no bars of it can repeat others of it. */
export function isOneList(sheet: SheetFacts): boolean {
  const { tables, rowClasses, bars } = sheet.reading;
  const [table, another] = tables;
  if (table === undefined || another !== undefined) return table === undefined;
  const first = bars[0]?.row ?? rowClasses.length;
  return rowClasses.every(
    (is, row) => is !== "heading" || row < first || headerAgain(sheet, table, row, row + 1) === null,
  );
}

/** Bars under one header, as it stands there first or again. */
interface List {
  readonly sheet: SheetFacts;
  readonly table: TableReading;
  /** the row of its header */
  readonly top: number;
  readonly bars: BarFacts[];
}

function listsOf(sheet: SheetFacts): readonly List[] {
  const last = new Map<TableReading, List>();
  const lists: List[] = [];
  for (const facts of sheet.bars) {
    const { row, table } = facts.row;
    const known = last.get(table);
    const from = known?.bars.at(-1)?.row.row ?? row;
    const again = known === undefined ? null : headerAgain(sheet, table, from + 1, row);
    if (known !== undefined && again === null) {
      known.bars.push(facts);
      continue;
    }
    const list = { sheet, table, top: again ?? Math.max(table.headerTop, 0), bars: [facts] };
    last.set(table, list);
    lists.push(list);
  }
  return lists;
}

/** The row between two others in which the words over marks and sizes stand again. */
function headerAgain(
  { sheet }: SheetFacts,
  { columns }: TableReading,
  from: number,
  to: number,
): number | null {
  const named = [columns.get("mark"), columns.get("size")].filter((one) => one !== undefined);
  if (named.length < 2) return null;
  for (let row = from; row < to; row += 1) {
    const isAgain = named.every(({ column, header }) => {
      const cell = sheet.cell(row, column);
      return typeof cell === "string" && cleanText(cell) === header;
    });
    if (isAgain) return row;
  }
  return null;
}

function repeatedOf(list: List, isOneOfSeveral: boolean, before: BarsBefore): ListRepeated | null {
  const { leastOfAlike, leastOfList } = TWICE.value;
  const bars = list.bars.filter(counts);
  if (bars.length < leastOfAlike) return null;
  const taken = new Set<Kept>();
  const again = new Set<BarFacts>();
  const ofLists = new Map<List, number>();
  let isOfSameMember = true;
  let kg = 0;
  for (const facts of bars) {
    const first = before.take(facts, taken);
    if (first === null) continue;
    again.add(facts);
    ofLists.set(first.list, (ofLists.get(first.list) ?? 0) + 1);
    if (memberOf(facts) === null || memberOf(facts) !== memberOf(first.facts)) isOfSameMember = false;
    const mass = rowMass(facts, "to weigh");
    kg += isRefusal(mass) ? (facts.row.mass ?? 0) : mass;
  }
  before.putBack();
  if (again.size < leastOfAlike) return null;
  const isMost = again.size >= leastOfList * bars.length;
  const holdsAnother = [...ofLists].some(([first, rows]) => {
    const size = first.bars.filter(counts).length;
    return size >= leastOfAlike && rows >= leastOfList * size;
  });
  if (!isMost && !holdsAnother) return null;
  const at = isOneOfSeveral ? headOf(list) : null;
  return { at, of: bars.length, again, where: placesOf(ofLists.keys(), list.sheet), kg, isOfSameMember };
}

interface Kept {
  readonly facts: BarFacts;
  readonly list: List;
}

/** Bars of the lists before, by what names them; each is repeated once by a list. */
class BarsBefore {
  readonly #byKey = new Map<string, Kept[]>();
  readonly #out: { readonly known: Kept[]; readonly one: Kept }[] = [];

  get isEmpty(): boolean {
    return this.#byKey.size === 0;
  }

  keep(list: List): void {
    for (const facts of list.bars) {
      if (!counts(facts)) continue;
      const kept = { facts, list };
      for (const key of [keyOf(facts, memberOf(facts)), keyOf(facts, ANY)]) {
        const known = this.#byKey.get(key);
        if (known === undefined) this.#byKey.set(key, [kept]);
        else known.push(kept);
      }
    }
  }

  /** The bar of the same member first; of any where either row names none. */
  take(facts: BarFacts, taken: Set<Kept>): Kept | null {
    const member = memberOf(facts);
    const keys = member === null ? [ANY] : [member, null];
    for (const key of keys) {
      const known = this.#byKey.get(keyOf(facts, key)) ?? [];
      const found = this.#firstOf(known, facts, taken);
      if (found !== null) return found;
    }
    return null;
  }

  /** Takes out of the bars known the first that may be the same, and on the way those taken by another key. */
  #firstOf(known: Kept[], facts: BarFacts, taken: Set<Kept>): Kept | null {
    for (let at = 0; at < Math.min(known.length, MOST_TRIED); ) {
      const one = known[at]!;
      const isTaken = taken.has(one);
      if (!isTaken && !mayBeSame(one.facts, facts)) {
        at += 1;
        continue;
      }
      known[at] = known.at(-1)!;
      known.pop();
      this.#out.push({ known, one });
      if (isTaken) continue;
      taken.add(one);
      return one;
    }
    return null;
  }

  /** What a list took stands there for the next one again. */
  putBack(): void {
    for (const { known, one } of this.#out) known.push(one);
    this.#out.length = 0;
  }
}

const ANY = "\u0000";
/** bars that share all that names them, so that no list costs more than linear time */
const MOST_TRIED = 64;

/** A bar that is counted and that its mark, size, length and number name. */
function counts({ markKey, row, count, bar }: BarFacts): boolean {
  const isOut = row.struckThrough || row.superseded === true;
  return !isOut && markKey !== null && bar !== null && row.length !== null && count !== null && count > 0;
}

function keyOf({ markKey, row, count, bar }: BarFacts, member: string | null): string {
  return JSON.stringify([member, markKey, bar?.diameter, row.length?.toFixed(1), count]);
}

/** Null where no cell says a member, so that the sheet's name stands for it. */
function memberOf({ row, sheet }: BarFacts): string | null {
  return row.member === sheet.sheet.name.trim() ? null : row.member;
}

/** What one row leaves open may be the other's; what both say is the same. */
function mayBeSame(first: BarFacts, again: BarFacts): boolean {
  const [one, other] = [first.row, again.row];
  const isOpenOrSame = <Value>(a: Value | null | undefined, b: Value | null | undefined): boolean =>
    a == null || b == null || a === b;
  if (!isOpenOrSame(one.shape, other.shape) || !isOpenOrSame(one.grade, other.grade)) return false;
  if (!isOpenOrSame(one.pour, other.pour) || !isOpenOrSame(one.drawing, other.drawing)) return false;
  if (one.revision !== other.revision && one.revision != null && other.revision != null) return false;
  const letters = Math.min(one.dims.length, other.dims.length);
  for (let at = 0; at < letters; at += 1) if (!isOpenOrSame(one.dims[at], other.dims[at])) return false;
  return !areMembersAlike(first, again);
}

/** "Pad P1" and "Pad P2": the names of the sheets are those of members, which may well be made alike. */
function areMembersAlike(first: BarFacts, again: BarFacts): boolean {
  if (memberOf(first) !== null || memberOf(again) !== null) return false;
  if (first.row.member === null || again.row.member === null) return false;
  const [one, other] = [first.sheet.sheet.name, again.sheet.sheet.name];
  const [bare, otherBare] = [one.replace(NUMBER, ""), other.replace(NUMBER, "")];
  return one !== other && bare === otherBare && bare !== one && otherBare !== other;
}

/** a number, or one letter that stands alone; a number in brackets is that of a sheet that was copied */
const NUMBER = /(?<!\()\d+(?!\))|\b\p{L}\b/gu;

const MOST_NAMED = 3;

function placesOf(lists: Iterable<List>, own: SheetFacts): string {
  const names = new Set<string>();
  for (const list of lists)
    names.add(list.sheet === own ? `the list at ${headOf(list)}` : `sheet ${list.sheet.sheet.name}`);
  const told = [...names].slice(0, MOST_NAMED);
  const more = names.size > MOST_NAMED ? ` and ${names.size - MOST_NAMED} more` : "";
  return told.join(", ") + more;
}

/** The address at which a list begins. */
function headOf({ sheet, table, top }: List): string {
  return cellAddress(sheet.sheet, top, table.left ?? 0);
}
