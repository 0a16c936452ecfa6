import { html, nothing, type TemplateResult } from "lit";
import type { PaneState } from "../../model/pane-state";
import { svgElement } from "../svg-element";

/** The bar of the selected row: its drawing, and what it takes. */
export function selectedBar({ bar, view }: PaneState): TemplateResult | typeof nothing {
  if (view === null) return nothing;
  if (bar === null) {
    return html`
      <section class="bar" tabindex="0" aria-labelledby="bar-heading">
        <h2 id="bar-heading">Selected bar</h2>
        <p class="empty">Select a row of the schedule to see its bar.</p>
      </section>
    `;
  }
  return html`
    <section class="bar" tabindex="0" aria-labelledby="bar-heading">
      <h2 id="bar-heading">Row ${bar.row}: ${bar.title}</h2>
      ${bar.shape === null ? nothing : html`<p class="shape">${bar.shape}</p>`}
      ${bar.svg === null ? nothing : html`<div class="drawing">${svgElement(bar.svg)}</div>`}
      ${bar.trouble === null ? nothing : html`<p class="trouble">${bar.trouble}</p>`}
      <dl>
        ${bar.facts.map(({ name, value }) => html`<div><dt>${name}</dt><dd>${value}</dd></div>`)}
      </dl>
    </section>
  `;
}
