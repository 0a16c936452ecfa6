import { html, LitElement, nothing, type TemplateResult } from "lit";
import type { PoursModel } from "../../model/pours-model";
import { comparisonPart } from "./comparison-part";
import { findingsPart } from "./findings-part";
import { pagesPart } from "./pages-part";
import { poursStyles } from "./pours-styles";
import { shopPart } from "./shop-part";
import { tonnagePart } from "./tonnage-part";

/** `<barwright-pours>`: tonnage, pages, revisions and the Shop sheet, inside the pane. Give it a `model`. */
export class PoursElement extends LitElement {
  static override styles = poursStyles;
  static override properties = { model: { attribute: false } };

  declare model: PoursModel | undefined;
  #stop: (() => void) | undefined;

  override willUpdate(changed: Map<string, unknown>): void {
    if (!changed.has("model")) return;
    this.#stop?.();
    this.#stop = this.model?.subscribe(() => this.requestUpdate());
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stop?.();
    this.#stop = undefined;
  }

  override render(): TemplateResult {
    const { model } = this;
    if (model === undefined) return html``;
    const { sheet, doing } = model.state;
    return html`
      <section class="yard" aria-labelledby="yard-heading" aria-busy=${doing === null ? "false" : "true"}>
        <h2 id="yard-heading">For the yard${sheet === null ? "" : `: ${sheet}`}</h2>
        <p class="doing" aria-live="polite">${doing === null ? nothing : `${doing} ...`}</p>
        <fluent-accordion expand-mode="multi">
          ${tonnagePart(model)} ${findingsPart(model)} ${pagesPart(model)} ${comparisonPart(model)} ${shopPart(model)}
        </fluent-accordion>
      </section>
    `;
  }
}

customElements.define("barwright-pours", PoursElement);
