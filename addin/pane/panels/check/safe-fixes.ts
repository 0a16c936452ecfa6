import { html, type TemplateResult } from "lit";
import { safeFixKinds } from "../../model/fixes-of-view";
import type { PaneModel } from "../../model/pane-model";
import { fixCells } from "./fix-cells";

/** All safe fixes of a kind in one step, their cells before and after shown first. */
export function safeFixes(model: PaneModel): TemplateResult {
  const { view } = model.state;
  const kinds = view === null ? [] : safeFixKinds(view);
  if (kinds.length === 0)
    return html`<p class="empty">No fix here leaves length, count and mass as they are.</p>`;
  const count = kinds.reduce((sum, { findings }) => sum + findings.length, 0);
  return html`
    <section class="safe-fixes" aria-label="Safe fixes">
      <p>${count} in all. They change no length, count or mass. Each kind is one step and can be taken back.</p>
      ${kinds.map(
        (kind) => html`
          <h2>${sentence(kind.rule)}</h2>
          <div class="scroll" tabindex="0" role="group" aria-label="Cells of ${kind.rule}">
            ${fixCells(kind.findings)}
          </div>
          <fluent-button
            class="apply-kind"
            size="small"
            data-code=${kind.code}
            aria-label="Write all ${kind.findings.length} of ${kind.rule}"
            @click=${() => void model.fixes.applyKind(kind)}
            >Write all ${kind.findings.length}</fluent-button
          >
        `,
      )}
    </section>
  `;
}

const sentence = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
