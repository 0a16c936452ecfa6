import { html, type TemplateResult } from "lit";
import type { FindingView } from "../../engine/audit-view";
import { cellWords } from "./cell-words";

/** Cells of fixes, as they are and as they will be. */
export function fixCells(findings: readonly FindingView[]): TemplateResult {
  return html`
    <table class="fix-cells">
      <thead>
        <tr><th scope="col">Cell</th><th scope="col">Now</th><th scope="col">Then</th></tr>
      </thead>
      <tbody>
        ${findings.flatMap(({ fix, before }) =>
          (fix?.edits ?? []).map(
            ({ cell, to }, index) => html`<tr>
              <th scope="row">${cell}</th>
              <td>${cellWords(before[index] ?? null)}</td>
              <td>${cellWords(to)}</td>
            </tr>`,
          ),
        )}
      </tbody>
    </table>
  `;
}
