import type { Cell, Sheet } from "../schedule/sheet";
import type { OwnStandard } from "../standards/own-standard";
import { ownSections } from "./own-sections";
import { OWN_SHEET } from "./own-words.data";

/** A cell of the sheet that is not in force, and why; rows and columns within the used range, from 0. */
export interface OwnProblem {
  readonly row: number;
  readonly column: number;
  readonly typed: Cell;
  readonly reason: string;
}

/** What a sheet Standard says, and what of it could not be taken. */
export interface OwnSheet {
  readonly own: OwnStandard;
  readonly problems: readonly OwnProblem[];
}

/** True for the name that such a sheet has, in any case and with spaces around. */
export function hasOwnName(name: string): boolean {
  return name.trim().toLowerCase() === OWN_SHEET.toLowerCase();
}

/** True of the sheet that holds what its owner looked up: by its name and its tables, for a schedule may be called so. */
export function isOwnSheet(sheet: Sheet): boolean {
  return hasOwnName(sheet.name) && ownSections(sheet).length > 0;
}
