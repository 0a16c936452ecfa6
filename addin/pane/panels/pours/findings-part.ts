import { html, nothing, type TemplateResult } from "lit";
import type { PoursModel } from "../../model/pours-model";
import { poursButton } from "./pours-button";

/** All findings with the tonnes and their chart, as a sheet of the workbook to print or to send. */
export function findingsPart(model: PoursModel): TemplateResult {
  return html`
    <fluent-accordion-item heading-level="3" class="findings-sheet">
      <span slot="heading">Findings sheet</span>
      <p class="hint">
        All findings on a sheet of their own, under them the tonnes by pour and size as a table and a chart.
      </p>
      <div class="row">
        ${poursButton(model, "write-findings", "Write a Findings sheet", () => void model.writeFindings(), true)}
      </div>
      ${question(model)}
    </fluent-accordion-item>
  `;
}

function question(model: PoursModel): TemplateResult | typeof nothing {
  const name = model.state.asksAboutFindings;
  if (name === null) return nothing;
  return html`
    <div class="question" role="group" aria-label="A Findings sheet is there already">
      <p>Sheet ${name} was written by Barwright before, and somebody has written on it since. That would be lost.</p>
      <div class="row">
        ${poursButton(model, "replace-findings", "Write it anew", () => void model.writeFindings("replace"))}
        ${poursButton(model, "number-findings", "Keep it, add another", () => void model.writeFindings("number"))}
        ${poursButton(model, "keep-findings", "Leave all as it is", () => model.keepFindings())}
      </div>
    </div>
  `;
}
