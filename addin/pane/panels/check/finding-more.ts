import { html, nothing, type TemplateResult } from "lit";
import type { FindingView } from "../../engine/audit-view";
import type { PaneModel } from "../../model/pane-model";
import { confirmGuess, turnRuleOff, waive } from "../../model/settings-edits";
import { today } from "./today";

/** Where a finding comes from, and what may be decided on it. */
export function findingMore(model: PaneModel, finding: FindingView): TemplateResult {
  const { code, rule, source, guess, sheet } = finding;
  const place = finding.cell ?? finding.sheet;
  const keep = (event: Event): void => {
    event.preventDefault();
    const reason =
      new FormData(event.currentTarget as HTMLFormElement).get("reason")?.toString().trim() ?? "";
    if (reason === "") model.report(new Error("say why the finding is accepted, then waive it"));
    else
      void model.decide(waive(finding, { reason, by: "", date: today() }), `${code} is waived at ${place}`);
  };
  return html`
    <div class="decide">
      ${source === null ? nothing : html`<p class="cite">${source}</p>`}
      ${
        guess === null
          ? nothing
          : html`<fluent-button
              class="confirm"
              size="small"
              aria-label="Confirm the reading of ${place}"
              @click=${() => void model.decide(confirmGuess(sheet, guess, true), `The reading of ${place} is confirmed`)}
              >Confirm this reading</fluent-button
            >`
      }
      <form class="waive" @submit=${keep}>
        <label class="field"
          >Accepted ${finding.row === null ? "for this sheet" : "for this row"} because
          <input name="reason" autocomplete="off" maxlength="200" aria-label="Reason to accept the finding at ${place}"
        /></label>
        <button type="submit" aria-label="Waive ${rule} at ${place}">Waive</button>
      </form>
      <fluent-button
        class="turn-off"
        size="small"
        aria-label="Turn off the rule ${code} ${rule} in this workbook"
        @click=${() => void model.decide(turnRuleOff(code, { reason: "", by: "", date: today() }), `Rule ${code} ${rule} is off in this workbook`)}
        >Turn rule ${code} off</fluent-button
      >
    </div>
  `;
}
