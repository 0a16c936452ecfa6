import { html, nothing, type TemplateResult } from "lit";
import type { TotalsView } from "../../engine/totals-view";
import type { PoursModel } from "../../model/pours-model";
import { svgElement } from "../svg-element";
import { notesList } from "./notes-list";
import { poursButton } from "./pours-button";

/** Tonnes by pour and size: a chart, the same in a table, and ways to take it along. */
export function tonnagePart(model: PoursModel): TemplateResult {
  const { totals } = model.state;
  return html`
    <fluent-accordion-item heading-level="3" class="tonnage">
      <span slot="heading">Tonnage per pour</span>
      <div class="row">
        ${poursButton(model, "reckon", totals === null ? "Add up" : "Add up again", () => void model.addUp(), true)}
        ${poursButton(model, "write-totals", "Write a Totals sheet", () => void model.writeTotals())}
      </div>
      ${question(model)} ${totals === null ? nothing : totalsTable(model, totals)}
    </fluent-accordion-item>
  `;
}

function question(model: PoursModel): TemplateResult | typeof nothing {
  const name = model.state.asksAboutTotals;
  if (name === null) return nothing;
  return html`
    <div class="question" role="group" aria-label="A Totals sheet is there already">
      <p>Sheet ${name} was written by Barwright before. What stands on it now, your own cells among it, would be lost.</p>
      <div class="row">
        ${poursButton(model, "replace-totals", "Write it anew", () => void model.writeTotals("replace"))}
        ${poursButton(model, "number-totals", "Keep it, add another", () => void model.writeTotals("number"))}
        ${poursButton(model, "keep-totals", "Leave all as it is", () => model.keepTotals())}
      </div>
    </div>
  `;
}

function totalsTable(model: PoursModel, totals: TotalsView): TemplateResult {
  const fileName = `${totals.sheet} tonnage.csv`;
  return html`
    <div class="chart">${svgElement(totals.chart)}</div>
    <div class="wide" role="region" aria-label="Tonnes by ${totals.groupedBy} and size" tabindex="0">
      <table>
        <caption>Tonnes of ${totals.sheet}, by cut length; waste is not in it</caption>
        <thead>
          <tr>
            <th scope="col">${capitalised(totals.groupedBy)}</th>
            ${totals.sizes.map((size) => html`<th scope="col" class="number">${size}</th>`)}
            <th scope="col" class="number">Total</th>
          </tr>
        </thead>
        <tbody>
          ${totals.pours.map(
            ({ pour, bySize, total }) => html`<tr>
              <th scope="row">${pour}</th>
              ${bySize.map((tonnes) => html`<td class="number">${tonnes}</td>`)}
              <td class="number">${total}</td>
            </tr>`,
          )}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">Total</th>
            ${totals.bySize.map((tonnes) => html`<td class="number">${tonnes}</td>`)}
            <td class="number">${totals.total}</td>
          </tr>
        </tfoot>
      </table>
    </div>
    ${notesList(totals.notes)}
    <div class="row">
      ${poursButton(model, "copy-totals", "Copy", () => void model.copy(totals.tabbed))}
      ${poursButton(model, "save-totals", "Download as CSV", () => model.host.save(fileName, "text/csv", totals.csv))}
    </div>
  `;
}

const capitalised = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);
