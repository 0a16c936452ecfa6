import type { SheetFacts } from "../bar/sheet-facts";
import type { Sheet } from "../schedule/sheet";
import type { Standard } from "../standards/port";
import type { AuditedSheet } from "./audit-report";
import type { AuditSettings } from "./audit-settings";
import type { RowsHelper } from "./rows-apart";
import type { Rule } from "./rule";

/** What an audit is asked. */
export interface AuditQuestion {
  /** all sheets to be judged together; one named Shop is read for what the yard owns, and is no schedule */
  readonly sheets: readonly Sheet[];
  /** nobody chose the standard: it is the default */
  readonly isStandardAssumed?: boolean;
  /** nobody chose the standard: it is the one that the sheets name */
  readonly isStandardNamed?: boolean;
  readonly standard: Standard;
  /** the one sheet to be judged and reported on; the others are read for what only several show */
  readonly only?: string | null;
  readonly settings?: AuditSettings;
  /** no edit will follow: what only a re-check goes by is not kept */
  readonly isOnce?: boolean;
  /** all rules unless given */
  readonly rules?: readonly Rule[];
  /** who judges rows of long sheets meanwhile, where limits are as they come */
  readonly helper?: RowsHelper | null;
  /** is given the sheets once all of each is known but its findings: what else they are asked, while the helper judges rows */
  readonly meanwhile?: ((sheets: readonly AuditedSheet[], facts: readonly SheetFacts[]) => void) | null;
}
