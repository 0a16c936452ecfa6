import type { Grade } from "../standards/port";

const MOST_REMEMBERED = 1000;
const remembered = new WeakMap<readonly Grade[], Map<string, Grade | null>>();

/**
 * The grade that a text means: by its letter, by its name, or by its yield and class ("B500B",
 * "Fe 500", "grade 500"); null where the list holds none such. Remembered by text.
 */
export function findGrade(grades: readonly Grade[], text: string): Grade | null {
  let known = remembered.get(grades);
  if (known === undefined || known.size >= MOST_REMEMBERED) {
    known = new Map();
    remembered.set(grades, known);
  }
  let grade = known.get(text);
  if (grade === undefined) {
    grade = search(grades, plain(text));
    known.set(text, grade);
  }
  return grade;
}

function search(grades: readonly Grade[], wanted: string): Grade | null {
  return (
    grades.find(({ prefixes }) => prefixes.some((prefix) => prefix.toUpperCase() === wanted)) ??
    grades.find(({ name }) => bare(plain(name)) === bare(wanted)) ??
    byYield(grades, wanted)
  );
}

/** "B500B" is the grade of that yield whose name goes on with the same class, else the first of that yield. */
function byYield(grades: readonly Grade[], wanted: string): Grade | null {
  const parts = /^[A-Z]{0,6}(\d{2,3})([A-Z]{0,2})$/.exec(wanted);
  if (parts === null) return null;
  const alike = grades.filter((grade) => grade.yield === Number(parts[1]));
  return alike.find(({ name }) => plain(name).includes(`${parts[1]}${parts[2]}`)) ?? alike[0] ?? null;
}

/** "GRADE60" and "60" are one grade. */
function bare(name: string): string {
  return name.replace(/^(?:GRADE|GR)(?=\d)/, "");
}

function plain(name: string): string {
  return name.toUpperCase().replace(/[^A-Z0-9]/g, "");
}
