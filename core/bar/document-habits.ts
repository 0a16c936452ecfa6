import type { ScheduleReading } from "../schedule/bar-row";
import type { Sheet } from "../schedule/sheet";
import type { AnswersOfBars } from "./answers-of-bars";
import type { BarFacts } from "./bar-facts";
import { DOCUMENT_KEPT } from "./identities.data";
import { namedInCells } from "./named-in-cells";
import { ownDeviations } from "./own-deviations";
import type { DocumentHabits } from "./sheet-habits";

/** Asked of a sheet whose rows keep to another document, or to none, and that does not name the one in force. */
export function documentHabits(
  answers: AnswersOfBars,
  sheet: Sheet,
  reading: ScheduleReading,
): DocumentHabits {
  const lengthsElsewhere = answers.whole(areElsewhere, lengthKept);
  const endsOwnWay = answers.whole(areOwnWay, endKept);
  const lengthsOwnWay = ownDeviations(answers, reading.lengthStep ?? null);
  const inForce = answers.length === 0 ? undefined : answers.bar(0).standard.id;
  const isDoubted =
    (lengthsElsewhere || endsOwnWay || lengthsOwnWay !== "") &&
    inForce !== undefined &&
    !namesDocumentOf(sheet, reading, inForce) &&
    !hasItsLetters(answers);
  return isDoubted
    ? { lengthsElsewhere, endsOwnWay, lengthsOwnWay }
    : { lengthsElsewhere: false, endsOwnWay: false, lengthsOwnWay: "" };
}

/** Whether the sheet's own words name the document in force. */
export function namesDocumentOf(sheet: Sheet, reading: ScheduleReading, inForce: string): boolean {
  for (const { id } of namedInCells(sheet, reading)) if (inForce.split("+").includes(id)) return true;
  return false;
}

/** "H16": most bars have letters that the document in force writes for its steels today. */
function hasItsLetters(answers: AnswersOfBars): boolean {
  const looked = Math.min(answers.length, DOCUMENT_KEPT.value.looked);
  let own = 0;
  for (let at = 0; at < looked; at += 1) {
    const { row, standard } = answers.bar(at);
    const prefix = row.size?.prefix ?? "";
    if (prefix === "") continue;
    const grade = standard.grades.find(({ prefixes }) => prefixes.includes(prefix));
    if (grade !== undefined && grade.superseded === undefined) own += 1;
  }
  return own * 2 > looked;
}

type Kept = "kept" | "other" | "none";

/** Bent bars by code, whose typed length the document's formula or geometry tells. */
function lengthKept(facts: BarFacts): Kept {
  if (facts.row.length === null || facts.isPath || (facts.bendCount ?? 0) === 0) return "none";
  const { kind } = facts.lengthJudgement;
  if (kind === "unjudged") return "none";
  return kind === "differs" ? "other" : "kept";
}

function areElsewhere(bars: readonly BarFacts[]): boolean {
  return isOther(bars, lengthKept, DOCUMENT_KEPT.value.lengths);
}

/** Links whose ends the document prints a least for. */
function endKept(facts: BarFacts): Kept {
  const limits = facts.definition?.limits ?? [];
  if (facts.use !== "link" || (facts.row.size?.prefix ?? "") !== "") return "none";
  if (!limits.some(({ text }) => /\bP\b/.test(text))) return "none";
  return facts.brokenLimits.some(({ text }) => /\bP\b/.test(text)) ? "other" : "kept";
}

function areOwnWay(bars: readonly BarFacts[]): boolean {
  return isOther(bars, endKept, DOCUMENT_KEPT.value.ends);
}

function isOther(bars: readonly BarFacts[], keptBy: (facts: BarFacts) => Kept, share: number): boolean {
  const { looked, fewest } = DOCUMENT_KEPT.value;
  let [kept, others] = [0, 0];
  for (const facts of bars) {
    if (kept + others >= looked) break;
    const found = keptBy(facts);
    if (found === "kept") kept += 1;
    if (found === "other") others += 1;
  }
  return others >= fewest && others >= share * (kept + others);
}
