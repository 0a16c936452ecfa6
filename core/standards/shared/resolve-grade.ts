import { findGrade } from "../../bars/find-grade";
import { plainGrade } from "../../bars/plain-grade";
import { defineRefusal, type Refusal } from "../../units/refusal";
import type { Use } from "../port";
import type { StandardTables } from "./standard-tables";

const gradeNotHeld = defineRefusal(
  "grade-not-held",
  "not-held",
  `grade "{typed}" is none of {standard}: it holds {held}`,
);

/**
 * The grade's name, by name, letter, or yield and class as the trade writes them; the one taken where none
 * is said, also where a bare yield leaves open which of its grades is meant; null where no row asks.
 */
export function resolveGrade(
  typed: string | undefined,
  use: Use,
  tables: StandardTables,
): string | null | Refusal {
  const wanted = typed?.trim() ?? "";
  const unsaid = tables.gradeUnsaid?.[use === "link" ? "link" : "main"] ?? null;
  if (wanted === "") return unsaid;
  const grade = findGrade(tables.grades, wanted);
  if (grade !== null)
    return isBareYield(wanted) && yieldOf(unsaid, tables) === grade.yield ? unsaid : grade.name;
  const held = tables.grades.map(({ name }) => name).join(", ");
  return gradeNotHeld({ typed: typed ?? "", standard: tables.id, held: held === "" ? "none" : held });
}

function isBareYield(wanted: string): boolean {
  return /^\d+$/.test(plainGrade(wanted));
}

function yieldOf(name: string | null, { grades }: StandardTables): number | undefined {
  return grades.find((grade) => grade.name === name)?.yield;
}
