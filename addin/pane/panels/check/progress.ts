import { html, nothing, type TemplateResult } from "lit";
import type { PaneModel } from "../../model/pane-model";

/** What is going on, to the eye and to a screen reader; work that does not move can be stopped. */
export function progress(model: PaneModel): TemplateResult {
  const { work, notice, view, needsCheck, fixes } = model.state;
  const last = fixes.at(-1);
  const said = work?.label ?? notice?.text ?? (view === null ? "" : `Checked ${view.rows.bars} bars`);
  // that nothing else happened takes no room from the list
  const isQuiet = work === null && notice === null;
  return html`
    <div class="status">
      ${
        work === null
          ? nothing
          : html`<div
            class="under-way"
            role="progressbar"
            aria-label=${work.label}
            aria-valuemax="1"
            aria-valuenow=${work.done ?? nothing}
            .style=${`--done: ${work.done ?? 1}`}
          ></div>`
      }
      ${
        work?.isSlow
          ? html`<fluent-button class="stop" size="small" @click=${() => model.stop()}>Stop</fluent-button>`
          : nothing
      }
      <p class="said ${isQuiet ? "visually-hidden" : work === null ? (notice?.kind ?? "") : ""}" role="status">${said}</p>
      ${
        last === undefined
          ? nothing
          : html`<button class="undo" title=${last.label} @click=${() => void model.fixes.undoFix()}>Take back: ${last.cells}</button>`
      }
      ${needsCheck && work === null ? html`<p class="stale">What is listed is out of date: check again.</p>` : nothing}
    </div>
  `;
}
