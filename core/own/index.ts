export { ownNotes } from "./own-notes";
export { hasOwnName } from "./own-sheet";
export { ownTemplate } from "./own-template";
export { OWN_SHEET } from "./own-words.data";
export { joinOwn, readOwn } from "./read-own";
export { ownOfSheets, ownSheetOf, standardOfBook } from "./standard-of-book";
