import { html, nothing, type TemplateResult } from "lit";
import type { FindingView } from "../../engine/audit-view";
import type { PaneModel } from "../../model/pane-model";
import { confirmGuess, correctColumn, turnRuleOff, waive } from "../../model/settings-edits";
import type { CheckMemory } from "./check-memory";
import { decideForm } from "./decide-form";

/** Why a finding is one, where it comes from and how far to trust it, and what may be decided on it. */
export function findingMore(model: PaneModel, memory: CheckMemory, finding: FindingView): TemplateResult {
  const { code, rule, source, guess, sheet } = finding;
  const { view, ahead } = model.state;
  const place = finding.cell ?? finding.sheet;
  const about = view?.rules[code];
  const waived = ahead?.about === finding.key ? ahead.words : null;
  return html`
    <div class="decide">
      ${about === undefined ? nothing : html`<p class="why">${about.why}</p>`}
      ${source === null ? nothing : html`<p class="cite">${source}</p>`}
      ${
        guess === null || finding.ways.length > 0
          ? nothing
          : html`<button
              class="confirm"
              @click=${() => void model.decide(confirmGuess(sheet, guess, true), `The reading of ${place} is confirmed`)}
              >Confirm this reading</button
            >`
      }
      ${finding.ways.map(
        ({ words, correction: { column, ...said } }) => html`<button
          class="way"
          @click=${() => void model.decide(correctColumn(sheet, column, said), `${words}; kept in the workbook`)}
          >${words}</button
        >`,
      )}
      ${decideForm({
        name: "waive",
        because: `Accepted ${finding.row === null ? "for this sheet" : "for this row"} because`,
        ahead: waived,
        button: "Accept",
        refuse: (problem) => model.report(problem),
        decide: (decided) => void model.decide(waive(finding, decided), `Accepted at ${place}: ${rule}`),
      })}
      ${notAsked(model, memory, finding)}
      <p class="code">
        ${rule}, ${code}${about === undefined ? nothing : html`: <a href="rules.html#${code}" target="_blank">the rule's page</a>`}
      </p>
    </div>
  `;
}

/** The whole rule is not asked in this workbook; what is unsafe is told all the same. */
function notAsked(
  model: PaneModel,
  memory: CheckMemory,
  { code, rule, severity }: FindingView,
): TemplateResult {
  if (severity === "unsafe") {
    return html`<p class="hint">What is unsafe can be accepted row by row, and not left unasked for a sheet.</p>`;
  }
  const key = `off ${code}`;
  const isOpen = memory.deciding === key;
  const turn = (): void => {
    memory.deciding = isOpen ? null : key;
    if (!isOpen) void model.lookAhead({ kind: "rule off", code });
    memory.redraw();
  };
  const { ahead } = model.state;
  return html`
    <button class="turn-off" aria-expanded=${isOpen ? "true" : "false"} @click=${turn}>Do not ask this in the workbook</button>
    ${
      isOpen
        ? decideForm({
            name: "rule-off",
            because: "Not asked because",
            ahead: ahead?.about === key ? ahead.words : null,
            button: "Ask no more",
            refuse: (problem) => model.report(problem),
            decide: (decided) => {
              memory.deciding = null;
              void model.decide(turnRuleOff(code, decided), `Not asked in this workbook: ${rule}`);
            },
          })
        : nothing
    }
  `;
}
