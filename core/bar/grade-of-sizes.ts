import { plainName } from "../bars/known-grade";
import { STRAY_GRADE } from "../bars/known-grades.data";
import type { TableReading } from "../schedule/bar-row";
import type { Cell } from "../schedule/sheet";
import { Memo } from "../units/memo";
import type { BarFacts } from "./bar-facts";
import { ALL_STEEL, GRADE_OF_SIZES, GRADE_WORDS, MADE_UP_TO } from "./grade-of-sizes.data";
import { type GradeOfNote, gradesInNote } from "./grades-in-notes";
import { noteTexts } from "./note-texts";
import { saying } from "./said-words";
import type { SheetFacts } from "./sheet-facts";
import { namedInText } from "./stray-grades";

/** A bar whose grade is that of other sizes. */
export interface GradeOfOthers {
  readonly facts: BarFacts;
  readonly column: number;
  readonly typed: string;
  /** what tells: a note, one that is of all steel, one that names no second grade, the letters of sizes, the thickness of the grade's other bars, what the grade is made up to, the size's others */
  readonly by: "note" | "all" | "title" | "letters" | "thickness" | "made" | "size";
  /** the grade that the size has instead; the sizes of the grade's others */
  readonly instead: string;
  readonly others: string;
}

type Off = Omit<GradeOfOthers, "facts"> & { readonly place: number };

interface Graded {
  readonly place: number;
  readonly column: number;
  readonly typed: string;
  readonly grade: string;
  readonly letters: string;
  readonly size: number;
}

/** Loops and dowels are of plain bars whatever the others are. */
const saysOtherwise = saying(
  /dowel|lifting|\bloops?\b|петл|gouj|levage|pasador|izaje|dübel|montaż|kuljetus|吊/,
);
const { leastKept, leastOfGrade, thicker, most } = GRADE_OF_SIZES.value;

/** Bars whose grade the notes, the letters of the sizes or the other bars give to other sizes. */
export function gradesOfOthers(sheet: SheetFacts): readonly GradeOfOthers[] {
  const { graded, made, alike } = sheet.answers.whole(judged, gradeAndSize);
  if (graded.length === 0) return [];
  const seen = new Set<number>();
  return [...made, ...byNotes(graded, sheet), ...byAll(graded, sheet), ...alike].flatMap(
    ({ place, ...off }) => {
      const facts = sheet.answers.bar(place);
      if (seen.has(place) || facts.inWords(saysOtherwise)) return [];
      seen.add(place);
      return [{ facts, ...off }];
    },
  );
}

interface Judged {
  /** none where all bars have one grade */
  readonly graded: readonly Graded[];
  readonly made: readonly Off[];
  readonly alike: readonly Off[];
}

const NONE: Judged = { graded: [], made: [], alike: [] };

function judged(bars: readonly BarFacts[]): Judged {
  if (!areGradesTwo(bars)) return NONE;
  const graded = bars.flatMap((facts, place) => gradedOf(facts, place) ?? []);
  if (graded.every(({ grade }) => grade === graded[0]?.grade)) return NONE;
  return {
    graded,
    made: byMade(graded),
    alike: [...byLetters(graded), ...byThickness(graded), ...bySize(graded)],
  };
}

function gradeAndSize(facts: BarFacts): string {
  const graded = gradedOf(facts, 0);
  return graded === null ? "" : `${graded.column}:${graded.typed}:${facts.row.sizeTyped}`;
}

const SIZE = /^(?:\d+\s?-\s?)?([^\d]{0,4}?)\s?(\d{1,2}(?:[.,]\d)?)(?:\s?mm)?$/iu;

function gradedOf({ row, sheet }: BarFacts, place: number): Graded | null {
  const column = gradeColumn(row.table);
  const [, letters, size] = SIZE.exec(row.sizeTyped?.trim() ?? "") ?? [];
  if (column === undefined || letters === undefined || row.struckThrough || row.superseded === true)
    return null;
  const { typed, grade } = gradeIn(sheet.sheet.cell(row.row, column), row.table);
  if (typed === "") return null;
  const number = Number((size ?? "").replace(",", "."));
  return { place, column, typed, grade, letters: letters.toUpperCase(), size: number };
}

function gradeColumn({ columns }: TableReading): number | undefined {
  return (columns.get("grade") ?? columns.get("size"))?.column;
}

type GradeTyped = Pick<Graded, "typed" | "grade">;

const NO_GRADE: GradeTyped = { typed: "", grade: "" };
/** by the text of a column for grades, and of one for sizes */
const gradesIn = { own: new Memo<string, GradeTyped>(), size: new Memo<string, GradeTyped>() };

