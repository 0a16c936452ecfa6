import { html, nothing, type TemplateResult } from "lit";
import type { PaneModel } from "../../model/pane-model";
import { copyText } from "../copy-text";
import { summaryLine } from "./summary-line";

/** One line that says how the schedule stands, with a button that copies it. */
export function lineToPassOn(model: PaneModel): TemplateResult | typeof nothing {
  const { view } = model.state;
  if (view === null || view.noHeader !== null) return nothing;
  const line = summaryLine(view);
  return html`
    <section class="pass-on" aria-label="Line to pass on">
      <p class="summary">${line}</p>
      <fluent-button size="small" aria-label="Copy this line" @click=${() => copyText(model, line, "The line is on the clipboard")}>Copy</fluent-button>
    </section>
  `;
}
