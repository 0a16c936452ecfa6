import { html, nothing, type TemplateResult } from "lit";
import type { JobView } from "../../engine/job-view";
import type { PoursModel } from "../../model/pours-model";
import { notesList } from "./notes-list";

const WORKBOOK = /\.xls[xm]$/i;

/** The sheet added up with the schedules of other workbooks, chosen one by one or as a folder. */
export function filesPart(model: PoursModel): TemplateResult {
  const { job } = model.state;
  return html`
    <fluent-accordion-item heading-level="2" class="with-files">
      <span slot="heading">Add up with other files</span>
      <p class="hint">The other schedules of the job: the newest revision of each counts. Nothing leaves this machine.</p>
      <div class="row">
        ${fileButton("Choose files", "Other workbooks of the job", false, model)}
        ${fileButton("Choose a folder", "Folder of the job", true, model)}
      </div>
      ${job === null ? nothing : result(job)}
    </fluent-accordion-item>
  `;
}

function fileButton(words: string, label: string, isFolder: boolean, model: PoursModel): TemplateResult {
  const ask = ({ currentTarget }: Event): void => {
    const input = (currentTarget as HTMLElement).nextElementSibling;
    if (input instanceof HTMLInputElement) input.click();
  };
  return html`<span>
    <fluent-button class=${isFolder ? "choose-folder" : "choose-files"} size="small" @click=${ask}>${words}</fluent-button>
    <input
      type="file"
      accept=".xlsx,.xlsm"
      multiple
      ?webkitdirectory=${isFolder}
      hidden
      aria-label=${label}
      @change=${filesChosen(model)}
    />
  </span>`;
}

function filesChosen(model: PoursModel) {
  return async (event: Event): Promise<void> => {
    const input = event.currentTarget as HTMLInputElement;
    const workbooks = [...(input.files ?? [])].filter(
      ({ name }) => WORKBOOK.test(name) && !name.startsWith("~$"),
    );
    const files = await Promise.all(
      workbooks.map(async (file) => ({
        name: file.webkitRelativePath === "" ? file.name : file.webkitRelativePath,
        bytes: new Uint8Array(await file.arrayBuffer()),
      })),
    );
    await model.addFiles(files);
    input.value = "";
  };
}

function result({ files, schedules, groupedBy, lines, total, findings, notes }: JobView): TemplateResult {
  return html`
    <p class="job-total">
      ${total === null ? html`No total: the notes say why.` : html`<strong>${total} t</strong>`}
      in ${schedules} ${schedules === 1 ? "schedule" : "schedules"}, with ${files} other
      ${files === 1 ? "file" : "files"}.
    </p>
    ${notesList(notes)}
    ${
      findings.length === 0
        ? nothing
        : html`<ul class="changes">
          ${findings.map(
            ({ words, places }) =>
              html`<li class="job-finding">${words}<br /><small>${places.join("; ")}</small></li>`,
          )}
        </ul>`
    }
    <div class="wide" role="region" aria-label="Tonnes with other files" tabindex="0">
      <table>
        <caption>By ${groupedBy}</caption>
        <thead><tr><th scope="col">${groupedBy}</th><th scope="col" class="number">Tonnes</th></tr></thead>
        <tbody>
          ${lines.map(
            ({ name, tonnes }) =>
              html`<tr><th scope="row">${name}</th><td class="number">${tonnes}</td></tr>`,
          )}
        </tbody>
      </table>
    </div>
  `;
}
