import { html, type TemplateResult } from "lit";
import type { AuditView } from "../../engine/audit-view";
import { findingsTable } from "../../model/findings-table";
import type { PaneModel } from "../../model/pane-model";
import { copyText } from "../copy-text";
import { summaryLine } from "./summary-line";

/** What goes to others: one line that says how the schedule stands, the list, the findings as a page or a sheet. */
export function passOn(model: PaneModel, view: AuditView): TemplateResult {
  const line = summaryLine(view);
  const listed = model.listed();
  return html`
    <section class="pass-on" aria-label="Pass on">
      <p class="summary">${line}</p>
      <div class="buttons">
        <button class="copy-line" @click=${() => copyText(model, line, "The line is on the clipboard")}>Copy this line</button>
        <button
          class="copy-list"
          @click=${() => copyText(model, findingsTable(listed), `Findings on the clipboard: ${listed.length}`)}
          >Copy the ${listed.length} findings listed</button
        >
        <button class="print-findings" @click=${() => void model.papers?.print("findings")}>Print or keep the findings</button>
        <button class="write-findings" @click=${() => void model.papers?.writeFindings()}>Write a findings sheet</button>
      </div>
      ${model.state.asksAboutFindings === null ? "" : asks(model, model.state.asksAboutFindings)}
    </section>
  `;
}

function asks(model: PaneModel, name: string): TemplateResult {
  const write = (answer: "replace" | "number"): void => void model.papers?.writeFindings(answer);
  return html`
    <div class="question" role="group" aria-label="A findings sheet is there already">
      <p>Somebody has written on sheet ${name} since it was made. Written anew, that would be lost.</p>
      <div class="buttons">
        <button class="replace-findings" @click=${() => write("replace")}>Write it anew</button>
        <button class="number-findings" @click=${() => write("number")}>Keep it, add another</button>
        <button class="keep-findings" @click=${() => model.askAboutFindings(null)}>Leave all as it is</button>
      </div>
    </div>
  `;
}
