import type { Finding } from "../../../core/audit/finding";
import { findingRank } from "../../../core/audit/finding-rank";
import { doubtLead } from "../../../core/audit/finding-words";
import { notToldWords } from "../../../core/audit/not-told-words";
import type { ScheduleReading } from "../../../core/schedule";
import { scheduleHead } from "../../../core/tickets";
import { findingsPage } from "../../print/findings-page";
import type { Pours } from "./engine";
import { isForDesigner } from "./is-for-designer";
import { barsRead, type KeptCheck } from "./kept-check";
import { auditView } from "./make-audit-view";

const WEIGHT = {
  unsafe: "unsafe",
  unbendable: "unbendable",
  "off-standard": "off standard",
  doubtful: "doubtful",
  note: "note",
} as const;

/** The findings of a check as a page to print, or the designer's questions among them alone. */
export function makeFindingsPage(
  kept: KeptCheck,
  kind: "findings" | "questions",
  reading: ScheduleReading,
  pours: Pours,
): { title: string; html: string } {
  const {
    audit: { report },
    sheet,
  } = kept;
  const head = scheduleHead(barsRead(kept));
  const title = kind === "questions" ? "Questions for the designer" : "Findings";
  const { findings } = auditView(kept);
  const rows = new Set(reading.bars.map(({ row }) => sheet.top + row + 1));
  const barRows = new Set(barsRead(kept).bars.map(({ row }) => sheet.top + row + 1));
  // what is about no one bar is of every pour
  const isOfPours = ({ sheet: of, row }: Finding): boolean =>
    of !== sheet.name || row === null || rows.has(row) || !barRows.has(row);
  const listed = findings
    .filter(isOfPours)
    .filter((finding) => kind === "findings" || isForDesigner(finding))
    .sort((a, b) => findingRank(a) - findingRank(b));
  if (kind === "questions" && listed.length === 0)
    throw new Error(`nothing found in ${sheet.name} is the designer's to decide`);
  const stated = [
    `Sheet ${sheet.name}`,
    head.drawing === null ? "no drawing stated" : `drawing ${head.drawing}`,
    head.date === null ? null : `dated ${head.date}`,
    pours === null ? null : `only of ${pours.join(", ")}`,
  ];
  const notTold = report.waivers.map(notToldWords);
  return {
    title,
    html: findingsPage(
      title,
      { ...head, standard: report.standard.id, notTold },
      stated.filter((part) => part !== null).join(", "),
      listed.map((finding) => {
        const { severity, member, mark, cell, sheet: of, message, fix, rule, code } = finding;
        return {
          severity: WEIGHT[severity],
          bar: [member, mark].filter((part) => part !== null).join(", "),
          cell: `${of === sheet.name ? "" : `${of} `}${cell ?? ""}`,
          words: `${doubtLead(finding)}${message}`,
          remedy: fix?.label ?? "",
          code: `${rule}, ${code}`,
        };
      }),
    ),
  };
}
