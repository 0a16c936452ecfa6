import { html, nothing, type TemplateResult } from "lit";
import type { PrintedPage } from "../printed-page";
import type { YardModel } from "../yard-model";
import { notesList } from "./notes-list";
import { yardButton } from "./yard-button";

/** Bending tickets, the cut list and bundle labels, to be printed or kept. */
export function pagesPart(model: YardModel): TemplateResult {
  const { page } = model.state;
  return html`
    <fluent-accordion-item heading-level="3" class="pages">
      <span slot="heading">Tickets, cut list, labels</span>
      <div class="row">
        ${yardButton(model, "make-tickets", "Bending tickets", () => void model.makePage("tickets"))}
        ${yardButton(model, "make-cut-list", "Cut list", () => void model.makePage("cut list"))}
        ${yardButton(model, "make-labels", "Bundle labels", () => void model.makePage("labels"))}
      </div>
      ${page === null ? nothing : readyPage(model, page)}
    </fluent-accordion-item>
  `;
}

function readyPage(model: YardModel, page: PrintedPage): TemplateResult {
  const { host } = model;
  const { print } = host;
  return html`
    <div class="ready" role="group" aria-label=${page.title}>
      <p class="ready-title">${page.title}</p>
      ${notesList(page.notes)}
      <div class="row">
        ${print === null ? nothing : yardButton(model, "print-page", "Print", () => print(page), true)}
        ${yardButton(model, "save-page", "Save as a page", () => host.save(page.fileName, "text/html", page.html))}
      </div>
      <p class="hint">The machine's plate and manual come before anything on it.</p>
    </div>
  `;
}
