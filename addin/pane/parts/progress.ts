import { html, nothing, type TemplateResult } from "lit";
import type { PaneState } from "../pane-state";

/** What is going on, to the eye and to a screen reader. */
export function progress({ work, notice, view, needsCheck }: PaneState): TemplateResult {
  const said = work?.label ?? notice?.text ?? (view === null ? "" : `Checked ${view.rows.bars} bars`);
  return html`
    <div class="status">
      ${
        work === null
          ? nothing
          : html`<fluent-progress-bar
            aria-label=${work.label}
            max="1"
            .value=${work.done ?? undefined}
          ></fluent-progress-bar>`
      }
      <p class="said ${work === null ? (notice?.kind ?? "") : ""}" role="status">${said}</p>
      ${needsCheck && work === null ? html`<p class="stale">What is listed is out of date: check again.</p>` : nothing}
    </div>
  `;
}
