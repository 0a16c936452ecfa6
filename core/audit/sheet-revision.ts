import type { SheetFacts } from "../bar/sheet-facts";
import { scheduleHead } from "../schedule/schedule-head";

/** Which schedule a sheet is, and which revision of it; null where the sheet says neither. */
export interface SheetRevision {
  /** what two revisions of one schedule have in common */
  readonly schedule: string | null;
  readonly revision: string | null;
}

const WORDS = "rev(?:ision)?|issue|index|indice|ind";
/** "Culvert rev B", "Rev B", "S-101_RevB", "S-101 (rev. B)" */
const NAMED = new RegExp(
  `^(.*?)(?:^|[\\s_\\-.,(])(?:${WORDS})[\\s._-]*([A-Z]|[A-Z]?\\d{1,2})\\)?(?:\\s*\\(.*\\))?$`,
  "i",
);
/** A revision alone, or with a date or words behind it. */
const REVISION = new RegExp(`^(?:(?:${WORDS})\\.?\\s*)?([A-Z]|[A-Z]?\\d{1,2}|-)(?=$|[\\s,;:(])`, "i");

/**
 * Schedule and revision out of a sheet's title block, else out of its name: "S-101" with "Rev B" beside it,
 * or sheets called "Culvert rev A" and "Culvert rev B".
 */
export function sheetRevision({ reading, name }: Pick<SheetFacts, "reading" | "name">): SheetRevision {
  const head = scheduleHead(reading);
  const named = NAMED.exec(name.trim());
  const reference = head.schedule ?? head.drawing;
  const inReference = reference === null ? null : NAMED.exec(reference);
  const typed = head.revision === null ? null : REVISION.exec(head.revision.trim());
  const revision = typed?.[1] ?? inReference?.[2] ?? named?.[2] ?? null;
  const schedule =
    reference === null
      ? named && `sheets called ${plain(named[1] ?? "")}`
      : `${plain(head.job ?? "")} ${plain(inReference?.[1] ?? reference)}`;
  return { schedule, revision: revision?.toUpperCase() ?? null };
}

/** "S-101 rev B" as what is before the revision, and the revision; null where the name says none. */
export function revisionInName(name: string): { readonly rest: string; readonly revision: string } | null {
  const found = NAMED.exec(name.trim());
  return found === null ? null : { rest: found[1] ?? "", revision: (found[2] ?? "").toUpperCase() };
}

/** Letters and digits alone, in capitals: how references are compared. */
export function plain(text: string): string {
  return text.toUpperCase().replace(/[^\p{L}\p{N}]/gu, "");
}
