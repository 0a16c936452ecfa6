export type { Book, Visibility } from "./book";
export { type CheckedBook, checkBooks, isBroken } from "./check";
export { type CompareJob, compareBooks, type Revision } from "./compare";
export { type CutListJob, type CutListQuestion, cutListOf, readForCutting } from "./cut-list";
export { type LabelsJob, labelsOf } from "./labels";
export {
  type JobQuestion,
  type OpenedBook,
  openForJob,
  type ReadBook,
  readSchedules,
  shopNotes,
} from "./read-book";
export { isUnmakeable, type TicketsJob, type TicketsQuestion, ticketsOf } from "./tickets";
export { type TonnageJob, tonnageOf } from "./tonnage";
