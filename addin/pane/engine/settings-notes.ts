import { type AuditSettings, correctionWords } from "../../../core/audit";

/** What a page or table of a sheet rests on of the settings that the workbook keeps. */
export function settingsNotes(settings: AuditSettings, sheet: string): string[] {
  const { problem } = settings;
  const words = correctionWords(settings, sheet);
  return [
    ...(problem === undefined ? [] : [`settings kept in the workbook could not be read: ${problem}`]),
    ...(words === null ? [] : [words]),
  ];
}
