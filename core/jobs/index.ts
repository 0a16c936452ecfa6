export { asksOf, holdsOf } from "../audit/holds";
export type { Book, Visibility } from "./book";
export { type CheckedBook, checkBooks, checkOpened, isBroken } from "./check";
export { type CheckReport, checkReport, type ToldFinding } from "./check-report";
export { type CompareJob, compareBooks, type Revision } from "./compare";
export { type Costs, costNotes, costReport, costsOf } from "./costs";
export {
  cutListOf,
  piecesOf,
  planPieces,
  readForCutting,
} from "./cut-list";
export { type HeatRow, type HeatUse, heatsByRow, heatUses, plansOfPieces, plansWithHeats } from "./heats";
export { heldRows } from "./held-by-stock";
export { labelsOf } from "./labels";
export { loadsOf } from "./loads";
export { askedBars } from "./many/asked-bars";
export { filteredBy } from "./many/bar-names";
export { type BookDigest, type DigestQuestion, digestBook } from "./many/book-digest";
export { countedBars } from "./many/counted-bars";
export { digestSchedule } from "./many/digest-schedule";
export type { JobBar } from "./many/job-bar";
export { type JobFinding, jobPlaceWords } from "./many/job-finding";
export { allPapers, type JobPapers } from "./many/job-papers";
export {
  type BarFilter,
  isAsked,
  JOB_GROUPS,
  type JobGroup,
  type JobTonnage,
  JobTotals,
  type PlacedBar,
} from "./many/job-totals";
export { type JudgedJob, judgeJob } from "./many/judge-job";
export { notesInJob } from "./many/notes-in-job";
export { ofAnotherJobWords } from "./many/of-another-job-words";
export type { ScheduleEntry } from "./many/schedule-entry";
export { unknownFilter } from "./many/unknown-filter";
export { measuredFindings } from "./measured";
export { isAmongHeld, type NotToMake, notToMakeText, piecesNotToMake, piecesToAsk } from "./not-to-make";
export {
  type JobQuestion,
  type OpenedBook,
  openForJob,
  type ReadBook,
  readSchedules,
  shopNotes,
} from "./read-book";

export { type SevereBar, type SevereBars, severeBars, severeWords, wholeSheetWords } from "./severe-bars";
export { isUnmakeable, type TicketsJob, ticketsOf, toSendOf } from "./tickets";

export { noneInTotal, tonnageOf } from "./tonnage";
export { type TonnageReport, tonnageReport } from "./tonnage-report";
export { unplannedWords } from "./unplanned-words";
