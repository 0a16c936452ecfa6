import type { BarFacts } from "../../bar/bar-facts";
import { isMost } from "../../bar/sheet-habits";
import { prefixNotHeld } from "../../standards/index";
import type { Standard } from "../../standards/port";
import { isRefusal, isRefusalOf } from "../../units/refusal";
import { defineRule } from "../rule";

export default defineRule({
  code: "GRADE101",
  name: "unknown-grade",
  severity: "off-standard",
  ofConvention: true,
  asksOnce: true,
  docs: {
    summary: "The grade or type letter is missing or not one of the standard's.",
    why: "Former, hook and lap all hang on the grade; a yard that guesses it may bend the wrong steel.",
    failing: [
      { rows: [{ size: "Q16", shape: "00", A: 1000, length: 1000 }] },
      {
        rows: [
          { size: "H16", shape: "00", A: 1000, length: 1000 },
          { size: "H16", shape: "00", A: 1500, length: 1500 },
          { size: "16", shape: "00", A: 2000, length: 2000 },
        ],
      },
    ],
    passing: [{ rows: [{ size: "H16", shape: "00", A: 1000, length: 1000 }] }],
  },
  messages: {
    unknown: 'grade "{grade}" is none of {standard}: it holds {held}',
    elsewhere:
      'grade "{grade}" is none that {standard} lists; no former of {standard} hangs on the grade, so the bends were checked all the same',
    missing: "no grade is given, while most rows of the sheet give one",
  },
  ofKind: ({ grade }) => grade === null,
  checkRow(facts, context, report) {
    const { standard } = context;
    if (standard.grades.length === 0 || facts.sheet.habits.standardMeant !== null) return;
    const grade = unknownGrade(facts);
    const cite = standard.grades[0]?.cite ?? null;
    if (grade !== null && isSteelOfElsewhere(grade) && !hangsOnGrade(standard, facts.diameter)) {
      const at = facts.row.grade === null ? "size" : "grade";
      const values = { grade, standard: standard.id };
      report({ messageId: "elsewhere", severity: "note", outcome: "unsure", at, values, cite });
      return;
    }
    if (grade !== null) {
      const held = standard.grades
        .flatMap(({ name, prefixes }) => (prefixes.length > 0 ? prefixes : [name]))
        .join(", ");
      report({
        messageId: "unknown",
        // the country's letter before all bars of a list that names the standard
        ...(facts.sheet.habits.lettersElsewhere === grade && {
          severity: "note" as const,
          outcome: "unsure" as const,
        }),
        at: facts.row.grade === null ? "size" : "grade",
        values: { grade, standard: standard.id, held },
        cite,
      });
      return;
    }
    if (facts.gradeName !== null || facts.row.size === null || !isMost(facts.sheet.habits.gradeShare)) return;
    report({ messageId: "missing", at: facts.has("grade") ? "grade" : "size", cite });
  },
});

/** The grade said but not known; null where it is known or none is said. */
function unknownGrade(facts: BarFacts): string | null {
  const { gradeName, row } = facts;
  if (gradeName !== null) return facts.grade === null && !isOpenLetter(facts) ? gradeName : null;
  if (row.size !== null || row.sizeTyped === null) return null;
  const reading = facts.standard.readSize(row.sizeTyped);
  return isRefusalOf(reading, prefixNotHeld) ? String(reading.values.prefix) : null;
}

/** The letter of a size that the document reads though it gives its grades none: the letters are the country's. */
function isOpenLetter({ row, bar, standard }: BarFacts): boolean {
  return row.grade === null && bar !== null && standard.grades.every(({ prefixes }) => prefixes.length === 0);
}

/** A steel named by its yield, as every document names them: "B450C", "500NC". A letter alone is none. */
function isSteelOfElsewhere(grade: string): boolean {
  return /\d{3}/.test(grade);
}

function hangsOnGrade(standard: Standard, diameter: number | null): boolean {
  if (diameter === null) return true;
  const formers = standard.grades.map(({ name }) => {
    const former = standard.former({ diameter, use: "main", grade: name });
    return isRefusal(former) ? null : former.value;
  });
  return new Set(formers).size > 1;
}