/** The one grade that the cell names. */
function gradeIn(cell: Cell, { columns }: TableReading): GradeTyped {
  const isOwn = columns.has("grade");
  if (typeof cell === "number" && isOwn) return { typed: String(cell), grade: String(cell) };
  if (typeof cell !== "string") return NO_GRADE;
  if (cell.length > STRAY_GRADE.value.longest) return readGrade(cell, isOwn);
  return (isOwn ? gradesIn.own : gradesIn.size).of(cell, () => readGrade(cell, isOwn));
}

function readGrade(cell: string, isOwn: boolean): GradeTyped {
  const named = namedInText(cell).filter(({ isKnown }) => isKnown);
  const typed = named[0]?.typed ?? (isOwn ? cell.trim() : "");
  return typed === "" || named.length > 1 ? NO_GRADE : { typed, grade: plainName(typed) };
}

/** False where no two rows can have two grades. */
function areGradesTwo(bars: readonly BarFacts[]): boolean {
  let first: string | null = null;
  for (let place = 0; place < bars.length; place += 1) {
    const { row, sheet } = bars[place] as BarFacts;
    const column = gradeColumn(row.table);
    if (column === undefined) continue;
    const { typed, grade } = gradeIn(sheet.sheet.cell(row.row, column), row.table);
    if (typed === "") continue;
    if (first !== null && grade !== first) return true;
    first = grade;
  }
  return false;
}

function told({ place, column, typed }: Graded, by: Off["by"], instead: string, others: string): Off {
  return { place, column, typed, by, instead, others };
}

/** Steels that are made thin alone. */
function byMade(graded: readonly Graded[]): readonly Off[] {
  const off = graded.filter(
    ({ grade, size }) => size > (MADE_UP_TO.value[grade] ?? Number.POSITIVE_INFINITY),
  );
  if (off.length === 0 || off.length > Math.max(1, most * graded.length)) return [];
  return off.map((one) => told(one, "made", "", `${MADE_UP_TO.value[one.grade]} mm`));
}

/** Sizes that a title or note gives to another grade. */
function byNotes(graded: readonly Graded[], sheet: SheetFacts): readonly Off[] {
  const notes = notesOf(sheet);
  if (notes.length < 2) return [];
  const givenTo = (size: number) => notes.filter(({ holds }) => holds(size));
  const asked = graded.filter(
    ({ grade, size }) => notes.some((note) => note.grade === grade) && givenTo(size).length > 0,
  );
  const off = asked.filter(({ grade, size }) => !givenTo(size).some((note) => note.grade === grade));
  if (asked.length - off.length < leastKept || off.length > Math.max(1, most * asked.length)) return [];
  return off.map((one) => told(one, "note", givenTo(one.size)[0]?.typed ?? "", ""));
}

/** A note gives all steel of the list the grade of all other rows: "Todo el acero A630-420H". */
function byAll(graded: readonly Graded[], { sheet, reading }: SheetFacts): readonly Off[] {
  const rows = new Map<string, Graded[]>();
  for (const one of graded) rows.set(one.grade, [...(rows.get(one.grade) ?? []), one]);
  const [[grade, kept] = ["", []], ...others] = [...rows].sort(([, a], [, b]) => b.length - a.length);
  const off = others.flatMap(([, few]) => few);
  if (kept.length < leastKept || off.length > Math.max(1, most * graded.length)) return [];
  const texts = [...noteTexts(sheet, reading)]
    .map(({ text }) => text)
    .filter((text) => text.length <= GRADE_OF_SIZES.value.longest);
  const saysAll = texts.some((text) => {
    if (!OF_ALL.test(text)) return false;
    const plain = plainName(text);
    return plain.includes(grade) && off.every((one) => !plain.includes(one.grade));
  });
  if (saysAll) return off.map((one) => told(one, "all", kept[0]?.typed ?? grade, ""));
  // one row alone that has another grade than the title's, which knows of no second one
  const [odd, another] = off;
  if (odd === undefined || another !== undefined) return [];
  const isNamed = texts.some((text) => namesGrade(text, grade));
  const isAlone = texts.every(
    (text) =>
      !namesGrade(text, odd.grade) && namedInText(text).every((one) => !one.isKnown || one.name === grade),
  );
  return isNamed && isAlone ? [told(odd, "title", kept[0]?.typed ?? grade, String(kept.length))] : [];
}

/** Grades of figures alone stand behind a word: "Gr. 60". */
function namesGrade(text: string, grade: string): boolean {
  if (/\D/.test(grade)) return grade.length >= LEAST_NAME && plainName(text).includes(grade);
  return new RegExp(
    `(?:^|[^\\p{L}])(?:${GRADE_WORDS.value.join("|")})[^\\p{L}\\d]{0,4}${grade}(?!\\d)`,
    "iu",
  ).test(text);
}

