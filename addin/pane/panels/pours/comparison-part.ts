import { html, nothing, type TemplateResult } from "lit";
import type { ChangeView, ComparisonView } from "../../engine/comparison-view";
import type { PoursModel } from "../../model/pours-model";
import { askForFile } from "../ask-for-file";
import { severityIcon } from "../check/severity-icon";
import { choice } from "../choice";
import { notesList } from "./notes-list";
import { poursButton } from "./pours-button";

/** Changes put on the page at once. */
const MOST = 200;

/** What the sheet changes against an older revision, released bars first. */
export function comparisonPart(model: PoursModel): TemplateResult {
  const { others, older, comparison } = model.state;
  const options = others.map((name) => ({ value: name, text: name }));
  return html`
    <fluent-accordion-item heading-level="2" class="comparison">
      <span slot="heading">Compare with an older revision</span>
      ${
        older === null
          ? html`<p class="hint">The workbook has no other sheet: open the file that holds the older revision.</p>`
          : choice({
              label: "Older revision",
              options,
              value: older,
              choose: (name) => model.chooseOlder(name),
            })
      }
      <div class="row">
        ${older === null ? nothing : poursButton(model, "compare-sheet", "Compare", () => void model.compareWithSheet(), true)}
        <fluent-button class="compare-file" size="small" @click=${askForFile}>Compare with a file</fluent-button>
        <input type="file" accept=".xlsx,.xlsm" hidden aria-label="File of the older revision" @change=${fileChosen(model)} />
      </div>
      ${comparison === null ? nothing : result(model, comparison)}
    </fluent-accordion-item>
  `;
}

function fileChosen(model: PoursModel) {
  return async (event: Event): Promise<void> => {
    const input = event.currentTarget as HTMLInputElement;
    const file = input.files?.[0];
    if (file !== undefined) await model.compareWithFile(file.name, new Uint8Array(await file.arrayBuffer()));
    input.value = "";
  };
}

function result(model: PoursModel, comparison: ComparisonView): TemplateResult {
  const { changes, pours, unchanged, newer, older, notes } = comparison;
  const released = changes.filter((change) => change.released);
  const rest = changes.filter((change) => !change.released);
  return html`
    <p class="against">${newer} against ${older}: ${changes.length} bars differ, ${unchanged} do not.</p>
    ${notesList(notes)}
    ${
      released.length === 0
        ? nothing
        : html`<div class="released">
          <p class="alarm">${severityIcon("unsafe")} Unsafe: ${released.length} released already. Steel may be cut or bent: stop these first.</p>
          <ul class="changes">${released.map((change) => changeItem(model, change))}</ul>
        </div>`
    }
    <ul class="changes">${rest.slice(0, MOST).map((change) => changeItem(model, change))}</ul>
    ${rest.length > MOST ? html`<p class="hint">${rest.length - MOST} more: on the command line, compare lists them all.</p>` : nothing}
    <div class="wide" role="region" aria-label="Difference by pour" tabindex="0">
      <table>
        <caption>By pour</caption>
        <thead>
          <tr><th scope="col">Pour</th><th scope="col">Bars</th><th scope="col">Tonnes</th><th scope="col" class="number">Difference, t</th></tr>
        </thead>
        <tbody>
          ${pours.map(
            (line) => html`<tr>
              <th scope="row">${line.pour}</th>
              <td>${line.bars}</td>
              <td>${line.tonnes}</td>
              <td class="number">${line.difference}</td>
            </tr>`,
          )}
        </tbody>
      </table>
    </div>
  `;
}

function changeItem(model: PoursModel, change: ChangeView): TemplateResult {
  const { cell, kind, name, cells, amount } = change;
  return html`<li class="change" data-kind=${kind}>
    ${
      cell === null
        ? nothing
        : html`<fluent-button
          class="change-place"
          size="small"
          appearance="subtle"
          aria-label="Go to ${cell}: ${name} ${kind}"
          @click=${() => void model.goTo(cell)}
          >${cell}</fluent-button
        >`
    }
    <span class="change-words"
      ><strong>${name}</strong> ${kind}${change.released ? ", released" : ""}; ${amount}
      ${cells.map(({ field, before, after }) => html`<span class="cell-change">${field}: <s>${before}</s> <b>${after}</b></span>`)}
    </span>
  </li>`;
}
