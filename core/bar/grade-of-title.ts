import { plainName } from "../bars/known-grade";
import { STRAY_GRADE } from "../bars/known-grades.data";
import { cleanText } from "../schedule/cells/clean-text";
import type { BarFacts } from "./bar-facts";
import { saidOnce } from "./note-texts";
import type { SheetFacts } from "./sheet-facts";
import { namedInText } from "./stray-grades";

/** The one bar whose grade is another than a title or a note gives and all other bars have. */
export interface GradeOffTitle {
  readonly facts: BarFacts;
  readonly typed: string;
  /** the grade of the others, as they write it */
  readonly usual: string;
  readonly others: number;
  /** the cell that says it */
  readonly cell: string;
}

/** "Grade 60" as rows write it: Gr60 */
const IN_FULL = /\bgrade\s?(?=\d)/giu;

/** The bar that alone has another grade than the sheet says; null where none has, several do, or the sheet says none. */
export function gradeOffTitle(sheet: SheetFacts): GradeOffTitle | null {
  const graded = sheet.answers.those(gradeCell);
  const byName = new Map<string, { readonly facts: BarFacts; readonly answer: string }[]>();
  for (const one of graded) {
    const name = plainName(one.answer.replace(IN_FULL, "Gr"));
    const same = byName.get(name);
    if (same === undefined) byName.set(name, [one]);
    else same.push(one);
  }
  const sorted = [...byName].sort(([, a], [, b]) => b.length - a.length);
  const several = sorted.filter(([, rows]) => rows.length > 1);
  const [[oddName, [one]] = ["", []], ...more] = sorted.slice(several.length);
  const [[, others] = ["", []]] = several;
  if (one === undefined || more.length > 0 || others.length < STRAY_GRADE.value.rows) return null;
  const said = saidOnce(sheet, (note) => {
    const parts = note.replace(IN_FULL, "Gr").split(/[,;]|\.\s/);
    const names = new Set(parts.flatMap((part) => namedInText(part).map((found) => found.name)));
    // plain bars may have a grade of their own, which the same note gives
    const areNamed = several.every(([name]) => names.has(name));
    const isOfThese = names.has(oddName) || several.some(([name]) => names.has(name));
    return isOfThese ? [{ isUsual: areNamed && !names.has(oddName) }] : [];
  });
  if (said?.isUsual !== true) return null;
  return {
    facts: one.facts,
    typed: one.answer,
    usual: others[0]?.answer ?? "",
    others: others.length,
    cell: said.cell,
  };
}

/** What the cell of the grade names; null in tables without such a column, of blanks, and of bars that are not made. */
function gradeCell(facts: BarFacts): string | null {
  const { row, sheet } = facts;
  const column = row.table.columns.get("grade")?.column;
  if (column === undefined || row.struckThrough || row.superseded === true) return null;
  const cell = sheet.sheet.cell(row.row, column);
  const text = typeof cell === "string" ? cleanText(cell) : "";
  return namedInText(text.replace(IN_FULL, "Gr")).length === 1 ? text : null;
}
