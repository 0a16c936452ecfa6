import { rowCounts, severityCountWords } from "../../../../core/audit/severity-counts";
import { counted } from "../../../../core/units/counted";
import type { AuditView } from "../../engine/audit-view";

/** One line for whoever must know how the schedule stands, without opening it. */
export function summaryLine(view: AuditView): string {
  const unread = view.findings.filter(({ outcome, severity }) => outcome === "unsure" && severity === "note");
  const parts = [
    `${headWords(view)}: ${counted(view.rows.bars, "bar row")} checked`,
    `rows ${severityCountWords(rowCounts(view.findings))}`,
    view.held === null
      ? `${tonnes(view.massAffected)} of ${tonnes(view.mass)} unsafe or unbendable`
      : "no tonnes, totals are held back",
  ];
  if (view.notInTotal.length > 0) parts.push(`${counted(view.notInTotal.length, "row")} not in the total`);
  if (view.rows.unread > 0) parts.push(`${counted(view.rows.unread, "row")} unread`);
  if (unread.length > 0) parts.push(`${counted(unread.length, "thing")} not judged`);
  if (view.notToldLine !== null) parts.push(view.notToldLine);
  return `${parts.join("; ")}.`;
}

function headWords({ sheet, standard, head }: AuditView): string {
  const stated = [
    head.drawing === null ? null : `drawing ${head.drawing}`,
    head.revision === null ? "no revision stated" : `revision ${head.revision}`,
    head.date === null ? null : `dated ${head.date}`,
  ];
  return [sheet, ...stated.filter((part) => part !== null), standard.id].join(", ");
}

function tonnes(kilograms: number): string {
  return `${(kilograms / 1000).toFixed(2)} t`;
}
