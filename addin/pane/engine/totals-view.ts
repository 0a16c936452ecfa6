import type { TonnageGroup } from "../../../core/totals";
import type { SheetContent } from "../../workbook/workbook-port";

/** Tonnes by pour and size, as the pane shows them and as a sheet of the workbook follows them. */
export interface TotalsView {
  readonly sheet: string;
  /** what stands for the pours where the schedule names none */
  readonly groupedBy: TonnageGroup;
  /** why no total is shown until the user says how the sheet is read; then all else is empty. Null where it is */
  readonly held: string | null;
  readonly sizes: readonly string[];
  readonly pours: readonly {
    readonly pour: string;
    /** when it is cast or wanted, as the schedule writes it; empty where it does not */
    readonly dates: readonly string[];
    /** as `sizes`; blank where the pour has none */
    readonly bySize: readonly string[];
    readonly total: string;
  }[];
  readonly bySize: readonly string[];
  readonly total: string;
  /** by the lengths as typed, which are cut and loaded; null where it is the same figure */
  readonly asTyped: string | null;
  /** waste, hours and cost by the rates of the Shop sheet, the total last; null without any, blank where not known */
  readonly costs:
    | readonly {
        readonly pour: string;
        readonly waste: string;
        readonly hours: string;
        readonly cost: string;
      }[]
    | null;
  /** an `<svg>` element */
  readonly chart: string;
  /** pours by sizes with heads and totals, for the clipboard and for a file */
  readonly table: readonly (readonly (string | number)[])[];
  /** the Totals sheet, with live formulas */
  readonly content: SheetContent;
  /** what the figures leave out or rest on */
  readonly notes: readonly string[];
}
