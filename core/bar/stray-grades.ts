import type { BarFacts } from "./bar-facts";
import { KNOWN_GRADES, STRAY_GRADE } from "./known-grades.data";
import type { SheetFacts } from "./sheet-facts";
import { textColumns } from "./text-columns";

/** A grade that one row alone has and nobody knows, among known ones that are written alike. */
export interface StrayGrade {
  readonly facts: BarFacts;
  /** within the used range */
  readonly column: number;
  readonly typed: string;
  /** the known grades of the list that are written alike, the usual one first */
  readonly like: readonly string[];
}

interface Named {
  readonly column: number;
  readonly typed: string;
  readonly name: string;
}

const TOKEN = /(?<![\p{L}\d.,])\p{L}{1,4}[ -]?\d{2,3}(?: ?\p{Lu}{1,2})?(?![\p{L}\d.,])/gu;
/** letters that look alike in two alphabets */
const LATIN: Readonly<Record<string, string>> = { А: "A", В: "B", С: "C", Е: "E", К: "K", Т: "T", Р: "P" };
const KNOWN = new Set(KNOWN_GRADES.value);

/** Rows whose grade is none, such as "SD450" where all others are SD400 and SD500. */
export function strayGrades(sheet: SheetFacts): readonly StrayGrade[] {
  return sheet.answers.whole(strays, gradeText).map(({ place, named, like }) => {
    const { column, typed } = named;
    return { facts: sheet.answers.bar(place), column, typed, like };
  });
}

interface Stray {
  readonly place: number;
  readonly named: Named;
  readonly like: readonly string[];
}

function strays(bars: readonly BarFacts[]): readonly Stray[] {
  const { rows, looked } = STRAY_GRADE.value;
  // few lists name a grade in each row, and most need not be looked through
  if (bars.slice(0, looked).filter((facts) => namedIn(facts).some(isKnown)).length < rows) return [];
  const known = new Map<string, number>();
  const others = new Map<string, (Omit<Stray, "like"> | null)[]>();
  bars.forEach((facts, place) => {
    const all = namedIn(facts);
    for (const { name } of all.filter(isKnown)) known.set(name, (known.get(name) ?? 0) + 1);
    if (all.some(isKnown)) return;
    for (const named of all) {
      const same = others.get(named.name);
      if (same === undefined) others.set(named.name, [{ place, named }]);
      else same.push(null);
    }
  });
  return [...others.values()].flatMap(([one, another]) => {
    if (one === null || one === undefined || another !== undefined) return [];
    const alike = [...known].filter(([name]) => formOf(name) === formOf(one.named.name));
    const usual = alike.sort(([, a], [, b]) => b - a).map(([name]) => name);
    return alike.reduce((sum, [, count]) => sum + count, 0) < rows ? [] : [{ ...one, like: usual }];
  });
}

const isKnown = ({ name }: Named): boolean => KNOWN.has(name);

/** "B500NC" and "B550NC" are written alike. */
function formOf(name: string): string {
  return name.replace(/\d/g, "#");
}

function gradeText(facts: BarFacts): string {
  return namedIn(facts)
    .map(({ column, typed }) => `${column}:${typed}`)
    .join(" ");
}

/** What of a row may name a grade: the grade's own cell, or words of its texts. */
function namedIn({ row, sheet }: BarFacts): Named[] {
  if (row.struckThrough || row.superseded === true) return [];
  const own = row.table.columns.get("grade")?.column;
  const size = row.table.columns.get("size")?.column;
  const columns =
    own === undefined ? [...textColumns(row.table), ...(size === undefined ? [] : [size])] : [own];
  return columns.flatMap((column) => {
    const text = sheet.sheet.cell(row.row, column);
    if (typeof text !== "string" || text.length > STRAY_GRADE.value.longest) return [];
    return (text.match(TOKEN) ?? []).map((typed) => ({ column, typed, name: plainName(typed) }));
  });
}

function plainName(typed: string): string {
  return typed
    .toUpperCase()
    .replace(/[ -]/g, "")
    .replace(/./g, (letter) => LATIN[letter] ?? letter);
}
