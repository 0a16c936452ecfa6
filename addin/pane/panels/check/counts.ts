import { html, nothing, type TemplateResult } from "lit";
import { SEVERITIES } from "../../../../core/audit/finding";
import type { PaneModel } from "../../model/pane-model";
import { severityIcon } from "./severity-icon";
import { SEVERITY_WORDS } from "./severity-words";

/** How many findings of each severity; each count shows or hides its group. */
export function counts(model: PaneModel): TemplateResult | typeof nothing {
  const { view, shown } = model.state;
  if (view === null) return nothing;
  return html`
    <div class="counts" role="group" aria-label="Findings shown">
      ${SEVERITIES.map((severity) => {
        const count = view.findings.filter((finding) => finding.severity === severity).length;
        return html`<fluent-toggle-button
          class="count"
          size="small"
          data-severity=${severity}
          ?pressed=${shown.has(severity)}
          @click=${() => model.toggleSeverity(severity)}
          title=${SEVERITY_WORDS[severity].meaning}
          >${severityIcon(severity)}<span class="number">${count}</span>
          <span>${SEVERITY_WORDS[severity].word}</span></fluent-toggle-button
        >`;
      })}
    </div>
  `;
}
