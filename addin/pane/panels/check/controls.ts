import { html, nothing, type TemplateResult } from "lit";
import { DEFAULT_STANDARD_ID, STANDARD_IDS } from "../../../../core/standards";
import type { PaneModel } from "../../model/pane-model";
import { choice } from "../choice";

/** Which sheet, by which standard, hidden sheets, and the colours of rows. */
export function controls(model: PaneModel): TemplateResult {
  const { state } = model;
  const sheets = state.sheets.map(({ name }) => ({ value: name, text: name }));
  return html`
    <section class="controls" aria-label="Sheet and standard">
      ${choice({ label: "Sheet", options: sheets, value: state.sheet ?? "", choose: (name) => void model.chooseSheet(name) })}
      ${choice({
        label: "Standard",
        options: standardOptions(state.standard),
        value: state.standard,
        choose: (id) => void model.chooseStandard(id),
      })}
      ${colours(model)}
      ${hiddenSheets(model)}
    </section>
  `;
}

function colours(model: PaneModel): TemplateResult | typeof nothing {
  const { view, isColoured } = model.state;
  if (isColoured) {
    return html`<div class="buttons">
      <fluent-button class="uncolour" size="small" @click=${() => void model.removeColours()}
        >Remove colours</fluent-button
      >
    </div>`;
  }
  if (view === null || view.flags.length === 0) return nothing;
  return html`<div class="buttons">
    <fluent-button class="colour" size="small" @click=${() => void model.colour()}>Colour rows</fluent-button>
  </div>`;
}

/** Hidden sheets are named, and read only where the user asks for them. */
function hiddenSheets(model: PaneModel): TemplateResult | typeof nothing {
  const { hidden, readsHidden } = model.state;
  if (hidden.length === 0) return nothing;
  const names =
    hidden.length > 3 ? `${hidden.slice(0, 3).join(", ")} and ${hidden.length - 3} more` : hidden.join(", ");
  const [is, it] = hidden.length === 1 ? ["is", "it"] : ["are", "them"];
  return html`<p class="hidden-sheets">
    ${readsHidden ? `Hidden, and read all the same: ${names}.` : `${names} ${is} hidden and not read.`}
    <fluent-button size="small" class="read-hidden" @click=${() => model.readHidden(!readsHidden)}
      >${readsHidden ? `Leave ${it} out` : `Read ${it} too`}</fluent-button
    >
  </p>`;
}

function standardOptions(current: string): { value: string; text: string }[] {
  const options = STANDARD_IDS.map((id) => ({ value: id, text: id }));
  if (current === "") return [{ value: "", text: `${DEFAULT_STANDARD_ID}, the default` }, ...options];
  if (STANDARD_IDS.includes(current)) return options;
  return [{ value: current, text: current }, ...options];
}
