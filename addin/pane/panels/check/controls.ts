import { html, nothing, type TemplateResult } from "lit";
import { hasOwnName } from "../../../../core/own/own-sheet";
import { DEFAULT_STANDARD_ID, STANDARD_IDS, STANDARD_TITLES } from "../../../../core/standards";
import type { PaneModel } from "../../model/pane-model";
import { askForFile } from "../ask-for-file";
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
      ${ownFigures(model)}
      ${colours(model)}
      ${hiddenSheets(model)}
    </section>
  `;
}

/** Figures and shapes of the owner's own, on a sheet of the workbook. */
function ownFigures(model: PaneModel): TemplateResult | typeof nothing {
  const { papers } = model;
  const { view, sheets } = model.state;
  if (papers === null || view === null) return nothing;
  const held = sheets.find(({ name }) => hasOwnName(name));
  const take = async (event: Event): Promise<void> => {
    const input = event.currentTarget as HTMLInputElement;
    const file = input.files?.[0];
    if (file !== undefined) await papers.writeStandard(new Uint8Array(await file.arrayBuffer()));
    input.value = "";
  };
  return html`<div class="buttons own-figures">
    <fluent-button class="write-standard" size="small" @click=${() => void papers.writeStandard(null)}
      >${held === undefined ? "Write the Standard sheet" : `Go to ${held.name}`}</fluent-button
    >
    ${
      held === undefined
        ? html`<fluent-button class="take-standard" size="small" @click=${askForFile}>Take it from a file</fluent-button>
          <input type="file" accept=".xlsx,.xlsm" hidden aria-label="Workbook with a sheet Standard" @change=${take} />`
        : nothing
    }
  </div>`;
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

/** Each by its title, so that nobody needs to know an id. */
function standardOptions(current: string): { value: string; text: string }[] {
  const named = (id: string): string => STANDARD_TITLES.get(id) ?? id;
  const options = STANDARD_IDS.map((id) => ({ value: id, text: named(id) }));
  if (current === "")
    return [{ value: "", text: `what the sheet names, else ${named(DEFAULT_STANDARD_ID)}` }, ...options];
  if (STANDARD_IDS.includes(current)) return options;
  return [{ value: current, text: current }, ...options];
}
