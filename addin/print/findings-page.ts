import { html } from "./html";
import { type PageHead, printPage } from "./print-page";

/** A finding as a page prints it; all words. */
export interface PrintedFinding {
  readonly severity: string;
  /** member and mark; blank where it is about no one bar */
  readonly bar: string;
  readonly cell: string;
  readonly words: string;
  readonly remedy: string;
  readonly code: string;
}

/** Findings in a table, its head repeated on every sheet of paper. */
export function findingsPage(
  title: string,
  head: PageHead,
  stated: string,
  findings: readonly PrintedFinding[],
): string {
  return printPage(title, head, [
    html`<p class="note">${stated}. ${findings.length} in all. A check finds slips; it does not prove a schedule right.</p>`,
    html`<table class="findings">
<thead><tr><th>No.</th><th>Bar</th><th>Cell</th><th>Weight</th><th>What was found</th><th>Remedy</th></tr></thead>
<tbody>${findings.map(
      ({ severity, bar, cell, words, remedy, code }, index) =>
        html`<tr><td>${index + 1}</td><td>${bar}</td><td>${cell}</td><td>${severity}</td><td>${words} <small>${code}</small></td><td>${remedy}</td></tr>`,
    )}</tbody>
</table>`,
  ]);
}
