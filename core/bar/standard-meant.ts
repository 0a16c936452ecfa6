import { findGrade } from "../bars/find-grade";
import type { BarRow } from "../schedule/bar-row";
import { resolveStandard, STANDARD_IDS } from "../standards/index";
import type { SizeReading, Standard } from "../standards/port";
import { isRefusal } from "../units/refusal";
import type { AnswersOfBars } from "./answers-of-bars";
import type { BarFacts } from "./bar-facts";
import type { StandardMeant } from "./sheet-habits";

const FEWEST_ROWS = 3;
const NEARLY_ALL = 0.9;

/**
 * Another standard held that nearly all of the bars' sizes and grades are of, where most of them are none of
 * the standard in force; null where the standard in force fits or none fits better.
 */
export function standardMeant(
  answers: AnswersOfBars,
  inForce: Standard | undefined,
  /** whether the sheet names the standard in force: then letters alone, such as "D12", speak for no other */
  isNamed: (id: string) => boolean,
): StandardMeant | null {
  const { bars } = answers;
  if (inForce === undefined || bars.length < FEWEST_ROWS) return null;
  const misfitting = answers.those(misfitsStandard);
  const misfits = misfitting.length;
  const first = misfitting[0]?.facts.row;
  if (first === undefined || misfits * 2 <= bars.length) return null;
  let best: { id: string; fitting: number } | null = null;
  for (const id of STANDARD_IDS) {
    const other = id === inForce.id ? null : resolveStandard(id);
    if (other === null || isRefusal(other)) continue;
    const fitting = bars.filter(({ row }) => fits(row, other)).length;
    if (fitting >= bars.length * NEARLY_ALL && fitting > (best?.fitting ?? 0)) best = { id, fitting };
  }
  if (best === null) return null;
  const areLetters = misfitting.every(({ facts }) => facts.row.grade === null && facts.bar !== null);
  return areLetters && isNamed(inForce.id) ? null : { ...best, first, misfits };
}

/** Letters of a country that nearly all bars have before sizes that the standard in force holds; empty where there are none. */
export function lettersElsewhere(
  answers: AnswersOfBars,
  inForce: Standard | undefined,
  isNamed: (id: string) => boolean,
): string {
  const letters = answers.those(letterNotHeld);
  const [first] = letters;
  if (first === undefined || inForce === undefined || letters.length < answers.length * NEARLY_ALL) return "";
  return letters.every(({ answer }) => answer === first.answer) && isNamed(inForce.id) ? first.answer : "";
}

const letterNotHeld = ({ row, bar, grade, gradeName }: BarFacts): string | null =>
  row.grade === null && bar !== null && grade === null ? gradeName : null;

const misfitsStandard = ({ row, standard }: BarFacts) => (isHeld(row.size, row, standard) ? null : true);

function fits(row: BarRow, standard: Standard): boolean {
  if (row.sizeTyped === null) return false;
  const size = standard.readSize(row.sizeTyped);
  return !isRefusal(size) && isHeld(size, row, standard);
}

function isHeld(size: SizeReading | null, row: BarRow, standard: Standard): boolean {
  if (size === null || size.bar === null) return false;
  const holds = (grade: string) => standard.grades.length === 0 || findGrade(standard.grades, grade) !== null;
  const isRead =
    size.prefix === "" || holds(size.prefix) || !isRefusal(standard.readSize(row.sizeTyped ?? ""));
  return isRead && (row.grade === null || holds(row.grade));
}
