/**
 * Barwright as a library: what the command line does, for other programs. Nothing here prints, writes a file
 * or throws for what a book holds: an answer is a value or a `Refusal`.
 */
export {
  allPapers,
  type Book,
  type BookDigest,
  type CheckedBook,
  type CheckReport,
  checkBooks,
  checkReport,
  type DigestQuestion,
  digestBook,
  isBroken,
  type JobBar,
  type JobFinding,
  type JobPapers,
  type JobQuestion,
  type JobTonnage,
  JobTotals,
  type JudgedJob,
  judgeJob,
  openForJob,
  readSchedules,
  type TonnageReport,
  tonnageOf,
  tonnageReport,
} from "../../core/jobs";
export { type Cell, type Sheet, sheetFromRows } from "../../core/schedule";
export { resolveStandard, type Standard } from "../../core/standards";
export { isRefusal, Refusal, refusalText } from "../../core/units/refusal";
export { type BookFile, openBookOf } from "./open-book";
