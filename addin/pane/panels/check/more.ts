import { html, nothing, type TemplateResult } from "lit";
import type { AuditView } from "../../engine/audit-view";
import type { PaneModel } from "../../model/pane-model";
import { decisions } from "./decisions";
import type { FindingsMemory } from "./findings";
import { safeFixes } from "./safe-fixes";

/** What stands behind the findings: how the sheet was read, and cautions. */
export function more(model: PaneModel, memory: FindingsMemory): TemplateResult {
  const { view } = model.state;
  return html`
    <fluent-accordion expand-mode="multi">
      ${safeFixes(model)} ${view === null ? nothing : columnsRead(view)}
      ${view === null ? nothing : decisions(model, view, memory.draft, memory.redraw)}
      <fluent-accordion-item heading-level="2" class="cautions">
        <span slot="heading">Cautions</span>
        <ul>
          <li>The machine's rating plate and manual come before anything shown here.</li>
          <li>What the designer must decide is never changed: ask the designer.</li>
          <li>Local codes and licensed practice hold where they differ.</li>
          <li>A released bar springs back: make a trial bend before a run.</li>
          <li>A check finds slips; it does not prove a schedule right.</li>
        </ul>
      </fluent-accordion-item>
    </fluent-accordion>
  `;
}

function columnsRead(view: AuditView): TemplateResult {
  const guesses = view.columns.filter(({ guess }) => guess !== null).length;
  const { rows } = view;
  return html`
    <fluent-accordion-item heading-level="2" class="columns">
      <span slot="heading">How the sheet was read${guesses > 0 ? `, ${guesses} guessed` : ""}</span>
      <p>
        ${view.header === null ? "No header row." : `Header in row ${view.header}.`} Rows: ${rows.bars} bars,
        ${rows.headings} headings, ${rows.totals} totals, ${rows.notes} notes, ${rows.blank} blank, ${rows.unread} unread.
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
            ${view.unread.slice(0, 50).map(({ row, reason }) => html`<li>Row ${row}: ${reason}</li>`)}
          </ul>`
      }
    </fluent-accordion-item>
  `;
}
