import { html, nothing, type TemplateResult } from "lit";
import { doubtLead } from "../../../../core/audit/finding-words";
import type { FindingView } from "../../engine/audit-view";
import { isSafeFix, needsLook } from "../../model/fixes-of-view";
import type { PaneModel } from "../../model/pane-model";
import type { CheckMemory } from "./check-memory";
import { findingMore } from "./finding-more";
import { lookAtFixes } from "./look-at-fixes";
import { severityIcon } from "./severity-icon";
import { SEVERITY_WORDS } from "./severity-words";

/** A finding in its own words; what can be done about it stands open under the current one. */
export function findingItem(
  model: PaneModel,
  memory: CheckMemory,
  finding: FindingView,
  isStop: boolean,
): TemplateResult {
  const isCurrent = model.state.current === finding.key;
  const own = finding.cell ?? (finding.row === null ? "whole sheet" : `row ${finding.row}`);
  const isHere = finding.sheet === model.state.view?.sheet;
  const place = isHere ? own : `${finding.sheet} ${own}`;
  return html`
    <div
      role="listitem"
      class="finding ${isCurrent ? "current" : ""}"
      data-severity=${finding.severity}
      data-code=${finding.code}
      data-cell=${isHere ? (finding.cell ?? "") : place}
    >
      <button
        class="head"
        tabindex=${isStop ? "0" : "-1"}
        aria-expanded=${isCurrent ? "true" : "false"}
        aria-current=${isCurrent ? "true" : nothing}
        @click=${() => void model.goTo(finding)}
      >
        ${severityIcon(finding.severity)}
        <span class="visually-hidden">${SEVERITY_WORDS[finding.severity].word}, </span>
        <span class="place">${place}</span>
        <span class="message">
          ${finding.outcome === "unsure" ? html`<span class="unsure">${doubtLead(finding)}</span>` : nothing}${finding.message}
        </span>
      </button>
      ${isCurrent ? opened(model, memory, finding, place) : nothing}
    </div>
  `;
}

function opened(model: PaneModel, memory: CheckMemory, finding: FindingView, place: string): TemplateResult {
  const isOpen = memory.opened === finding.key;
  const turn = (): void => {
    memory.opened = isOpen ? null : finding.key;
    if (!isOpen) void model.lookAhead({ kind: "waiver", finding });
    memory.redraw();
  };
  return html`
    <div class="under">
      ${remedy(model, finding, place)}
      <button
        class="source"
        aria-expanded=${isOpen ? "true" : "false"}
        aria-label="${isOpen ? "Less" : "Why, accept"}: the finding at ${place}"
        @click=${turn}
        >${isOpen ? "Less" : "Why, accept"}</button
      >
    </div>
    ${model.state.looked?.includes(finding.key) ? lookAtFixes(model) : nothing}
    ${isOpen ? findingMore(model, memory, finding) : nothing}
  `;
}

function remedy(model: PaneModel, finding: FindingView, place: string): TemplateResult | typeof nothing {
  const { fix } = finding;
  if (fix === null) return nothing;
  const isChange = needsLook(finding);
  const isSafe = isSafeFix(finding);
  const alike = isChange || isSafe ? model.fixes.alike(finding) : [];
  const isLooked = model.state.looked?.includes(finding.key) === true;
  return html`
    <span class="remedy">${isChange ? "Changes steel: " : isSafe ? "" : "Remedy: "}${fix.label}</span>
    ${
      isSafe
        ? html`<button class="apply" aria-label="Apply at ${place}: ${fix.label}" @click=${() => void model.fixes.applyFix(finding)}
            >Apply</button
          >`
        : nothing
    }
    ${
      isChange
        ? html`<button
            class="look"
            aria-expanded=${isLooked ? "true" : "false"}
            aria-label="${isLooked ? "Close the look at" : "Look at"} the change in ${place}: ${fix.label}"
            @click=${() => void model.fixes.look(isLooked ? [] : [finding])}
            >${isLooked ? "Close" : "Look"}</button
          >`
        : nothing
    }
    ${
      alike.length > 1
        ? html`<button class="look-all" @click=${() => void model.fixes.look(alike)}
            >The same in ${alike.length} rows: look at all</button
          >`
        : nothing
    }
  `;
}
