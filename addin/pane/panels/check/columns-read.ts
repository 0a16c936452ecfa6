import { html, nothing, type TemplateResult } from "lit";
import { counted } from "../../../../core/units/counted";
import type { AuditView } from "../../engine/audit-view";
import type { ExplainedView } from "../../engine/explained-view";
import type { PaneModel } from "../../model/pane-model";

/** Rows shown of those that were not read. */
const MOST_UNREAD = 50;
/** Runs of rows of which the reason is shown. */
const MOST_RUNS = 300;

/** How the sheet was read: its header, its rows, and what each column was taken for. */
export function columnsRead(model: PaneModel, view: AuditView): TemplateResult {
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
            ${view.unread.slice(0, MOST_UNREAD).map(({ place, reason }) => html`<li>On ${place}: ${reason}</li>`)}
            ${view.unread.length > MOST_UNREAD ? html`<li>and ${counted(view.unread.length - MOST_UNREAD, "more row")}</li>` : nothing}
          </ul>`
      }
      <details class="explained" @toggle=${(event: Event) => ask(model, event)}>
        <summary>Why each column and row was read so</summary>
        ${explained(model)}
      </details>
    </section>
  `;
}

/** It is worked out when somebody opens it. */
function ask(model: PaneModel, { currentTarget }: Event): void {
  const isOpen = (currentTarget as HTMLDetailsElement).open;
  if (isOpen && model.state.explained === null) void model.explain();
}

function explained(model: PaneModel): TemplateResult {
  const { explained: why } = model.state;
  if (why === null) {
    return html`<p class="hint"><button class="ask-why" @click=${() => void model.explain()}>Tell why</button></p>`;
  }
  return html`
    ${why.held === null ? nothing : html`<p class="held">Totals are held back: ${why.held}.</p>`}
    <ul class="why-columns">
      ${why.columns.map(
        ({ letter, header, why: words }) => html`<li><strong>${letter}</strong> ${header}: ${words}</li>`,
      )}
    </ul>
    ${rowRuns(why)}
  `;
}

function rowRuns({ rows }: ExplainedView): TemplateResult {
  return html`<ul class="why-rows">
    ${rows
      .slice(0, MOST_RUNS)
      .map(
        ({ first, last, class: kind, why }) =>
          html`<li><strong>${first === last ? `Row ${first}` : `Rows ${first} to ${last}`}</strong> ${kind}: ${why}</li>`,
      )}
    ${rows.length > MOST_RUNS ? html`<li>and ${rows.length - MOST_RUNS} more; all of them with check --explain in a terminal</li>` : nothing}
  </ul>`;
}
