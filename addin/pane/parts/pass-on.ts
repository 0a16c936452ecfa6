import { html, nothing, type TemplateResult } from "lit";
import type { PaneModel } from "../pane-model";
import { summaryLine } from "./summary-line";

/** One line that says how the schedule stands, with a button that copies it. */
export function lineToPassOn(model: PaneModel): TemplateResult | typeof nothing {
  const { view } = model.state;
  if (view === null || view.noHeader !== null) return nothing;
  const line = summaryLine(view);
  const copy = async (): Promise<void> => {
    try {
      await navigator.clipboard.writeText(line);
      model.say("The line is on the clipboard");
    } catch {
      model.report(new Error("the clipboard is closed to this page: select the line and copy it by hand"));
    }
  };
  return html`
    <section class="pass-on" aria-label="Line to pass on">
      <p class="summary">${line}</p>
      <fluent-button size="small" aria-label="Copy this line" @click=${copy}>Copy</fluent-button>
    </section>
  `;
}
