import { html, type TemplateResult } from "lit";
import type { AuditView, FindingView } from "../../engine/audit-view";
import { isForDesigner } from "../../engine/is-for-designer";
import type { PaneModel } from "../../model/pane-model";
import { copyText } from "../copy-text";

/** What only the designer can answer. */
export function questionsOf(view: AuditView): readonly FindingView[] {
  return view.findings.filter(isForDesigner);
}

/** The questions as a list of their own, with what the schedule calls itself, to copy or to print. */
export function questions(model: PaneModel, view: AuditView): TemplateResult {
  const asked = questionsOf(view);
  if (asked.length === 0) return html`<p class="empty">Nothing found here is the designer's to decide.</p>`;
  const text = questionsText(view, asked);
  return html`
    <section class="questions" aria-label="Questions for the designer">
      <p>${headLine(view)}</p>
      <div class="buttons">
        <button class="copy-questions" @click=${() => copyText(model, text, `Questions on the clipboard: ${asked.length}`)}
          >Copy</button
        >
        <button class="print-questions" @click=${() => void model.papers?.print("questions")}>Print or keep</button>
      </div>
      <ol>
        ${asked.map((finding) => html`<li><strong>${placeWords(finding)}</strong> ${finding.message}</li>`)}
      </ol>
    </section>
  `;
}

function placeWords({ member, mark, cell, sheet }: FindingView): string {
  const bar = [member, mark === null ? null : `mark ${mark}`].filter((part) => part !== null).join(", ");
  return `${bar === "" ? sheet : bar}${cell === null ? "" : ` (${cell})`}:`;
}

function headLine({ head, sheet, standard }: AuditView): string {
  return [
    head.job,
    head.schedule === null ? `sheet ${sheet}` : `schedule ${head.schedule}`,
    head.drawing === null ? "no drawing stated" : `drawing ${head.drawing}`,
    head.revision === null ? "no revision stated" : `revision ${head.revision}`,
    head.date === null ? null : `dated ${head.date}`,
    standard.id,
  ]
    .filter((part) => part !== null)
    .join(", ");
}

function questionsText(view: AuditView, asked: readonly FindingView[]): string {
  const lines = asked.map((finding, index) => `${index + 1}. ${placeWords(finding)} ${finding.message}`);
  return [`Questions for the designer: ${headLine(view)}`, ...lines].join("\r\n");
}
