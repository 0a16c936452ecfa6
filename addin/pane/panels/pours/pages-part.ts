import { html, nothing, type TemplateResult } from "lit";
import { counted } from "../../../../core/units/counted";
import type { PrintedPage } from "../../engine/printed-page";
import { tableCsv, tableText } from "../../model/local-table";
import { orderLines } from "../../model/order-list";
import type { PoursModel } from "../../model/pours-model";
import { severityIcon } from "../check/severity-icon";
import { notesList } from "./notes-list";
import { poursButton } from "./pours-button";
import { remnantsPart } from "./remnants-part";

/** Bending tickets, the cut list, bundle labels and lorry loads, to be printed or kept. */
export function pagesPart(model: PoursModel): TemplateResult {
  const { page, pours } = model.state;
  return html`
    <div class="pages">
      <p class="hint">${pours === null ? "Of the whole schedule" : `Of ${pours.join(", ")}`}:</p>
      <div class="row">
        ${poursButton(model, "make-tickets", "Bending tickets", () => void model.makePage("tickets"))}
        ${poursButton(model, "make-cut-list", "Cut list", () => void model.makePage("cut list"))}
        ${poursButton(model, "make-labels", "Bundle labels", () => void model.makePage("labels"))}
        ${poursButton(model, "make-loads", "Lorry loads", () => void model.makePage("loads"))}
      </div>
      ${page === null ? nothing : readyPage(model, page)}
    </div>
  `;
}

function readyPage(model: PoursModel, page: PrintedPage): TemplateResult {
  const { host } = model;
  const { print } = host;
  return html`
    <div class="ready" role="group" aria-label=${page.title}>
      <p class="ready-title">${page.title} of ${page.sheet}</p>
      ${refusedList(page)} ${toBuyTable(model, page)} ${notesList(page.notes)}
      <div class="row">
        ${print === null ? nothing : poursButton(model, "print-page", "Print", () => print(page), true)}
        ${poursButton(model, "save-page", "Save as a page", () => host.save(page.fileName, "text/html", page.html))}
      </div>
      ${page.remnants === null ? nothing : remnantsPart(model, page.remnants)}
      <p class="hint">The machine's plate and manual come before anything on it.</p>
    </div>
  `;
}

/** Bars that nobody will find made. */
function refusedList({ refused, title }: PrintedPage): TemplateResult | typeof nothing {
  if (refused.length === 0) return nothing;
  const isOfLoads = title === "Loading lists";
  const rows = counted(refused.length, "row");
  return html`
    <p class="left-out" data-severity="unbendable">${severityIcon("unbendable")} ${isOfLoads ? "On no lorry" : "In no plan"}: ${rows}</p>
    <div class="scroll" tabindex="0" role="region" aria-label=${isOfLoads ? "On no lorry" : "Rows in no plan"}>
      <ul class="refused">${refused.map((words) => html`<li>${words}</li>`)}</ul>
    </div>
  `;
}

/** What a buyer orders for a cut list. */
function toBuyTable(model: PoursModel, page: PrintedPage): TemplateResult | typeof nothing {
  const { toBuy } = page;
  if (toBuy.length === 0) return nothing;
  return html`
    <div class="wide" role="region" aria-label="Stock to buy" tabindex="0">
      <table class="to-buy">
        <caption>Stock to buy; remnants on hand are not in it</caption>
        <thead>
          <tr>
            <th scope="col">Size</th>
            <th scope="col" class="number">Stock</th>
            <th scope="col" class="number">Bars</th>
            <th scope="col" class="number">Tonnes</th>
            <th scope="col">Proven least</th>
          </tr>
        </thead>
        <tbody>
          ${toBuy.map(
            ({ size, stock, bars, tonnes, provenLeast }) => html`<tr>
              <th scope="row">${size}</th>
              <td class="number">${stock}</td>
              <td class="number">${bars}</td>
              <td class="number">${tonnes}</td>
              <td>${provenLeast ? "yes" : "no"}</td>
            </tr>`,
          )}
        </tbody>
      </table>
    </div>
    <div class="row">
      ${poursButton(model, "copy-order", "Copy the order", () => void model.copy(tableText(orderLines(page.toBuy), "\t")))}
      ${poursButton(model, "save-order", "Order as CSV", () => model.host.save(`${page.sheet} order.csv`, "text/csv", tableCsv(orderLines(page.toBuy))))}
      ${poursButton(model, "write-order", "Order as a sheet", () => void model.writeOrder(page))}
    </div>
  `;
}
