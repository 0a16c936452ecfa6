import { defineRefusal, type Refusal } from "../../units/refusal";
import type { Grade, Use } from "../port";
import type { StandardTables } from "./standard-tables";

const gradeNotHeld = defineRefusal(
  "grade-not-held",
  "not-held",
  `grade "{typed}" is none of {standard}: it holds {held}`,
);

/** The grade's name by name or by letter; the one taken where none is said; null where no row asks. */
export function resolveGrade(
  typed: string | undefined,
  use: Use,
  tables: StandardTables,
): string | null | Refusal {
  const wanted = typed?.trim().toUpperCase() ?? "";
  if (wanted === "") return tables.gradeUnsaid?.[use === "link" ? "link" : "main"] ?? null;
  const grade = tables.grades.find((held) => isCalled(held, wanted));
  if (grade !== undefined) return grade.name;
  const held = tables.grades.map(({ name }) => name).join(", ");
  return gradeNotHeld({ typed: typed ?? "", standard: tables.id, held: held === "" ? "none" : held });
}

function isCalled(grade: Grade, wanted: string): boolean {
  return (
    plain(grade.name) === plain(wanted) || grade.prefixes.some((prefix) => prefix.toUpperCase() === wanted)
  );
}

function plain(name: string): string {
  return name.toUpperCase().replace(/[^A-Z0-9]/g, "");
}
