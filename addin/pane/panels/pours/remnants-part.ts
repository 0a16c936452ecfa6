import { html, nothing, type TemplateResult } from "lit";
import type { RemnantChange } from "../../../../core/cutting";
import type { RemnantView } from "../../engine/remnant-view";
import type { PoursModel } from "../../model/pours-model";
import type { RemnantStage } from "../../model/pours-state";
import { notesList } from "./notes-list";
import { poursButton } from "./pours-button";

/** The rests of a cut list, put on the Shop sheet once the user has seen the rows and says so. */
export function remnantsPart(model: PoursModel, view: RemnantView): TemplateResult {
  const { remnants } = model.state;
  return html`
    <div class="remnants" role="group" aria-label="Remnants of this cut list">
      ${
        remnants.step === "closed"
          ? html`<div class="row">
            ${poursButton(model, "look-at-remnants", "Put the rests on the Shop sheet", () => void model.lookAtRemnants())}
          </div>`
          : remnants.step === "written"
            ? html`<p class="hint">The rests stand on sheet ${view.shopSheet}. Take back, at the top, undoes it.</p>`
            : opened(model, view, remnants)
      }
    </div>
  `;
}

function opened(model: PoursModel, view: RemnantView, { twice }: RemnantStage): TemplateResult {
  const { shopSheet, problem, changes } = view;
  if (shopSheet === null) {
    return html`
      <p>The workbook has no Shop sheet to keep remnants on. One with blank lists can be added; nothing on it is filled in for you.</p>
      <div class="row">
        ${poursButton(model, "add-shop", "Add a Shop sheet", () => void model.addShopForRemnants(), true)}
        ${leave(model)}
      </div>
    `;
  }
  if (problem !== null || changes.length === 0) {
    return html`
      <p>${problem ?? `Nothing to write: no rest of ${view.leastRemnant} mm or more is left, and no remnant is cut up.`}</p>
      ${notesList(view.notes)}
      <div class="row">${leave(model)}</div>
    `;
  }
  return html`
    ${changesTable(view)} ${notesList(notesOf(view))}
    ${twice === null ? nothing : html`<p class="twice"><strong>Written before:</strong> ${twice}.</p>`}
    <div class="row">
      ${poursButton(
        model,
        "write-remnants",
        twice === null ? `Write ${rows(changes.length)}` : "Write them all the same",
        () => void model.writeRemnants(),
        twice === null,
      )}
      ${leave(model)}
    </div>
  `;
}

function leave(model: PoursModel): TemplateResult {
  return poursButton(model, "leave-remnants", "Leave the sheet as it is", () => model.leaveRemnants());
}

function changesTable({ shopSheet, changes }: RemnantView): TemplateResult {
  return html`
    <div class="wide" role="region" aria-label="Remnants before and after" tabindex="0">
      <table>
        <caption>Sheet ${shopSheet}, bars on hand</caption>
        <thead>
          <tr>
            <th scope="col" class="number">Row</th>
            <th scope="col">Size</th>
            <th scope="col" class="number">Length mm</th>
            <th scope="col" class="number">Now</th>
            <th scope="col" class="number">Then</th>
          </tr>
        </thead>
        <tbody>${changes.map(changeRow)}</tbody>
      </table>
    </div>
  `;
}

function changeRow({ row, size, length, before, after, replaces }: RemnantChange): TemplateResult {
  const now = replaces === null ? (before ?? "new row") : `0 of ${replaces.size}, ${replaces.length} mm`;
  return html`<tr>
    <th scope="row" class="number">${row}</th>
    <td>${size}</td>
    <td class="number">${length}</td>
    <td class="number">${now}</td>
    <td class="number">${after}</td>
  </tr>`;
}

function notesOf({ headingRow, leastRemnant, notes }: RemnantView): string[] {
  const heading =
    headingRow === null
      ? []
      : [
          `the stock list has no free row for all of them: a heading is written in row ${headingRow}, below all else`,
        ];
  return [
    ...heading,
    `rests under ${leastRemnant} mm are scrap and are not written`,
    "bars of new stock are not counted off: their counts stay yours to keep",
    "measure a rest before it is racked",
    ...notes,
  ];
}

const rows = (count: number): string => (count === 1 ? "this row" : `these ${count} rows`);
