import { html, type TemplateResult } from "lit";
import type { PoursModel } from "../../model/pours-model";
import { poursButton } from "./pours-button";

/** The sheet on which the yard says what it owns. */
export function shopPart(model: PoursModel): TemplateResult {
  const { shopSheet } = model.state;
  return html`
    <fluent-accordion-item heading-level="2" class="shop">
      <span slot="heading">The yard's Shop sheet</span>
      <p class="hint">
        ${
          shopSheet === null
            ? "Machines with their plates, stock, limits and trial bends stand on a sheet of their own. What is left blank is unknown, never a pass."
            : `Machines, stock, limits and trial bends are read from sheet ${shopSheet}.`
        }
      </p>
      <div class="row">
        ${poursButton(model, "open-shop", shopSheet === null ? "Add a Shop sheet" : `Go to ${shopSheet}`, () => void model.openShop())}
      </div>
    </fluent-accordion-item>
  `;
}
