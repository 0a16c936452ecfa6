export { ownNotes } from "./own-notes";
export { hasOwnName, type OwnProblem, type OwnSheet } from "./own-sheet";
export { type OwnRow, ownTemplate } from "./own-template";
export { OWN_SHEET } from "./own-words.data";
export { joinOwn, readOwn } from "./read-own";
export { ownOfSheets, ownSheetOf, standardOfBook } from "./standard-of-book";
