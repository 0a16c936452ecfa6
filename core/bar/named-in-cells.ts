import type { ScheduleReading } from "../schedule/bar-row";
import type { Sheet } from "../schedule/sheet";
import { type DocumentNamed, documentsNamed } from "../standards/index";
import { noteTexts } from "./note-texts";

/** A document that a sheet names, with the cell that does. */
export interface NamedInCell extends DocumentNamed {
  readonly row: number;
  readonly column: number;
}

/** The documents that titles, headings and notes of a sheet name. */
export function* namedInCells(sheet: Sheet, reading: ScheduleReading): Generator<NamedInCell> {
  for (const { text, row, column } of noteTexts(sheet, reading))
    for (const named of documentsNamed(text)) yield { ...named, row, column };
}