const LEAST_NAME = 4;

const OF_ALL = new RegExp(`(?<!\\p{L})(?:${ALL_STEEL.value.join("|")})`, "iu");

function notesOf({ sheet, reading }: SheetFacts): readonly GradeOfNote[] {
  return [...noteTexts(sheet, reading)].flatMap(({ text }) => gradesInNote(text));
}

/** All other bars of these letters have one grade, and all others of the grade letters that have no other grade. */
function byLetters(graded: readonly Graded[]): readonly Off[] {
  const gradesOf = counted(
    graded,
    ({ letters }) => letters,
    ({ grade }) => grade,
  );
  const lettersOf = counted(
    graded,
    ({ grade }) => grade,
    ({ letters }) => letters,
  );
  return graded.flatMap((one) => {
    if (one.letters === "") return [];
    const usual = [...(gradesOf.get(one.letters) ?? [])].filter(([grade]) => grade !== one.grade);
    const own = gradesOf.get(one.letters)?.get(one.grade) ?? 0;
    const others = [...(lettersOf.get(one.grade) ?? [])].filter(([letters]) => letters !== one.letters);
    const [[instead, kept] = ["", 0], second] = usual;
    const rows = others.reduce((sum, [, count]) => sum + count, 0);
    if (own > 1 || second !== undefined || kept < leastKept || rows < leastOfGrade) return [];
    if (others.some(([letters]) => (gradesOf.get(letters)?.size ?? 0) > 1)) return [];
    const letters = others.map(([one]) => one).join(" and ");
    return [told(one, "letters", typedOf(graded, instead), letters)];
  });
}

/** All other bars of the grade are thinner than all of the other grade, which another bar of the size has. */
function byThickness(graded: readonly Graded[]): readonly Off[] {
  const sizesOf = new Map<string, number[]>();
  for (const { grade, size } of graded) {
    const sizes = sizesOf.get(grade);
    if (sizes === undefined) sizesOf.set(grade, [size]);
    else sizes.push(size);
  }
  if (sizesOf.size !== 2) return [];
  const [[one, ones] = ["", []], [other, others] = ["", []]] = [...sizesOf];
  return [...thickAmong(graded, one, ones, other, others), ...thickAmong(graded, other, others, one, ones)];
}

function thickAmong(
  graded: readonly Graded[],
  thin: string,
  thinSizes: readonly number[],
  thick: string,
  thickSizes: readonly number[],
): readonly Off[] {
  const sorted = [...thinSizes].sort((a, b) => a - b);
  const [largest = 0, next = 0] = [sorted.at(-1), sorted.at(-2)];
  const least = thickSizes.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  if (sorted.length <= leastOfGrade || thickSizes.length < leastKept) return [];
  const off = graded.find(({ grade, size }) => grade === thin && size === largest);
  const isAlike = ({ grade, letters, size }: Graded) =>
    grade === thick && size === largest && letters === off?.letters;
  return off === undefined || next >= least || largest < thicker * next || !graded.some(isAlike)
    ? []
    : [told(off, "thickness", typedOf(graded, thick), `${next} mm`)];
}

/** In a list in which each size has one grade: all others of the bar's size have another one, and its own is of other sizes. */
function bySize(graded: readonly Graded[]): readonly Off[] {
  const gradesOf = counted(
    graded,
    ({ size }) => String(size),
    ({ grade }) => grade,
  );
  const mixed = [...gradesOf].filter(([, grades]) => grades.size > 1);
  const [[size, grades] = ["", new Map<string, number>()], another] = mixed;
  if (another !== undefined || grades.size !== 2) return [];
  const [[grade, own] = ["", 0], [instead, kept] = ["", 0]] = [...grades].sort(([, a], [, b]) => a - b);
  const one = graded.find((row) => String(row.size) === size && row.grade === grade);
  const rows = graded.filter((row) => row.grade === grade).length - own;
  return one === undefined || own > 1 || kept <= leastOfGrade || rows < leastKept
    ? []
    : [told(one, "size", typedOf(graded, instead), String(kept))];
}

function typedOf(graded: readonly Graded[], grade: string): string {
  return graded.find((one) => one.grade === grade)?.typed ?? grade;
}

function counted(
  graded: readonly Graded[],
  key: (one: Graded) => string,
  value: (one: Graded) => string,
): ReadonlyMap<string, ReadonlyMap<string, number>> {
  const found = new Map<string, Map<string, number>>();
  for (const one of graded) {
    const values = found.get(key(one)) ?? new Map<string, number>();
    values.set(value(one), (values.get(value(one)) ?? 0) + 1);
    found.set(key(one), values);
  }
  return found;
}
