import { html, nothing, type TemplateResult } from "lit";
import { DEFAULT_STANDARD_ID } from "../../../../core/standards";
import type { PaneModel } from "../../model/pane-model";
import type { CheckMemory } from "./check-memory";
import { controls } from "./controls";

/** Which sheet by which standard, in one line that opens; and the button that checks. */
export function setUp(model: PaneModel, memory: CheckMemory): TemplateResult {
  const { state } = model;
  const isBusy = state.work !== null;
  // until the first check everything is in sight
  const isOpen = memory.isSetUpOpen || state.view === null;
  // where nobody chose one, the check goes by what the sheets name
  const standard = state.standard === "" ? (state.view?.standard.id ?? DEFAULT_STANDARD_ID) : state.standard;
  const turn = (): void => {
    memory.isSetUpOpen = !memory.isSetUpOpen;
    memory.redraw();
  };
  return html`
    <div class="set-up">
      <button
        class="set-up-line"
        aria-expanded=${isOpen ? "true" : "false"}
        ?disabled=${state.view === null}
        @click=${turn}
      >
        <span class="sheet-name">${state.sheet ?? "no sheet"}</span>
        <span class="standard-name">${standard}</span>
        <span class="visually-hidden">: change</span>
        <span aria-hidden="true">${isOpen ? "\u25b4" : "\u25be"}</span>
      </button>
      <fluent-button
        class="check"
        size="small"
        appearance="primary"
        ?disabled-focusable=${isBusy || state.sheet === null}
        @click=${() => !isBusy && void model.check()}
        >${state.view === null ? "Check" : "Check again"}</fluent-button
      >
    </div>
    ${isOpen ? controls(model) : nothing}
  `;
}
