import type { Grade } from "../standards/port";
import { GRADE_SPELLINGS, GRADE_WORDS } from "./grade-words.data";
import { plainGrade } from "./plain-grade";

const MOST_REMEMBERED = 1000;
const remembered = new WeakMap<readonly Grade[], Map<string, Grade | null>>();

/**
 * The grade that a text means: by its letter, by its name, or by its yield and class ("B500B", "b 500 b",
 * "Fe 500D", "Gr. 60", "BSt 500 S"); null where the list holds none such, also where it holds the yield
 * and not the class. Remembered by text.
 */
export function findGrade(grades: readonly Grade[], text: string): Grade | null {
  let known = remembered.get(grades);
  if (known === undefined || known.size >= MOST_REMEMBERED) {
    known = new Map();
    remembered.set(grades, known);
  }
  let grade = known.get(text);
  if (grade === undefined) {
    grade = search(grades, plainGrade(text));
    known.set(text, grade);
  }
  return grade;
}

function search(grades: readonly Grade[], wanted: string): Grade | null {
  return (
    grades.find(({ prefixes }) => prefixes.some((prefix) => prefix.toUpperCase() === wanted)) ??
    grades.find(({ name }) => plainGrade(name) === wanted) ??
    byYield(grades, inPresentSpelling(wanted))
  );
}

/** The first grade of the yield that is written with these letters and, where one is said, has the class. */
function byYield(grades: readonly Grade[], wanted: string): Grade | null {
  const [, letters = "", digits = "", ductility = ""] = /^([A-Z]*)(\d{2,3})([A-Z]{0,2})$/.exec(wanted) ?? [];
  const alike = grades.filter(
    (grade) => grade.yield > 0 && grade.yield === Number(digits) && isWrittenWith(grade, letters),
  );
  return (
    alike.find(({ name }) => plainGrade(name).includes(digits + ductility)) ?? unclassed(alike, ductility)
  );
}

function unclassed(alike: readonly Grade[], ductility: string): Grade | null {
  return ductility === "" ? (alike[0] ?? null) : null;
}

function isWrittenWith({ name, prefixes }: Grade, letters: string): boolean {
  const leading = /^[A-Z]*/.exec(plainGrade(name))?.[0] ?? "";
  return GRADE_WORDS.includes(letters) || letters === leading || prefixes.includes(letters);
}

function inPresentSpelling(wanted: string): string {
  for (const { written, read } of GRADE_SPELLINGS) {
    const pattern = new RegExp(written);
    if (pattern.test(wanted)) return wanted.replace(pattern, read);
  }
  return wanted;
}
