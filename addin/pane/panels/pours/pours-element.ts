import { html, nothing, type TemplateResult } from "lit";
import type { PoursModel } from "../../model/pours-model";
import { controlStyles } from "../control-styles";
import { iconStyles } from "../icon-styles";
import { ModelElement } from "../model-element";
import { comparisonPart } from "./comparison-part";
import { filesPart } from "./files-part";
import { pagesPart } from "./pages-part";
import { poursStyles } from "./pours-styles";
import { shopPart } from "./shop-part";
import { tonnagePart, totalLine } from "./tonnage-part";

/** `<barwright-pours>`: tonnes by pour, pages of the pours chosen, revisions and the Shop sheet. Give it a `model`. */
export class PoursElement extends ModelElement<PoursModel> {
  static override styles = [controlStyles, iconStyles, poursStyles];

  override render(): TemplateResult {
    const { model } = this;
    if (model === undefined) return html``;
    const { doing, sheet } = model.state;
    return html`
      <section class="pours" aria-label="Pours of ${sheet ?? "no sheet"}" aria-busy=${doing === null ? "false" : "true"}>
        <div class="head">
          ${totalLine(model)}
          <p class="doing" aria-live="polite">${doing === null ? nothing : `${doing} ...`}</p>
        </div>
        <div class="body" tabindex="0" role="group" aria-label="Tonnes, pages and revisions">
          ${tonnagePart(model)} ${pagesPart(model)}
          <fluent-accordion expand-mode="multi">${filesPart(model)} ${comparisonPart(model)} ${shopPart(model)}</fluent-accordion>
        </div>
      </section>
    `;
  }
}

customElements.define("barwright-pours", PoursElement);
