import { html, nothing, type TemplateResult } from "lit";
import type { AuditView } from "../../engine/audit-view";

/** Rows shown of those that were not read. */
const MOST_UNREAD = 50;

/** How the sheet was read: its header, its rows, and what each column was taken for. */
export function columnsRead(view: AuditView): TemplateResult {
  const { rows } = view;
  const others = view.otherSheets.length === 0 ? "none" : view.otherSheets.join(", ");
  return html`
    <section class="columns" aria-label="How the sheet was read">
      <p>
        ${view.header === null ? "No header row." : `Header in row ${view.header}.`} Rows: ${rows.bars} bars,
        ${rows.headings} headings, ${rows.totals} totals, ${rows.notes} notes, ${rows.blank} blank, ${rows.unread} unread.
        Other sheets read with it: ${others}.
      </p>
      <table>
        <thead>
          <tr><th scope="col">Col.</th><th scope="col">Header</th><th scope="col">Taken for</th></tr>
        </thead>
        <tbody>
          ${view.columns.map(
            ({ letter, header, taken, unit, guess }) => html`<tr>
              <td>${letter}</td>
              <td>${header}</td>
              <td>${taken}${unit === null ? "" : `, ${unit}`}${guess === null ? nothing : html`<br /><em>a guess: ${guess}</em>`}</td>
            </tr>`,
          )}
        </tbody>
      </table>
      ${
        view.unread.length === 0
          ? nothing
          : html`<ul>
            ${view.unread.slice(0, MOST_UNREAD).map(({ row, reason }) => html`<li>Row ${row}: ${reason}</li>`)}
            ${view.unread.length > MOST_UNREAD ? html`<li>and ${view.unread.length - MOST_UNREAD} more rows</li>` : nothing}
          </ul>`
      }
    </section>
  `;
}
