import type { AuditView } from "../desk/audit-view";

/** One line for whoever must know how the schedule stands, without opening it. */
export function summaryLine(view: AuditView): string {
  const rows = (severity: string): number =>
    new Set(view.findings.filter((finding) => finding.severity === severity).map(({ row }) => row)).size;
  const parts = [
    `${view.sheet}, ${view.standard.id}: ${counted(view.rows.bars, "bar row")} checked`,
    `${counted(rows("unsafe"), "row")} unsafe`,
    `${counted(rows("unbendable"), "row")} unbendable`,
    `${tonnes(view.massAffected)} of ${tonnes(view.mass)} affected`,
  ];
  if (view.barsWithoutMass > 0) parts.push(`${counted(view.barsWithoutMass, "row")} without a mass`);
  if (view.rows.unread > 0) parts.push(`${counted(view.rows.unread, "row")} unread`);
  return `${parts.join("; ")}.`;
}

function counted(count: number, thing: string): string {
  return `${count} ${thing}${count === 1 ? "" : "s"}`;
}

function tonnes(kilograms: number): string {
  return `${(kilograms / 1000).toFixed(2)} t`;
}
