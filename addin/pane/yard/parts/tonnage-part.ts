import { html, nothing, type TemplateResult } from "lit";
import { svgElement } from "../../parts/svg-element";
import type { TotalsView } from "../totals-view";
import type { YardModel } from "../yard-model";
import { notesList } from "./notes-list";
import { yardButton } from "./yard-button";

/** Tonnes by pour and size: a chart, the same in a table, and ways to take it along. */
export function tonnagePart(model: YardModel): TemplateResult {
  const { totals } = model.state;
  return html`
    <fluent-accordion-item heading-level="3" class="tonnage">
      <span slot="heading">Tonnage per pour</span>
      <div class="row">
        ${yardButton(model, "reckon", totals === null ? "Add up" : "Add up again", () => void model.reckonTonnage(), true)}
        ${yardButton(model, "write-totals", "Write a Totals sheet", () => void model.writeTotals())}
      </div>
      ${question(model)} ${totals === null ? nothing : totalsTable(model, totals)}
    </fluent-accordion-item>
  `;
}

function question(model: YardModel): TemplateResult | typeof nothing {
  const name = model.state.asksAboutTotals;
  if (name === null) return nothing;
  return html`
    <div class="question" role="group" aria-label="A Totals sheet is there already">
      <p>Sheet ${name} was written by Barwright before. What stands on it now, your own cells among it, would be lost.</p>
      <div class="row">
        ${yardButton(model, "replace-totals", "Write it anew", () => void model.writeTotals("replace"))}
        ${yardButton(model, "number-totals", "Keep it, add another", () => void model.writeTotals("number"))}
        ${yardButton(model, "keep-totals", "Leave all as it is", () => model.keepTotals())}
      </div>
    </div>
  `;
}

function totalsTable(model: YardModel, totals: TotalsView): TemplateResult {
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
      ${yardButton(model, "copy-totals", "Copy", () => void model.copy(totals.tabbed))}
      ${yardButton(model, "save-totals", "Download as CSV", () => model.host.save(fileName, "text/csv", totals.csv))}
    </div>
  `;
}

const capitalised = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);
