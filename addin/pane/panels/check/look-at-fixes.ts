import { html, nothing, type TemplateResult } from "lit";
import type { PaneModel } from "../../model/pane-model";
import { cellWords } from "./cell-words";
import { fixCells } from "./fix-cells";

/** The cells of one fix or of many alike, what follows from them, and the buttons that write. */
export function lookAtFixes(model: PaneModel): TemplateResult | typeof nothing {
  const findings = model.fixes.lookedAt();
  if (findings.length === 0) return nothing;
  const { follows } = model.state;
  const rows = findings.length === 1 ? "this row" : `all ${findings.length} rows`;
  const isSteel = findings.some(({ fix }) => fix?.safety === "needs-review");
  const along = follows?.edits.length ?? 0;
  return html`
    <div class="looked">
      <div class="scroll" tabindex="0" role="group" aria-label="Cells before and after">${fixCells(findings)}</div>
      ${along === 0 ? nothing : followTable(model)}
      ${follows === null ? nothing : html`<p class="effect">${follows.effect}</p>`}
      ${isSteel ? html`<p>This changes what is cut or bent. Compare it with the drawing first.</p>` : nothing}
      <div class="buttons">
        ${
          along > 0
            ? html`<button class="write write-along" @click=${() => void model.fixes.writeLooked(true)}
                >Change ${rows}, and ${along === 1 ? "the cell that follows" : `the ${along} cells that follow`}</button
              >`
            : nothing
        }
        <button class="write write-only" @click=${() => void model.fixes.writeLooked(false)}
          >Change ${rows}${along > 0 ? " only" : ""}</button
        >
      </div>
    </div>
  `;
}

function followTable(model: PaneModel): TemplateResult {
  const edits = model.state.follows?.edits ?? [];
  return html`
    <p>What follows from it, so that the rows agree again (a cell that holds a formula is left to it):</p>
    <div class="scroll" tabindex="0" role="group" aria-label="Cells that follow">
      <table>
        <thead>
          <tr><th scope="col">Cell</th><th scope="col">Now</th><th scope="col">Then</th></tr>
        </thead>
        <tbody>
          ${edits.map(
            ({ cell, before, to }) => html`<tr>
              <th scope="row">${cell}</th>
              <td>${cellWords(before)}</td>
              <td>${cellWords(to)}</td>
            </tr>`,
          )}
        </tbody>
      </table>
    </div>
  `;
}
