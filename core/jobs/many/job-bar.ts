import { BarFacts } from "../../bar/bar-facts";
import { barLength } from "../../bar/bar-length";
import { SheetFacts } from "../../bar/sheet-facts";
import { markKey } from "../../schedule/mark-key";
import type { Standard } from "../../standards/port";
import type { ReadSheet } from "../../totals/reckon-tonnage";
import { isInTotal, weighRows } from "../../totals/row-mass";
import { isRefusal } from "../../units/refusal";

/** One bar row of a schedule as plain data. Lengths mm, masses kg; null is not known. */
export interface JobBar {
  readonly sheet: string;
  /** the sheet's own row number, from 1 */
  readonly row: number;
  readonly member: string | null;
  readonly mark: string | null;
  readonly size: string;
  /** mm, nominal */
  readonly diameter: number | null;
  readonly grade: string | null;
  readonly shape: string | null;
  readonly dims: readonly (number | null)[];
  readonly radius: number | null;
  /** of one bar, by which it is weighed */
  readonly length: number | null;
  /** as typed */
  readonly scheduled: number | null;
  /** of the bar that is cut, ticketed and loaded: as typed, else as its shape makes it */
  readonly cut: number | null;
  readonly members: number | null;
  readonly count: number | null;
  readonly kg: number | null;
  /** by the length that is cut and loaded, where that is another; with the address of its cell */
  readonly asTyped: { readonly kg: number; readonly cell: string } | null;
  readonly pour: string | null;
  readonly revision: string | null;
  /** in force; null for a bar that is not bent */
  readonly former: number | null;
  readonly bends: number | null;
  /** why it is in no total of its own book; null where it is in one */
  readonly notInTotal: string | null;
  /** A later revision of it stands on another sheet of its book. */
  readonly isReplaced: boolean;
}

const STRUCK = "struck through";

/** The bar rows of a schedule, in its own order. */
export function jobBars({ sheet, reading }: ReadSheet, standard: Standard): JobBar[] {
  const sheetFacts = new SheetFacts(sheet, reading);
  const weighed = weighRows(sheet, reading, standard);
  return reading.bars.map((bar, index): JobBar => {
    const row = weighed[index]!;
    const facts = new BarFacts(bar, sheetFacts, standard);
    const bends = facts.bendCount;
    const known = isInTotal(row) ? row : null;
    const cut = barLength(facts, "to cut");
    return {
      sheet: sheet.name,
      row: sheet.top + bar.row + 1,
      member: bar.member,
      mark: bar.mark,
      size: facts.sizeName,
      diameter: bar.size?.diameter ?? null,
      grade: bar.grade,
      shape: bar.shape,
      dims: bar.dims,
      radius: bar.radius,
      length: known?.cutLength ?? bar.length,
      scheduled: bar.length,
      cut: bar.struckThrough || isRefusal(cut) ? null : cut.length,
      members: bar.members,
      count: known?.count ?? facts.count,
      kg: bar.struckThrough ? null : (known?.mass ?? null),
      asTyped: known == null || known.asTyped === null ? null : { kg: known.asTyped, cell: known.cell },
      pour: bar.pour,
      revision: bar.revision,
      former: bends === null || bends === 0 ? null : facts.former,
      bends,
      notInTotal: bar.struckThrough ? STRUCK : isInTotal(row) ? null : row.why,
      isReplaced: bar.supersededBy?.sheet != null,
    };
  });
}

/** A mark under its member as it is compared; null where the row has no mark. */
export function barKey({ member, mark, sheet }: Pick<JobBar, "member" | "mark" | "sheet">): string | null {
  if (mark === null || mark.trim() === "") return null;
  // a member that is the sheet's name was taken from it, and says nothing of the member
  const own = member === null || member === sheet.trim() ? "" : member.trim().toUpperCase();
  return `${own}\n${markKey(mark, member)}`;
}

/** What makes two bars of a mark the same bar, apart from how many there are. */
export function barPrint({ size, grade, shape, dims, radius, scheduled }: JobBar): string {
  return [size.toUpperCase(), grade ?? "", shape ?? "", dims.join(","), radius ?? "", scheduled ?? ""].join(
    "|",
  );
}
