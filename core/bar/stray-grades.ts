import { isKnownName, plainName } from "../bars/known-grade";
import { STRAY_GRADE } from "../bars/known-grades.data";
import type { TableReading } from "../schedule/bar-row";
import { Memo } from "../units/memo";
import type { BarFacts } from "./bar-facts";
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

export interface NamedInText {
  readonly typed: string;
  readonly name: string;
  readonly isKnown: boolean;
}

interface Named extends NamedInText {
  readonly column: number;
}

const TOKEN =
  /(?<![\p{L}\d.,])\p{L}{1,4}[ -]?\d{2,3}(?: ?\p{Lu}{1,2})?(?!\p{L}|[.,]?\d)|(?<![\p{L}\d.,/-])\d{3}\p{Lu}(?![\p{L}\d/-])|(?<![\p{L}\d.,-])[A\u0410]-?[IVX\u0406]{1,4}(?![\p{L}-]|[.,]?\d)/gu;

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
  if (
    bars.slice(0, looked).filter((facts) => textsOf(facts).some(({ named }) => named.some(isKnown))).length <
    rows
  )
    return [];
  const known = new Map<string, number>();
  const others = new Map<string, (Omit<Stray, "like"> | null)[]>();
  bars.forEach((facts, place) => {
    const texts = textsOf(facts);
    let isAnyKnown = false;
    for (const { named } of texts)
      for (const { name, isKnown: counts } of named) {
        if (!counts) continue;
        known.set(name, (known.get(name) ?? 0) + 1);
        isAnyKnown = true;
      }
    if (isAnyKnown) return;
    for (const named of namedIn(texts)) {
      const same = others.get(named.name);
      if (same === undefined) others.set(named.name, [{ place, named }]);
      else same.push(null);
    }
  });
  return [...others.values()].flatMap(([one, another]) => {
    if (one === null || one === undefined || another !== undefined) return [];
    const alike = [...known].filter(([name]) => isWrittenAlike(name, one.named.name));
    const usual = alike.sort(([, a], [, b]) => b - a).map(([name]) => name);
    return alike.reduce((sum, [, count]) => sum + count, 0) < rows ? [] : [{ ...one, like: usual }];
  });
}

const isKnown = (named: NamedInText): boolean => named.isKnown;

/** "B500NC" and "B550NC" are written alike, and "AII" and "AV". */
function formOf(name: string): string {
  return name.replace(/^A[IVX]+$/, "A#").replace(/\d/g, "#");
}

/** Of one form, or letters exchanged: "HBR400" for HRB400. */
function isWrittenAlike(known: string, name: string): boolean {
  if (formOf(known) === formOf(name)) return true;
  const sorted = (text: string) => [...text].sort().join("");
  return known.replace(/\D/g, "") === name.replace(/\D/g, "") && sorted(known) === sorted(name);
}

function gradeText(facts: BarFacts): string {
  return namedIn(textsOf(facts))
    .map(({ column, typed }) => `${column}:${typed}`)
    .join(" ");
}

interface TextOfRow {
  readonly column: number;
  readonly named: readonly NamedInText[];
}

const NO_TEXTS: readonly TextOfRow[] = [];
const NONE_NAMED: readonly NamedInText[] = [];
/** by text: most rows of a list name the same grades */
const namedBy = new Memo<string, readonly NamedInText[]>();

/** What of a row may name a grade: the grade's own cell, or words of its texts. */
function textsOf({ row, sheet }: BarFacts): readonly TextOfRow[] {
  if (row.struckThrough || row.superseded === true) return NO_TEXTS;
  let texts: TextOfRow[] | undefined;
  for (const column of columnsOf(row.table)) {
    const text = sheet.sheet.cell(row.row, column);
    const named = typeof text === "string" ? namedInText(text) : NONE_NAMED;
    if (named.length === 0) continue;
    texts ??= [];
    texts.push({ column, named });
  }
  return texts ?? NO_TEXTS;
}

const columns = new WeakMap<TableReading, readonly number[]>();

function columnsOf(table: TableReading): readonly number[] {
  let known = columns.get(table);
  if (known === undefined) {
    const own = table.columns.get("grade")?.column;
    const size = table.columns.get("size")?.column;
    known = own === undefined ? [...textColumns(table), ...(size === undefined ? [] : [size])] : [own];
    columns.set(table, known);
  }
  return known;
}

/** The grades that a text names, known or written as one. */
export function namedInText(text: string): readonly NamedInText[] {
  if (text.length > STRAY_GRADE.value.longest) return NONE_NAMED;
  return namedBy.of(text, () => {
    const typed = text.match(TOKEN);
    if (typed === null) return NONE_NAMED;
    return typed.map((one) => {
      const name = plainName(one);
      return { typed: one, name, isKnown: isKnownName(name) };
    });
  });
}

function namedIn(texts: readonly TextOfRow[]): readonly Named[] {
  return texts.flatMap(({ column, named }) => named.map((one) => ({ ...one, column })));
}
