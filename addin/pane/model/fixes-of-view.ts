import type { CellEdit } from "../../workbook/workbook-port";
import type { AuditView, FindingView } from "../engine/audit-view";
import type { Notice } from "./pane-state";

/** Every safe fix of one rule. */
export interface FixKind {
  readonly code: string;
  readonly rule: string;
  readonly findings: readonly FindingView[];
}

/** Safe fixes of a view by rule: those that change no length, count or mass. */
export function safeFixKinds(view: AuditView): readonly FixKind[] {
  const kinds = new Map<string, FindingView[]>();
  for (const finding of view.findings) {
    if (!isSafeFix(finding)) continue;
    const known = kinds.get(finding.code);
    if (known === undefined) kinds.set(finding.code, [finding]);
    else known.push(finding);
  }
  return [...kinds].map(([code, findings]) => ({ code, rule: findings[0]?.rule ?? code, findings }));
}

export function isSafeFix(finding: FindingView): boolean {
  return canBeWritten(finding) && finding.fix?.safety === "safe";
}

/** A fix that changes steel, so that somebody must look at it. */
export function needsLook(finding: FindingView): boolean {
  return canBeWritten(finding) && finding.fix?.safety === "needs-review";
}

/** What the designer must decide is never ours to write. */
function canBeWritten({ fix, message }: FindingView): boolean {
  return fix !== null && fix.edits.length > 0 && !/ask the designer/i.test(`${message} ${fix.label}`);
}

/** Each cell once: where two fixes want one cell, the first in the list has it. */
export function editsOf(findings: readonly FindingView[]): readonly CellEdit[] {
  const edits = new Map<string, CellEdit>();
  for (const { fix } of findings) {
    const wanted = fix?.edits ?? [];
    if (wanted.some(({ cell, to }) => edits.has(cell) && edits.get(cell)?.to !== to)) continue;
    for (const edit of wanted) edits.set(edit.cell, edit);
  }
  return [...edits.values()];
}

/** Of the fixes a user asked for, those that the view still offers for cells that hold what was shown. */
export function stillStanding(wanted: readonly FindingView[], view: AuditView | undefined): FindingView[] {
  const offered = new Map(view?.findings.map((finding) => [finding.key, finding]));
  const offer = (finding: FindingView | undefined): string =>
    JSON.stringify([finding?.fix?.edits, finding?.before]);
  return wanted.filter((finding) => offer(offered.get(finding.key)) === offer(finding));
}

/** What the judgement after a fix says of it: how many findings are gone, and what came instead. */
export function fixProof(
  fixed: readonly FindingView[],
  before: AuditView | undefined,
  after: AuditView | undefined,
): Notice {
  const places = (view: AuditView | undefined) => new Set(view?.findings.map(placeOf));
  const now = places(after);
  const known = places(before);
  const rows = new Set(fixed.map(({ row }) => row));
  const left = fixed.filter((finding) => now.has(placeOf(finding))).length;
  const added = (after?.findings ?? []).filter(
    (finding) => rows.has(finding.row) && !known.has(placeOf(finding)),
  ).length;
  const gone = fixed.length - left;
  const text = `Judged again: ${gone} of ${fixed.length} findings gone${added > 0 ? `, ${added} new in these rows` : ""}`;
  return { kind: left > 0 ? "problem" : "done", text };
}

const placeOf = ({ code, cell, row }: FindingView): string => `${code} ${cell ?? row ?? ""}`;
