import { html, nothing, type TemplateResult } from "lit";
import { repeat } from "lit/directives/repeat.js";
import { doubtLead } from "../../../../core/audit/finding-words";
import type { FindingView } from "../../engine/audit-view";
import { arrangeFindings, type FindingGroup } from "../../model/arrange-findings";
import { isSafeFix, needsLook } from "../../model/fixes-of-view";
import type { PaneModel } from "../../model/pane-model";
import { arrange } from "./arrange";
import type { CorrectionDraft } from "./decisions";
import { findingMore } from "./finding-more";
import { fixCells } from "./fix-cells";
import { severityIcon } from "./severity-icon";
import { SEVERITY_WORDS } from "./severity-words";

/** What the pane remembers between renderings: what is open, and how far each group is unrolled. */
export interface FindingsMemory {
  readonly draft: CorrectionDraft;
  readonly openSources: Set<string>;
  readonly limits: Map<string, number>;
  redraw(): void;
}

/** Rows of a group put on the page at once. */
const STEP = 100;

/** Findings as the user arranged them, each group under its own heading. */
export function findings(model: PaneModel, memory: FindingsMemory): TemplateResult | typeof nothing {
  const { view, shown, arrangement } = model.state;
  if (view === null) return nothing;
  if (view.noHeader !== null) return html`<p class="empty">${view.noHeader}</p>`;
  if (view.findings.length === 0) {
    return html`<p class="empty">Nothing was found in ${view.rows.bars} bars. That is no proof that the schedule is right.</p>`;
  }
  const groups = arrangeFindings(view.findings, shown, arrangement);
  const listed = groups.flatMap((group) => group.findings);
  return html`
    ${arrange(model, view.findings, listed)}
    ${repeat(
      groups,
      ({ key }) => `${arrangement.group} ${key}`,
      (group, index) => findingGroup(model, memory, group, index),
    )}
    ${listed.length === 0 ? html`<p class="empty">No finding is listed: the filters leave none.</p>` : nothing}
  `;
}

function findingGroup(
  model: PaneModel,
  memory: FindingsMemory,
  { key, severity, findings: group }: FindingGroup,
  index: number,
): TemplateResult {
  const limit = memory.limits.get(key) ?? STEP;
  const rest = group.length - limit;
  const more = (): void => {
    memory.limits.set(key, limit + STEP);
    memory.redraw();
  };
  return html`
    <section class="group" data-severity=${severity ?? nothing} aria-labelledby="group-${index}">
      <h3 id="group-${index}">
        ${severity === null ? key : html`${severityIcon(severity)} ${SEVERITY_WORDS[severity].word}`}, ${group.length}
      </h3>
      <ul>
        ${repeat(
          group.slice(0, limit),
          ({ key: each }) => each,
          (finding) => findingItem(model, memory, finding, severity === null),
        )}
      </ul>
      ${
        rest > 0
          ? html`<fluent-button size="small" @click=${more}>Show ${Math.min(rest, STEP)} more of ${rest}</fluent-button>`
          : nothing
      }
    </section>
  `;
}

function findingItem(
  model: PaneModel,
  memory: FindingsMemory,
  finding: FindingView,
  saysSeverity: boolean,
): TemplateResult {
  const isCurrent = model.state.current === finding.key;
  const jump = (): void => void model.goTo(finding);
  const own = finding.cell ?? (finding.row === null ? "whole sheet" : `row ${finding.row}`);
  const isHere = finding.sheet === model.state.view?.sheet;
  const place = isHere ? own : `${finding.sheet} ${own}`;
  return html`
    <li class="finding ${isCurrent ? "current" : ""}" data-severity=${finding.severity} data-code=${finding.code} data-cell=${isHere ? (finding.cell ?? "") : place}>
      <div class="line">
        ${
          finding.cell === null
            ? html`<span class="place">${place}</span>`
            : html`<fluent-button
              class="place"
              size="small"
              appearance="subtle"
              aria-current=${isCurrent ? "true" : nothing}
              aria-label="Go to ${place}: ${finding.message}"
              @click=${jump}
              >${place}</fluent-button
            >`
        }
        <p class="message" @click=${jump}>
          ${
            saysSeverity
              ? html`${severityIcon(finding.severity)}<span class="visually-hidden">${SEVERITY_WORDS[finding.severity].word}: </span>`
              : nothing
          }
          ${finding.outcome === "unsure" ? html`<span class="unsure">${doubtLead(finding)}</span>` : nothing}${finding.message}
        </p>
      </div>
      <div class="under">${finding.fix === null ? nothing : remedy(model, finding)} ${moreButton(memory, finding)}</div>
      ${model.state.looked === finding.key && needsLook(finding) ? lookAtFix(model, finding) : nothing}
      ${memory.openSources.has(finding.key) ? findingMore(model, finding) : nothing}
    </li>
  `;
}

function remedy(model: PaneModel, finding: FindingView): TemplateResult {
  const { fix } = finding;
  const place = finding.cell ?? finding.sheet;
  if (needsLook(finding)) return lookButton(model, finding, place);
  return html`
    <span class="remedy">${isSafeFix(finding) ? "" : "Remedy: "}${fix?.label}</span>
    ${
      isSafeFix(finding)
        ? html`<fluent-button
            class="apply"
            size="small"
            aria-label="Apply at ${place}: ${fix?.label}"
            @click=${() => void model.applyFix(finding)}
            >Apply</fluent-button
          >`
        : nothing
    }
  `;
}

function lookButton(model: PaneModel, finding: FindingView, place: string): TemplateResult {
  const isOpen = model.state.looked === finding.key;
  return html`
    <span class="remedy">Changes steel: ${finding.fix?.label}</span>
    <fluent-button
      class="look"
      role="button"
      size="small"
      aria-expanded=${isOpen ? "true" : "false"}
      aria-label="${isOpen ? "Close the look at" : "Look at"} the change in ${place}: ${finding.fix?.label}"
      @click=${() => model.look(isOpen ? null : finding)}
      >${isOpen ? "Close" : "Look"}</fluent-button
    >
  `;
}

/** The cells of a fix that changes steel, and the button that writes them. */
function lookAtFix(model: PaneModel, finding: FindingView): TemplateResult {
  return html`
    <div class="looked">
      ${fixCells([finding])}
      <p>This changes what is cut or bent. Compare it with the drawing first.</p>
      <fluent-button
        class="write"
        size="small"
        aria-label="Write the change at ${finding.cell ?? finding.sheet}"
        @click=${() => void model.applyFix(finding)}
        >Write this change</fluent-button
      >
    </div>
  `;
}

function moreButton(memory: FindingsMemory, finding: FindingView): TemplateResult {
  const isOpen = memory.openSources.has(finding.key);
  const turn = (): void => {
    if (!memory.openSources.delete(finding.key)) memory.openSources.add(finding.key);
    memory.redraw();
  };
  return html`<fluent-button
    class="source"
    role="button"
    size="small"
    appearance="transparent"
    aria-expanded=${isOpen ? "true" : "false"}
    aria-label="${isOpen ? "Less" : "More"} on the finding at ${finding.cell ?? finding.sheet}: source, waiver"
    @click=${turn}
    >${isOpen ? "Less" : "More"}</fluent-button
  >`;
}
