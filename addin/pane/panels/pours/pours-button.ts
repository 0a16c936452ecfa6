import { html, type TemplateResult } from "lit";
import type { PoursModel } from "../../model/pours-model";

/** A button that waits while the yard is at work. */
export function poursButton(
  model: PoursModel,
  name: string,
  words: string,
  act: () => void,
  isPrimary = false,
): TemplateResult {
  const isBusy = model.state.doing !== null;
  return html`<fluent-button
    class=${name}
    size="small"
    appearance=${isPrimary ? "primary" : "outline"}
    ?disabled-focusable=${isBusy}
    @click=${() => !isBusy && act()}
    >${words}</fluent-button
  >`;
}
